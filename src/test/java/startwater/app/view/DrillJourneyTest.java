package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.app.view.part.ScaleView;
import startwater.content.Library;
import startwater.text.Language;

/** Plays the fish-in drill to its end in the window, with its own buttons, and keeps a picture of every screen. */
class DrillJourneyTest {
    @TempDir
    private Path folder;

    private final List<Stage> stages = new ArrayList<>();

    /** A window that is left open is painted on and on, and slows all tests after it. */
    @AfterEach
    void close() {
        Fx.run(() -> stages.forEach(Stage::close));
    }

    private Shell open(Language language) {
        return Fx.call(() -> {
            Shell shell = new Shell(language, Desks.nameless(folder));
            stages.add(Stages.show(shell));
            return shell;
        });
    }

    @Test
    void theFishInDrillIsPlayedToItsEnd() throws Exception {
        Shell shell = open(Language.EN);
        await(shell, "Start this drill");
        picture(shell, "home-en");
        Fx.run(() ->
                shell.start(Library.shipped().scenario("hungry-second-week").get()));
        int decisions = 0;
        while (!has(shell, "Back to the shelf") && decisions < 12) {
            await(shell, "Dip a strip");
            press(shell, "Dip a strip");
            for (int pad = 0; pad < 6; pad++) {
                Fx.run(() -> find(shell, ScaleView.class)
                        .ifPresent(s -> s.stopProperty().set(4)));
                press(shell, "Write it down");
            }
            if (decisions == 0) {
                press(shell, "Chloride strip");
                picture(shell, "drill-en");
            }
            if (has(shell, "half")) {
                press(shell, decisions % 2 == 0 ? "half" : "full");
            }
            String go = label(shell, "Do it, go on to");
            press(shell, go);
            await(shell, "Go on");
            if (decisions == 0) {
                picture(shell, "debrief-en");
            }
            press(shell, "Go on");
            decisions++;
            TimeUnit.MILLISECONDS.sleep(200);
        }
        await(shell, "Back to the shelf");
        picture(shell, "end-en");
        assertThat(decisions).isBetween(3, 8);
    }

    @Test
    void theSpanishWindowSpeaksSpanish() throws Exception {
        Shell shell = open(Language.ES);
        await(shell, "Empezar esta práctica");
        picture(shell, "home-es");
        assertThat(has(shell, "Empezar esta práctica")).isTrue();
        Fx.run(() -> shell.start(Library.shipped().scenario("first-strips").get()));
        await(shell, "Mojar una tira");
        press(shell, "Mojar una tira");
        picture(shell, "drill-es");
        assertThat(has(shell, "Anotarlo")).isTrue();
    }

    private static void press(Shell shell, String text) {
        boolean pressed = Fx.call(() -> {
            for (Node n : nodes(shell)) {
                if (n instanceof Button b && b.getText().equals(text) && !b.isDisabled()) {
                    b.fire();
                    return true;
                }
                if (n instanceof ToggleButton t && t.getText().equals(text)) {
                    t.fire();
                    return true;
                }
            }
            return false;
        });
        assertThat(pressed).as("button '" + text + "'").isTrue();
    }

    private static String label(Shell shell, String start) {
        return Fx.call(() -> nodes(shell).stream()
                .filter(n -> n instanceof Button b && b.getText().startsWith(start))
                .map(n -> ((Button) n).getText())
                .findFirst()
                .orElseThrow());
    }

    private static boolean has(Shell shell, String text) {
        return Fx.call(() -> nodes(shell).stream()
                .anyMatch(n -> n instanceof Labeled l && text.equals(l.getText()) && !l.isDisabled()));
    }

    private static void await(Shell shell, String text) throws InterruptedException {
        for (int i = 0; i < 300 && !has(shell, text) && !has(shell, "Back to the shelf"); i++) {
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    private static <T extends Node> Optional<T> find(Shell shell, Class<T> type) {
        return nodes(shell).stream().filter(type::isInstance).map(type::cast).findFirst();
    }

    private static List<Node> nodes(Node root) {
        List<Node> all = new ArrayList<>();
        collect(root, all);
        return all;
    }

    private static void collect(Node node, List<Node> all) {
        all.add(node);
        if (node instanceof ScrollPane pane && pane.getContent() != null) {
            collect(pane.getContent(), all);
        } else if (node instanceof TitledPane pane && pane.getContent() != null) {
            collect(pane.getContent(), all);
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
        }
    }

    private static void picture(Region region, String name) {
        Fx.run(() -> {
            region.applyCss();
            region.layout();
            WritableImage shot = region.getScene().snapshot(null);
            int w = (int) shot.getWidth();
            int h = (int) shot.getHeight();
            BufferedImage image = new BufferedImage(w, h, BufferedImage.TYPE_INT_RGB);
            for (int y = 0; y < h; y++) {
                for (int x = 0; x < w; x++) {
                    image.setRGB(x, y, shot.getPixelReader().getArgb(x, y));
                }
            }
            try {
                File folder = new File("target/gallery");
                folder.mkdirs();
                ImageIO.write(image, "png", new File(folder, "screen-" + name + ".png"));
            } catch (java.io.IOException e) {
                throw new java.io.UncheckedIOException(e);
            }
        });
    }
}
