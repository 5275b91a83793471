package startwater.quantity;

/** Conversions between the units of the field. Every method is exact to the factor named beside it. */
public final class Units {
    /** One milliequivalent of alkalinity as mg of CaCO3 (half the molar mass of CaCO3), the value used in the field. */
    public static final double MG_CACO3_PER_MEQ = 50.04;

    /** US liquid gallon, exact by definition: 231 cubic inches (NIST Handbook 44, appendix C). */
    public static final double LITRES_PER_US_GALLON = 3.785411784;

    /** Avoirdupois pound, exact by the international agreement of 1959. */
    public static final double GRAMS_PER_POUND = 453.59237;

    public static final double GRAMS_PER_OUNCE = GRAMS_PER_POUND / 16;

    /** Foot, exact by the international agreement of 1959. */
    public static final double METRES_PER_FOOT = 0.3048;

    /** Zero Celsius in kelvin, exact by definition. */
    public static final double KELVIN_AT_ZERO_C = 273.15;

    /** mg of nitrite ion that carry 1 mg of nitrite-N: 3.2844. */
    public static final double NITRITE_ION_PER_N = Molar.NO2 / Molar.N;

    /** mg of nitrate ion that carry 1 mg of nitrate-N: 4.4266. */
    public static final double NITRATE_ION_PER_N = Molar.NO3 / Molar.N;

    /** mg of NH3 that carry 1 mg of N: 1.2159. */
    public static final double AMMONIA_PER_N = Molar.NH3 / Molar.N;

    /** mg of NH4+ that carry 1 mg of N: 1.2879. */
    public static final double AMMONIUM_PER_N = Molar.NH4 / Molar.N;

    private Units() {}

    public static double litresFromUsGallons(double usGallons) {
        return usGallons * LITRES_PER_US_GALLON;
    }

    public static double usGallonsFromLitres(double litres) {
        return litres / LITRES_PER_US_GALLON;
    }

    public static double gramsFromPounds(double pounds) {
        return pounds * GRAMS_PER_POUND;
    }

    public static double poundsFromGrams(double grams) {
        return grams / GRAMS_PER_POUND;
    }

    public static double gramsFromOunces(double ounces) {
        return ounces * GRAMS_PER_OUNCE;
    }

    public static double ouncesFromGrams(double grams) {
        return grams / GRAMS_PER_OUNCE;
    }

    public static double metresFromFeet(double feet) {
        return feet * METRES_PER_FOOT;
    }

    public static double feetFromMetres(double metres) {
        return metres / METRES_PER_FOOT;
    }

    public static double celsiusFromFahrenheit(double temperatureF) {
        return (temperatureF - 32) / 1.8;
    }

    public static double fahrenheitFromCelsius(double temperatureC) {
        return temperatureC * 1.8 + 32;
    }

    public static double kelvinFromCelsius(double temperatureC) {
        return temperatureC + KELVIN_AT_ZERO_C;
    }

    /** Alkalinity in mg/L as CaCO3 from meq/L. */
    public static double caco3FromMeq(double meqPerL) {
        return meqPerL * MG_CACO3_PER_MEQ;
    }

    /** Alkalinity in meq/L from mg/L as CaCO3. */
    public static double meqFromCaco3(double caco3MgPerL) {
        return caco3MgPerL / MG_CACO3_PER_MEQ;
    }

    public static double nitriteIonFromN(double nitriteMgNPerL) {
        return nitriteMgNPerL * NITRITE_ION_PER_N;
    }

    public static double nitriteNFromIon(double nitriteIonMgPerL) {
        return nitriteIonMgPerL / NITRITE_ION_PER_N;
    }

    public static double nitrateIonFromN(double nitrateMgNPerL) {
        return nitrateMgNPerL * NITRATE_ION_PER_N;
    }

    public static double nitrateNFromIon(double nitrateIonMgPerL) {
        return nitrateIonMgPerL / NITRATE_ION_PER_N;
    }

    public static double ammoniaFromN(double nitrogenMgPerL) {
        return nitrogenMgPerL * AMMONIA_PER_N;
    }

    public static double nitrogenFromAmmonia(double ammoniaMgPerL) {
        return ammoniaMgPerL / AMMONIA_PER_N;
    }

    public static double ammoniumFromN(double nitrogenMgPerL) {
        return nitrogenMgPerL * AMMONIUM_PER_N;
    }

    public static double nitrogenFromAmmonium(double ammoniumMgPerL) {
        return ammoniumMgPerL / AMMONIUM_PER_N;
    }
}
