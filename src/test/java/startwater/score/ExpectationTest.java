package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.fish.Stressor;
import startwater.strip.Pad;

/** What decisions would have cost on all the tanks that the first visit left plausible. */
class ExpectationTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    /** A run in which the same is done at every visit. */
    private static DrillRun played(long variant, Decision first, Decision later) {
        DrillRun run = DrillRun.start(SCENARIO, variant, DrillRun.Pace.EVERY_VISIT);
        run.decide(first, null);
        while (!run.over()) {
            run.decide(later, null);
        }
        return run;
    }

    private static double dead(DrillRun run) {
        double sum = 0;
        for (Stressor cause : Stressor.values()) {
            sum += run.hidden().dead(0, cause);
        }
        return sum;
    }

    /** The mean over hidden tanks drawn anew is what was to be expected of them, but for chance. */
    @Test
    void theMeanOverManyHiddenTanksComesOut() {
        Decision feed = Decision.LEAVE_ALONE;
        int runs = 60;
        double mean = 0;
        for (int variant = 0; variant < runs; variant++) {
            mean += dead(played(variant, feed, feed)) / runs;
        }
        double expected = Expectation.deaths(SCENARIO, played(1, feed, feed).past());
        assertThat(mean).isGreaterThan(10);
        assertThat(expected).isBetween(0.6 * mean, 1.5 * mean);
    }

    @Test
    void saltAtTheRightTimeSavesMost() {
        Decision feed = Decision.LEAVE_ALONE;
        double fed = Expectation.deaths(SCENARIO, played(1, feed, feed).past());
        double salted = Expectation.deaths(
                SCENARIO, played(1, feed.withSalt(1500), feed).past());
        assertThat(salted).isLessThan(0.5 * fed);
    }

    /** What is read at the first visit decides which tanks count; what is read later is of the outcome. */
    @Test
    void onlyTheFirstVisitsReadingsCount() {
        DrillLog log = played(1, Decision.LEAVE_ALONE, Decision.LEAVE_ALONE).past();
        VisitRecord first = log.visits().get(0);
        double low = Expectation.deaths(SCENARIO, with(log, 0, first.with(JudgeTest.written(Pad.NITRITE, 0.1))));
        double high = Expectation.deaths(SCENARIO, with(log, 0, first.with(JudgeTest.written(Pad.NITRITE, 5))));
        assertThat(high).isNotCloseTo(low, within(10.0));
        VisitRecord fifth = log.visits().get(4).with(JudgeTest.written(Pad.NITRITE, 5));
        assertThat(Expectation.deaths(SCENARIO, with(log, 4, fifth))).isEqualTo(Expectation.deaths(SCENARIO, log));
    }

    @Test
    void atTheFirstVisitNobodyHasDiedYet() {
        DrillLog log = played(1, Decision.LEAVE_ALONE, Decision.LEAVE_ALONE).past();
        assertThat(Expectation.deaths(SCENARIO, log.upTo(0))).isZero();
    }

    private static DrillLog with(DrillLog log, int at, VisitRecord other) {
        List<VisitRecord> visits = new ArrayList<>(log.visits());
        visits.set(at, other);
        return new DrillLog(visits);
    }
}
