package startwater.score;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.DippedStrip;
import startwater.drill.Written;
import startwater.strip.Pad;

/**
 * How well the pads were read: what was written against where the colour lay. It knows the strips, never the tank.
 *
 * @param total readings that were written
 * @param right those within half a block of the colour; an honest between is right when it is
 * @param worst the reading farthest off that is not right, or null when all are
 */
public record ReadingMark(int total, int right, @Nullable Off worst) {
    private static final double RIGHT_WITHIN_BLOCKS = 0.5;

    /** A reading that is off. @param blocks written less shown, whole blocks; below 0 was read too low */
    public record Off(Pad pad, int blocks) {}

    /** The mark of one visit. A reading of a strip that is not among these is not judged. */
    public static ReadingMark of(List<Written> readings, List<DippedStrip> strips) {
        int total = 0;
        int right = 0;
        double most = RIGHT_WITHIN_BLOCKS;
        Off worst = null;
        for (Written w : readings) {
            for (DippedStrip strip : matching(w, strips)) {
                double off = w.stop() / 2.0 - strip.position(w.pad());
                total++;
                right += Math.abs(off) <= RIGHT_WITHIN_BLOCKS ? 1 : 0;
                if (Math.abs(off) > most) {
                    most = Math.abs(off);
                    worst = new Off(w.pad(), (int) (Math.signum(off) * Math.max(1, Math.rint(Math.abs(off)))));
                }
            }
        }
        return new ReadingMark(total, right, worst);
    }

    private static List<DippedStrip> matching(Written w, List<DippedStrip> strips) {
        List<DippedStrip> found = new ArrayList<>();
        for (DippedStrip strip : strips) {
            if (strip.number() == w.strip() && strip.positions().containsKey(w.pad())) {
                found.add(strip);
            }
        }
        return found;
    }
}
