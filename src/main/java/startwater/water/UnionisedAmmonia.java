package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Powers;
import startwater.quantity.Units;
import startwater.quantity.Validity;

/**
 * Share of total ammonia nitrogen that is un-ionised (NH3) in fresh water.
 *
 * <p>Emerson, Russo, Lund and Thurston (1975) J. Fish. Res. Board Can. 32:2379-2383: pKa = 0.09018 + 2729.92 / T(K), for
 * 0 to 50 °C and zero salinity. The tables printed since were computed with T = t + 273.15, and so is this. Salt lowers
 * the share (about 12 % at 1 g/L NaCl), so leaving it out errs on the safe side.
 */
public final class UnionisedAmmonia {
    private static final String EQUATION = "Emerson et al. 1975";
    private static final String SOURCE = "J. Fish. Res. Board Can. 32:2379-2383";
    /** Temperatures of the acid constant, °C. */
    public static final Validity TEMPERATURE_C = new Validity(EQUATION, "temperature in °C", 0, 50, SOURCE);
    /** Salt up to which the share of fresh water is used, g/kg: it is then too high by about an eighth to a quarter. */
    public static final Validity SALINITY_G_PER_KG = new Validity(
            EQUATION, "salinity in g/kg", 0, 5, "published for fresh water; 12 % less NH3 at 1 g/L NaCl by PHREEQC");
    /** pH at which a share has a meaning. */
    public static final Validity PH = new Validity(EQUATION, "pH", 0, 14, SOURCE);

    private UnionisedAmmonia() {}

    /**
     * Acid constant of ammonium, as its negative decimal logarithm.
     *
     * @param temperatureC water temperature, 0 to 50 °C
     * @throws OutOfRangeException outside that range
     */
    public static double pKa(double temperatureC) {
        TEMPERATURE_C.check(temperatureC);
        return 0.09018 + 2729.92 / Units.kelvinFromCelsius(temperatureC);
    }

    /** Acid constant of ammonium itself, mol/L: 10 to the power -pKa. @param temperatureC 0 to 50 °C */
    public static double acidConstant(double temperatureC) {
        return Powers.ten(-pKa(temperatureC));
    }

    /**
     * Un-ionised share, 0 to 1.
     *
     * @param ph 0 to 14
     * @param temperatureC water temperature, 0 to 50 °C
     * @throws OutOfRangeException outside those ranges
     */
    public static double fraction(double ph, double temperatureC) {
        PH.check(ph);
        return 1 / (1 + Powers.ten(pKa(temperatureC) - ph));
    }
}
