package startwater.classroom.stats;

/**
 * An interval that holds the true value in 95 of 100 classes like this one. NaN at both ends where the class is too small
 * to say.
 */
public record Interval(double low, double high) {
    /** Nothing can be said. */
    public static final Interval UNKNOWN = new Interval(Double.NaN, Double.NaN);

    /** Standard normal quantile of 0.975. */
    private static final double Z = 1.959963984540054;

    private static final int LEAST_FOR_FISHER = 4;

    /**
     * Wilson's interval of a mean of scores in 0..1 (Wilson 1927, J. Am. Stat. Assoc. 22:209; from memory). Exact in idea
     * for scores that are 0 or 1; graded scores spread less, and the interval is then rather too wide.
     */
    public static Interval ofMean(double mean, int n) {
        if (n < 1) {
            return UNKNOWN;
        }
        double w = Z * Z / n;
        double middle = (mean + w / 2) / (1 + w);
        double half = Z / (1 + w) * Math.sqrt(mean * (1 - mean) / n + w / (4.0 * n));
        return new Interval(Math.max(0, middle - half), Math.min(1, middle + half));
    }

    /** Fisher's interval of a correlation (Fisher 1921, Metron 1:3; from memory). */
    public static Interval ofCorrelation(double r, int n) {
        if (n < LEAST_FOR_FISHER || !(Math.abs(r) < 1)) {
            return UNKNOWN;
        }
        double z = 0.5 * Math.log((1 + r) / (1 - r));
        double half = Z / Math.sqrt(n - 3.0);
        return new Interval(Math.tanh(z - half), Math.tanh(z + half));
    }

    public boolean known() {
        return !Double.isNaN(low);
    }
}
