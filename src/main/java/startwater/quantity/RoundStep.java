package startwater.quantity;

/** Steps that read well on an axis: 1, 2 or 5 times a power of ten. */
public final class RoundStep {
    private RoundStep() {}

    /** The least such step that is not under {@code raw}, but for rounding. @param raw more than 0 */
    public static double of(double raw) {
        double ten = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(raw)));
        for (int digit : new int[] {1, 2, 5}) {
            if (digit * ten >= raw * (1 - 1e-9)) {
                return digit * ten;
            }
        }
        return 10 * ten;
    }
}
