package startwater.score;

import org.jspecify.annotations.Nullable;

/**
 * How well a sum was worked: the learner's number against the exact one.
 *
 * @param given the learner's number
 * @param exact the exact one, in the same unit
 * @param relativeError given / exact - 1
 * @param slip the unit slip that explains the difference, or null
 */
public record WorkingMark(
        double given,
        double exact,
        double relativeError,
        @Nullable UnitSlip slip) {
    /** Rounding on the way is no error: two figures are enough beside a tank. */
    private static final double RIGHT_WITHIN = 0.08;

    private static final double SLIP_WITHIN = 0.05;

    /** The mark of a sum of toxic ammonia, mg N/L. @param exact more than 0 */
    public static WorkingMark of(double given, double exact) {
        return of(given, exact, UnitSlip.Quantity.AMMONIA);
    }

    /**
     * The mark of one sum.
     *
     * @param exact more than 0
     * @param quantity what was worked out: only slips that can happen there are named, the nearest of them
     */
    public static WorkingMark of(double given, double exact, UnitSlip.Quantity quantity) {
        if (!(exact > 0)) {
            throw new IllegalArgumentException("Working: the exact value must be over 0, not " + exact + ".");
        }
        double error = given / exact - 1;
        UnitSlip slip = null;
        if (Math.abs(error) > RIGHT_WITHIN) {
            double nearest = SLIP_WITHIN;
            for (UnitSlip s : quantity.possible()) {
                double off = Math.abs(given / s.wrong(exact) - 1);
                if (off < nearest) {
                    nearest = off;
                    slip = s;
                }
            }
        }
        return new WorkingMark(given, exact, error, slip);
    }

    public boolean right() {
        return Math.abs(relativeError) <= RIGHT_WITHIN;
    }

    /** 100 for a right sum, half of it for one that a slip of unit explains, none for any other. */
    public double mark() {
        return right() ? 100 : slip != null ? 50 : 0;
    }
}
