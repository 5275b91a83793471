package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/**
 * Free ammonia and free nitrous acid as the nitrification literature states them: mg/L of the whole molecule, not of its
 * nitrogen.
 *
 * <p>Anthonisen, Loehr, Prakasam and Srinath (1976) J. Water Pollut. Control Fed. 48:835-852, with their 273 and their
 * rounded masses 17/14 and 46/14. Their bands: nitrite oxidisers slow from 0.1 to 1.0 mg NH3/L, ammonia oxidisers from 10
 * to 150; both from 0.22 to 2.8 mg HNO2/L.
 */
public final class Anthonisen1976 {
    private static final String EQUATION = "Anthonisen et al. 1976";
    private static final String SOURCE = "J. Water Pollut. Control Fed. 48:835-852";
    /** pH at which the forms have a meaning. */
    public static final Validity PH = new Validity(EQUATION, "pH", 0, 14, SOURCE);
    /** Temperatures of the acid constants they rest on, °C. */
    public static final Validity TEMPERATURE_C = new Validity(EQUATION, "temperature in °C", 0, 50, SOURCE);
    /** Nitrogen, mg N/L: none is negative, and over this no such water was studied. */
    public static final Validity NITROGEN_MG_PER_L = new Validity(EQUATION, "nitrogen in mg N/L", 0, 5000, SOURCE);

    private Anthonisen1976() {}

    /**
     * Free ammonia, mg NH3/L.
     *
     * @param tanMgNPerL total ammonia nitrogen, mg N/L
     * @param ph 0 to 14
     * @param temperatureC 0 to 50 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double freeAmmoniaMgPerL(double tanMgNPerL, double ph, double temperatureC) {
        check(tanMgNPerL, ph, temperatureC);
        double base = StrictMath.pow(10, ph);
        return 17.0 / 14 * tanMgNPerL * base / (StrictMath.exp(6344 / (273 + temperatureC)) + base);
    }

    /**
     * Free nitrous acid, mg HNO2/L.
     *
     * @param nitriteMgNPerL nitrite, mg N/L
     * @param ph 0 to 14
     * @param temperatureC 0 to 50 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double freeNitrousAcidMgPerL(double nitriteMgNPerL, double ph, double temperatureC) {
        check(nitriteMgNPerL, ph, temperatureC);
        return 46.0 / 14 * nitriteMgNPerL / (StrictMath.exp(-2300 / (273 + temperatureC)) * StrictMath.pow(10, ph));
    }

    private static void check(double nitrogenMgPerL, double ph, double temperatureC) {
        NITROGEN_MG_PER_L.check(nitrogenMgPerL);
        PH.check(ph);
        TEMPERATURE_C.check(temperatureC);
    }
}
