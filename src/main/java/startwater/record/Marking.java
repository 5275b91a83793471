package startwater.record;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.ReadingMark;
import startwater.score.Verdict;

/** The marks of a visit as a learner file keeps them. */
final class Marking {
    private static final double SAME_BLOCK = 0.5 + 1e-9;

    private Marking() {}

    /** @param working the last sum of the visit, or null */
    static Entry.Marks of(DrillRun run, VisitRecord visit, Verdict verdict, Entry.@Nullable Working working) {
        ReadingMark reading = ReadingMark.of(run, visit);
        return new Entry.Marks(
                reading.total(),
                reading.right(),
                working,
                verdict.mark(),
                verdict.word(),
                verdict.regret(),
                verdict.scored(),
                verdict.arguable(),
                verdict.credited(),
                verdict.decisive().variable(),
                verdict.chosen().decision(),
                verdict.best().decision(),
                foresight(visit.prediction(), verdict.foresight()),
                came(run, visit));
    }

    private static Entry.@Nullable Foresight foresight(
            @Nullable Prediction said, Verdict.@Nullable Foresight foresight) {
        return said == null || foresight == null
                ? null
                : new Entry.Foresight(said.pad(), said.sureness(), foresight.mark(), foresight.chance());
    }

    /** Whether what was written shows the block foretold at the learner's visit before; between two blocks counts for both. */
    static @Nullable Boolean came(DrillRun run, VisitRecord visit) {
        List<VisitRecord> asked = decided(run);
        int at = asked.indexOf(visit);
        Prediction said = at <= 0 ? null : asked.get(at - 1).prediction();
        if (said == null) {
            return null;
        }
        Written shown = visit.written().stream()
                .filter(w -> w.pad() == said.pad())
                .reduce((a, b) -> b)
                .orElse(null);
        return shown == null
                ? null
                : (Boolean) (Math.abs(said.pad().scale().position(shown.value()) - said.block()) <= SAME_BLOCK);
    }

    /** The visits at which the learner has decided, in order. */
    static List<VisitRecord> decided(DrillRun run) {
        return run.past().visits().stream()
                .filter(v -> v.asked() && v.decision() != null)
                .toList();
    }
}
