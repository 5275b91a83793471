package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Units;
import startwater.quantity.Validity;

/**
 * Oxygen that water holds in balance with moist air.
 *
 * <p>Benson and Krause (1984) Limnol. Oceanogr. 29:620-632, as in Standard Methods 4500-O, with their salt and pressure
 * terms. Pressure at an altitude from the standard atmosphere: P = (1 - 2.25577e-5 h)^5.25588 atm.
 */
public final class OxygenSaturation {
    private static final String EQUATION = "Benson and Krause 1984";
    private static final String SOURCE = "Limnol. Oceanogr. 29:620-632";
    /** Temperatures, °C. */
    public static final Validity TEMPERATURE_C = new Validity(EQUATION, "temperature in °C", 0, 40, SOURCE);
    /** Salinities, g/kg. */
    public static final Validity SALINITY_G_PER_KG = new Validity(EQUATION, "salinity in g/kg", 0, 40, SOURCE);
    /** Altitudes, m: with them pressure stays between 0.61 and 1 atm. */
    public static final Validity ALTITUDE_M = new Validity(
            "standard atmosphere",
            "altitude in m",
            0,
            4000,
            "ISO 2533; pressure terms good from 0.5 atm up (from memory)");

    private OxygenSaturation() {}

    /**
     * Oxygen at saturation, mg/L.
     *
     * @param temperatureC 0 to 40 °C
     * @param altitudeM 0 to 4000 m above the sea
     * @param salinityGPerKg 0 to 40 g/kg
     * @throws OutOfRangeException outside those ranges
     */
    public static double mgPerL(double temperatureC, double altitudeM, double salinityGPerKg) {
        TEMPERATURE_C.check(temperatureC);
        ALTITUDE_M.check(altitudeM);
        SALINITY_G_PER_KG.check(salinityGPerKg);
        double kelvin = Units.kelvinFromCelsius(temperatureC);
        double perKelvin = 1 / kelvin;
        double logFresh = -139.34411
                + perKelvin
                        * (1.575701e5
                                + perKelvin * (-6.642308e7 + perKelvin * (1.243800e10 - perKelvin * 8.621949e11)));
        double logSalt = -salinityGPerKg * (0.017674 + perKelvin * (-10.754 + perKelvin * 2140.7));
        return StrictMath.exp(logFresh + logSalt) * pressureFactor(temperatureC, kelvin, pressureAtm(altitudeM));
    }

    /** Air pressure of the standard atmosphere, atm, 0 to 4000 m. */
    public static double pressureAtm(double altitudeM) {
        ALTITUDE_M.check(altitudeM);
        return StrictMath.pow(1 - 2.25577e-5 * altitudeM, 5.25588);
    }

    /** Saturation at this pressure over that at 1 atm. Theta takes the temperature in °C. */
    private static double pressureFactor(double temperatureC, double kelvin, double pressureAtm) {
        double vapourAtm = StrictMath.exp(11.8571 - 3840.70 / kelvin - 216961 / (kelvin * kelvin));
        double theta = 0.000975 + temperatureC * (-1.426e-5 + 6.436e-8 * temperatureC);
        return pressureAtm
                * ((1 - vapourAtm / pressureAtm) * (1 - theta * pressureAtm))
                / ((1 - vapourAtm) * (1 - theta));
    }
}
