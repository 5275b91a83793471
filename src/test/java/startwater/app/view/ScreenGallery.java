package startwater.app.view;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Labeled;
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
 * person can look at them; and says what is cut short, laid over each other or out of our sizes. Needs the Monocle flags of the test run.
 */
public final class ScreenGallery {
    private static final Path FOLDER = Path.of("target", "gallery");
    private static final int MOST_TENTHS = 600;
    private static final int KEPT_VISIT = 3;
    private static final int PADS_OF_A_STRIP = 6;

    private final Shell shell;
    private final String name;
    private final List<String> findings = new ArrayList<>();

    private ScreenGallery(Shell shell, String name) {
        this.shell = shell;
        this.name = name;
    }

    public static void main(String[] args) throws IOException, InterruptedException {
        try {
            paintAll(args.length == 0 ? "" : args[0]);
        } finally {
            // The toolkit's own threads would keep a failed run open.
            Platform.exit();
        }
    }

    /**
     * How a window looks.
     *
     * @param width of the scene, px; its height follows: 1280 x 800 or 1920 x 1080
     */
    record Pose(Language language, Theme theme, int percent, int width) {
        static List<Pose> all() {
            List<Pose> all = new ArrayList<>();
            for (Language language : Language.values()) {
                for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
                    all.add(new Pose(language, theme, 100, 1280));
                    all.add(new Pose(language, theme, 200, 1280));
                    all.add(new Pose(language, theme, 100, 1920));
                }
            }
            return all;
        }

        int height() {
            return width == 1280 ? 800 : 1080;
        }

        String pose() {
            String size = width == 1280 ? "" : "-" + width;
            return language.code() + "-" + theme.name().toLowerCase(Locale.ROOT) + "-" + percent + size;
        }
    }

    /** @param only begins the names of those to paint, for example en-light-100 */
    private static void paintAll(String only) throws IOException, InterruptedException {
        for (Pose pose : Pose.all()) {
            if (pose.pose().startsWith(only)) {
                paint(pose).forEach(System.out::println);
            }
        }
    }

    /** Walks through all screens in one pose, keeps their pictures, and returns what is wrong with their layout. */
    static List<String> paint(Pose pose) throws IOException, InterruptedException {
        Files.createDirectories(FOLDER);
        Path folder = Files.createTempDirectory("gallery");
        Desk settings = Desk.in(folder);
        settings.keep(new Settings(pose.language().code(), pose.theme().name(), pose.percent(), null));
        Shell shell = Fx.call(() -> {
            Shell made = new Shell(pose.language(), Desk.in(folder));
            Scene scene = new Scene(made, pose.width(), pose.height());
            made.dress(scene);
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            return made;
        });
        ScreenGallery gallery = new ScreenGallery(shell, pose.pose());
        gallery.walk();
        Fx.run(() -> shell.getScene().getWindow().hide());
        RehearsalGallery.paint(pose, gallery.findings);
        progress(pose, gallery.findings);
        ClassGallery.paint(pose, gallery.findings);
        return List.copyOf(gallery.findings);
    }

    /** The progress page of one who is on the way, its lower half, and of one who has done nothing. */
    private static void progress(Pose pose, List<String> findings) {
        Look look = new Look(pose.theme(), pose.percent());
        for (Past past : List.of(ProgressExamples.someWay(), Past.NOTHING)) {
            String screen = past.empty() ? "progress-empty" : "progress";
            Fx.run(() -> {
                BorderPane root = new BorderPane(new ProgressView(
                        ProgressExamples.model(past), ProgressExamples.words(pose.language()), id -> {}, id -> {}));
                root.getStyleClass().add("sw-paper");
                Scene scene = new Scene(root, pose.width() - 208 * look.scale(), pose.height());
                look.dress(scene);
                for (double at : past.empty() ? new double[] {0} : new double[] {0, 0.5, 1}) {
                    root.applyCss();
                    root.layout();
                    root.lookupAll(".scroll-pane").forEach(n -> ((ScrollPane) n).setVvalue(at));
                    root.layout();
                    String part = at == 0 ? "" : at < 1 ? "-middle" : "-bottom";
                    write(scene, screen + part + "-" + pose.pose(), findings);
                }
            });
        }
    }

    private void walk() throws InterruptedException {
        keep("learner-first");
        press(id("learner-without"::equals));
        press(id("learner"::equals));
        press(id("learner-delete"::equals));
        keep("learner");
        press(id("home"::equals));
        awaitAny("#start");
        keep("home");
        press(id("lessons"::equals));
        press(id(i -> i.startsWith("lesson-")));
        keep("lesson");
        press(id("progress"::equals));
        awaitAny("#progress-start");
        keep("progress-new");
        press(id("rehearsal"::equals));
        keep("rehearsal-new");
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
        exam();
    }

    /** A drill of a hand-out as an exam: before and after the first strip, and what follows the decision. */
    private void exam() throws InterruptedException {
        Fx.run(() -> shell.handedOut(ClassGallery.handout()));
        keep("handed-out");
        press(id("handed-hungry-second-week"::equals));
        awaitAny("#dip");
        keep("exam");
        press(id("dip"::equals));
        for (int pad = 0; pad < PADS_OF_A_STRIP; pad++) {
            press(id("write"::equals));
        }
        keep("exam-written");
        press(id("go"::equals));
        awaitAny("#dip");
        keep("exam-next");
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
            for (String fold : List.of("ahead", "causes", "parts", "changed", "habit", "known", "testing", "why")) {
                press(id(("open-" + fold)::equals));
                awaitWords();
                keep("debrief-" + fold);
            }
        }
    }

    /** Waits for what is told a moment later. */
    private void awaitWords() throws InterruptedException {
        String meanwhile = Shell.words(Language.valueOf(name.substring(0, 2).toUpperCase(Locale.ROOT)))
                .texts()
                .text("win.workingOut");
        for (int i = 0; i < MOST_TENTHS; i++) {
            boolean working = Fx.call(() -> shell.lookupAll(".label").stream()
                    .anyMatch(n -> n instanceof Labeled label && label.getText().equals(meanwhile)));
            if (!working) {
                return;
            }
            Thread.sleep(100);
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
        Fx.run(() -> {
            shell.applyCss();
            shell.layout();
            write(shell.getScene(), screen + "-" + name, findings);
        });
    }

    /** Writes a picture of a scene as it is laid out, and notes what is wrong with it. Call on the thread that paints. */
    static void write(Scene scene, String screen, List<String> findings) {
        ScreenFindings.of(scene).forEach(finding -> findings.add(screen + ": " + finding));
        WritableImage shot = scene.snapshot(null);
        int width = (int) shot.getWidth();
        int height = (int) shot.getHeight();
        int[] pixels = new int[width * height];
        shot.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        copy.setRGB(0, 0, width, height, pixels, 0, width);
        try {
            ImageIO.write(
                    copy, "png", FOLDER.resolve("screen-" + screen + ".png").toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
