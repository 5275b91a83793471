package startwater.quantity;

import java.util.Locale;

/**
 * The range of one value for which an equation was published, or up to which it is used here where the source says less.
 * Equations keep theirs as constants and check at their public functions; loops that were given checked values do not.
 *
 * @param equation the equation or rule, as authors and year
 * @param quantity the name of the value, with its unit, in English
 * @param low the least value
 * @param high the greatest value
 * @param source where the range stands
 */
public record Validity(String equation, String quantity, double low, double high, String source) {
    /** @throws IllegalArgumentException when low is not under high, or a word is missing */
    public Validity {
        if (!(low < high) || equation.isBlank() || quantity.isBlank() || source.isBlank()) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT, "Validity of '%s', '%s', '%s': %s to %s", equation, quantity, source, low, high));
        }
    }

    /** Whether the value lies in the closed range; NaN never does. */
    public boolean holds(double value) {
        return value >= low && value <= high;
    }

    /**
     * Returns the value when it lies in the closed range; NaN never does.
     *
     * @throws OutOfRangeException outside the range
     */
    public double check(double value) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new OutOfRangeException(this, value);
    }
}
