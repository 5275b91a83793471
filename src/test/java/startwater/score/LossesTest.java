package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.fish.Stressor;
import startwater.quantity.Stream;

class LossesTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("decision/tail-and-difference.csv");

    /** Losses that all come from deaths by ammonia. */
    static Losses of(double[][] totals, double[] weights) {
        double[][][] parts = new double[totals.length][weights.length][Component.values().length];
        double[][][] deaths = new double[totals.length][weights.length][Stressor.COUNT];
        for (int o = 0; o < totals.length; o++) {
            for (int t = 0; t < weights.length; t++) {
                parts[o][t][Component.DEATHS.ordinal()] = totals[o][t];
                deaths[o][t][Stressor.AMMONIA.ordinal()] = totals[o][t];
            }
        }
        return new Losses(parts, deaths, weights, 1);
    }

    @Test
    @Tag("outside")
    void theWorstTenthIsTheMeanOfTheTail() {
        Losses losses = of(new double[][] {{20, 0, 100, 10}}, new double[] {0.15, 0.5, 0.05, 0.3});
        ValueOfInformationTest.printed(TABLE, "losses", "mean", losses.mean(0));
        ValueOfInformationTest.printed(TABLE, "losses", "ninetieth", losses.deathsQuantile(0, 0.9));
        ValueOfInformationTest.printed(TABLE, "losses", "mean of worst tenth", losses.worst(0, 0.1));
        assertThat(losses.worst(0, 1)).isCloseTo(losses.mean(0), within(1e-12));
    }

    @Test
    @Tag("outside")
    void commonRandomNumbersShrinkTheVarianceOfADifference() {
        int tanks = 4000;
        double[][] totals = {even(tanks, u -> u), even(tanks, u -> u * u), new double[tanks]};
        Losses losses = of(totals, share(tanks));
        double common = tanks * square(losses.standardError(0, 1));
        // With numbers of their own the variances of both, each against nothing, would add up.
        double own = tanks * (square(losses.standardError(0, 2)) + square(losses.standardError(1, 2)));
        String variance = "variance of difference with ";
        ValueOfInformationTest.printed(TABLE, "u and u squared", variance + "common numbers", common);
        ValueOfInformationTest.printed(TABLE, "u and u squared", variance + "own numbers", own);
    }

    @Test
    void theStandardErrorFallsAsTheRootOfTheTanks() {
        double[] logN = new double[6];
        double[] logSe = new double[6];
        for (int step = 0; step < 6; step++) {
            int tanks = 256 << step;
            Stream draws = Stream.of(step);
            double[][] totals = new double[2][tanks];
            for (int t = 0; t < tanks; t++) {
                double z = draws.normal();
                totals[0][t] = StrictMath.exp(0.5 * z);
                totals[1][t] = totals[0][t] + 0.2 * draws.normal();
            }
            logN[step] = StrictMath.log(tanks);
            logSe[step] = StrictMath.log(of(totals, share(tanks)).standardError(0, 1));
        }
        assertThat(slope(logN, logSe)).isBetween(-0.55, -0.45);
    }

    /** Four fish strata in one water tell no more of it than one does. */
    @Test
    void tanksThatShareAWaterCountAsOneWitness() {
        double[][][] parts = new double[2][16][Component.values().length];
        for (int t = 0; t < 16; t++) {
            parts[0][t][Component.STRESS.ordinal()] = Math.floorDiv(t, 4);
        }
        double[][][] deaths = new double[2][16][Stressor.COUNT];
        double shared = new Losses(parts, deaths, share(16), 4).standardError(0, 1);
        double[][] four = {{0, 1, 2, 3}, {0, 0, 0, 0}};
        assertThat(shared).isCloseTo(of(four, share(4)).standardError(0, 1), within(1e-12));
    }

    /** Two options on three tanks: what each part, cause and place of death comes to is weighed by hand. */
    private static Losses byHand() {
        double[][][] parts = new double[2][3][Component.values().length];
        double[][][] deaths = new double[2][3][Stressor.COUNT];
        double[][] beside = {{1, 2, 4}, {0, 0, 8}};
        for (int t = 0; t < 3; t++) {
            parts[0][t][Component.DEATHS.ordinal()] = 10 * (t + 1);
            parts[0][t][Component.WATER.ordinal()] = 0.5;
            parts[1][t][Component.JOBS.ordinal()] = t + 1;
            deaths[0][t][Stressor.AMMONIA.ordinal()] = 8 * (t + 1);
            deaths[0][t][Stressor.NITRITE.ordinal()] = 2 * (t + 1);
        }
        return new Losses(parts, deaths, beside, new double[] {0.5, 0.25, 0.25}, 1);
    }

    @Test
    void everyPartIsWeighedByTheBelief() {
        Losses losses = byHand();
        // 10, 20 and 30 % at 1/2, 1/4 and 1/4.
        assertThat(losses.mean(0, Component.DEATHS)).isEqualTo(17.5);
        assertThat(losses.mean(0, Component.WATER)).isEqualTo(0.5);
        assertThat(losses.mean(0)).isEqualTo(18);
        assertThat(losses.mean(1)).isEqualTo(losses.mean(1, Component.JOBS)).isEqualTo(1.75);
        assertThat(losses.meanDeaths(0, Stressor.AMMONIA)).isEqualTo(14);
        assertThat(losses.meanDeaths(0, Stressor.NITRITE)).isEqualTo(3.5);
        assertThat(losses.meanDeaths(1, Stressor.AMMONIA)).isZero();
        assertThat(losses.meanDeathsBeside(0)).isEqualTo(2);
        assertThat(losses.meanDeathsBeside(1)).isEqualTo(2);
    }

    @Test
    void theWorstOfTheDeathsLeavesOutWhatIsNoDeath() {
        Losses losses = byHand();
        assertThat(losses.worstDeaths(0, 0.25)).isEqualTo(30);
        assertThat(losses.worstDeaths(0, 0.5)).isEqualTo(25);
        assertThat(losses.worst(0, 0.25)).isEqualTo(30.5);
        assertThat(losses.worstDeaths(1, 0.25)).isZero();
        assertThat(losses.deathsQuantile(0, 0.75)).isEqualTo(20);
    }

    @Test
    void theBestIsTheFirstOfTheLeastAndRegretIsCountedFromIt() {
        double[] even = share(2);
        Losses losses = of(new double[][] {{4, 6}, {1, 3}, {3, 1}, {9, 1}}, even);
        assertThat(losses.best()).isEqualTo(1);
        assertThat(losses.regret(0)).isEqualTo(3);
        assertThat(losses.regret(1)).isZero();
        assertThat(losses.regret(2)).isZero();
        assertThat(losses.regret(3)).isEqualTo(3);
        assertThat(of(new double[][] {{1, 1}, {2, 2}}, even).best()).isZero();
        assertThat(of(new double[][] {{3, 3}, {2, 2}, {1, 1}}, even).best()).isEqualTo(2);
    }

    @Test
    void otherWeightsAreAnotherBeliefInTheSameLosses() {
        Losses sure = byHand().weighed(new double[] {0, 0, 1});
        assertThat(sure.mean(0)).isEqualTo(30.5);
        assertThat(sure.meanDeathsBeside(1)).isEqualTo(8);
        assertThat(sure.weight(2)).isEqualTo(1);
        assertThat(sure.weight(0)).isZero();
        assertThat(byHand().weight(0)).isEqualTo(0.5);
    }

    @Test
    void moreOptionsFollowThoseThatWereThere() {
        Losses both = byHand().and(byHand().weighed(new double[] {0, 0, 1}));
        assertThat(both.options()).isEqualTo(4);
        assertThat(both.tanks()).isEqualTo(3);
        for (int o = 0; o < 4; o++) {
            assertThat(both.mean(o)).isEqualTo(byHand().mean(o % 2));
            assertThat(both.meanDeaths(o, Stressor.NITRITE)).isEqualTo(byHand().meanDeaths(o % 2, Stressor.NITRITE));
            assertThat(both.meanDeathsBeside(o)).isEqualTo(byHand().meanDeathsBeside(o % 2));
        }
    }

    /** Each water's mean difference, less the mean of all, in squares: (0.5·0.5)² and (0.5·0.5)² for 1 and 2 at a half each. */
    @Test
    void theStandardErrorOfTwoWatersComesOutByHand() {
        Losses losses = of(new double[][] {{3, 5}, {2, 3}}, share(2));
        assertThat(losses.standardError(0, 1)).isCloseTo(Math.sqrt(0.125), within(1e-15));
        assertThat(losses.standardError(1, 0)).isEqualTo(losses.standardError(0, 1));
        assertThat(losses.standardError(0, 0)).isZero();
        // What the same costs more everywhere has no error.
        assertThat(of(new double[][] {{7, 9}, {4, 6}}, share(2)).standardError(0, 1))
                .isZero();
    }

    @Test
    void arraysThatDoNotFitAreRefused() {
        double[][][] two = new double[2][4][Component.values().length];
        double[][][] one = new double[1][4][Stressor.COUNT];
        assertThatThrownBy(() -> new Losses(two, one, share(4), 1)).hasMessageContaining("2 options but deaths of 1");
        double[][][] deaths = new double[2][4][Stressor.COUNT];
        assertThatThrownBy(() -> new Losses(two, deaths, share(4), 3)).hasMessageContaining("4 tanks");
        assertThatThrownBy(() -> new Losses(two, deaths, share(4), 0)).hasMessageContaining("by 0");
    }

    static double slope(double[] x, double[] y) {
        double mx = Arrays.stream(x).average().orElseThrow();
        double my = Arrays.stream(y).average().orElseThrow();
        double xy = 0;
        double xx = 0;
        for (int i = 0; i < x.length; i++) {
            xy += (x[i] - mx) * (y[i] - my);
            xx += (x[i] - mx) * (x[i] - mx);
        }
        return xy / xx;
    }

    private static double[] even(int count, DoubleUnaryOperator f) {
        double[] values = new double[count];
        Arrays.setAll(values, i -> f.applyAsDouble((i + 0.5) / count));
        return values;
    }

    static double[] share(int count) {
        double[] weights = new double[count];
        Arrays.fill(weights, 1.0 / count);
        return weights;
    }

    private static double square(double x) {
        return x * x;
    }
}
