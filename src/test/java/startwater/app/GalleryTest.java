package startwater.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.app.Gallery.Exhibit;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;

class GalleryTest {
    @ParameterizedTest
    @EnumSource(Theme.class)
    void everyPartDrawsSomethingInEveryTheme(Theme theme) {
        Map<String, Exhibit> all = Fx.call(GalleryExhibits::all);
        assertThat(all).hasSizeGreaterThan(20);
        all.forEach((name, exhibit) -> {
            WritableImage image = Fx.call(() -> Gallery.paint(exhibit, new Look(theme, 100)));
            assertThat(colours(image)).as("%s in %s", name, theme).isGreaterThan(8);
        });
    }

    @Test
    void noPartFailsInALittleRoomOrAtTwiceTheTextSize() {
        Map<String, Exhibit> all = Fx.call(GalleryExhibits::all);
        all.forEach((name, exhibit) -> {
            for (double share : new double[] {0.02, 0.4, 1.6}) {
                Exhibit squeezed = new Exhibit(share * exhibit.width(), share * exhibit.height(), exhibit.part());
                WritableImage image = Fx.call(() -> Gallery.paint(squeezed, new Look(Theme.LIGHT, 200)));
                assertThat(image.getWidth()).as(name).isPositive();
            }
        });
    }

    @Test
    void textSizeScalesTheWholePart() {
        Exhibit trend = Objects.requireNonNull(Fx.call(GalleryExhibits::all).get("trend"));
        WritableImage small = Fx.call(() -> Gallery.paint(trend, new Look(Theme.LIGHT, 100)));
        WritableImage large = Fx.call(() -> Gallery.paint(trend, new Look(Theme.LIGHT, 200)));
        assertThat(inked(large)).isBetween(2.5 * inked(small), 6.0 * inked(small));
    }

    private static int colours(WritableImage image) {
        return (int) Arrays.stream(pixels(image)).distinct().count();
    }

    private static double inked(WritableImage image) {
        int[] pixels = pixels(image);
        return Arrays.stream(pixels).filter(pixel -> pixel != pixels[0]).count();
    }

    private static int[] pixels(WritableImage image) {
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        return pixels;
    }
}
