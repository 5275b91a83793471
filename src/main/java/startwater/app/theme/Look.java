package startwater.app.theme;

import java.util.Arrays;
import java.util.Objects;
import javafx.application.Application;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import org.jspecify.annotations.Nullable;

/**
 * What a scene wears: a theme and a text size. Controls take it from the style sheet, painted parts from here.
 *
 * @param textPercent text size, 100 to 200
 */
public record Look(Theme theme, int textPercent) {
    /** The size of ordinary text at 100 percent, in pixels; the root font size. */
    public static final double BASE_PX = 15.0;

    private static final String KEY = "startwater.look";
    private static final Look PLAIN = new Look(Theme.LIGHT, 100);

    public Look {
        Objects.requireNonNull(theme, "theme");
        if (textPercent < 100 || textPercent > 200) {
            throw new IllegalArgumentException("look: text size must be 100 to 200 percent, was " + textPercent);
        }
    }

    /** How many pixels one design pixel takes. */
    public double scale() {
        return theme.baseScale() * textPercent / 100.0;
    }

    public Color color(Token token) {
        return token.in(theme);
    }

    /** The window's typeface at a design size; painted parts scale the whole drawing. */
    public Font font(double size, boolean semibold) {
        return Typeface.font(size, semibold);
    }

    /** Dresses a scene; call again to change. The root must stay the same for the scene's life. */
    public void dress(Scene scene) {
        Typeface.load();
        Application.setUserAgentStylesheet(theme.controlStylesheet());
        String sheet = Objects.requireNonNull(Look.class.getResource("/startwater/app/theme/startwater.css"))
                .toExternalForm();
        if (!scene.getStylesheets().contains(sheet)) {
            scene.getStylesheets().add(sheet);
        }
        Parent root = scene.getRoot();
        Arrays.stream(Theme.values()).map(Theme::styleClass).forEach(root.getStyleClass()::remove);
        root.getStyleClass().add(theme.styleClass());
        root.setStyle("-fx-font-size: " + BASE_PX * scale() + "px;");
        scene.getProperties().put(KEY, this);
    }

    /** What a scene wears; plain light without a scene or before it is dressed. */
    public static Look of(@Nullable Scene scene) {
        return scene != null && scene.getProperties().get(KEY) instanceof Look look ? look : PLAIN;
    }

    /** Whether a property of a scene is the one that holds its look, so that a change can be heard. */
    public static boolean isKey(Object key) {
        return KEY.equals(key);
    }
}
