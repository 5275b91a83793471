package startwater.app;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.layout.StackPane;
import javax.imageio.ImageIO;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;

/**
 * Paints every part to pictures under target/gallery, in light and dark, at text size 100 and 200 percent, so that a person
 * can look at them. Arguments: beginnings of part names to paint; none paints all. Needs the Monocle flags of the test run.
 */
public final class Gallery {
    private static final Path FOLDER = Path.of("target", "gallery");
    private static final int MARGIN = 16;

    /** One picture: a part at a size in design pixels. */
    record Exhibit(double width, double height, Supplier<Node> part) {}

    private Gallery() {}

    public static void main(String[] args) throws InterruptedException, IOException {
        Files.createDirectories(FOLDER);
        CountDownLatch done = new CountDownLatch(1);
        Platform.startup(() -> {
            try {
                Map<String, Exhibit> exhibits = new TreeMap<>(GalleryExhibits.all());
                exhibits.keySet().removeIf(name -> args.length > 0 && !matches(name, List.of(args)));
                exhibits.forEach(Gallery::paintAll);
            } finally {
                done.countDown();
            }
        });
        done.await();
        Platform.exit();
    }

    private static boolean matches(String name, List<String> beginnings) {
        return beginnings.stream().anyMatch(name::startsWith);
    }

    private static void paintAll(String name, Exhibit exhibit) {
        for (Theme theme : List.of(Theme.LIGHT, Theme.DARK)) {
            for (int percent : new int[] {100, 200}) {
                String file = name + "-" + theme.styleClass() + "-" + percent + ".png";
                write(paint(exhibit, new Look(theme, percent)), FOLDER.resolve(file));
            }
        }
    }

    /** A part in its own scene, dressed and laid out. */
    static WritableImage paint(Exhibit exhibit, Look look) {
        StackPane root = new StackPane(exhibit.part().get());
        double scale = look.scale();
        root.setPadding(new javafx.geometry.Insets(MARGIN * scale));
        Scene scene = new Scene(root, (exhibit.width() + 2 * MARGIN) * scale, (exhibit.height() + 2 * MARGIN) * scale);
        look.dress(scene);
        root.applyCss();
        root.layout();
        return scene.snapshot(null);
    }

    private static void write(WritableImage image, Path file) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbPreInstance(), pixels, 0, width);
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        copy.setRGB(0, 0, width, height, pixels, 0, width);
        try {
            ImageIO.write(copy, "png", file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
