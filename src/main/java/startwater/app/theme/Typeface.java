package startwater.app.theme;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import javafx.scene.text.Font;
import org.jspecify.annotations.Nullable;

/** The bundled typeface, regular and semibold; figures are all equally wide. */
final class Typeface {
    private static final String FOLDER = "/startwater/app/font/";
    private static @Nullable String regular;
    private static @Nullable String semibold;

    private Typeface() {}

    /** Makes both cuts known to JavaFX, for the style sheet too. */
    static synchronized void load() {
        if (regular == null) {
            regular = nameOf("SourceSansPro-Regular.ttf");
            semibold = nameOf("SourceSansPro-Semibold.ttf");
        }
    }

    static synchronized Font font(double size, boolean strong) {
        load();
        return new Font(strong ? semibold : regular, size);
    }

    private static String nameOf(String file) {
        try (InputStream in = Typeface.class.getResourceAsStream(FOLDER + file)) {
            Font font = in == null ? null : Font.loadFont(in, Look.BASE_PX);
            if (font == null) {
                throw new IllegalStateException(
                        "font: " + FOLDER + file + " is missing or broken; build the jar again");
            }
            return font.getName();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
