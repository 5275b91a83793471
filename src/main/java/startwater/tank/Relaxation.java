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
