package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/**
 * How well the pads of one visit were read: what was written against where the colour lay. One block off is human, more is
 * an error.
 *
 * @param total readings that were written
 * @param right those within one block of the colour
 * @param worst the reading farthest off that is not right, or null when all are
 */
public record ReadingMark(int total, int right, @Nullable Off worst) {
    private static final double HUMAN_BLOCKS = 1.0;

    /** A reading that is off. @param blocks written less shown; below 0 was read too low */
    public record Off(Pad pad, double blocks) {}

    /** The mark of one visit of a run. A reading of a strip that the run does not know counts as off by its whole scale. */
    public static ReadingMark of(DrillRun run, VisitRecord visit) {
        int right = 0;
        Off worst = null;
        for (Written w : visit.written()) {
            DippedStrip strip = run.strip(w.pad(), w.strip());
            double off = strip == null ? w.pad().scale().blocks() : w.stop() / 2.0 - strip.position(w.pad());
            if (Math.abs(off) <= HUMAN_BLOCKS) {
                right++;
            } else if (worst == null || Math.abs(off) > Math.abs(worst.blocks())) {
                worst = new Off(w.pad(), off);
            }
        }
        return new ReadingMark(visit.written().size(), right, worst);
    }
}
