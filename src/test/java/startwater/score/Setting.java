package startwater.score;

import java.util.List;
import java.util.Map;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.strip.Pad;

/** A visit of a young tank of catfish, believed in four waters: what is worked out on it is quick. */
final class Setting {
    static final List<Decision> OPTIONS = List.of(Decision.LEAVE_ALONE, Decision.LEAVE_ALONE.withFeed(0));
    private static final int WATERS = 4;

    final Scenario scenario;
    final Scored scored;

    private Setting(Scenario scenario, DrillLog log, Losses losses, int own) {
        this.scenario = scenario;
        Belief belief = Belief.of(scenario, log, WATERS);
        Notebook book =
                Notebook.of(scenario, belief.calendar(), List.of(log.last().undecided()));
        scored = new Scored(belief, book, new Rollout(belief, book), OPTIONS, own, losses);
    }

    /** The second week's tank so many days after it was filled. @param filter share of what the media can carry, 0..1 */
    static Scenario young(int days, double filter) {
        return TrialScenario.secondWeek(15)
                .change()
                .start(new Scenario.Start(days, List.of(new Scenario.Before(0, 0.5, 0.1, 0, 0, 0))))
                .unknowns(Map.of(Unknown.AOB_SEED, new Prior.Known(filter), Unknown.NOB_SEED, new Prior.Known(filter)))
                .made();
    }

    /** Ammonia is read at the first visit, and nothing done. */
    static Setting of(Scenario s) {
        return of(s, LossesTest.of(new double[2][4 * WATERS], LossesTest.share(4 * WATERS)), 0);
    }

    /** The same with these losses of its two options, one tank for each. @param own place of the choice */
    static Setting of(Scenario s, Losses losses, int own) {
        VisitRecord v = DrillRun.start(s, 5, DrillRun.Pace.LEARNER).now();
        v = v.with(JudgeTest.written(Pad.AMMONIA, 0.5)).decided(OPTIONS.get(own), null);
        return new Setting(s, new DrillLog(List.of(v)), losses, own);
    }

    /** A first visit at which nothing is read. */
    static Setting unread(Scenario s) {
        VisitRecord v = DrillRun.start(s, 5, DrillRun.Pace.LEARNER).now().decided(OPTIONS.get(0), null);
        Losses none = LossesTest.of(new double[2][4 * WATERS], LossesTest.share(4 * WATERS));
        return new Setting(s, new DrillLog(List.of(v)), none, 0);
    }

    Paths paths() {
        return Paths.of(scored, 0, 1);
    }

    /** The same where the keeper's books say otherwise. */
    Scored with(Notebook book) {
        return new Scored(scored.belief(), book, scored.rollout(), scored.options(), scored.own(), scored.losses());
    }
}
