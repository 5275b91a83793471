package startwater.tank;

import java.util.Arrays;

/** Factors on the thresholds of the fish, one for each stratum that shares the water. Immutable. */
public final class Sensitivity {
    /** One stratum of ordinary fish. */
    public static final Sensitivity ORDINARY = of(1);

    private final double[] factors;

    private Sensitivity(double[] factors) {
        this.factors = factors;
    }

    /** @throws IllegalArgumentException without a factor, or where one is not positive */
    public static Sensitivity of(double... factors) {
        if (factors.length == 0 || !Arrays.stream(factors).allMatch(f -> f > 0)) {
            throw new IllegalArgumentException(
                    "Sensitivity: give at least one factor, each more than 0, not " + Arrays.toString(factors) + ".");
        }
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
