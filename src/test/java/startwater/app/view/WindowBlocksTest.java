package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.Desk;
import startwater.app.Fx;
import startwater.app.FxWatch;
import startwater.content.Library;
import startwater.record.ManyAttempts;
import startwater.text.Language;

/**
 * Walks through all screens, plays a drill to its end and prints what kept the thread of the window for more than 50 ms of CPU
 * time in one go: our own work, and beside it what the toolkit took for styles, layout and painting.
 */
class WindowBlocksTest {
    private static final double BLOCK_MS = 50;
    /** Far above every block of a warm walk; only work that belongs beside the window takes so long. */
    private static final double NEVER_MS = 1_500;

    @TempDir
    private Path folder;

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    private void open(int attempts) throws IOException {
        ManyAttempts.write(folder, "Ana", attempts);
        Fx.run(() -> {
            Desk desk = Desk.in(folder);
            try {
                desk.choose("Ana");
            } catch (IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
            shell = new Shell(Language.EN, desk);
            stage = Stages.show(shell);
        });
        waitFor(n -> "start".equals(n.getId()));
    }

    @AfterEach
    void close() {
        Stages.close(shell, stage);
    }

    @Test
    @Tag("full")
    void everyScreenAndADrillToItsEnd() throws Exception {
        open(2_000);
        // Twice: the first walk also loads classes and compiles.
        walk("first walk", 20);
        List<FxWatch.Block> warm = walk("second walk", 20);
        assertThat(warm).allMatch(b -> b.ownMs() < NEVER_MS);
        Files.write(Files.createDirectories(Path.of("target")).resolve("window-blocks.txt"), said(warm));
    }

    private List<FxWatch.Block> walk(String name, int decisions) throws Exception {
        List<FxWatch.Block> blocks;
        try (FxWatch watch = new FxWatch(BLOCK_MS, () -> shell.screen())) {
            for (String place : List.of("lessons", "rehearsal", "progress", "class", "learner", "home")) {
                press(place);
                rest();
            }
            press("lessons");
            Library.shipped().lessonCards("en").stream().limit(4).forEach(l -> {
                press("lessons");
                pressIfThere("lesson-" + l.id());
                rest();
            });
            press("rehearsal");
            pressIfThere("example");
            rest();
            press("home");
            play(decisions);
            blocks = watch.blocks();
        }
        double own = blocks.stream().mapToDouble(FxWatch.Block::ownMs).max().orElse(0);
        System.out.printf(
                Locale.ROOT,
                "window: %s, %d blocks over %.0f ms, the longest of our own work %.0f ms%n",
                name,
                blocks.size(),
                BLOCK_MS,
                own);
        said(blocks).forEach(System.out::println);
        return blocks;
    }

    private static List<String> said(List<FxWatch.Block> blocks) {
        return blocks.stream()
                .sorted(Comparator.comparingDouble(FxWatch.Block::ownMs).reversed())
                .map(b -> String.format(
                        Locale.ROOT,
                        "  own %4.0f ms, toolkit %4.0f ms  %s  %s",
                        b.ownMs(),
                        b.toolkitMs(),
                        b.screen(),
                        b.where()))
                .toList();
    }

    private void play(int decisions) throws Exception {
        Fx.run(() -> shell.start(Library.shipped().scenario("first-strips").get()));
        waitFor(n -> "dip".equals(n.getId()));
        for (int i = 0; i < decisions && there("dip"); i++) {
            press("dip");
            press("write");
            press("go");
            waitFor(n -> "go-on".equals(n.getId()));
            rest();
            for (String fold : List.of("open-known", "open-why")) {
                pressIfThere(fold);
                rest();
            }
            press("go-on");
            waitFor(n -> "dip".equals(n.getId()) || "to-home".equals(n.getId()));
        }
        waitFor(n -> "next-time".equals(n.getId()));
        rest();
        press("to-home");
        rest();
    }

    /** Until all that was asked for is painted. */
    private static void rest() {
        for (int i = 0; i < 3; i++) {
            WaitForAsyncUtils.waitForFxEvents(2);
            WaitForAsyncUtils.sleep(80, TimeUnit.MILLISECONDS);
        }
    }

    private boolean there(String id) {
        return Fx.call(() -> shell.lookup("#" + id) != null);
    }

    private void press(String id) {
        waitFor(n -> id.equals(n.getId()));
        Fx.run(() -> ((ButtonBase) shell.lookup("#" + id)).fire());
    }

    private void pressIfThere(String id) {
        Fx.run(() -> {
            if (shell.lookup("#" + id) instanceof ButtonBase button) {
                button.fire();
            }
        });
    }

    private void waitFor(Predicate<Node> what) {
        try {
            WaitForAsyncUtils.waitFor(
                    60,
                    TimeUnit.SECONDS,
                    () -> Fx.call(() -> shell.lookupAll("*").stream().anyMatch(what)));
        } catch (java.util.concurrent.TimeoutException never) {
            throw new AssertionError("it never came", never);
        }
    }
}
