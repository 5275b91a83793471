package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Scenario.Happening.Kind;
import startwater.drill.VisitRecord;
import startwater.strip.Pad;

/** What may come is reckoned with as far as a keeper can know it. */
class FutureTest {
    private static final int NOW = 8 * Calendar.DAY + 7 * 60;
    private static final int ACTS = NOW + Calendar.DAY;

    private static Case firstVisit(Scenario s) {
        VisitRecord v = DrillRun.start(s, 5, DrillRun.Pace.LEARNER)
                .now()
                .with(JudgeTest.written(Pad.AMMONIA, 1))
                .with(JudgeTest.written(Pad.PH, 7.6));
        return new Case(s, new DrillLog(List.of(v.decided(Decision.LEAVE_ALONE, null))));
    }

    @Test
    void withoutFailuresThereIsOneWay() {
        List<Future> all = Future.of(TrialScenario.secondWeek(15), NOW, ACTS);
        assertThat(all).hasSize(1);
        assertThat(all.get(0).chance()).isEqualTo(1);
        assertThat(all.get(0).failure()).isNull();
    }

    /** Two failures in fourteen days are one chance in seven a night. */
    @Test
    void aFailureIsReckonedWithByItsChanceAndItsHour() {
        List<Future> all = Future.of(TrialScenario.oldBlower(), NOW, ACTS);
        assertThat(all).hasSize(2);
        assertThat(all.get(1).failure()).isEqualTo(Kind.AIR_OFF);
        assertThat(all.get(1).chance()).isCloseTo(1.0 / 7, within(1e-12));
        assertThat(all.get(0).chance()).isCloseTo(6.0 / 7, within(1e-12));
        assertThat(all.get(1).events()).hasSize(1);
        assertThat(all.get(1).events().get(0).minute()).isEqualTo(8 * Calendar.DAY + 21 * 60);
        assertThat(all.get(0).events()).isEmpty();
        List<Future> threeNights = Future.of(TrialScenario.oldBlower(), NOW, NOW + 3 * Calendar.DAY);
        assertThat(threeNights.get(1).chance()).isCloseTo(1 - Math.pow(6.0 / 7, 3), within(1e-12));
    }

    @Test
    void whatIsRareIsLeftOutAndWhatIsForecastComesAsItWill() {
        assertThat(Future.of(TrialScenario.failing(Kind.POWER_OFF, 10.5), NOW, NOW + 12 * 60))
                .hasSize(2);
        assertThat(Future.of(TrialScenario.failing(Kind.POWER_OFF, 10.9), NOW, NOW + 12 * 60))
                .hasSize(1);
        List<Future> forecast = Future.of(TrialScenario.failing(Kind.ROOM_TEMPERATURE, 9, 30), NOW, ACTS);
        assertThat(forecast).hasSize(1);
        assertThat(forecast.get(0).events()).hasSize(2);
    }

    /** The one who decides cannot know on which night the blower stops: the mark must not either. */
    @Test
    void onWhichNightItStopsChangesNothingBeforehand() {
        Scenario tonight = TrialScenario.failing(Kind.AIR_OFF, 8.875, 12.875);
        Scenario later = TrialScenario.failing(Kind.AIR_OFF, 14.875, 19.875);
        assertThat(Judge.judge(firstVisit(tonight))).isEqualTo(Judge.judge(firstVisit(later)));
        assertThat(SecondLook.at(firstVisit(tonight), Care.LIVE).habit())
                .isEqualTo(SecondLook.at(firstVisit(later), Care.LIVE).habit());
    }

    /** It counts all the same: what would be safe with a good blower is less so with a bad one. */
    @Test
    void aBlowerThatMayStopCostsFishAndAGoodOneDoesNot() {
        Verdict bad = Judge.judge(firstVisit(TrialScenario.oldBlower()));
        Verdict good = Judge.judge(firstVisit(TrialScenario.failing(Kind.AIR_OFF)));
        assertThat(bad.chosen().deathsBy(startwater.fish.Stressor.LOW_OXYGEN))
                .isGreaterThan(good.chosen().deathsBy(startwater.fish.Stressor.LOW_OXYGEN));
    }

    @Test
    void theWaysShareOutTheUnitInterval() {
        List<Future> all = Future.of(TrialScenario.oldBlower(), NOW, ACTS);
        assertThat(Future.at(all, 0)).isEqualTo(all.get(0));
        assertThat(Future.at(all, 0.85)).isEqualTo(all.get(0));
        assertThat(Future.at(all, 0.86)).isEqualTo(all.get(1));
        assertThat(Future.at(all, 1)).isEqualTo(all.get(1));
    }
}
