package startwater.classroom;

import startwater.drill.Written;

/**
 * One reading as it was written, held against the colour.
 *
 * @param written what was written
 * @param offBlocks written less shown, in blocks of the pad's scale; below 0 was read too low; NaN where the strip is not known
 */
public record Reading(Written written, double offBlocks) {
    /** One block off is human. */
    private static final double HUMAN_BLOCKS = 1;

    /** Whether it is off by more than a block. */
    public boolean wrong() {
        return Math.abs(offBlocks) > HUMAN_BLOCKS;
    }
}
