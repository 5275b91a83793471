package startwater.app.view.part;

import java.util.Objects;
import startwater.strip.FishMood;

/**
 * What can be seen of a tank; nothing here needs a test strip.
 *
 * @param fishCount living fish
 * @param fishPerMark how many fish one drawn fish stands for, at least 1
 * @param mood what the fish show; ignored without fish
 * @param deadCount dead fish in the tank, drawn one by one up to a dozen
 * @param haze 0 clear to 1 where the far wall is hidden
 * @param uneaten feed lying about, 0 none to 1 much
 * @param airOn whether the air stone bubbles
 * @param waterFraction of the full tank, 0 to 1
 * @param label printed inside the rim, such as the volume; may be empty
 * @param shape of the fish
 * @param seed of the places of the fish, so a tank always looks the same
 * @param summary the same in words, for screen readers
 */
public record TankLook(
        int fishCount,
        int fishPerMark,
        FishMood mood,
        int deadCount,
        double haze,
        double uneaten,
        boolean airOn,
        double waterFraction,
        String label,
        Shape shape,
        long seed,
        String summary) {
    private static final int MOST_MARKS = 120;

    /** What the fish look like. */
    public enum Shape {
        CATFISH,
        TILAPIA,
        /** No fish are drawn. */
        NONE
    }

    public TankLook {
        Objects.requireNonNull(mood, "mood");
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(shape, "shape");
        Objects.requireNonNull(summary, "summary");
        if (fishCount < 0 || deadCount < 0 || fishPerMark < 1) {
            throw new IllegalArgumentException(
                    "tank look: counts must not be negative and a mark stands for at least one fish");
        }
        requireShare("haze", haze);
        requireShare("uneaten", uneaten);
        requireShare("waterFraction", waterFraction);
    }

    /** How many fish are drawn; a few fish are never drawn as none. */
    public int marks() {
        if (shape == Shape.NONE || fishCount == 0) {
            return 0;
        }
        return Math.max(1, Math.min(MOST_MARKS, Math.round(fishCount / (float) fishPerMark)));
    }

    private static void requireShare(String what, double value) {
        if (!(value >= 0 && value <= 1)) {
            throw new IllegalArgumentException("tank look: " + what + " must lie between 0 and 1, was " + value);
        }
    }
}
