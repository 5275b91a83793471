package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.fish.Stressor;
import startwater.tank.TankLayout;

/** What came of a run: deaths, days until the filter carries the fish, water. */
class OutcomeTest {
    private static final Scenario FISHLESS = TrialScenario.fishless();

    private static DrillRun played(Scenario s, Decision each) {
        DrillRun run = DrillRun.start(s, 3, DrillRun.Pace.EVERY_VISIT);
        while (!run.over()) {
            run.decide(each, null);
        }
        return run;
    }

    /** Fourteen days without ammonia: there is nothing to feed a filter, so it never carries 240 fish. */
    @Test
    void aFilterThatIsNeverReadyCountsAllDays() {
        DrillRun run = played(FISHLESS, Decision.LEAVE_ALONE);
        assertThat(run.filterDay()).isNaN();
        Outcome outcome = Outcome.of(run);
        assertThat(outcome.daysToFilter()).isCloseTo(14, within(1e-9));
        assertThat(outcome.deathsFraction()).isZero();
        assertThat(outcome.waterVolumes()).isZero();
    }

    @Test
    void aFilterThatIsReadyCountsTheDaysFromTheFirstVisit() {
        Scenario halfRipe = FISHLESS.change()
                .unknowns(Map.of(Unknown.AOB_SEED, new Prior.Known(0.05), Unknown.NOB_SEED, new Prior.Known(0.05)))
                .made();
        DrillRun run = PolicyPlayer.play(halfRipe, Policies.CAREFUL, 3, DrillRun.Pace.EVERY_VISIT);
        Outcome outcome = Outcome.of(run);
        double first = 8 + 7 / 24.0;
        assertThat(run.filterDay()).isGreaterThan(first);
        assertThat(outcome.daysToFilter()).isCloseTo(run.filterDay() - first, within(1e-9));
    }

    @Test
    void withFishTheDaysWithoutAFilterAndTheWaterAreThoseOfTheTank() {
        DrillRun run = played(TrialScenario.secondWeek(15), Decision.LEAVE_ALONE.withChange(0.1));
        Outcome outcome = Outcome.of(run);
        double[] y = run.hidden().state();
        long decisions =
                run.past().visits().stream().filter(v -> v.decision() != null).count();
        assertThat(outcome.daysToFilter()).isEqualTo(y[TankLayout.DELAY]).isPositive();
        assertThat(outcome.waterVolumes()).isCloseTo(0.1 * decisions, within(1e-9));
        double sum = 0;
        for (Stressor cause : Stressor.values()) {
            sum += Outcome.deathsFraction(run, cause);
        }
        assertThat(outcome.deathsFraction()).isCloseTo(sum, within(1e-12)).isBetween(0.001, 1.0);
        assertThat(Outcome.deathsFraction(run, Stressor.NITRITE))
                .isCloseTo(run.hidden().dead(0, Stressor.NITRITE) / 240, within(1e-12));
    }

    @Test
    void aSystemThatNoFishAreMeantForLosesNone() {
        DrillRun run = DrillRun.start(FISHLESS.change().fish(null, null).made(), 3, DrillRun.Pace.EVERY_VISIT);
        assertThat(Outcome.deathsFraction(run, Stressor.AMMONIA)).isZero();
    }
}
