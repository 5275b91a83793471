package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/**
 * Limits on total ammonia nitrogen for wild fresh waters, mg N/L.
 *
 * <p>US EPA (2013) Aquatic Life Ambient Water Quality Criteria for Ammonia - Freshwater, EPA 822-R-13-001. Mussels drive
 * them, so they lie far under what kills farmed fish. Tabled there for pH 6.5 to 9.0 and 0 to 30 °C.
 */
public final class AmmoniaCriteria2013 {
    private static final String EQUATION = "EPA 822-R-13-001";
    private static final String SOURCE = "EPA 822-R-13-001, tables of the criteria by pH and temperature";
    /** pH of the tables. */
    public static final Validity PH = new Validity(EQUATION, "pH", 6.5, 9.0, SOURCE);
    /** Temperatures of the tables, °C. */
    public static final Validity TEMPERATURE_C = new Validity(EQUATION, "temperature in °C", 0, 30, SOURCE);

    private AmmoniaCriteria2013() {}

    /**
     * One-hour average where no salmon or trout live.
     *
     * @param ph 6.5 to 9.0
     * @param temperatureC 0 to 30 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double acuteWithoutSalmonids(double ph, double temperatureC) {
        check(ph, temperatureC);
        return acuteAtPh(ph) * StrictMath.min(51.93, mussels(temperatureC));
    }

    /**
     * One-hour average where salmon or trout live.
     *
     * @param ph 6.5 to 9.0
     * @param temperatureC 0 to 30 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double acuteWithSalmonids(double ph, double temperatureC) {
        check(ph, temperatureC);
        double salmonids = 0.275 * rising(7.204, ph) + 39.0 * falling(7.204, ph);
        return StrictMath.min(salmonids, acuteAtPh(ph) * mussels(temperatureC));
    }

    /**
     * Thirty-day average.
     *
     * @param ph 6.5 to 9.0
     * @param temperatureC 0 to 30 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double chronic(double ph, double temperatureC) {
        check(ph, temperatureC);
        double atPh = 0.8876 * (0.0278 * rising(7.688, ph) + 1.1994 * falling(7.688, ph));
        return atPh * 2.126 * StrictMath.pow(10, 0.028 * (20 - StrictMath.max(temperatureC, 7)));
    }

    private static double acuteAtPh(double ph) {
        return 0.7249 * (0.0114 * rising(7.204, ph) + 1.6181 * falling(7.204, ph));
    }

    private static double mussels(double temperatureC) {
        return 23.12 * StrictMath.pow(10, 0.036 * (20 - temperatureC));
    }

    private static double rising(double bend, double ph) {
        return 1 / (1 + StrictMath.pow(10, bend - ph));
    }

    private static double falling(double bend, double ph) {
        return 1 / (1 + StrictMath.pow(10, ph - bend));
    }

    private static void check(double ph, double temperatureC) {
        PH.check(ph);
        TEMPERATURE_C.check(temperatureC);
    }
}
