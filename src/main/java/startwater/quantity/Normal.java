package startwater.quantity;

/** The standard normal distribution, the same on every machine. */
public final class Normal {
    private static final double INVERSE_ROOT_TWO_PI = 1 / StrictMath.sqrt(2 * StrictMath.PI);
    private static final int CELLS = 4096;
    private static final double EDGE = 8;
    private static final double TAIL = 1e-3;
    /** Quantiles at even steps of probability, for a start that one correction makes exact. */
    private static final double[] START = new double[CELLS + 1];

    static {
        for (int i = 1; i < CELLS; i++) {
            double p = (double) i / CELLS;
            double low = -EDGE;
            double high = EDGE;
            while (high - low > 1e-14) {
                double middle = (low + high) / 2;
                if (cdf(middle) < p) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            START[i] = (low + high) / 2;
        }
    }

    private Normal() {}

    public static double density(double x) {
        return INVERSE_ROOT_TWO_PI * StrictMath.exp(-x * x / 2);
    }

    /** Chance of a value under x: a power series near the middle, a continued fraction in the tails. */
    public static double cdf(double x) {
        double a = StrictMath.abs(x);
        if (a > 38) {
            return x < 0 ? 0 : 1;
        }
        if (a < 3) {
            double term = a;
            double sum = a;
            for (int i = 1; term > sum * 1e-17; i++) {
                term *= a * a / (2 * i + 1);
                sum += term;
            }
            double half = density(a) * sum;
            return x < 0 ? 0.5 - half : 0.5 + half;
        }
        double fraction = a;
        for (int i = 60; i > 0; i--) {
            fraction = a + i / fraction;
        }
        double tail = density(a) / fraction;
        return x < 0 ? tail : 1 - tail;
    }

    /** The value under which a share p lies, 0 < p < 1. */
    public static double quantile(double p) {
        if (!(p > 0 && p < 1)) {
            throw new IllegalArgumentException("A quantile needs a chance between 0 and 1, not " + p + ".");
        }
        if (p > 0.5) {
            return -quantile(1 - p);
        }
        double x = p < TAIL ? tailStart(p) : start(p);
        for (int i = 0; i < 4; i++) {
            double error = (cdf(x) - p) / density(x);
            double step = error / (1 + x * error / 2);
            x -= step;
            if (StrictMath.abs(step) < 1e-8) {
                break;
            }
        }
        return x;
    }

    private static double start(double p) {
        double cell = p * CELLS;
        int i = (int) cell;
        return START[i] + (cell - i) * (START[i + 1] - START[i]);
    }

    /** The leading term of the tail's expansion. */
    private static double tailStart(double p) {
        double t = StrictMath.sqrt(-2 * StrictMath.log(p));
        return -(t - StrictMath.log(t * StrictMath.sqrt(2 * StrictMath.PI)) / t);
    }
}
