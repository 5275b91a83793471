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

    /**
     * Natural logarithm of a positive, normal number by a short series, within 1e-9 of the true one. For sums over many
     * steps, where {@code StrictMath.log} would cost more than the step.
     */
    public static double quickLn(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int exponent = (int) (bits >> 52) - 1023;
        double mantissa = Double.longBitsToDouble((bits & MANTISSA) | ONE);
        if (mantissa > ROOT_2) {
            mantissa /= 2;
            exponent++;
        }
        double s = (mantissa - 1) / (mantissa + 1);
        double square = s * s;
        return exponent * LN_2
                + 2 * s * (1 + square * (1.0 / 3 + square * (1.0 / 5 + square * (1.0 / 7 + square * (1.0 / 9)))));
    }

    /**
     * e to the power x for |x| up to 700, within 1e-11 of the true one, in a third of the time of {@code StrictMath.exp}:
     * powers of two, and for what remains the (4,4) Padé approximation.
     */
    public static double quickExp(double x) {
        double twos = Math.rint(x * (1 / LN_2));
        double r = x - twos * LN_2;
        double square = r * r;
        double even = 1680 + square * (180 + square);
        double odd = r * (840 + 20 * square);
        return (even + odd) / (even - odd) * Double.longBitsToDouble(((long) twos + 1023) << 52);
    }

    private static final long MANTISSA = (1L << 52) - 1;
    private static final long ONE = 1023L << 52;
    private static final double ROOT_2 = StrictMath.sqrt(2);
    private static final double LN_2 = StrictMath.log(2);
}
