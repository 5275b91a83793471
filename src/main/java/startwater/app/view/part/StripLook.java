package startwater.app.view.part;

import java.util.List;
import java.util.Objects;
import javafx.scene.paint.Color;

/**
 * A wet strip.
 *
 * @param pads from the grip outwards, one to eight
 * @param summary the strip in words, for screen readers
 */
public record StripLook(List<PadLook> pads, String summary) {
    /**
     * One pad of the strip.
     *
     * @param name printed under it
     * @param written what was written down, or what is being done with it; empty while nothing
     * @param open whether the pad still waits to be written down
     * @param color what it shows
     * @param spoken the pad in words, for screen readers
     */
    public record PadLook(String name, String written, boolean open, Color color, String spoken) {
        public PadLook {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(written, "written");
            Objects.requireNonNull(color, "color");
            Objects.requireNonNull(spoken, "spoken");
        }
    }

    public StripLook {
        pads = List.copyOf(pads);
        Objects.requireNonNull(summary, "summary");
        if (pads.isEmpty() || pads.size() > 8) {
            throw new IllegalArgumentException("strip look: a strip has one to eight pads, not " + pads.size());
        }
    }
}
