package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Powers;
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
        ALTITUDE_M.check(altitudeM);
        return atTemperature(temperatureC).mgPerL(pressureAtm(altitudeM), salinityGPerKg);
    }

    /**
     * Saturation at one temperature, worked out as far as it goes without pressure and salt.
     *
     * @param temperatureC 0 to 40 °C
     * @throws OutOfRangeException outside that range
     */
    public static AtTemperature atTemperature(double temperatureC) {
        TEMPERATURE_C.check(temperatureC);
        double kelvin = Units.kelvinFromCelsius(temperatureC);
        double perKelvin = 1 / kelvin;
        double logFresh = -139.34411
                + perKelvin
                        * (1.575701e5
                                + perKelvin * (-6.642308e7 + perKelvin * (1.243800e10 - perKelvin * 8.621949e11)));
        return new AtTemperature(
                StrictMath.exp(logFresh),
                0.017674 + perKelvin * (-10.754 + perKelvin * 2140.7),
                StrictMath.exp(11.8571 - 3840.70 / kelvin - 216961 / (kelvin * kelvin)),
                0.000975 + temperatureC * (-1.426e-5 + 6.436e-8 * temperatureC));
    }

    /** Change of the saturation of fresh water with temperature, as a share per °C, 0 to 40 °C; below 0. */
    public static double logSlope(double temperatureC) {
        double perKelvin = 1 / Units.kelvinFromCelsius(TEMPERATURE_C.check(temperatureC));
        return -perKelvin
                * perKelvin
                * (1.575701e5
                        + perKelvin * (2 * -6.642308e7 + perKelvin * (3 * 1.243800e10 - perKelvin * 4 * 8.621949e11)));
    }

    /**
     * Saturation at one temperature.
     *
     * @param freshMgPerL in fresh water at 1 atm, mg/L
     * @param fallPerGPerKg fall of its natural logarithm with salt, per g/kg
     * @param vapourAtm pressure of water vapour, atm
     * @param theta second coefficient of the pressure term, which takes the temperature in °C
     */
    public record AtTemperature(double freshMgPerL, double fallPerGPerKg, double vapourAtm, double theta) {
        /**
         * Oxygen at saturation, mg/L.
         *
         * @param pressureAtm air pressure, see {@link OxygenSaturation#pressureAtm}
         * @param salinityGPerKg 0 to 40 g/kg
         * @throws OutOfRangeException at another salinity
         */
        public double mgPerL(double pressureAtm, double salinityGPerKg) {
            SALINITY_G_PER_KG.check(salinityGPerKg);
            return freshMgPerL
                    * Powers.quickExp(-fallPerGPerKg * salinityGPerKg)
                    * pressureAtm
                    * ((1 - vapourAtm / pressureAtm) * (1 - theta * pressureAtm))
                    / ((1 - vapourAtm) * (1 - theta));
        }
    }

    /** Air pressure of the standard atmosphere, atm, 0 to 4000 m. */
    public static double pressureAtm(double altitudeM) {
        ALTITUDE_M.check(altitudeM);
        return StrictMath.pow(1 - 2.25577e-5 * altitudeM, 5.25588);
    }
}
