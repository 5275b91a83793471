package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.classroom.AttemptsFile;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.content.Library;
import startwater.record.Entry;
import startwater.text.Language;

/** A hand-out is opened in the window, played as an exam, left and taken up again. */
class HandedOutTest {
    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    private void open() {
        Fx.run(() -> {
            shell = new Shell(Language.EN, Desks.nameless(folder));
            stage = Stages.show(shell);
        });
    }

    @AfterEach
    void close() {
        Stages.close(shell, stage);
    }

    private Path handout() throws Exception {
        Handout given = new Handout(
                "monday-1",
                "Monday",
                Entry.Mode.EXAM,
                "Friday at noon",
                true,
                7,
                List.of(new Handout.Drill(
                        Library.shipped().scenario("first-strips").get(), null)),
                List.of("02-read-a-strip"));
        return Files.writeString(folder.resolve("monday-1" + HandoutFile.ENDING), HandoutFile.text(given));
    }

    @Test
    void anExamIsPlayedWithoutADebriefAndGoesOnWhereItWasLeft() throws Exception {
        open();
        Path file = handout();
        Fx.run(() -> shell.open(file));
        assertThat(there("hand-in")).isTrue();
        assertThat(there("handed-02-read-a-strip")).isTrue();
        press("handed-first-strips");
        waitFor(() -> there("dip"));
        press("dip");
        press("write");
        press("go");
        waitFor(() -> there("dip") && Desks.look(folder).history().observed().size() == 1);
        assertThat(there("go-on")).as("a debrief").isFalse();
        Fx.run(() -> shell.home());
        assertThat(there("hand-in")).isTrue();
        press("handed-first-strips");
        waitFor(() -> there("dip"));
        var open =
                Desks.look(folder).history().open("first-strips").orElseThrow().begun();
        assertThat(open.handout()).isEqualTo("monday-1");
        assertThat(open.variant()).isEqualTo(7);
        assertThat(open.mode()).isEqualTo(Entry.Mode.EXAM);
        String lines = AttemptsFile.text(Files.readString(Desks.look(folder).file()), "monday-1");
        assertThat(lines.lines()).anyMatch(line -> line.contains("\"decided\"")).hasSizeGreaterThan(4);
    }

    @Test
    void whatIsNoHandoutIsSaidAndTheShelfStays() throws Exception {
        open();
        Path file = Files.writeString(folder.resolve("broken" + HandoutFile.ENDING), "{");
        Fx.run(() -> shell.open(file));
        assertThat(there("banner")).isTrue();
        assertThat(there("card-first-strips")).isTrue();
    }

    private boolean there(String id) {
        return Fx.call(() -> nodes().stream().anyMatch(n -> id.equals(n.getId()) && !n.isDisabled()));
    }

    private void press(String id) {
        Fx.run(() -> nodes().stream()
                .filter(n -> id.equals(n.getId()) && n instanceof ButtonBase)
                .map(ButtonBase.class::cast)
                .findFirst()
                .orElseThrow()
                .fire());
    }

    private List<Node> nodes() {
        shell.applyCss();
        shell.layout();
        return List.copyOf(shell.lookupAll("*"));
    }

    private static void waitFor(BooleanSupplier what) {
        for (int i = 0; i < 300 && !what.getAsBoolean(); i++) {
            WaitForAsyncUtils.sleep(100, java.util.concurrent.TimeUnit.MILLISECONDS);
        }
        assertThat(what.getAsBoolean()).isTrue();
    }
}
