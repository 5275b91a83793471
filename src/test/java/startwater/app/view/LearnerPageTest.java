package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.Desk;
import startwater.app.Fx;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;
import startwater.text.Language;

/** Who is learning: chosen at the first start, changed, renamed and deleted at the foot of the places. */
class LearnerPageTest {
    @TempDir
    private Path folder;

    private Shell open() {
        return Fx.call(() -> {
            Desk desk = Desk.in(folder);
            desk.openTheOnly();
            Shell shell = new Shell(Language.EN, desk);
            Stages.show(shell);
            return shell;
        });
    }

    private static Node node(Shell shell, String id) {
        return Fx.call(() -> {
            shell.applyCss();
            shell.layout();
            return Objects.requireNonNull(shell.lookup("#" + id), id);
        });
    }

    private static void press(Shell shell, String id) {
        Button button = (Button) node(shell, id);
        Fx.run(button::fire);
    }

    private static void type(Shell shell, String id, String words) {
        TextField field = (TextField) node(shell, id);
        Fx.run(() -> field.setText(words));
    }

    private static boolean says(Shell shell, String words) {
        return Fx.call(() -> {
            shell.applyCss();
            shell.layout();
            return shell.lookupAll(".label").stream()
                    .anyMatch(n -> n instanceof Labeled l && l.getText().contains(words));
        });
    }

    private static void close(Shell shell) {
        Fx.run(shell::close);
    }

    @Test
    void theFirstStartAsksAndTheNextGoesStraightHome() {
        Shell first = open();
        assertThat(says(first, "There is no account") || says(first, "there is no account"))
                .isTrue();
        assertThat(says(first, "What comes next")).isFalse();
        press(first, "learner-without");
        assertThat(says(first, "What comes next")).isTrue();
        assertThat(says(first, "Learner: without a name")).isTrue();
        close(first);
        Shell second = open();
        assertThat(says(second, "What comes next")).isTrue();
        close(second);
    }

    @Test
    void whereSeveralLearnItAsksEachTime() {
        Shell shell = open();
        type(shell, "learner-name", "Ana");
        press(shell, "learner-go");
        press(shell, "learner");
        type(shell, "learner-name", "Ben");
        press(shell, "learner-go");
        assertThat(says(shell, "Learner: Ben")).isTrue();
        close(shell);
        Shell again = open();
        assertThat(says(again, "What comes next")).isFalse();
        press(again, "learner-ana");
        assertThat(says(again, "Learner: Ana")).isTrue();
        close(again);
    }

    @Test
    void aNewNameIsKept() {
        Shell shell = open();
        press(shell, "learner-without");
        press(shell, "learner");
        type(shell, "learner-new-name", "Caro");
        press(shell, "learner-rename");
        assertThat(says(shell, "Learner: Caro")).isTrue();
        close(shell);
        assertThat(new Learners(folder, Means.USUAL).find("caro").orElseThrow().key())
                .isEqualTo("learner");
    }

    @Test
    void deletingNamesWhatGoesAndGoesOnlyWhenConfirmed() throws IOException {
        Shell shell = open();
        type(shell, "learner-name", "Ana");
        press(shell, "learner-go");
        press(shell, "learner");
        press(shell, "learner-delete");
        assertThat(says(shell, "ana.jsonl")).isTrue();
        press(shell, "learner-delete-no");
        assertThat(folder.resolve("learners/ana.jsonl")).exists();
        press(shell, "learner-delete");
        press(shell, "learner-delete-yes");
        assertThat(says(shell, "Who is learning?")).isTrue();
        assertThat(says(shell, "Learner: Ana")).isFalse();
        try (Stream<Path> left = Files.list(folder.resolve("learners"))) {
            assertThat(left).isEmpty();
        }
        close(shell);
    }

    @Test
    void aFileInUseElsewhereIsSaidAndOneMayLookOrChooseAnother() throws IOException {
        try (LearnerFile elsewhere = new Learners(folder, Means.USUAL).open("Ana")) {
            assertThat(elsewhere.trouble()).isEmpty();
            Shell shell = open();
            press(shell, "learner-ana");
            assertThat(((Labeled) node(shell, "not-kept")).getText()).contains("another window");
            press(shell, "learner");
            type(shell, "learner-name", "Ben");
            press(shell, "learner-go");
            assertThat(says(shell, "another window")).isFalse();
            close(shell);
        }
    }

    @Test
    void aFileOfANewerProgramIsRefusedWithASentence() throws IOException {
        Path file = Files.createDirectories(folder.resolve("learners")).resolve("ana.jsonl");
        String newer =
                "{\"kind\":\"learner\",\"format\":9,\"id\":\"u\",\"name\":\"Ana\",\"at\":\"2026-05-04T12:00:00Z\"}\n";
        Files.writeString(file, newer);
        Shell shell = open();
        press(shell, "learner-ana");
        assertThat(((Labeled) node(shell, "learner-said")).getText()).contains("newer program");
        assertThat(file).hasContent(newer);
        close(shell);
    }

    @Test
    void aDamagedEndIsToldOnceAndCanBeClosed() throws IOException {
        Shell first = open();
        press(first, "learner-without");
        close(first);
        Files.writeString(
                folder.resolve("learners/learner.jsonl"), "{\"kind\":\"wr", java.nio.file.StandardOpenOption.APPEND);
        Shell shell = open();
        assertThat(says(shell, "learner.jsonl.damaged-1")).isTrue();
        press(shell, "banner-close");
        assertThat(says(shell, "learner.jsonl.damaged-1")).isFalse();
        close(shell);
    }
}
