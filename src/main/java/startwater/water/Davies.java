package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;
import startwater.quantity.Validity;

/**
 * Activity coefficient of an ion.
 *
 * <p>Davies (1962) Ion Association: log10 γ = -A z² (√I/(1+√I) - 0.3 I), usable to an ionic strength of 0.5 mol/L. A =
 * 1.82e6 (εT)^-1.5 (Stumm and Morgan 1996, Aquatic Chemistry, chapter 3), with the dielectric constant of water from
 * Malmberg and Maryott (1956) J. Res. Natl. Bur. Stand. 56:1-8.
 */
public final class Davies {
    /** Ionic strengths, mol/L. */
    public static final Validity IONIC_STRENGTH =
            new Validity("Davies 1962", "ionic strength in mol/L", 0, 0.5, "Ion Association, 1962");
    /** Temperatures of the slope, °C; the dielectric constant is published to 100. */
    public static final Validity TEMPERATURE_C = new Validity(
            "Davies 1962", "temperature in °C", 0, 50, "Malmberg and Maryott 1956, J. Res. Natl. Bur. Stand. 56:1-8");

    private Davies() {}

    /**
     * Decimal logarithm of the activity coefficient.
     *
     * @param charge charge of the ion, with or without its sign
     * @param ionicStrength mol/L, 0 to 0.5
     * @param temperatureC 0 to 50 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double log10Gamma(int charge, double ionicStrength, double temperatureC) {
        return -slope(temperatureC) * charge * charge * salt(ionicStrength);
    }

    /**
     * How the ionic strength enters: the decimal logarithm is minus slope times the square of the charge times this.
     *
     * @param ionicStrength mol/L, 0 to 0.5
     * @throws OutOfRangeException outside that range
     */
    static double salt(double ionicStrength) {
        IONIC_STRENGTH.check(ionicStrength);
        double root = StrictMath.sqrt(ionicStrength);
        return root / (1 + root) - 0.3 * ionicStrength;
    }

    /** A of the equation, at 0 to 50 °C. @throws OutOfRangeException outside that range */
    static double slope(double temperatureC) {
        TEMPERATURE_C.check(temperatureC);
        double dielectric = 87.740 + temperatureC * (-0.40008 + temperatureC * (9.398e-4 - 1.410e-6 * temperatureC));
        double product = dielectric * Units.kelvinFromCelsius(temperatureC);
        return 1.82e6 / (product * StrictMath.sqrt(product));
    }
}
