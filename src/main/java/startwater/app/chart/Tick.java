package startwater.app.chart;

import java.util.Objects;

/**
 * A labelled place on an axis.
 *
 * @param at in the axis' own unit: days, or blocks of a scale
 * @param text printed there; may be empty
 * @param strong whether it stands out, such as today
 */
public record Tick(double at, String text, boolean strong) {
    public Tick {
        Objects.requireNonNull(text, "text");
        Check.finite("tick", at);
    }

    public static Tick of(double at, String text) {
        return new Tick(at, text, false);
    }
}
