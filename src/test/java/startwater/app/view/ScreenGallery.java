package startwater.app.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javax.imageio.ImageIO;
import startwater.app.Desk;
import startwater.app.Fx;
import startwater.app.Settings;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.content.Library;
import startwater.course.Past;
import startwater.text.Language;

/**
 * Paints every screen to target/gallery, in both languages, light and dark, at text size 100 and 200 percent, so that a
 * person can look at them. Needs the Monocle flags of the test run.
 */
public final class ScreenGallery {
    private static final Path FOLDER = Path.of("target", "gallery");
    private static final int MOST_TENTHS = 600;
    private static final int KEPT_VISIT = 3;
    private static final int PADS_OF_A_STRIP = 6;

    private final Shell shell;
    private final String name;

    private ScreenGallery(Shell shell, String name) {
        this.shell = shell;
        this.name = name;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        Files.createDirectories(FOLDER);
        try {
            paintAll(args.length == 0 ? "" : args[0], args.length > 1);
        } finally {
            // The toolkit's own threads would keep a failed run open.
            Platform.exit();
        }
    }

    /**
     * @param only begins the names of those to paint, for example en-light-100
     * @param progressOnly whether to paint the progress page alone
     */
    private static void paintAll(String only, boolean progressOnly) throws IOException, InterruptedException {
        for (Language language : Language.values()) {
            for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
                for (int percent : new int[] {100, 200}) {
                    String name =
                            language.code() + "-" + theme.name().toLowerCase(java.util.Locale.ROOT) + "-" + percent;
                    if (name.startsWith(only)) {
                        if (!progressOnly) {
                            paint(language, theme, percent, name);
                        }
                        progress(language, theme, percent, name);
                    }
                }
            }
        }
    }

    private static void paint(Language language, Theme theme, int percent, String name)
            throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("gallery");
        Desk settings = Desk.in(folder);
        settings.keep(new Settings(language.code(), theme.name(), percent, null));
        Shell shell = Fx.call(() -> {
            Shell made = new Shell(language, Desk.in(folder));
            Scene scene = new Scene(made, 1280, 800);
            made.dress(scene);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            return made;
        });
        new ScreenGallery(shell, name).walk();
    }

    /** The progress page of one who is on the way, its lower half, and of one who has done nothing. */
    private static void progress(Language language, Theme theme, int percent, String name) {
        Look look = new Look(theme, percent);
        for (Past past : List.of(ProgressExamples.someWay(), Past.NOTHING)) {
            String screen = past.empty() ? "progress-empty" : "progress";
            Scene scene = Fx.call(() -> {
                BorderPane root = new BorderPane(new ProgressView(
                        ProgressExamples.model(past), ProgressExamples.words(language), id -> {}, id -> {}));
                root.getStyleClass().add("sw-paper");
                Scene made = new Scene(root, 1280 - 208 * look.scale(), 800);
                look.dress(made);
                return made;
            });
            write(scene, screen, name);
            if (!past.empty()) {
                for (double at : new double[] {0.5, 1}) {
                    Fx.run(() ->
                            scene.getRoot().lookupAll(".scroll-pane").forEach(n -> ((ScrollPane) n).setVvalue(at)));
                    write(scene, screen + (at < 1 ? "-middle" : "-bottom"), name);
                }
            }
        }
    }

    private void walk() throws InterruptedException {
        keep("learner-first");
        press(id("learner-without"::equals));
        press(id("learner"::equals));
        press(id("learner-delete"::equals));
        keep("learner");
        press(id("home"::equals));
        keep("home");
        press(id("lessons"::equals));
        press(id(i -> i.startsWith("lesson-")));
        keep("lesson");
        press(id("home"::equals));
        Fx.run(() ->
                shell.start(Library.shipped().scenario("hungry-second-week").get()));
        for (int visit = 1; !has("#to-home"); visit++) {
            awaitAny("#dip", "#to-home");
            if (has("#to-home")) {
                break;
            }
            visit(visit);
            press(id("go-on"::equals));
        }
        awaitAny("#truth");
        keep("end");
        press(id("open-known"::equals));
        awaitAny("#known-of");
        bottom();
        keep("end-bottom");
    }

    /** Reads what a look tells, decides as it stands, and looks back; the third visit is kept. */
    private void visit(int number) throws InterruptedException {
        boolean kept = number == KEPT_VISIT;
        if (kept) {
            keep("drill-dry");
        }
        press(id("dip"::equals));
        for (int pad = 0; pad < PADS_OF_A_STRIP; pad++) {
            if (kept && pad == 1) {
                keep("drill");
                press(id("help-link"::equals));
                keep("help");
                press(id("help-close"::equals));
            }
            press(id("write"::equals));
        }
        if (kept) {
            keep("drill-written");
        }
        press(id("go"::equals));
        awaitAny("#go-on");
        if (kept) {
            keep("debrief");
            for (String fold : List.of("ahead", "causes", "parts", "known", "testing", "why")) {
                press(id(("open-" + fold)::equals));
                keep("debrief-" + fold);
            }
        }
    }

    /** Scrolls the page down to its end. */
    private void bottom() {
        Fx.run(() -> {
            shell.applyCss();
            shell.layout();
            shell.lookupAll(".scroll-pane").forEach(n -> ((ScrollPane) n).setVvalue(1));
        });
    }

    private static Predicate<Node> id(Predicate<String> wanted) {
        return node -> node.getId() != null && wanted.test(node.getId());
    }

    private void press(Predicate<Node> wanted) {
        Fx.run(() -> {
            shell.applyCss();
            shell.layout();
            shell.lookupAll("*").stream()
                    .filter(n -> n instanceof ButtonBase)
                    .filter(wanted)
                    .findFirst()
                    .map(ButtonBase.class::cast)
                    .orElseThrow()
                    .fire();
        });
    }

    private boolean has(String selector) {
        return Fx.call(() -> {
            shell.applyCss();
            shell.layout();
            return shell.lookup(selector) != null;
        });
    }

    private void awaitAny(String... selectors) throws InterruptedException {
        for (int i = 0; i < MOST_TENTHS; i++) {
            for (String selector : selectors) {
                if (has(selector)) {
                    return;
                }
            }
            Thread.sleep(100);
        }
        throw new IllegalStateException("None of " + List.of(selectors) + " came up.");
    }

    private void keep(String screen) {
        write(shell.getScene(), screen, name);
    }

    private static void write(Scene scene, String screen, String name) {
        Path file = FOLDER.resolve("screen-" + screen + "-" + name + ".png");
        Fx.run(() -> {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            WritableImage shot = scene.snapshot(null);
            int width = (int) shot.getWidth();
            int height = (int) shot.getHeight();
            int[] pixels = new int[width * height];
            shot.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
            BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
            copy.setRGB(0, 0, width, height, pixels, 0, width);
            try {
                ImageIO.write(copy, "png", file.toFile());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        });
    }
}
