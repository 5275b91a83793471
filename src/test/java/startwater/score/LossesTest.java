package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
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
