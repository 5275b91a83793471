package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.strip.Pad;

/** What one more strip is worth before deciding. */
class RetestTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    private static Verdict judge(VisitRecord v, Decision d) {
        return Judge.judge(new Case(SCENARIO, new DrillLog(List.of(v.decided(d, null)))));
    }

    private static VisitRecord open() {
        return DrillRun.start(SCENARIO, 5, DrillRun.Pace.LEARNER).now();
    }

    @Test
    void whereTheReadingFitsASecondStripIsNotWorthItsPrice() {
        VisitRecord v = open().with(JudgeTest.written(Pad.AMMONIA, 1))
                .with(JudgeTest.written(Pad.NITRITE, 2))
                .with(JudgeTest.written(Pad.PH, 7.4));
        Verdict fits = judge(v, Decision.LEAVE_ALONE);
        assertThat(fits.information().retest()).isFalse();
        assertThat(fits.regret()).isEqualTo(fits.chosen().loss() - fits.best().loss());
    }

    @Test
    void aStripThatWasNeverDippedIsWorthMoreThanASecondOne() {
        Verdict untested = judge(open(), Decision.LEAVE_ALONE);
        Verdict tested = judge(
                open().with(JudgeTest.written(Pad.AMMONIA, 1)).with(JudgeTest.written(Pad.NITRITE, 2)),
                Decision.LEAVE_ALONE);
        assertThat(untested.information().strip())
                .isGreaterThan(tested.information().strip());
        assertThat(untested.information().pads()).noneMatch(Verdict.PadWorth::read);
    }

    @Test
    void noTestIsWorthMoreThanKnowingTheWaterAndNoneLessThanNothing() {
        for (double nitrite : new double[] {0, 0.5, 2, 10}) {
            VisitRecord v = open().with(JudgeTest.written(Pad.NITRITE, nitrite));
            Verdict.Information i = judge(v, Decision.LEAVE_ALONE).information();
            for (Verdict.PadWorth pad : i.pads()) {
                assertThat(pad.worth()).isBetween(0.0, i.perfect() + 1e-12);
            }
        }
    }
}
