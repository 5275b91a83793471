package startwater.fish;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import startwater.ReferenceTable;

/**
 * The reduced threshold models of survival with background mortality, for tests against published fits. The stochastic
 * death model is the {@link SurvivalCurve} of the product; individual tolerance is here only.
 */
final class Guts {
    private Guts() {}

    /** Survival at a time under a constant exposure. */
    interface Model {
        double survival(double exposure, double days);
    }

    static Model stochasticDeath(double hb, double kd, double kk, double z) {
        SurvivalCurve curve = SurvivalCurve.plain(kd, z, kk);
        return (exposure, days) -> StrictMath.exp(-hb * days - curve.cumulativeHazard(exposure, days));
    }

    /** Thresholds log-logistic among individuals, median m, shape beta; who has once passed his is dead. */
    static Model individualTolerance(double hb, double kd, double m, double beta) {
        return (exposure, days) -> StrictMath.exp(-hb * days) * tolerant(damage(exposure, kd, days), m, beta);
    }

    static double tolerant(double greatestDamage, double m, double beta) {
        return 1 / (1 + StrictMath.pow(greatestDamage / m, beta));
    }

    static double damage(double exposure, double kd, double days) {
        return -exposure * StrictMath.expm1(-kd * days);
    }

    /** One tank of animals, counted. */
    record Counts(double exposure, double[] days, double[] alive) {}

    /** Log-likelihood of counts without the multinomial constant: deaths between two counts, and the last living. */
    static double logLikelihood(Model model, List<Counts> all) {
        double sum = 0;
        for (Counts counts : all) {
            double before = 1;
            int last = counts.days.length - 1;
            for (int i = 1; i <= last; i++) {
                double now = model.survival(counts.exposure, counts.days[i]);
                sum += term(counts.alive[i - 1] - counts.alive[i], before - now);
                before = now;
            }
            sum += term(counts.alive[last], before);
        }
        return sum;
    }

    private static double term(double n, double p) {
        return n == 0 ? 0 : n * StrictMath.log(StrictMath.max(p, 1e-300));
    }

    /** The exposure that leaves half, by bisection. */
    static double lc50(DoubleUnaryOperator survival) {
        double low = 0;
        double high = 1000;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (survival.applyAsDouble(middle) > 0.5) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** The rows of a table with one column per exposure, named c and the exposure. */
    static Counts column(ReferenceTable table, double exposure, String name) {
        return new Counts(
                exposure,
                table.rows().stream().mapToDouble(r -> r.number("time_d")).toArray(),
                table.rows().stream().mapToDouble(r -> r.number(name)).toArray());
    }
}
