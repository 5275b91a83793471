package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Observation;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.TankDraw;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;
import startwater.text.Amounts;
import startwater.text.VisitFacts;

/**
 * What must hold of any judge, whatever the right mark is, on the shipped drills: two runs that differ in what must not
 * matter get the same, and more knowledge is never worth less.
 */
@Tag("slow")
class MetamorphicTest {
    private static final int FEW = 1;
    private static final int FEW_TURNS = 3;
    private static final int MANY = 200;
    /** Worse than any other in every tank: twice the food, no air, and the filter under the tap. */
    private static final Decision FOLLY =
            Decision.LEAVE_ALONE.withFeed(2).withAir(Air.OFF).withFilter(FilterCare.SCRUB);

    @Test
    void whatMustHoldOfLossesHolds() {
        losses(RandomCases.ofShippedDrills(FEW));
    }

    @Test
    @Tag("full")
    void whatMustHoldOfLossesHoldsOverManyTanks() {
        losses(RandomCases.ofShippedDrills(MANY));
    }

    private static void losses(List<Case> all) {
        Variances variances = new Variances();
        for (Case c : all) {
            Scored scored = Judge.score(c);
            leastRegretIsNoneAndNoneIsNegative(scored.losses());
            orderDoesNotMatter(scored.losses());
            sharperStripIsNeverWorthLess(scored);
            variances.take(scored.losses());
        }
        assertThat(variances.shareWithLessByCommonNumbers()).isGreaterThanOrEqualTo(0.95);
        assertThat(variances.slopeOfStandardError()).isBetween(-0.6, -0.4);
    }

    private static void leastRegretIsNoneAndNoneIsNegative(Losses losses) {
        assertThat(losses.regret(losses.best())).isZero();
        for (int o = 0; o < losses.options(); o++) {
            assertThat(losses.regret(o)).isGreaterThanOrEqualTo(0);
        }
    }

    private static void orderDoesNotMatter(Losses losses) {
        int n = losses.options();
        double[][] totals = totals(losses);
        double[][] turned = new double[n][];
        Arrays.setAll(turned, o -> totals[n - 1 - o]);
        double[][] withFolly = Arrays.copyOf(totals, n + 1);
        withFolly[n] = new double[losses.tanks()];
        Arrays.fill(withFolly[n], 1000);
        Losses plain = LossesTest.of(totals, weights(losses));
        Losses other = LossesTest.of(turned, weights(losses));
        Losses more = LossesTest.of(withFolly, weights(losses));
        for (int o = 0; o < n; o++) {
            assertThat(other.regret(n - 1 - o)).isEqualTo(plain.regret(o));
            assertThat(other.standardError(n - 1 - o, n - 1 - losses.best()))
                    .isEqualTo(plain.standardError(o, losses.best()));
            assertThat(more.regret(o)).isEqualTo(plain.regret(o));
        }
    }

    private static double[][] totals(Losses losses) {
        double[][] totals = new double[losses.options()][losses.tanks()];
        for (int o = 0; o < totals.length; o++) {
            int option = o;
            Arrays.setAll(totals[o], t -> losses.total(option, t));
        }
        return totals;
    }

    private static double[] weights(Losses losses) {
        double[] weights = new double[losses.tanks()];
        Arrays.setAll(weights, losses::weight);
        return weights;
    }

    /** One strip more, read by eyes that slip to a neighbour ever more often; then a perfect and a useless one. */
    private static void sharperStripIsNeverWorthLess(Scored scored) {
        ValueOfInformation worth = ValueOfInformation.of(scored.losses());
        double perfect = worth.ofPerfect();
        for (Pad pad : List.of(Pad.AMMONIA, Pad.NITRITE)) {
            double[][] chances = chances(scored.belief(), pad);
            double before = perfect;
            for (int slips = 0; slips < 4; slips++) {
                double test = worth.ofTest(chances);
                assertThat(test).isBetween(0.0, before + 1e-9);
                before = test;
                chances = slipped(chances);
            }
        }
        int tanks = scored.losses().tanks();
        double[][] told = new double[tanks][tanks];
        double[][] mute = new double[tanks][2];
        for (int t = 0; t < tanks; t++) {
            told[t][t] = 1;
            mute[t] = new double[] {0.5, 0.5};
        }
        assertThat(worth.ofTest(told)).isCloseTo(perfect, within(1e-9));
        assertThat(worth.ofTest(mute)).isCloseTo(0, within(1e-12));
    }

