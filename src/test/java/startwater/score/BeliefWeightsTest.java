package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.TankDraw;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Stream;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;

/** What the belief makes of a log, on a tank that was filled this morning, so that its waters are quickly drawn. */
class BeliefWeightsTest {
    private static final Scenario FRESH = TrialScenario.secondWeek(15)
            .change()
            .start(new Scenario.Start(0, List.of()))
            .made();
    /** Read where no such tank can be. */
    private static final Written ODD = new Written(Pad.AMMONIA, 16, 10, 0);

    @BeforeEach
    void forget() {
        Belief.forget();
    }

    private static VisitRecord open(Written... readings) {
        return SmallBelief.visit(FRESH, readings);
    }

    private static Belief after(int waters, VisitRecord... visits) {
        return Belief.of(FRESH, new DrillLog(List.of(visits)), waters);
    }

    /** The mean score of an unknown over the waters. */
    private static double mean(Belief belief, Unknown unknown) {
        double mean = 0;
        for (int w = 0; w < belief.waters(); w++) {
            mean += belief.waterWeights()[w] * belief.water(w).scores()[unknown.ordinal()];
        }
        return mean;
    }

    @Test
    void afterTheFirstVisitAllWatersCountAlikeAndMostDiffer() {
        Belief belief = after(32, open());
        assertThat(belief.waters()).isEqualTo(32);
        assertThat(belief.effective()).isCloseTo(32, within(1e-9));
        assertThat(belief.distinct()).isGreaterThan(24);
        assertThat(Arrays.stream(belief.tankWeights()).sum()).isCloseTo(1, within(1e-12));
        assertThat(belief.tankWeights()).hasSize(32 * Belief.STRATA);
    }

    /**
     * Alkalinity reads high. Against weights of four thousand tanks drawn from the prior, straight by Bayes' rule, the
     * waters must have come to about the same place; the prior itself lies over two thirds of a spread away.
     */
    @Test
    void theWatersLieWhereBayesRulePutsThem() {
        VisitRecord v = open(new Written(Pad.ALKALINITY, 9, 1, 0), new Written(Pad.ALKALINITY, 9, 1, 1));
        double[] logs = new double[4000];
        double[] scores = new double[4000];
        FastStepper stepper = new FastStepper();
        for (int i = 0; i < logs.length; i++) {
            double[] drawn = TankDraw.scores(Stream.of(2026, i));
            Plausible tank = Plausible.of(FRESH, Calendar.of(FRESH), drawn, 1, stepper);
            logs[i] = tank.observe(v, new Counted(240, 0), stepper, null);
            scores[i] = drawn[Unknown.SOURCE_ALKALINITY.ordinal()];
        }
        double[] weights = WeightedSample.normalised(logs);
        double exact = 0;
        for (int i = 0; i < logs.length; i++) {
            exact += weights[i] * scores[i];
        }
        Belief belief = after(64, v);
        assertThat(exact).isGreaterThan(0.7);
        assertThat(mean(belief, Unknown.SOURCE_ALKALINITY)).isCloseTo(exact, within(0.25));
        assertThat(mean(belief, Unknown.NOB_SEED)).isCloseTo(0, within(0.5));
    }

    @Test
    void readingsThatNothingExplainsAreCountedAndTwoCostTheCredit() {
        Written honest = new Written(Pad.NITRITE, 0, 1, 0);
        Belief one = after(4, open(ODD, honest));
        assertThat(one.readings()).isEqualTo(2);
        assertThat(one.oddReadings()).isEqualTo(1);
        assertThat(one.credible()).isTrue();
        Belief two = after(4, open(ODD, new Written(Pad.AMMONIA, 16, 10, 1)));
        assertThat(two.oddReadings()).isEqualTo(2);
        assertThat(two.credible()).isFalse();
    }

    /** Two in twelve are one in six. */
    @Test
    void oneOddReadingInSixIsForgiven() {
        Written[] readings = new Written[12];
        Arrays.setAll(readings, i -> new Written(Pad.NITRITE, 0, 1, i));
        readings[4] = new Written(Pad.AMMONIA, 16, 10, 4);
        readings[9] = new Written(Pad.AMMONIA, 16, 10, 9);
        Belief belief = after(4, open(readings));
        assertThat(belief.oddReadings()).isEqualTo(2);
        assertThat(belief.readings()).isEqualTo(12);
        assertThat(belief.credible()).isTrue();
        Belief eleven = after(4, open(Arrays.copyOfRange(readings, 1, 12)));
        assertThat(eleven.credible()).isFalse();
    }

