package startwater.tank;

import java.util.Arrays;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/** Factors on the thresholds of the fish, one for each stratum that shares the water. Immutable. */
public final class Sensitivity {
    /** Factors on thresholds. */
    public static final Validity FACTOR = new Validity(
            "sensitivity of fish", "factor on their thresholds", 1e-6, 1e12, "the spread within a stock is about 0.25");

    /** One stratum of ordinary fish. */
    public static final Sensitivity ORDINARY = of(1);

    private final double[] factors;

    private Sensitivity(double[] factors) {
        this.factors = factors;
    }

    /**
     * @throws OutOfRangeException for a factor that is not positive
     * @throws IllegalArgumentException without a factor
     */
    public static Sensitivity of(double... factors) {
        if (factors.length == 0) {
            throw new IllegalArgumentException("Sensitivity: give at least one factor.");
        }
        Arrays.stream(factors).forEach(FACTOR::check);
        return new Sensitivity(factors.clone());
    }

    public int strata() {
        return factors.length;
    }

    public double at(int stratum) {
        return factors[stratum];
    }

    @Override
    public boolean equals(Object o) {
        return o instanceof Sensitivity other && Arrays.equals(factors, other.factors);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(factors);
    }

    @Override
    public String toString() {
        return Arrays.toString(factors);
    }
}
