package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import startwater.app.view.part.ScaleLook;
import startwater.strip.Pad;
import startwater.strip.PadColours;
import startwater.text.DrillWords;

/** How the pads of the strip look on a screen. */
final class PadLooks {
    private PadLooks() {}

    /** The colour of a pad at a position in blocks; white for a column, which is read by length. */
    static Color colour(Pad pad, double position) {
        return pad.matchedByColour()
                ? Color.web(PadColours.of(pad).srgb(position).clipped().hex())
                : Color.WHITE;
    }

    /** The scale of a pad with the wet pad held against it. @param position what it shows, blocks */
    static ScaleLook scale(Pad pad, double position, DrillWords words) {
        List<String> labels = new ArrayList<>();
        List<Color> colours = new ArrayList<>();
        List<String> stops = new ArrayList<>();
        for (int b = 0; b < pad.scale().blocks(); b++) {
            labels.add(words.block(pad, b));
            if (pad.matchedByColour()) {
                colours.add(colour(pad, b));
            }
        }
        for (int s = 0; s < pad.scale().stops(); s++) {
            stops.add(words.stop(pad, s, 1));
        }
        return pad.matchedByColour()
                ? ScaleLook.matched(labels, colours, colour(pad, position), stops, words.pad(pad))
                : ScaleLook.column(labels, position, stops, words.pad(pad));
    }
}
