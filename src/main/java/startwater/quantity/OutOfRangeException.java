package startwater.quantity;

import java.util.Locale;

/**
 * A value lies outside the range an equation was published for. The parts are kept apart so that a screen or a command
 * can say them in the reader's language.
 */
public final class OutOfRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final String equation;
    private final String quantity;
    private final double value;
    private final double low;
    private final double high;
    private final String source;

    /** @param validity the range that was left, @param value the value that was given */
    public OutOfRangeException(Validity validity, double value) {
        this(validity.equation(), validity.quantity(), value, validity.low(), validity.high(), validity.source());
    }

    /**
     * For a range that follows from the other inputs rather than from a publication.
     *
     * @param equation the equation or rule that sets the range
     * @param quantity the name of the value, with its unit
     * @param value the value that was given
     * @param low the least value allowed
     * @param high the greatest value allowed
     */
    public OutOfRangeException(String equation, String quantity, double value, double low, double high) {
        this(equation, quantity, value, low, high, "follows from the other inputs");
    }

    private OutOfRangeException(
            String equation, String quantity, double value, double low, double high, String source) {
        super(String.format(
                Locale.ROOT,
                "%s: %s is %s; it must lie between %s and %s (%s)",
                equation,
                quantity,
                value,
                low,
                high,
                source));
        this.equation = equation;
        this.quantity = quantity;
        this.value = value;
        this.low = low;
        this.high = high;
        this.source = source;
    }

    /**
     * Returns the value when it lies in the closed range; NaN never does.
     *
     * @throws OutOfRangeException outside the range
     */
    public static double check(String equation, String quantity, double value, double low, double high) {
        if (value >= low && value <= high) {
            return value;
        }
        throw new OutOfRangeException(equation, quantity, value, low, high);
    }

    public String equation() {
        return equation;
    }

    /** The name of the value, with its unit, in English. */
    public String quantity() {
        return quantity;
    }

    public double value() {
        return value;
    }

    public double low() {
        return low;
    }

    public double high() {
        return high;
    }

    /** Where the range stands. */
    public String source() {
        return source;
    }
}
