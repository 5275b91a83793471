package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.fish.Stressor;
import startwater.strip.Pad;
import startwater.tank.FastStepper;

/** The table of losses holds what following each option on each water comes to, weighed by the belief. */
class LossTableTest {
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Decision HOLD = FEED.withFeed(0);
    private static final Belief BELIEF = unevenly();
    private static final Rollout ROLLOUT = new Rollout(BELIEF, SmallBelief.book(BELIEF));

    private final LossTable table = new LossTable(BELIEF, ROLLOUT);

    /** Half a day after the first visit, so that the waters are no longer of equal weight. */
    private static Belief unevenly() {
        DrillRun run = DrillRun.start(TrialScenario.secondWeek(15), 5, DrillRun.Pace.EVERY_VISIT, StandIn.BY_THE_RULES);
        run.dip(1);
        run.write(JudgeTest.written(Pad.NITRITE, 5));
        run.decide(FEED, null);
        return Belief.of(run.scenario(), run.past().plus(run.now()), 5);
    }

    @Test
    void everyCellIsTheBillOfThatOptionOnThatWater() {
        Losses losses = table.of(List.of(FEED, HOLD));
        assertThat(losses.options()).isEqualTo(2);
        assertThat(losses.tanks()).isEqualTo(5 * Belief.STRATA);
        for (int w = 0; w < 5; w++) {
            Bill bill = ROLLOUT.follow(HOLD, w, new FastStepper());
            for (int k = 0; k < Belief.STRATA; k++) {
                int tank = w * Belief.STRATA + k;
                for (Component c : Component.values()) {
                    assertThat(losses.part(1, tank, c)).isEqualTo(bill.parts()[k][c.ordinal()]);
                }
            }
        }
        double[] byNitrite = new double[5 * Belief.STRATA];
        Arrays.setAll(byNitrite, t -> ROLLOUT.follow(FEED, t / Belief.STRATA, new FastStepper())
                .deaths()[t % Belief.STRATA][Stressor.NITRITE.ordinal()]);
        double mean = 0;
        for (int t = 0; t < byNitrite.length; t++) {
            mean += BELIEF.tankWeights()[t] * byNitrite[t];
        }
        assertThat(mean).isPositive();
        assertThat(losses.meanDeaths(0, Stressor.NITRITE)).isCloseTo(mean, within(1e-9));
    }

    @Test
    void theWeightsAreThoseOfTheBelief() {
        Losses losses = table.of(List.of(FEED));
        double[] waters = BELIEF.waterWeights();
        assertThat(Arrays.stream(waters).max().orElseThrow())
                .isGreaterThan(1.1 * Arrays.stream(waters).min().orElseThrow());
        for (int t = 0; t < losses.tanks(); t++) {
            assertThat(losses.weight(t)).isCloseTo(BELIEF.tankWeights()[t], within(1e-12));
        }
    }

    /** Of five waters every second are the first, the third and the fifth; their weights add up to one again. */
    @Test
    void everySecondWaterIsARoughTableOfItsOwn() {
        Losses all = table.of(List.of(FEED));
        Losses rough = new LossTable(BELIEF, ROLLOUT).of(List.of(FEED), 2);
        assertThat(rough.tanks()).isEqualTo(3 * Belief.STRATA);
        double sum = 0;
        for (int t = 0; t < rough.tanks(); t++) {
            int of = 2 * (t / Belief.STRATA) * Belief.STRATA + t % Belief.STRATA;
            assertThat(rough.total(0, t)).isEqualTo(all.total(0, of));
            assertThat(rough.weight(t) / rough.weight(0)).isCloseTo(all.weight(of) / all.weight(0), within(1e-9));
            sum += rough.weight(t);
        }
        assertThat(sum).isCloseTo(1, within(1e-12));
    }

    @Test
    void whatWasFollowedInPartIsFollowedOnTheRestLater() {
        Losses rough = table.of(List.of(FEED), 2);
        Losses all = table.of(List.of(HOLD, FEED));
        assertThat(all.total(1, 0)).isEqualTo(rough.total(0, 0));
        assertThat(all.tanks()).isEqualTo(5 * Belief.STRATA);
        assertThat(all.total(1, Belief.STRATA)).isPositive();
    }
}
