package startwater.classroom;

import java.util.Collections;
import java.util.List;
import startwater.content.ContentHash;
import startwater.drill.Decision;
import startwater.drill.Prediction;
import startwater.fish.Stressor;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Component;
import startwater.score.Verdict;

/** A judge for tests that takes no time: what it says follows from the case, and means nothing. */
public final class FakeJudge {
    private FakeJudge() {}

    /** The same mark for any care. */
    public static Verdict judge(Case c, Care care) {
        return judge(c);
    }

    public static Verdict judge(Case c) {
        int lot = Integer.parseInt(ContentHash.of(c.log()).substring(0, 6), 16);
        double mark = lot % 101;
        Decision best = Decision.LEAVE_ALONE.withFeed(0).withChange(0.25);
        boolean isBest = c.choice().equals(best);
        List<Verdict.Option> options =
                isBest ? List.of(option(best, 0, true)) : List.of(option(best, 0, false), option(c.choice(), 1, true));
        Prediction p = c.visit().prediction();
        return new Verdict(
                options,
                isBest ? 0 : 1,
                (100 - mark) / 50,
                0.02,
                mark,
                mark < 20 ? Verdict.Word.DANGEROUS : mark < 70 ? Verdict.Word.COSTLY : Verdict.Word.SOUND,
                lot % 5 > 0,
                lot % 7 == 0,
                100,
                7,
                new Verdict.Path(
                        Verdict.Variable.EFFECTIVE_NITRITE, List.of(), List.of(), List.of(), 1, 12, Double.NaN),
                List.of(),
                p == null ? null : new Verdict.Foresight(lot % 97, 0.4, p.block(), 0.5),
                0,
                true,
                new Verdict.Information(0, 0, 0, List.of()),
                List.of());
    }

    private static Verdict.Option option(Decision d, double deaths, boolean own) {
        return new Verdict.Option(
                d,
                deaths,
                deaths,
                deaths,
                0,
                Collections.nCopies(Stressor.values().length, 0.0),
                Collections.nCopies(Component.values().length, 0.0),
                deaths,
                own,
                false);
    }
}