    private static double[][] chances(Belief belief, Pad pad) {
        double[][] chances =
                new double[belief.waters() * Belief.STRATA][pad.scale().stops()];
        double sigma = ReadingModel.readingSigmaBlocks(pad, Observation.READER_SIGMA_LAB);
        for (int t = 0; t < chances.length; t++) {
            Plausible water = belief.water(t / Belief.STRATA);
            double at = Observation.padPosition(
                    pad, water.sim().state(), water.sim().draw(), 1, 0);
            double[] row = chances[t];
            Arrays.setAll(row, stop -> ReadingModel.probabilityOfStop(pad, stop, at, sigma));
        }
        return chances;
    }

    private static double[][] slipped(double[][] chances) {
        double[][] slipped = new double[chances.length][chances[0].length];
        for (int t = 0; t < chances.length; t++) {
            int last = chances[t].length - 1;
            for (int k = 0; k <= last; k++) {
                slipped[t][k] += 0.6 * chances[t][k];
                slipped[t][Math.max(0, k - 1)] += 0.2 * chances[t][k];
                slipped[t][Math.min(last, k + 1)] += 0.2 * chances[t][k];
            }
        }
        return slipped;
    }

    /** Of many cases: how paired differences vary, and how their standard errors fall with the waters. */
    private static final class Variances {
        private static final int[] WATERS = {8, 16, 32, 64};
        private final double[] logError = new double[WATERS.length];
        private int cases;
        private int less;
        private int pairs;

        void take(Losses losses) {
            double[][] totals = totals(losses);
            double[] weights = weights(losses);
            for (double[] total : totals) {
                less += covariance(total, totals[losses.best()], weights) >= -1e-12 ? 1 : 0;
                pairs++;
            }
            for (int i = 0; i < WATERS.length; i++) {
                logError[i] += StrictMath.log(meanSquareError(losses, WATERS[i] * Belief.STRATA)) / 2;
            }
            cases++;
        }

        /** Of all options against the best: how often the paired difference varies no more than two that share nothing. */
        double shareWithLessByCommonNumbers() {
            return (double) less / pairs;
        }

        /** In blocks of 8, 16, 32 and 64 waters, over all options that differ from the best. */
        double slopeOfStandardError() {
            double[] logN = new double[WATERS.length];
            double[] logSe = new double[WATERS.length];
            for (int i = 0; i < WATERS.length; i++) {
                logN[i] = StrictMath.log(WATERS[i] * Belief.STRATA);
                logSe[i] = logError[i] / cases;
            }
            return LossesTest.slope(logN, logSe);
        }
    }

    private static double covariance(double[] a, double[] b, double[] weights) {
        double ma = 0;
        double mb = 0;
        double ab = 0;
        for (int t = 0; t < weights.length; t++) {
            ma += weights[t] * a[t];
            mb += weights[t] * b[t];
            ab += weights[t] * a[t] * b[t];
        }
        return ab - ma * mb;
    }

    private static double meanSquareError(Losses losses, int tanks) {
        double[][] totals = totals(losses);
        double[] weights = weights(losses);
        double sum = 0;
        for (int from = 0; from < losses.tanks(); from += tanks) {
            double[] block = Arrays.copyOfRange(weights, from, from + tanks);
            double weight = Arrays.stream(block).sum();
            Arrays.setAll(block, t -> block[t] / weight);
            int start = from;
            double[][] parts = new double[totals.length][];
            Arrays.setAll(parts, o -> Arrays.copyOfRange(totals[o], start, start + tanks));
            Losses some = LossesTest.of(parts, block);
            for (int o = 0; o < parts.length; o++) {
                double error = some.standardError(o, losses.best());
                sum += error * error * tanks / losses.tanks();
            }
        }
        return sum;
    }

