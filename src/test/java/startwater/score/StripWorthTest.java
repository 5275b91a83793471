package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.Written;
import startwater.fish.Stressor;
import startwater.strip.Pad;
import startwater.tank.TankLayout;

/** What a strip is worth on losses put by hand: one act that is right where ammonia is low and one where it is high. */
class StripWorthTest {
    private static final int WATERS = 16;
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);
    private static final Belief BELIEF = SmallBelief.of(SCENARIO, WATERS, new Written(Pad.NITRITE, 4, 1, 0));
    private static final double MIDDLE =
            BELIEF.band(w -> w.sim().state()[TankLayout.TAN]).middle();

    /** Of two acts each loses by how far ammonia lies from its side; fish of one sensitivity lose more, the rest less. */
    private static double byWater(int option, int water) {
        double off = BELIEF.water(water).sim().state()[TankLayout.TAN] - MIDDLE;
        return Math.max(0, option == 0 ? off : -off);
    }

    private static Losses losses() {
        double[][][] parts = new double[2][WATERS * Belief.STRATA][Component.values().length];
        for (int o = 0; o < 2; o++) {
            for (int t = 0; t < WATERS * Belief.STRATA; t++) {
                double more = t % Belief.STRATA == 0 ? 3 : -1;
                parts[o][t][0] = byWater(o, t / Belief.STRATA) + more;
            }
        }
        return new Losses(
                parts, new double[2][WATERS * Belief.STRATA][Stressor.COUNT], BELIEF.tankWeights(), Belief.STRATA);
    }

    private static ValueOfInformation byHand() {
        double[][] mean = new double[2][WATERS];
        for (int o = 0; o < 2; o++) {
            int option = o;
            Arrays.setAll(mean[o], w -> byWater(option, w));
        }
        return ValueOfInformation.of(mean, BELIEF.waterWeights());
    }

    private static Verdict.Information worth() {
        return new Retest(BELIEF, losses()).worth();
    }

    /** Before anything has died all sensitivities are as likely: 3 and three times -1 cancel. */
    @Test
    void knowingTheWaterIsWorthWhatItIsOverTheMeanOfItsFish() {
        assertThat(worth().perfect())
                .isCloseTo(byHand().ofPerfect(), within(1e-9))
                .isPositive();
    }

    /** The chances of every stop in every water, by the model that weighs a written reading. */
    @Test
    void aPadIsWorthWhatItsReadingWouldChange() {
        for (Pad pad : List.of(Pad.AMMONIA, Pad.PH)) {
            double[][] chances = new double[WATERS][pad.scale().stops()];
            for (int w = 0; w < WATERS; w++) {
                for (int stop = 0; stop < chances[w].length; stop++) {
                    chances[w][stop] = Observation.likelihood(
                            new Written(pad, stop, 1, 1),
                            BELIEF.water(w).sim().state(),
                            BELIEF.water(w).sim().draw());
                }
            }
            Verdict.PadWorth told = worth().pads().stream()
                    .filter(p -> p.pad() == pad)
                    .findFirst()
                    .orElseThrow();
            assertThat(told.worth()).isCloseTo(byHand().ofTest(chances), within(1e-9));
        }
    }

    @Test
    void aPadIsSaidToBeReadWhereItWas() {
        assertThat(worth().pads()).hasSize(Pad.values().length);
        assertThat(worth().pads())
                .filteredOn(Verdict.PadWorth::read)
                .extracting(Verdict.PadWorth::pad)
                .containsExactly(Pad.NITRITE);
        assertThat(worth().price()).isEqualTo(0.05);
    }

    /** All pads together tell at least what the most telling tells, less what 64 imagined strips may err by. */
    @Test
    void aWholeStripIsWorthAboutAsMuchAsItsMostTellingPadOrMore() {
        double ammonia = worth().pads().get(Pad.AMMONIA.ordinal()).worth();
        assertThat(ammonia).isPositive();
        assertThat(worth().strip()).isBetween(0.8 * ammonia, worth().perfect() * 1.2);
    }

    @Test
    void whereNoStripIsLeftNoneIsWorthAnything() {
        Scenario.Shelf bare = new Scenario.Shelf(5000, 3000, 0, 0, 100, 1, 10, true, false);
        Belief none = BELIEF.in(SCENARIO.change().shelf(bare).made());
        Verdict.Information i = new Retest(none, losses()).worth();
        assertThat(i.strip()).isZero();
        assertThat(i.pads()).extracting(Verdict.PadWorth::pad).containsExactly(Pad.CHLORIDE);
        assertThat(i.perfect()).isPositive();
    }
}
