package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/** The belief spreads over many tanks however odd the log, and says when the log is contradicted. */
class BeliefTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    private static DrillLog odd(int visits) {
        DrillRun run = DrillRun.start(SCENARIO, 5, DrillRun.Pace.EVERY_VISIT, StandIn.BY_THE_RULES);
        for (int v = 0; v < visits; v++) {
            // First far too high, then far too low: no tank does both.
            run.dip(1);
            run.write(new Written(Pad.AMMONIA, v % 2 == 0 ? 16 : 0, 1, v));
            run.write(new Written(Pad.PH, v % 2 == 0 ? 14 : 0, 1, v));
            run.write(new Written(Pad.NITRITE, v % 2 == 0 ? 0 : 16, 1, v));
            run.decide(Decision.LEAVE_ALONE, null);
        }
        return run.log();
    }

    @Test
    void contradictedLogsLeaveManyTanksAndNoCredit() {
        Belief belief = Belief.of(SCENARIO, odd(4));
        assertThat(belief.distinct()).isGreaterThanOrEqualTo(Belief.WATERS / 4);
        assertThat(belief.effective()).isGreaterThanOrEqualTo(Belief.WATERS / 4.0);
        assertThat(belief.credible()).isFalse();
        for (double w : belief.tankWeights()) {
            assertThat(w).isFinite();
        }
    }

    @Test
    void anHonestLogKeepsItsCreditAndManyTanks() {
        DrillRun run = PolicyPlayer.play(SCENARIO, Policies.CAREFUL, 2, DrillRun.Pace.LEARNER);
        Belief belief = Belief.of(SCENARIO, run.past());
        assertThat(belief.credible()).isTrue();
        assertThat(belief.distinct()).isGreaterThanOrEqualTo(Belief.WATERS / 4);
    }

    @Test
    void falseLowsDoNotMakeDoingNothingRight() {
        DrillRun run = DrillRun.start(SCENARIO, 5, DrillRun.Pace.LEARNER);
        VisitRecord v = run.now();
        for (int strip = 0; strip < 2; strip++) {
            v = v.with(new Written(Pad.AMMONIA, 0, 1, strip))
                    .with(new Written(Pad.NITRITE, 0, 1, strip))
                    .with(new Written(Pad.PH, 0, 1, strip));
        }
        Verdict verdict = Judge.judge(new Case(SCENARIO, new DrillLog(List.of(v.decided(Decision.LEAVE_ALONE, null)))));
        assertThat(verdict.credited()).isFalse();
        assertThat(verdict.mark()).isZero();
        assertThat(verdict.leading().get(0).key()).isEqualTo("credit.none");
    }

    @Test
    void anExamIsJudgedOnTwiceTheTanks() {
        Case c = JudgeTest.firstVisit(SCENARIO, 2, 1, 7.8, 100, Decision.LEAVE_ALONE);
        assertThat(Judge.score(c, Care.EXAM).losses().tanks()).isEqualTo(512);
        assertThat(Judge.score(c).losses().tanks()).isEqualTo(256);
    }
}