    @Test
    void whatMustNotMatterDoesNot() throws Exception {
        for (Case c : RandomCases.inTurn(FEW_TURNS)) {
            indifferent(c);
        }
    }

    @Test
    @Tag("full")
    void whatMustNotMatterDoesNotOverManyTanks() throws Exception {
        for (Case c : RandomCases.inTurn(MANY)) {
            indifferent(c);
        }
    }

    private static void indifferent(Case c) throws Exception {
        Verdict plain = Judge.judge(c);
        hiddenTankDoesNotMatter(c, plain);
        threadsAndLanguageDoNotMatter(c, plain);
        aDominatedOptionChangesNoOtherMark(c);
        impossibleReadingLeavesFiniteWeights(c);
    }

    /** The log of another hidden tank in which the same was seen, written and done. */
    private static void hiddenTankDoesNotMatter(Case c, Verdict plain) {
        DrillRun elsewhere = DrillRun.start(c.scenario(), 4711, DrillRun.Pace.LEARNER);
        assertThat(elsewhere.hidden().draw().scores())
                .isNotEqualTo(DrillRun.start(c.scenario(), 0, DrillRun.Pace.LEARNER)
                        .hidden()
                        .draw()
                        .scores());
        List<VisitRecord> same = new ArrayList<>(c.log().visits());
        same.set(0, seenAs(elsewhere.now(), same.get(0)));
        Belief.forget();
        assertThat(Judge.judge(new Case(c.scenario(), new DrillLog(same)))).isEqualTo(plain);
    }

    private static VisitRecord seenAs(VisitRecord here, VisitRecord there) {
        VisitRecord v =
                new VisitRecord(here.visit(), here.minute(), there.actor(), there.seen(), List.of(), null, null);
        for (Written w : there.written()) {
            v = v.with(w);
        }
        return v.decided(java.util.Objects.requireNonNull(there.decision()), there.prediction());
    }

    private static void threadsAndLanguageDoNotMatter(Case c, Verdict plain) throws Exception {
        Locale usual = Locale.getDefault();
        try {
            for (int threads : new int[] {1, 5}) {
                Locale.setDefault(threads == 1 ? Locale.forLanguageTag("tr") : Locale.forLanguageTag("es-PE"));
                ForkJoinPool pool = new ForkJoinPool(threads);
                Belief.forget();
                assertThat(pool.submit(() -> Judge.judge(c)).get()).isEqualTo(plain);
                pool.shutdown();
            }
        } finally {
            Locale.setDefault(usual);
        }
    }

    private static void aDominatedOptionChangesNoOtherMark(Case c) {
        Scored plain = Judge.score(RandomCases.withChoice(c, Decision.LEAVE_ALONE));
        Scored more = Judge.score(RandomCases.withChoice(c, FOLLY));
        assertThat(more.options()).containsAll(plain.options()).contains(FOLLY);
        assertThat(more.losses().best()).isNotEqualTo(more.own());
        for (int o = 0; o < plain.options().size(); o++) {
            int there = more.options().indexOf(plain.options().get(o));
            assertThat(more.losses().regret(there)).isEqualTo(plain.losses().regret(o));
            assertThat(more.losses().mean(there, Component.DEATHS))
                    .isEqualTo(plain.losses().mean(o, Component.DEATHS));
            assertThat(more.losses().standardError(there, more.losses().best()))
                    .isEqualTo(plain.losses().standardError(o, plain.losses().best()));
        }
    }

