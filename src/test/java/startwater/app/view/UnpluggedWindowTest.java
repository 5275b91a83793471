package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.app.model.ClassModel;
import startwater.classroom.HandedIn;
import startwater.classroom.MarkMemo;
import startwater.classroom.SecondPass;
import startwater.content.Library;
import startwater.record.Entry;
import startwater.record.Means;
import startwater.record.Storage;
import startwater.text.Language;

/** The window while the stick its data lie on is taken out and put back, and with a clock that was set back. */
class UnpluggedWindowTest {
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    private void open(Means means) {
        Fx.run(() -> {
            shell = new Shell(Language.EN, Desks.nameless(folder.resolve("stick"), means));
            stage = Stages.show(shell);
        });
    }

    @AfterEach
    void close() {
        Stages.close(shell, stage);
    }

    private void waitFor(Predicate<Node> what) throws Exception {
        WaitForAsyncUtils.waitFor(
                20,
                TimeUnit.SECONDS,
                () -> Fx.call(() -> shell.lookupAll("*").stream().anyMatch(what)));
    }

    private static Predicate<Node> id(String id) {
        return n -> id.equals(n.getId());
    }

    private void press(String id) {
        Fx.run(() -> ((ButtonBase) shell.lookup("#" + id)).fire());
    }

    private String banner() {
        return Fx.call(() -> shell.lookupAll("#banner .label").stream()
                .map(n -> ((Labeled) n).getText())
                .reduce("", (a, b) -> a + b));
    }

    @Test
    void theBannerTellsUntilTheStickIsBackAndThenAllIsWritten() throws Exception {
        open(Means.USUAL);
        Fx.run(() -> shell.start(Library.shipped().scenario("first-strips").get()));
        waitFor(id("dip"));
        Files.move(folder.resolve("stick"), folder.resolve("pocket"));
        press("dip");
        assertThat(banner()).contains("is not there any more", "Put the stick or the folder back");
        press("write");
        // Home without the folder: what it lists is not there, and it says so no louder.
        Fx.run(() -> shell.home());
        waitFor(id("open-handout"));
        Fx.run(() -> shell.start(Library.shipped().scenario("first-strips").get()));
        waitFor(id("open-handout"));
        assertThat(banner()).contains("is not there any more");
        assertThat(folder.resolve("stick")).doesNotExist();
        Files.move(folder.resolve("pocket"), folder.resolve("stick"));
        Fx.run(() -> shell.start(Library.shipped().scenario("first-strips").get()));
        waitFor(id("dip"));
        press("dip");
        assertThat(banner()).isEmpty();
        List<Entry> lines = Entries.ofLast(folder.resolve("stick/learners/learner.jsonl"), "first-strips");
        assertThat(Entries.count(lines, Entry.Dipped.class)).isEqualTo(2);
        assertThat(Entries.count(lines, Entry.Wrote.class)).isEqualTo(1);
        assertThat(lines.stream().map(e -> ((Entry.OfAttempt) e).n())).containsExactly(0, 1, 2, 3);
    }

    @Test
    void aClockThatWasSetBackIsSaidAboveThePageAndThePagesOpen() throws Exception {
        Fx.run(() -> {
            try (var desk = Desks.nameless(folder.resolve("stick"))) {
                desk.learner().answer("01-toxic-ammonia", List.of("toxic-ammonia"), 2, 0, 1, 0, null);
            }
        });
        Instant back = Instant.now().minus(Duration.ofDays(900));
        open(new Means(Storage.DISK, () -> back, () -> UUID.randomUUID().toString()));
        assertThat(banner()).contains("The clock of this computer says", "Nothing is lost");
        waitFor(id("start"));
        press("progress");
        waitFor(id("progress-start"));
    }

    @Test
    void theTeachersFolderIsTakenOutAndWhatWasCollectedStays() throws IOException {
        ClassModel model =
                new ClassModel(Runnable::run, Runnable::run, Instant::now, new SecondPass(MarkMemo.inMemory()), 1);
        Path in = Files.createDirectories(folder.resolve("in"));
        Files.writeString(in.resolve("a.startwater-attempts.jsonl"), "nothing\n");
        model.collect(in);
        List<HandedIn> first = model.handedInProperty().get();
        assertThat(first).hasSize(1);
        Files.delete(in.resolve("a.startwater-attempts.jsonl"));
        Files.delete(in);
        model.collect(in);
        assertThat(model.failedProperty().get()).isEqualTo(in);
        assertThat(model.handedInProperty().get()).isEqualTo(first);
        assertThat(model.runningProperty().get()).isFalse();
    }
}
