package startwater.record;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.VisitRecord;
import startwater.record.Difference.What;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.Review;
import startwater.score.Verdict;

/** The marks of an attempt worked out again, and compared with those in the file. */
final class MarkCheck {
    private MarkCheck() {}

    /** Verdicts of all decisions of a run: they follow from the log alone. */
    static List<Verdict> judged(DrillRun run, Care care) {
        List<Verdict> verdicts = new ArrayList<>();
        for (VisitRecord visit : Marking.decided(run)) {
            verdicts.add(judged(run, visit, care));
        }
        return verdicts;
    }

    static Verdict judged(DrillRun run, VisitRecord visit, Care care) {
        DrillLog past = run.past();
        return Judge.judge(new Case(run.scenario(), past.upTo(past.visits().indexOf(visit))), care);
    }

    /** @throws Difference.Found at the first mark that comes out otherwise */
    static void check(Rerun rerun) {
        DrillRun run = rerun.run();
        List<Verdict> verdicts = new ArrayList<>();
        for (VisitRecord visit : Marking.decided(run)) {
            Verdict verdict = judged(run, visit, rerun.care());
            verdicts.add(verdict);
            Entry.Marks kept = rerun.marks().get(visit.visit());
            if (kept != null) {
                same(
                        visit.visit(),
                        kept,
                        Marking.of(run, visit, verdict, rerun.workings().get(visit.visit())));
            }
        }
        Entry.Finished f = rerun.finished();
        if (f != null) {
            Entry.Finished now = AttemptWriter.finished(f.attempt(), f.n(), run, Review.of(run, verdicts), f.at());
            int at = run.past().last().visit();
            Difference.check(What.MARK, at, Difference.there(f.mark()), Difference.there(now.mark()));
            Difference.check(What.PASSED, at, f.passed(), now.passed());
            Difference.check(What.LUCK, at, f.luck(), now.luck());
            Difference.check(What.LUCK, at, f.expectedDeaths(), now.expectedDeaths());
        }
    }

    static void same(int at, Entry.Marks kept, Entry.Marks now) {
        Difference.check(
                What.READING_MARK, at, kept.readRight() + "/" + kept.read(), now.readRight() + "/" + now.read());
        Difference.check(What.SUM, at, Difference.there(kept.working()), Difference.there(now.working()));
        Difference.check(What.DECISION_MARK, at, kept.decision(), now.decision());
        Difference.check(What.WORD, at, kept.word(), now.word());
        Difference.check(What.REGRET, at, kept.regret(), now.regret());
        Difference.check(What.SCORED, at, kept.scored(), now.scored());
        Difference.check(What.ARGUABLE, at, kept.arguable(), now.arguable());
        Difference.check(What.CREDITED, at, kept.credited(), now.credited());
        Difference.check(What.DECISIVE, at, kept.decisive(), now.decisive());
        Difference.check(What.OWN, at, kept.own(), now.own());
        Difference.check(What.BEST, at, kept.best(), now.best());
        Difference.check(What.FORESIGHT, at, Difference.there(kept.foresight()), Difference.there(now.foresight()));
        Difference.check(What.CAME, at, Difference.there(kept.came()), Difference.there(now.came()));
    }
}