    private static void impossibleReadingLeavesFiniteWeights(Case c) {
        List<VisitRecord> visits = new ArrayList<>(c.log().visits());
        int last = visits.size() - 1;
        VisitRecord v = visits.get(last);
        for (Pad pad : List.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH)) {
            for (int strip = 90; strip < 94; strip++) {
                v = v.with(new Written(pad, strip % 2 == 0 ? 0 : pad.scale().stops() - 1, 1, strip));
            }
        }
        visits.set(last, v);
        DrillLog log = new DrillLog(visits);
        double[] weights = Belief.of(c.scenario(), log).tankWeights();
        assertThat(Arrays.stream(weights).allMatch(w -> w >= 0 && w <= 1)).isTrue();
        assertThat(Arrays.stream(weights).sum()).isCloseTo(1, within(1e-9));
        Verdict verdict = Judge.judge(new Case(c.scenario(), log));
        assertThat(verdict.mark()).isBetween(0.0, 100.0);
        assertThat(verdict.credited()).isFalse();
    }

    @Test
    void unitOfAnAmountDoesNotMatter() {
        Scenario s = Library.shipped().scenario("hungry-second-week").get();
        VisitFacts facts = VisitFacts.of(DrillRun.start(s, 3, DrillRun.Pace.LEARNER));
        Case c = RandomCases.of(s, 3);
        List<Verdict> byLitre = new ArrayList<>();
        for (String typed : new String[] {"20 %", "480 L", "0.48 m3"}) {
            Decision d =
                    Decision.LEAVE_ALONE.withChange(Amounts.change(typed, facts).value());
            byLitre.add(Judge.judge(RandomCases.withChoice(c, d)));
        }
        assertThat(byLitre.get(1)).isEqualTo(byLitre.get(0));
        assertThat(byLitre.get(2)).isEqualTo(byLitre.get(0));
        // Gallons cannot be typed to the last digit; the mark stays the same all the same.
        Decision gallons = Decision.LEAVE_ALONE.withChange(
                Amounts.change("126.8 gal", facts).value());
        Verdict american = Judge.judge(RandomCases.withChoice(c, gallons));
        assertThat(american.mark()).isCloseTo(byLitre.get(0).mark(), within(0.2));
        assertThat(american.word()).isEqualTo(byLitre.get(0).word());
    }

    /**
     * With every unknown known the waters are one water, bit for bit, and no strip tells anything. What is left of a spread
     * is what the keeper will misread later on: each water has its own errors of reading, whoever follows the rules meets
     * them, and they tell nothing about the water. The bounds are what that came to at most on the shipped drills, rounded up.
     */
    @Test
    void withoutUnknownsItIsPlainOptimisation() {
        for (Scenario shipped : Library.shipped().scenarios()) {
            Scored scored = Judge.score(RandomCases.of(known(shipped), 4));
            Belief belief = scored.belief();
            double[] first = belief.water(0).sim().state();
            for (int w = 1; w < belief.waters(); w++) {
                assertThat(belief.water(w).sim().state()).isEqualTo(first);
            }
            Losses losses = scored.losses();
            ValueOfInformation worth = ValueOfInformation.of(losses);
            for (Pad pad : List.of(Pad.AMMONIA, Pad.NITRITE)) {
                assertThat(worth.ofTest(chances(belief, pad))).isCloseTo(0, within(1e-9));
            }
            assertThat(worth.ofPerfect()).as(shipped.id()).isLessThan(0.25);
            for (int o = 0; o < losses.options(); o++) {
                assertThat(losses.standardError(o, losses.best())).isLessThan(0.15);
            }
        }
        Losses one = LossesTest.of(new double[][] {{3, 3, 3}, {2, 2, 2}, {7, 7, 7}}, LossesTest.share(3));
        assertThat(one.best()).isEqualTo(1);
        assertThat(one.regret(2)).isCloseTo(5, within(1e-12));
        assertThat(one.standardError(0, 1)).isZero();
        assertThat(ValueOfInformation.of(one).ofPerfect()).isZero();
    }

    private static Scenario known(Scenario s) {
        Map<Unknown, Prior> known = new EnumMap<>(Unknown.class);
        for (Unknown u : Unknown.values()) {
            known.put(u, new Prior.Known(TankDraw.prior(s, u).at(0)));
        }
        return s.change().unknowns(known).made();
    }
}
