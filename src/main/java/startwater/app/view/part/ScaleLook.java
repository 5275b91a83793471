package startwater.app.view.part;

import java.util.List;
import java.util.Objects;
import javafx.scene.paint.Color;

/**
 * The printed scale of a pad and the pad held against it.
 *
 * @param labels printed over the blocks, at least two
 * @param colors of the blocks; empty for a titration column, which is read by length
 * @param pad what the pad shows; not used for a column
 * @param front where a column's white part ends, in blocks from 0; not used for a pad
 * @param stopTexts what each stop is called when written down: a block, a between, a block ...
 * @param name of the pad, for screen readers
 */
public record ScaleLook(
        List<String> labels, List<Color> colors, Color pad, double front, List<String> stopTexts, String name) {
    public ScaleLook {
        labels = List.copyOf(labels);
        colors = List.copyOf(colors);
        stopTexts = List.copyOf(stopTexts);
        Objects.requireNonNull(pad, "pad");
        Objects.requireNonNull(name, "name");
        if (labels.size() < 2 || stopTexts.size() != 2 * labels.size() - 1) {
            throw new IllegalArgumentException(
                    "scale look: " + labels.size() + " blocks need " + (2 * labels.size() - 1) + " stop texts");
        }
        if (!colors.isEmpty() && colors.size() != labels.size()) {
            throw new IllegalArgumentException("scale look: every block needs a colour");
        }
    }

    /** A pad that is matched by colour. */
    public static ScaleLook matched(
            List<String> labels, List<Color> colors, Color pad, List<String> stopTexts, String name) {
        if (colors.isEmpty()) {
            throw new IllegalArgumentException("scale look: every block needs a colour");
        }
        return new ScaleLook(labels, colors, pad, 0, stopTexts, name);
    }

    /** A numbered column that turns white from its low end. */
    public static ScaleLook column(List<String> labels, double front, List<String> stopTexts, String name) {
        return new ScaleLook(labels, List.of(), Color.TRANSPARENT, front, stopTexts, name);
    }

    boolean isColumn() {
        return colors.isEmpty();
    }
}
