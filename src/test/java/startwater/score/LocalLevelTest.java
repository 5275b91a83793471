package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.quantity.Stream;

/**
 * A level that drifts and is read with noise: weighing and resampling against the exact filter. On a fine grid of levels
 * the weights must give the exact figures; with particles they must come as near as chance allows.
 */
@Tag("slow")
class LocalLevelTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("decision/local-level.csv");
    private static final double[] FIVE = {1.2, 0.7, 1.9, 2.4, 1.8};
    private static final double[] NILE = ReferenceTable.read("decision/nile-flow.csv").rows().stream()
            .mapToDouble(r -> r.number("flow"))
            .toArray();

    /** Variances of a model, and where particles are drawn at first: a wide prior would leave few near the readings. */
    private record Level(double priorVariance, double drift, double reading, double start, double startVariance) {}

    private static final Level FIVE_LEVEL = new Level(4, 0.25, 1, 0, 4);
    private static final Level NILE_LEVEL = new Level(1e7, 1469.1, 15099, 1120, 60_000);

    /** What a filter says: log-likelihood by reading, mean and variance after it, and as foretold before it. */
    private record Filtered(
            double[] logs, double[] means, double[] variances, double[] foretold, double[] foretoldVariances) {
        Filtered(int n) {
            this(new double[n], new double[n], new double[n], new double[n], new double[n]);
        }

        double logLikelihood(int from) {
            return Arrays.stream(logs).skip(from).sum();
        }
    }

    @Test
    @Tag("outside")
    void onAGridTheWeightsGiveTheExactFiltersFigures() {
        Filtered five = grid(FIVE_LEVEL, FIVE, 0.02, 16);
        for (int i = 0; i < FIVE.length; i++) {
            printed("five readings", "mean " + (i + 1), five.means[i]);
            printed("five readings", "variance " + (i + 1), five.variances[i]);
        }
        printed("five readings", "log-likelihood", five.logLikelihood(0));
        Filtered nile = grid(NILE_LEVEL, NILE, 10, 20_000);
        printed("Nile", "log-likelihood", nile.logLikelihood(0));
        printed("Nile", "log-likelihood without the first year", nile.logLikelihood(1));
        printed("Nile", "foretold variance at last", nile.foretoldVariances[NILE.length - 1]);
        printed("Nile", "foretold mean at last", nile.foretold[NILE.length - 1]);
    }

    private static void printed(String name, String quantity, double computed) {
        ValueOfInformationTest.printed(TABLE, name, quantity, computed);
    }

    private static Filtered grid(Level level, double[] readings, double step, double reach) {
        int side = (int) Math.round(reach / step);
        double[] at = new double[2 * side + 1];
        Arrays.setAll(at, i -> (i - side) * step);
        double[] weights = bell(at, 0, level.priorVariance);
        Filtered f = new Filtered(readings.length);
        for (int t = 0; t < readings.length; t++) {
            if (t > 0) {
                weights = drifted(weights, step, level.drift);
            }
            weigh(f, t, at, weights, readings[t], level.reading);
            weights = WeightedSample.posterior(weights, likelihood(at, readings[t], level.reading));
        }
        return f;
    }

    private static void weigh(Filtered f, int t, double[] at, double[] weights, double reading, double variance) {
        double[] likelihood = likelihood(at, reading, variance);
        double evidence = 0;
        for (int i = 0; i < at.length; i++) {
            evidence += weights[i] * likelihood[i];
        }
        double[] after = WeightedSample.posterior(weights, likelihood);
        f.logs[t] = StrictMath.log(evidence);
        f.foretold[t] = mean(at, weights);
        f.foretoldVariances[t] = variance(at, weights);
        f.means[t] = mean(at, after);
        f.variances[t] = variance(at, after);
    }

    private static double[] bell(double[] at, double mean, double variance) {
        double[] logs = new double[at.length];
        Arrays.setAll(logs, i -> -(at[i] - mean) * (at[i] - mean) / (2 * variance));
        return WeightedSample.normalised(logs);
    }

    private static double[] likelihood(double[] at, double reading, double variance) {
        double[] likelihood = new double[at.length];
        double scale = 1 / StrictMath.sqrt(2 * StrictMath.PI * variance);
        Arrays.setAll(likelihood, i -> scale * StrictMath.exp(-(reading - at[i]) * (reading - at[i]) / (2 * variance)));
        return likelihood;
    }

    private static double[] drifted(double[] weights, double step, double variance) {
        int side = (int) Math.ceil(9 * StrictMath.sqrt(variance) / step);
        double[] offsets = new double[2 * side + 1];
        Arrays.setAll(offsets, i -> (i - side) * step);
        double[] kernel = bell(offsets, 0, variance);
        double[] after = new double[weights.length];
        for (int i = 0; i < after.length; i++) {
            for (int j = Math.max(0, i - side); j <= Math.min(after.length - 1, i + side); j++) {
                after[i] += weights[j] * kernel[i - j + side];
            }
        }
        return after;
    }

    private static double mean(double[] at, double[] weights) {
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += weights[i] * at[i];
        }
        return sum;
    }

    private static double variance(double[] at, double[] weights) {
        double mean = mean(at, weights);
        double sum = 0;
        for (int i = 0; i < at.length; i++) {
            sum += weights[i] * (at[i] - mean) * (at[i] - mean);
        }
        return sum;
    }

    /** Particles come within four of their own standard deviations of the exact filter, run by run and on the mean. */
    @Test
    @Tag("outside")
    void particlesComeAsNearAsChanceAllows() {
        double exactMean = number("five readings", "mean 5");
        double exactLog = number("five readings", "log-likelihood");
        spread(FIVE_LEVEL, FIVE, 1000, 300, exactMean, exactLog, 0, 0.03, 0.08);
        double nileLog = number("Nile", "log-likelihood without the first year");
        spread(NILE_LEVEL, NILE, 4000, 20, Double.NaN, nileLog, 1, Double.NaN, 0.6);
    }

    private static double number(String name, String quantity) {
        return TABLE.rows().stream()
                .filter(r -> r.text("case").equals(name) && r.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow()
                .number("value");
    }

    private static void spread(
            Level level,
            double[] readings,
            int particles,
            int runs,
            double exactMean,
            double exactLog,
            int from,
            double meanSdMost,
            double logSdMost) {
        List<Double> means = new ArrayList<>();
        List<Double> logs = new ArrayList<>();
        for (int run = 0; run < runs; run++) {
            Filtered f = particles(level, readings, particles, run);
            means.add(f.means[readings.length - 1]);
            logs.add(f.logLikelihood(from));
        }
        assertNear(logs, exactLog, logSdMost);
        if (!Double.isNaN(exactMean)) {
            assertNear(means, exactMean, meanSdMost);
        }
    }

    private static void assertNear(List<Double> found, double exact, double sdMost) {
        double[] values = found.stream().mapToDouble(d -> d).toArray();
        double sd = StrictMath.sqrt(variance(values, LossesTest.share(values.length)));
        assertThat(sd).isPositive().isLessThan(sdMost);
        for (double value : values) {
            assertThat(Math.abs(value - exact)).isLessThan(4 * sd);
        }
        // A mean of logs lies half its variance under the log of the mean.
        double mean = mean(values, LossesTest.share(values.length));
        assertThat(Math.abs(mean - exact)).isLessThan(4 * sd / StrictMath.sqrt(values.length) + sd * sd);
    }

    private static Filtered particles(Level level, double[] readings, int count, int run) {
        Stream draws = Stream.of(run, count);
        double[] at = new double[count];
        double[] logs = new double[count];
        for (int i = 0; i < count; i++) {
            at[i] = level.start + StrictMath.sqrt(level.startVariance) * draws.normal();
            double off = at[i] - level.start;
            logs[i] = off * off / (2 * level.startVariance) - at[i] * at[i] / (2 * level.priorVariance);
        }
        double[] weights = WeightedSample.normalised(logs);
        Filtered f = new Filtered(readings.length);
        for (int t = 0; t < readings.length; t++) {
            if (t > 0) {
                for (int i = 0; i < count; i++) {
                    at[i] += StrictMath.sqrt(level.drift) * draws.normal();
                }
            }
            weigh(f, t, at, weights, readings[t], level.reading);
            weights = WeightedSample.posterior(weights, likelihood(at, readings[t], level.reading));
            if (WeightedSample.effective(weights) < count / 2.0) {
                at = chosen(at, WeightedSample.systematic(weights, count, draws.uniform()));
                weights = LossesTest.share(count);
            }
        }
        return f;
    }

    private static double[] chosen(double[] at, int[] from) {
        double[] chosen = new double[from.length];
        Arrays.setAll(chosen, i -> at[from[i]]);
        return chosen;
    }
}
