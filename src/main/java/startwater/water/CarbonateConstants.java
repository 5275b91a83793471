package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Powers;
import startwater.quantity.Units;
import startwater.quantity.Validity;

/**
 * Equilibrium constants of the carbonate system at zero ionic strength.
 *
 * <p>log10 K = A + B T + C/T + D log10 T + E/T², T in kelvin. Plummer and Busenberg (1982) Geochim. Cosmochim. Acta
 * 46:1011-1040; Kw in the same form as in the USGS database phreeqc.dat. Published for 0 to 90 °C, used here for 0 to
 * 50 °C. The molal and the litre scale are taken as one (within 1.2 % over that range).
 *
 * @param k1 first dissociation of CO2*, on activities
 * @param k2 second dissociation, on activities
 * @param kh solubility of CO2, mol/L per atm
 * @param kw ion product of water, on activities
 */
public record CarbonateConstants(double k1, double k2, double kh, double kw) {
    /** Temperatures for which the constants are used, °C; published to 90. */
    public static final Validity TEMPERATURE_C = new Validity(
            "Plummer and Busenberg 1982", "temperature in °C", 0, 50, "Geochim. Cosmochim. Acta 46:1011-1040");

    /**
     * The constants at a temperature.
     *
     * @param temperatureC 0 to 50 °C
     * @throws OutOfRangeException outside that range
     */
    public static CarbonateConstants at(double temperatureC) {
        TEMPERATURE_C.check(temperatureC);
        double kelvin = Units.kelvinFromCelsius(temperatureC);
        double log10Kelvin = StrictMath.log10(kelvin);
        double log10K1 = -356.3094
                - 0.06091964 * kelvin
                + 21834.37 / kelvin
                + 126.8339 * log10Kelvin
                - 1684915.0 / (kelvin * kelvin);
        double log10K2 = -107.8871
                - 0.03252849 * kelvin
                + 5151.79 / kelvin
                + 38.92561 * log10Kelvin
                - 563713.9 / (kelvin * kelvin);
        double log10Kh = 108.3865
                + 0.01985076 * kelvin
                - 6919.53 / kelvin
                - 40.45154 * log10Kelvin
                + 669365.0 / (kelvin * kelvin);
        double log10Kw = -283.971
                - 0.05069842 * kelvin
                + 13323.0 / kelvin
                + 102.24447 * log10Kelvin
                - 1119669.0 / (kelvin * kelvin);
        return new CarbonateConstants(
                Powers.ten(log10K1), Powers.ten(log10K2), Powers.ten(log10Kh), Powers.ten(log10Kw));
    }
}
