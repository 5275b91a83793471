package startwater.biofilter;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/**
 * Two-step nitrification by a fixed-film filter: limiting terms, growth and stoichiometry.
 *
 * <p>Activities ({@code aob}, {@code nob}) are what the ammonia and nitrite oxidisers could oxidise without limitation at
 * 20 °C, in mg N/d for the whole system. The constants lie in or under the published ranges (Sin et al. 2008; Hiatt and
 * Grady 2008: growth 0.5-2.1 and 0.4-1.05 per day at 20 °C); they are low because they are net of wash-off and lag. The
 * limiting terms multiply both the rate and the growth, so a starved filter shrinks.
 */
public final class Nitrification {
    /** Half-saturation of ammonia oxidation, mg N/L (published 0.14-1, Sin et al. 2008). */
    public static final double AMMONIA_HALF_MG_PER_L = 0.4;
    /** Half-saturation of nitrite oxidation, mg N/L (published 0.1-3, Sin et al. 2008). */
    public static final double NITRITE_HALF_MG_PER_L = 0.5;
    /** Oxygen half-saturation of ammonia oxidisers, mg/L (published 0.1-1.45, Sin et al. 2008). */
    public static final double OXYGEN_HALF_AOB_MG_PER_L = 0.5;
    /** Oxygen half-saturation of nitrite oxidisers, mg/L (published 0.3-1.5, Sin et al. 2008). */
    public static final double OXYGEN_HALF_NOB_MG_PER_L = 0.9;
    /** Un-ionised ammonia that halves ammonia oxidation, mg N/L (Anthonisen et al. 1976: 10-150 as NH3). */
    public static final double AMMONIA_INHIBITION_AOB_MG_PER_L = 10;
    /** Un-ionised ammonia that halves nitrite oxidation, mg N/L (Park and Bae 2009: 0.64; Anthonisen 0.1-1.0 as NH3). */
    public static final double AMMONIA_INHIBITION_NOB_MG_PER_L = 0.8;
    /** Nitrous acid that halves nitrite oxidation, mg N/L (Anthonisen et al. 1976: 0.22-2.8 as HNO2). */
    public static final double NITROUS_ACID_INHIBITION_NOB_MG_PER_L = 0.2;

    /** Temperature factors per degree (Vannecke and Volcke: 68 and 44 kJ/mol, equivalent to 1.098 and 1.062). */
    public static final double THETA_AOB = 1.09;

    public static final double THETA_NOB = 1.06;
    /** Natural logarithms of the temperature factors, from which a rate at T takes one exponential. */
    public static final double LN_THETA_AOB = StrictMath.log(THETA_AOB);

    public static final double LN_THETA_NOB = StrictMath.log(THETA_NOB);
    /** Growth at 20 °C without limitation, per day; both groups. */
    public static final double GROWTH_PER_DAY = 0.50;
    /** Decay at 20 °C, per day (published 0.07-0.3 gross; net of what the limiting terms already take). */
    public static final double DECAY_PER_DAY = 0.06;

    public static final double THETA_DECAY = 1.05;
    public static final double LN_THETA_DECAY = StrictMath.log(THETA_DECAY);

    /** Largest areal rate, mg N/m2/d, published at 25-28 °C (0.22-1.08 g/m2/d on plastic media with tilapia). */
    public static final double AREAL_LIMIT_MG_PER_M2_DAY = 750;

    static final double AREAL_LIMIT_TEMPERATURE_C = 26.5;

    /** g O2 per g N in step one and two, without growth (stoichiometry; 4.57 in all). */
    public static final double OXYGEN_STEP_ONE = 3.43;

    public static final double OXYGEN_STEP_TWO = 1.14;
    /** Alkalinity taken by step one: 2 mol of acid per mol N, 7.14 g CaCO3 per g N; step two takes none. */
    public static final double ACID_EQ_PER_MOL_N = 2;

