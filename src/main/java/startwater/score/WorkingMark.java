package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.quantity.Units;

/**
 * How well the sum of toxic ammonia was worked: the learner's number against the exact one.
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
        @Nullable Slip slip) {
    /** Rounding on the way is no error: two figures are enough beside a tank. */
    private static final double RIGHT_WITHIN = 0.08;

    private static final double SLIP_WITHIN = 0.05;

    /** Slips of unit, each with the factor it leaves behind. */
    public enum Slip {
        /** The ion or molecule in place of its nitrogen: NH3. */
        AS_AMMONIA(Units.AMMONIA_PER_N),
        AS_AMMONIUM(Units.AMMONIUM_PER_N),
        /** Nitrogen in place of the molecule. */
        AS_NITROGEN(1 / Units.AMMONIA_PER_N),
        /** Percent not turned into a share. */
        PERCENT(100),
        THOUSANDFOLD(1000),
        THOUSANDTH(0.001);

        private final double factor;

        Slip(double factor) {
            this.factor = factor;
        }

        public double factor() {
            return factor;
        }
    }

    /** The mark of one sum. @param exact more than 0 */
    public static WorkingMark of(double given, double exact) {
        if (!(exact > 0)) {
            throw new IllegalArgumentException("Working: the exact value must be over 0, not " + exact + ".");
        }
        double error = given / exact - 1;
        Slip slip = null;
        if (Math.abs(error) > RIGHT_WITHIN) {
            for (Slip s : Slip.values()) {
                if (Math.abs(given / exact / s.factor() - 1) < SLIP_WITHIN) {
                    slip = s;
                    break;
                }
            }
        }
        return new WorkingMark(given, exact, error, slip);
    }

    public boolean right() {
        return Math.abs(relativeError) <= RIGHT_WITHIN;
    }
}
