package startwater.tank;

import static startwater.tank.TankLayout.DAMAGE;
import static startwater.tank.TankLayout.survivors;

import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.fish.SurvivalCurve;

/**
 * From exposure to damage to deaths over one step, for all strata that share the water. Damage is solved in closed form
 * for an exposure that moves along a straight line, so its mean over the step is known; so is the mean hazard wherever no
 * threshold is crossed. A scratch pad: one per thread.
 */
final class Casualties {
    private static final int NITRITE_AT = Stressor.NITRITE.ordinal();
    private static final double SERIES_UP_TO = 0.02;
    private @Nullable TankParameters system;
    private int strata;
    private double[] upper = new double[0];
    private double[] lower = upper;
    private double[] grown = upper;
    private final double[] least = new double[Stressor.COUNT];
    private final double[] leastUpper = new double[Stressor.COUNT];
    private final double[] killRate = new double[Stressor.COUNT];
    private final double[] slope = new double[Stressor.COUNT];
    private final double[] lowSlope = new double[Stressor.COUNT];
    /** Share of its rise over a step by which a damage that crosses a threshold may be misjudged. */
    private static final double CROSSING_DOUBT = 1.0 / 64;
    // What the last step may have misjudged where a threshold was crossed.
    private double crossing;
    // Mean hazard of the living over the last step, 1/d.
    private double lately;

    /** Takes the thresholds of the fish at their present size. */
    @SuppressWarnings("ReferenceEquality")
    void prepare(double[] y, TankParameters p, Species species, double ammoniaScale) {
        if (system != p) {
            system = p;
            strata = p.strata();
            upper = new double[strata * Stressor.COUNT];
            lower = new double[strata * Stressor.COUNT];
            grown = new double[strata];
            for (int i = 1; i < Stressor.COUNT; i++) {
                thresholds(i, p, species, 1);
            }
        }
        thresholds(0, p, species, ammoniaScale);
        lately = hazard(y);
    }

    private void thresholds(int stressor, TankParameters p, Species species, double sizeScale) {
        SurvivalCurve curve = species.curves().get(stressor);
        killRate[stressor] = curve.killRatePerDay();
        slope[stressor] = curve.slopePerDay();
        lowSlope[stressor] = curve.lowSlopePerDay();
        least[stressor] = Double.POSITIVE_INFINITY;
        leastUpper[stressor] = Double.POSITIVE_INFINITY;
        for (int s = 0; s < strata; s++) {
            double scale = p.sensitivity().at(s) * sizeScale;
            int at = stressor * strata + s;
            upper[at] = curve.threshold() * scale;
            lower[at] = lowSlope[stressor] > 0 ? curve.lowThreshold() * scale : upper[at];
            leastUpper[stressor] = Math.min(leastUpper[stressor], upper[at]);
            least[stressor] = Math.min(least[stressor], Math.min(upper[at], lower[at]));
        }
    }

    private double hazard(int stressor, int at, double damage) {
        return slope[stressor] * Math.max(0, damage - upper[at]) + lowSlope[stressor] * Math.max(0, damage - lower[at]);
    }

    /** Mean hazard of the living over the last step, 1/d. */
    double lately() {
        return lately;
    }

    /** Mean hazard of the living in this state, 1/d. */
    double hazard(double[] y) {
        double weighted = 0;
        double living = 0;
        for (int s = 0; s < strata; s++) {
            living += y[survivors(s)];
        }
        for (int i = 0; i < Stressor.COUNT; i++) {
            double damage = y[DAMAGE + i];
            if (damage > least[i]) {
                for (int s = 0; s < strata; s++) {
                    weighted += y[survivors(s)] * hazard(i, i * strata + s, damage);
                }
            }
        }
        return weighted > 0 ? weighted / living : 0;
    }

    /**
     * A first guess at survivors after a step, at the hazard of late, and at the damage that binds blood.
     *
     * @return share of the living that still lives
     */
    double guess(double[] from, double[] to, double[] exposure, double dt) {
        double kd = killRate[NITRITE_AT];
        to[DAMAGE + NITRITE_AT] = Relaxation.end(from[DAMAGE + NITRITE_AT], kd * exposure[NITRITE_AT], kd, dt);
        if (lately == 0) {
            return 1;
        }
        double living = Relaxation.decay(lately * dt);
        for (int s = 0; s < strata; s++) {
            to[survivors(s)] = from[survivors(s)] * living;
        }
        return living;
    }