    /** Nitrogen mineralised per day at 20 °C, share of what lies there; oxygen used per mg N mineralised. */
    public static final double MINERALISATION_PER_DAY = 0.20;

    public static final double THETA_MINERALISATION = 1.07;
    public static final double LN_THETA_MINERALISATION = StrictMath.log(THETA_MINERALISATION);
    public static final double MINERALISATION_OXYGEN_HALF_MG_PER_L = 0.2;
    public static final double OXYGEN_PER_MINERALISED_N = 15;

    /**
     * pH of the published rates: 5 to 9 (Villaverde et al. 1997). Up to 10, where both groups stand still, the curve is
     * carried on.
     */
    public static final Validity PH = new Validity(
            "nitrification by pH",
            "pH",
            5,
            10,
            "Villaverde, Garcia-Encina and Fdz-Polanco 1997, Water Res.: 5.0 to 9.0");
    /** Temperatures to which the factors theta are carried, °C: to where fish are kept. */
    public static final Validity TEMPERATURE_C = new Validity(
            "nitrification by temperature",
            "temperature in °C",
            0,
            40,
            "Vannecke and Volcke: activation energies; Speece 1973: 5 to 22.5 °C; carried to where fish are kept");
    /** Temperatures of the acid constant of nitrous acid, °C. */
    public static final Validity NITROUS_ACID_TEMPERATURE_C = new Validity(
            "Anthonisen et al. 1976", "temperature in °C", 0, 50, "J. Water Pollut. Control Fed. 48:835-852");
    /** Areas of media, m2. */
    public static final Validity MEDIA_M2 =
            new Validity("areal limit of nitrification", "media in m2", 1e-6, 1e6, "0.22-1.08 g/m2/d on plastic media");
    /** Temperature factors. */
    public static final Validity THETA =
            new Validity("areal limit of nitrification", "theta", 1, 1.2, "Vannecke and Volcke: 1.062 and 1.098");

    private static final double PH_LOW_H = StrictMath.pow(10, -6.5);
    private static final double PH_HIGH_H = StrictMath.pow(10, -9.4);
    private static final double ALKALINITY_HALF_CUBED = 0.35 * 0.35 * 0.35;

    private Nitrification() {}

    /** The effect of pH, 0..1: half at 6.5 on the acid side (steep) and at 9.4 on the other. @param h activity of H+, mol/L */
    public static double phFactor(double h) {
        double acid = h / PH_LOW_H;
        return 1 / (1 + acid * acid + PH_HIGH_H / h);
    }

    /**
     * The effect of alkalinity, 0..1. A floor, as published (Water Environ. Res. 75(3), 2003): unaffected at 45 mg/L
     * CaCO3 and over, impaired at 40 and under. @param alkalinityMeqPerL meq/L
     */
    public static double alkalinityFactor(double alkalinityMeqPerL) {
        double a = Math.max(0, alkalinityMeqPerL);
        double cubed = a * a * a;
        return cubed / (ALKALINITY_HALF_CUBED + cubed);
    }

    /**
     * Acid constant of nitrous acid (Anthonisen et al. 1976: Ka = exp(-2300/T)).
     *
     * @param temperatureC 0 to 50 °C
     * @throws OutOfRangeException outside that range
     */
    public static double nitrousAcidConstant(double temperatureC) {
        return StrictMath.exp(-2300 / (NITROUS_ACID_TEMPERATURE_C.check(temperatureC) + 273.15));
    }

    /**
     * The most that media of this area can carry, as an activity at 20 °C, mg N/d, for a group with temperature factor
     * {@code theta}.
     *
     * @throws OutOfRangeException when the area is not over 0 m2 or theta not between 1 and 1.2
     */
    public static double capacityMgPerDay(double mediaAreaM2, double theta) {
        return MEDIA_M2.check(mediaAreaM2)
                * AREAL_LIMIT_MG_PER_M2_DAY
                / StrictMath.exp(StrictMath.log(THETA.check(theta)) * (AREAL_LIMIT_TEMPERATURE_C - 20));
    }
}
