package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.CrashWatch;
import startwater.app.Desk;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.text.Language;

/** Faults thrown on purpose, on the thread of the window and beside it: a sentence above the page, the rest in the log. */
class CrashWatchTest {
    @TempDir
    private Path folder;

    private final Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    @BeforeEach
    void open() {
        // The test library takes all faults for itself when it is first used: that must be before the watch is set.
        WaitForAsyncUtils.clearExceptions();
        Fx.run(() -> {
            Desk desk = Desks.nameless(folder);
            shell = new Shell(Language.EN, desk);
            stage = Stages.show(shell);
            CrashWatch.over(shell, desk);
        });
    }

    @AfterEach
    void close() {
        Thread.setDefaultUncaughtExceptionHandler(before);
        Stages.close(shell, stage);
    }

    private static final class Planned extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Planned() {
            super("the nitrite of Ana is 2.5");
        }
    }

    private String noted(String thread) throws Exception {
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> Fx.call(this::told));
        return Files.readString(folder.resolve("crash-log.txt")).lines().anyMatch(("thread " + thread)::equals)
                ? Files.readString(folder.resolve("crash-log.txt"))
                : "";
    }

    private boolean told() {
        return shell.lookupAll("#banner .label").stream()
                .anyMatch(n -> n instanceof Labeled l
                        && l.getText().contains("not lost")
                        && l.getText().contains("crash-log.txt"));
    }

    @Test
    void onTheThreadOfTheWindow() throws Exception {
        Platform.runLater(() -> {
            throw new Planned();
        });
        assertThat(noted("JavaFX Application Thread"))
                .contains("CrashWatchTest$Planned\n", "at HOME HomeView")
                .doesNotContain("Ana", "2.5", folder.toString());
    }

    @Test
    void onAThreadBeside() throws Exception {
        Thread beside = new Thread(
                () -> {
                    throw new Planned();
                },
                "beside");
        beside.start();
        assertThat(noted("beside")).contains("CrashWatchTest$Planned\n");
    }

    @Test
    void inWorkWhosePageWaitsForItThePageGivesWay() throws Exception {
        boolean[] gaveWay = {false};
        Background.run(
                () -> {
                    throw new Planned();
                },
                never -> {},
                () -> gaveWay[0] = true);
        assertThat(noted("look back")).contains("caused by").contains("CrashWatchTest$Planned\n");
        WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> Fx.call(() -> gaveWay[0]));
    }

    @Test
    void beforeAnybodyIsChosen() throws IOException {
        Fx.run(() -> {
            shell.close();
            shell.failed(new startwater.cli.CrashLog(folder, java.time.Instant::now), true);
        });
        assertThat(Fx.call(this::told)).isTrue();
    }
}
