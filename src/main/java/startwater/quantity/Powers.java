package startwater.quantity;

/**
 * Powers by one exponential. {@code StrictMath.pow} takes some ten times as long, and the constants of a tank are worked
 * out too often for that; the difference is in the last digits of a double.
 */
public final class Powers {
    private static final double LN_10 = StrictMath.log(10);

    private Powers() {}

    /** 10 to the power x. */
    public static double ten(double x) {
        return StrictMath.exp(LN_10 * x);
    }

    /** A temperature factor: theta to the power of so many degrees. @param lnTheta natural logarithm of theta */
    public static double theta(double lnTheta, double degrees) {
        return StrictMath.exp(lnTheta * degrees);
    }
}
