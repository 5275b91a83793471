package startwater.rehearse;

import java.util.Arrays;

/**
 * What eight tanks in ten lie between, and the middle one. A value is infinite where it never comes.
 *
 * @param low a tenth of the tanks lie below
 * @param middle half of them lie below
 * @param high nine tenths lie below
 */
public record Spread(double low, double middle, double high) {
    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /** Of values in any order. @throws IllegalArgumentException without any */
    static Spread of(double... values) {
        if (values.length == 0) {
            throw new IllegalArgumentException("Spread: there is no value.");
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(at(sorted, LOW), at(sorted, 0.5), at(sorted, HIGH));
    }

    private static double at(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, sorted.length - 1);
        if (sorted[below] == sorted[above] || place == below) {
            return sorted[below];
        }
        return Double.isInfinite(sorted[above])
                ? sorted[above]
                : sorted[below] + (place - below) * (sorted[above] - sorted[below]);
    }

    /** Whether a value lies in the band. */
    boolean holds(double value) {
        return value >= low && value <= high;
    }
}
