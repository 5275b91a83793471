package startwater.tank;

/**
 * The step formulas of the fast stepper: y' = N(t) - L y with N a straight line over the step, solved in closed form with
 * a rational exponential. {@code 1/p(x)} stands for exp(-x), p being its series to the sixth power: positive for every x
 * of 0 or more and without cancellation for small x.
 */
final class Relaxation {
    private Relaxation() {}

    /** y after {@code dt} of y' = P - L y with P and L constant. */
    static double end(double y, double production, double loss, double dt) {
        double x = loss * dt;
        double q = mean(x);
        return (y + production * dt * q) / (1 + x * q);
    }

    /**
     * y after {@code dt} of y' = N(t) - L y.
     *
     * @param mean mean of N over the step
     * @param slope how much N rises over the step
     */
    static double end(double y, double mean, double slope, double loss, double dt) {
        double x = loss * dt;
        double q = mean(x);
        double r = 1.0 / 2 + x * (1.0 / 3 + x * (1.0 / 8 + x * (1.0 / 30 + x * (1.0 / 144 + x / 720))));
        return (y + dt * ((mean - slope / 2) * q + slope * r)) / (1 + x * q);
    }

    /**
     * y after {@code dt} of y' = N(t) - L(t) y with L a straight line and N a parabola: L enters by its mean, and what it
     * differs from that goes, with the y of either end, to N.
     *
     * @param guess a first guess at the end
     * @param mean mean of the whole N over the step
     * @param slope how much N rises from the start of the step to its end
     * @param bend four times by how much the middle of N lies over the line from start to end
     */
    static double end(
            double y,
            double guess,
            double mean,
            double slope,
            double bend,
            double lossStart,
            double lossEnd,
            double dt) {
        double half = (lossEnd - lossStart) / 2;
        double x = (lossStart + lossEnd) / 2 * dt;
        double q = mean(x);
        double r = 1.0 / 2 + x * (1.0 / 3 + x * (1.0 / 8 + x * (1.0 / 30 + x * (1.0 / 144 + x / 720))));
        double s = 1.0 / 3 + x * (1.0 / 4 + x * (1.0 / 10 + x * (1.0 / 36 + x * (1.0 / 168 + x / 960))));
        double rise = slope - half * (y + guess);
        double start = mean + half * (y - guess) / 2 - rise / 2 - bend / 6;
        return (y + dt * (start * q + rise * r + bend * (r - s))) / (1 + x * q);
    }

    /** The same with N a straight line. */
    static double end(double y, double guess, double mean, double slope, double lossStart, double lossEnd, double dt) {
        double half = (lossEnd - lossStart) / 2;
        return end(y, mean + half * (y - guess) / 2, slope - half * (y + guess), (lossStart + lossEnd) / 2, dt);
    }

    /** Rational exp(-x). */
    static double decay(double x) {
        return 1 / (1 + x * mean(x));
    }

    /** exp(x) for small x of either sign. */
    static double growth(double x) {
        double even = 12 + x * x;
        return (even + 6 * x) / (even - 6 * x);
    }

    /** The series of (exp(x) - 1) / x. */
    private static double mean(double x) {
        return 1 + x * (1.0 / 2 + x * (1.0 / 6 + x * (1.0 / 24 + x * (1.0 / 120 + x / 720))));
    }
}
