package startwater.drill;

import startwater.strip.Pad;

/**
 * What the learner says the next strip will show, before it is seen.
 *
 * @param pad which pad
 * @param block block of its scale
 * @param sureness how sure
 */
public record Prediction(Pad pad, int block, Sureness sureness) {
    /** How sure, in words, and the chance of being right that each word stands for. */
    public enum Sureness {
        NOT_SURE(0.35),
        FAIRLY_SURE(0.65),
        SURE(0.9);

        private final double chance;

        Sureness(double chance) {
            this.chance = chance;
        }

        public double chance() {
            return chance;
        }
    }
}