    /** Two visits of a run, the second open. */
    private static DrillLog two(Decision d, Written... second) {
        DrillRun run = DrillRun.start(FRESH, 5, DrillRun.Pace.EVERY_VISIT);
        run.dip(1);
        run.write(new Written(Pad.NITRITE, 0, 1, 0));
        run.decide(d, null);
        VisitRecord open = run.now();
        for (Written w : second) {
            open = open.with(w);
        }
        return run.past().plus(open);
    }

    @Test
    void theDecisionIsDoneAndTheTimeRunInEveryWater() {
        DrillLog log = two(Decision.LEAVE_ALONE.withChange(0.5), ODD);
        Belief belief = Belief.of(FRESH, log, 4);
        assertThat(belief.readings()).isEqualTo(2);
        assertThat(belief.oddReadings()).isEqualTo(1);
        for (int w = 0; w < 4; w++) {
            assertThat(belief.water(w).sim().minute()).isEqualTo(17 * 60);
            assertThat(belief.water(w).sim().state()[TankLayout.VOLUMES]).isCloseTo(0.5, within(1e-9));
        }
        assertThat(belief.log().size()).isEqualTo(2);
    }

    @Test
    void theSameLogGivesTheSameBeliefHoweverItWasComeTo() {
        DrillLog log = two(Decision.LEAVE_ALONE);
        double[] atOnce = Belief.of(FRESH, log, 4).tankWeights();
        Belief.forget();
        Belief.of(FRESH, log.upTo(0), 4);
        assertThat(Belief.of(FRESH, log, 4).tankWeights()).containsExactly(atOnce);
    }

    /** A surprise leaves waters that differ, and none with all of the weight. */
    @Test
    void aSurpriseSpreadsTheBeliefAnew() {
        Written[] surprise = new Written[4];
        Arrays.setAll(surprise, i -> new Written(Pad.ALKALINITY, 10, 1, i + 1));
        Belief belief = Belief.of(FRESH, two(Decision.LEAVE_ALONE, surprise), 16);
        assertThat(belief.effective()).isCloseTo(16, within(1e-9));
        assertThat(belief.distinct()).isGreaterThanOrEqualTo(4);
    }

    /** What is no surprise only weighs: the waters stay, no longer alike. */
    @Test
    void whatWasToBeExpectedOnlyWeighs() {
        Belief belief = Belief.of(FRESH, two(Decision.LEAVE_ALONE, new Written(Pad.ALKALINITY, 8, 1, 1)), 16);
        assertThat(belief.effective()).isBetween(8.0, 15.9);
    }

    @Test
    void anotherCalendarLeavesTheWatersAsTheyAre() {
        Belief belief = after(2, open());
        Scenario noon = FRESH.withKeeper(new Scenario.Keeper(List.of(12.0), 14, List.of(), 8, List.of(0)));
        Belief other = belief.in(noon);
        assertThat(other.scenario()).isEqualTo(noon);
        assertThat(other.calendar().nextVisitAfter(13 * 60)).isEqualTo(Calendar.DAY + 12 * 60);
        assertThat(other.water(1)).isSameAs(belief.water(1));
        assertThat(other.waterWeights()).containsExactly(belief.waterWeights());
        assertThat(other.log()).isEqualTo(belief.log());
    }

    /** The weight of a water is shared by its kinds of fish. */
    @Test
    void tanksShareTheWeightOfTheirWater() {
        Belief belief = after(2, open());
        double[] all = belief.tankWeights(new double[] {0.75, 0.25});
        for (int k = 0; k < Belief.STRATA; k++) {
            assertThat(all[k]).isCloseTo(0.75 * belief.water(0).stratum(k), within(1e-12));
            assertThat(all[Belief.STRATA + k]).isCloseTo(0.25 * belief.water(1).stratum(k), within(1e-12));
        }
    }

    @Test
    void aBandIsTheTenthTheMedianAndTheNinetieth() {
        double[] values = new double[20];
        Arrays.setAll(values, i -> 20 - i);
        Verdict.Band band = Belief.band(values, LossesTest.share(20));
        assertThat(band).isEqualTo(new Verdict.Band(2, 10, 18));
        Belief belief = after(3, open());
        Verdict.Band volumes = belief.band(w -> w.scores()[0]);
        double[] scores = {
            belief.water(0).scores()[0],
            belief.water(1).scores()[0],
            belief.water(2).scores()[0]
        };
        Arrays.sort(scores);
        assertThat(volumes).isEqualTo(new Verdict.Band(scores[0], scores[1], scores[2]));
    }

    /** FNV-1a of the name in 64 bits: of "foobar" 85944171f73967e8 (test vectors of the FNV page of Noll). */
    @Test
    void theSeedIsTheHashOfTheName() {
        Scenario named = BentDrill.withFish("foobar").made();
        Belief belief = after(1, open()).in(named);
        assertThat(belief.seed()).isEqualTo(0x85944171f73967e8L);
    }
}
