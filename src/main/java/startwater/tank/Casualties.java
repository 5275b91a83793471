package startwater.tank;

import static startwater.tank.TankLayout.DAMAGE;
import static startwater.tank.TankLayout.survivors;

import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.fish.SurvivalCurve;

/**
 * From exposure to damage to deaths over one step, for all strata that share the water. Damage is solved in closed form
 * for an exposure that moves along a straight line, so its mean over the step is known; so is the mean hazard wherever no
 * threshold is crossed. A scratch pad: one per thread.
 */
final class Casualties {
    private int strata;
    private double[] upper = new double[0];
    private double[] lower = upper;
    private double[] grown = upper;
    private final double[] least = new double[Stressor.COUNT];
    private final double[] killRate = new double[Stressor.COUNT];
    private final double[] slope = new double[Stressor.COUNT];
    private final double[] lowSlope = new double[Stressor.COUNT];

    /** Takes the thresholds of the fish at their present size. */
    void prepare(TankParameters p, Species species, double ammoniaScale) {
        strata = p.strata();
        if (upper.length != strata * Stressor.COUNT) {
            upper = new double[strata * Stressor.COUNT];
            lower = new double[strata * Stressor.COUNT];
            grown = new double[strata];
        }
        for (int i = 0; i < Stressor.COUNT; i++) {
            SurvivalCurve curve = species.curves().get(i);
            killRate[i] = curve.killRatePerDay();
            slope[i] = curve.slopePerDay();
            lowSlope[i] = curve.lowSlopePerDay();
            least[i] = Double.POSITIVE_INFINITY;
            for (int s = 0; s < strata; s++) {
                double scale = p.sensitivity().at(s) * (i == 0 ? ammoniaScale : 1);
                int at = i * strata + s;
                upper[at] = curve.threshold() * scale;
                lower[at] = lowSlope[i] > 0 ? curve.lowThreshold() * scale : upper[at];
                least[i] = Math.min(least[i], Math.min(upper[at], lower[at]));
            }
        }
    }

    private double hazard(int stressor, int at, double damage) {
        return slope[stressor] * Math.max(0, damage - upper[at]) + lowSlope[stressor] * Math.max(0, damage - lower[at]);
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
     * A first guess at damage and survivors after a step, with exposures and hazards as they are.
     *
     * @return share of the living that still lives
     */
    double guess(double[] from, double[] to, double[] exposure, double dt) {
        for (int i = 0; i < Stressor.COUNT; i++) {
            double damage = from[DAMAGE + i];
            if (exposure[i] != 0 || damage != 0) {
                to[DAMAGE + i] = Relaxation.end(damage, killRate[i] * exposure[i], killRate[i], dt);
            }
        }
        double living = Relaxation.decay(hazard(from) * dt);
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
        for (int s = 0; s < strata; s++) {
            grown[s] = 0;
        }
        for (int i = 0; i < Stressor.COUNT; i++) {
            double damage = from[DAMAGE + i];
            double c0 = before[i];
            double c1 = after[i];
            if (damage == 0 && c0 == 0 && c1 == 0) {
                continue;
            }
            double kd = killRate[i];
            double end = Math.max(0, Relaxation.end(damage, kd * (c0 + c1) / 2, kd * (c1 - c0), kd, dt));
            to[DAMAGE + i] = end;
            double mean = (c0 + c1) / 2 - (end - damage) / (kd * dt);
            double middle = (6 * mean - damage - end) / 4;
            if (damage > least[i] || middle > least[i] || end > least[i]) {
                harm = true;
                for (int s = 0; s < strata; s++) {
                    int at = i * strata + s;
                    double more = dt
                            * (slope[i] * excess(damage, middle, end, mean, upper[at])
                                    + lowSlope[i] * excess(damage, middle, end, mean, lower[at]));
                    to[survivors(s) + 1 + i] = from[survivors(s) + 1 + i] + more;
                    grown[s] += more;
                }
            }
        }
        return harm ? survive(from, to) : 1;
    }

    /** Mean of max(0, D - z): exact on either side of the threshold, by straight lines through the middle across it. */
    private static double excess(double start, double middle, double end, double mean, double z) {
        double a = start - z;
        double b = middle - z;
        double c = end - z;
        if (a >= 0 && b >= 0 && c >= 0) {
            return mean - z;
        }
        return a <= 0 && b <= 0 && c <= 0 ? 0 : (positive(a, b) + positive(b, c)) / 2;
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
            double left = living * Relaxation.decay(grown[s]);
            to[survivors(s)] = left;
            before += living;
            after += left;
        }
        return before > 0 ? after / before : 1;
    }

    /** What an exposure that moves so over a step may put into the hazard, by the curve's steeper slope. */
    double doubt(double[] y, double[] before, double[] after, double dt) {
        double most = 0;
        for (int i = 0; i < Stressor.COUNT; i++) {
            double c0 = before[i];
            double c1 = after[i];
            double reach = Math.max(y[DAMAGE + i], Math.max(c0, c1));
            if (c0 != c1 && reach > least[i]) {
                double x = killRate[i] * dt;
                double steep = reach > upper[i * strata] ? slope[i] + lowSlope[i] : lowSlope[i];
                most = Math.max(most, steep * dt * Math.abs(c1 - c0) * x / (2 + x));
            }
        }
        return most;
    }
}
