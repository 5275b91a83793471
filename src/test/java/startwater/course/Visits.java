package startwater.course;

import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.score.Verdict;
import startwater.strip.Pad;

/** Marked visits for tests. */
final class Visits {
    private Visits() {}

    static MarkedVisit of(double mark, Decision own, Decision best) {
        return new MarkedVisit(
                true,
                true,
                mark,
                mark >= 70 ? Verdict.Word.SOUND : Verdict.Word.COSTLY,
                Verdict.Variable.EFFECTIVE_NITRITE,
                own,
                best,
                6,
                3,
                null,
                null);
    }

    static MarkedVisit with(MarkedVisit v, MarkedVisit.@Nullable Worked worked, MarkedVisit.@Nullable Foreseen said) {
        return new MarkedVisit(
                v.scored(),
                v.credited(),
                v.mark(),
                v.word(),
                v.decisive(),
                v.own(),
                v.best(),
                v.read(),
                v.readRight(),
                worked,
                said);
    }

    static MarkedVisit.Worked sum(Skill skill, double mark, boolean slip) {
        return new MarkedVisit.Worked(skill, mark, slip);
    }

    static MarkedVisit.Foreseen said(Pad pad, double mark) {
        return new MarkedVisit.Foreseen(pad, Sureness.SURE, mark, 0.4, null);
    }
}
