package startwater.score;

import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/** Strips as far as the log tells: one that was dipped and never written is not in it. */
final class StripsUsed {
    private StripsUsed() {}

    /** How many of the kind that carries this pad were used. */
    static int before(DrillLog log, Pad pad) {
        int used = 0;
        for (VisitRecord visit : log.visits()) {
            for (Written w : visit.written()) {
                used = sameKind(w.pad(), pad) && !w.byKit() ? Math.max(used, w.strip() + 1) : used;
            }
        }
        return used;
    }

    /** How many of the kind are left. */
    static int left(Scenario s, DrillLog log, Pad pad) {
        return (pad == Pad.CHLORIDE ? s.shelf().chlorideStrips() : s.shelf().strips()) - before(log, pad);
    }

    /** The number of the strip that this pad would be read from at the last visit: one that is wet there, or else the next. */
    static int number(DrillLog log, Pad pad) {
        return log.last().written().stream()
                .filter(w -> sameKind(w.pad(), pad) && !w.byKit())
                .mapToInt(Written::strip)
                .max()
                .orElseGet(() -> before(log, pad));
    }

    private static boolean sameKind(Pad a, Pad b) {
        return (a == Pad.CHLORIDE) == (b == Pad.CHLORIDE);
    }
}