    /**
     * Carries damage, hazards and survivors over a step.
     *
     * @param from state at the start, @param to receives those at the end
     * @param before exposures at the start, @param after at the end
     * @return share of the living that still lives
     */
    double step(double[] from, double[] to, double[] before, double[] after, double dt) {
        boolean harm = false;
        crossing = 0;
        for (int i = 0; i < Stressor.COUNT; i++) {
            double damage = from[DAMAGE + i];
            double c0 = before[i];
            double c1 = after[i];
            if (damage == 0 && c0 == 0 && c1 == 0) {
                continue;
            }
            double kd = killRate[i];
            double end = Relaxation.end(damage, kd * (c0 + c1) / 2, kd * (c1 - c0), kd, dt);
            end = end > 0 ? end : 0;
            to[DAMAGE + i] = end;
            double mean = (c0 + c1) / 2 - (end - damage) / (kd * dt);
            double middle = (6 * mean - damage - end) / 4;
            if (damage > least[i] || end > least[i] || middle > least[i]) {
                if (!harm) {
                    harm = true;
                    java.util.Arrays.fill(grown, 0);
                }
                harm(i, from, to, damage, middle, end, mean, dt);
            }
        }
        double living = harm ? survive(from, to) : 1;
        lately = 2 * (1 - living) / ((1 + living) * dt);
        return living;
    }

    private void harm(
            int i, double[] from, double[] to, double damage, double middle, double end, double mean, double dt) {
        double lesser = damage < end ? damage : end;
        double greater = damage < end ? end : damage;
        double low = middle < lesser ? middle : lesser;
        double high = middle > greater ? middle : greater;
        double steep = slope[i] * dt;
        double gentle = lowSlope[i] * dt;
        for (int s = 0; s < strata; s++) {
            double z = upper[i * strata + s];
            double more = z >= high ? 0 : steep * (z <= low ? mean - z : across(damage, middle, end, z));
            if (z > low && z < high) {
                crossing = Math.max(crossing, CROSSING_DOUBT * steep * (high - low));
            }
            if (gentle > 0) {
                double zLow = lower[i * strata + s];
                more += zLow >= high ? 0 : gentle * (zLow <= low ? mean - zLow : across(damage, middle, end, zLow));
                if (zLow > low && zLow < high) {
                    crossing = Math.max(crossing, CROSSING_DOUBT * gentle * (high - low));
                }
            }
            to[survivors(s) + 1 + i] = from[survivors(s) + 1 + i] + more;
            grown[s] += more;
        }
    }

    /** Mean of max(0, D - z) across the threshold, by straight lines through the middle. */
    private static double across(double start, double middle, double end, double z) {
        return (positive(start - z, middle - z) + positive(middle - z, end - z)) / 2;
    }

    /** Mean of the positive part of a straight line from a to b. */
    private static double positive(double a, double b) {
        if (a >= 0 && b >= 0) {
            return (a + b) / 2;
        }
        double high = Math.max(a, b);
        return high <= 0 ? 0 : high * high / (2 * Math.abs(b - a));
    }

    private double survive(double[] from, double[] to) {
        double before = 0;
        double after = 0;
        for (int s = 0; s < strata; s++) {
            double living = from[survivors(s)];
            double left = living * fewLeft(grown[s]);
            to[survivors(s)] = left;
            before += living;
            after += left;
        }
        return before > 0 ? after / before : 1;
    }

    /** exp(-x), by its series where few die. */
    private static double fewLeft(double x) {
        return x < SERIES_UP_TO ? 1 - x * (1 - x * (0.5 - x * (1.0 / 6 - x * (1.0 / 24)))) : Relaxation.decay(x);
    }

    /** What an exposure that moves so over a step may put into the hazard, by the steepest slope in reach. */
    double doubt(double[] y, double[] before, double[] after, double dt) {
        double most = crossing;
        for (int i = 0; i < Stressor.COUNT; i++) {
            double c0 = before[i];
            double c1 = after[i];
            double reach = Math.max(y[DAMAGE + i], Math.max(c0, c1));
            if (c0 != c1 && reach > least[i]) {
                double x = killRate[i] * dt;
                double steep = reach > leastUpper[i] ? slope[i] + lowSlope[i] : lowSlope[i];
                most = Math.max(most, steep * dt * Math.abs(c1 - c0) * x / (2 + x));
            }
        }
        return most;
    }
}
