package startwater.fish;

import java.util.List;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Powers;
import startwater.quantity.Validity;

/**
 * What one species needs, bears and eats. Every number has its source and a tag in the species file it was read from;
 * kinetics marked "tuned" there were solved so that the stated LC50 comes out.
 *
 * @param id file name without ending, for example {@code channel-catfish}
 * @param shape which drawing stands for it
 * @param curves survival curve by {@link Stressor}, in its order
 * @param chlorideHalfMgPerL chloride that halves the nitrite that counts, mg/L
 * @param methaemoglobinHalfMgPerL effective nitrite damage at which half the haemoglobin is bound, mg N/L
 * @param coldLimitC below this temperature cold is a stressor, °C
 * @param warmLimitC above this temperature heat is a stressor, °C
 * @param appetite how appetite falls
 * @param feed the feed table
 * @param guidance levels from which stress counts
 * @param ammoniaSizeExponent ammonia thresholds grow with this power of body mass
 * @param criticalOxygenMgPerL oxygen under which fish with sound blood run short, mg/L
 * @param respiration uptake of resting, fasting fish
 */
public record Species(
        String id,
        Shape shape,
        List<SurvivalCurve> curves,
        double chlorideHalfMgPerL,
        double methaemoglobinHalfMgPerL,
        double coldLimitC,
        double warmLimitC,
        Appetite appetite,
        FeedTable feed,
        Guidance guidance,
        double ammoniaSizeExponent,
        double criticalOxygenMgPerL,
        Respiration respiration) {
    /** Body mass at which the ammonia thresholds of the file hold, g. */
    public static final double AMMONIA_REFERENCE_MASS_G = 12;
    /** Nitrogen in the live body, mg N per g (16 % protein, 16 % of it N). */
    public static final double BODY_NITROGEN_MG_PER_G = 25.6;
    /** Hill exponent of methaemoglobin against damage (both published catfish series give 1.6). */
    public static final double METHAEMOGLOBIN_HILL = 1.6;
    /** pH outside this range is a stressor (survival range of tilapia; EIFAC 1969 for others). */
    public static final double PH_LOW = 5;

    public static final double PH_HIGH = 9.5;

    /** Which drawing stands for the species. */
    public enum Shape {
        TILAPIA,
        CATFISH,
        TROUT,
        CARP
    }

    /**
     * Levels from which stress counts.
     *
     * @param ammoniaMgPerL un-ionised ammonia, mg N/L
     * @param nitriteMgPerL nitrite counted against chloride, mg N/L
     * @param oxygenMgPerL oxygen, mg/L
     * @param chlorineMgPerL total residual chlorine, mg/L
     * @param carbonDioxideMgPerL mg/L
     * @param warmingCPerDay rise of temperature, °C a day
     * @param coolingCPerDay fall of temperature, °C a day
     */
    public record Guidance(
            double ammoniaMgPerL,
            double nitriteMgPerL,
            double oxygenMgPerL,
            double chlorineMgPerL,
            double carbonDioxideMgPerL,
            double warmingCPerDay,
            double coolingCPerDay) {}

    /**
     * Oxygen uptake of resting, fasting fish: uptake of a fish of one gram at 25 °C, times mass to minus the exponent,
     * times theta for each degree over 25.
     *
     * @param uptakeOfOneGramMgPerKgHour mg/kg/h at 25 °C
     * @param massExponent of mass in g
     * @param theta a degree
     */
    public record Respiration(double uptakeOfOneGramMgPerKgHour, double massExponent, double theta) {
        private static final String EQUATION = "oxygen uptake by mass and temperature";
        private static final String SOURCE =
                "engineering handbooks; regressions of Rakocy, Boyd et al. 1978 and Muller-Feuga 1978 lie within a factor 2";
        /** Body masses, g. */
        public static final Validity MASS_G = new Validity(EQUATION, "body mass in g", 1e-4, 1e5, SOURCE);
        /** Temperatures, °C. */
        public static final Validity TEMPERATURE_C = new Validity(EQUATION, "temperature in °C", 0, 40, SOURCE);
        /** Uptake of one gram at 25 °C, mg/kg/h. */
        public static final Validity UPTAKE = new Validity(EQUATION, "uptake in mg/kg/h", 1, 1e4, SOURCE);
        /** Exponents of mass. */
        public static final Validity EXPONENT = new Validity(EQUATION, "exponent of mass", 0, 0.5, SOURCE);
        /** Factors a degree. */
        public static final Validity THETA = new Validity(EQUATION, "theta", 1, 1.2, SOURCE);

        /** @throws OutOfRangeException for an uptake, exponent or theta that no fish has */
        public Respiration {
            UPTAKE.check(uptakeOfOneGramMgPerKgHour);
            EXPONENT.check(massExponent);
            THETA.check(theta);
        }

        /**
         * mg/kg/h.
         *
         * @param massG g
         * @param temperatureC 0 to 40 °C
         * @throws OutOfRangeException outside those ranges
         */
        public double mgPerKgHour(double massG, double temperatureC) {
            MASS_G.check(massG);
            TEMPERATURE_C.check(temperatureC);
            return uptakeOfOneGramMgPerKgHour
                    * Powers.quickExp(
                            Powers.quickLn(theta) * (temperatureC - 25) - massExponent * Powers.quickLn(massG));
        }
    }

    private static final String OF_SPECIES = "species";
    private static final String FILE = "the species file names its source";
    /** Chloride that halves the nitrite that counts, mg/L: tilapia 3.6 to 25, trout and catfish less. */
    public static final Validity CHLORIDE_HALF_MG_PER_L =
            new Validity(OF_SPECIES, "chloride that halves nitrite in mg/L", 0.01, 1000, FILE);
    /** Damage by nitrite at which half the haemoglobin is bound, mg N/L. */
    public static final Validity METHAEMOGLOBIN_HALF_MG_PER_L =
            new Validity(OF_SPECIES, "nitrite that binds half the blood in mg N/L", 1e-3, 100, FILE);
    /** Limits of temperature, °C. */
    public static final Validity LIMIT_C = new Validity(OF_SPECIES, "limit of temperature in °C", 0, 45, FILE);
    /** Oxygen under which fish run short, mg/L. */
    public static final Validity CRITICAL_OXYGEN_MG_PER_L =
            new Validity(OF_SPECIES, "critical oxygen in mg/L", 0, 8, FILE);
    /** Exponents of the ammonia thresholds by mass. */
    public static final Validity SIZE_EXPONENT = new Validity(
            OF_SPECIES,
            "exponent of mass",
            -1,
            1,
            "Abdalla and McNabb 1998: 0.25 from 3 to 45 g; 0 where none is known");

    /** @throws OutOfRangeException for a value that no fish has */
    public Species {
        curves = List.copyOf(curves);
        CHLORIDE_HALF_MG_PER_L.check(chlorideHalfMgPerL);
        METHAEMOGLOBIN_HALF_MG_PER_L.check(methaemoglobinHalfMgPerL);
        LIMIT_C.check(coldLimitC);
        LIMIT_C.check(warmLimitC);
        CRITICAL_OXYGEN_MG_PER_L.check(criticalOxygenMgPerL);
        SIZE_EXPONENT.check(ammoniaSizeExponent);
        if (curves.size() != Stressor.COUNT) {
            throw new IllegalArgumentException("A species needs one survival curve for each of "
                    + List.of(Stressor.values()) + ", found " + curves.size());
        }
    }

    public SurvivalCurve curve(Stressor stressor) {
        return curves.get(stressor.ordinal());
    }

    /**
     * The factor on the ammonia thresholds for fish of this mass, g.
     *
     * @throws OutOfRangeException for a mass that is not positive
     */
    public double ammoniaThresholdFactor(double massG) {
        return Powers.quickExp(
                ammoniaSizeExponent * Powers.quickLn(Respiration.MASS_G.check(massG) / AMMONIA_REFERENCE_MASS_G));
    }

    /** The factor that lets un-ionised ammonia count more as the water turns acid: C = NH3-N / factor. @param h mol/L */
    public static double ammoniumFactor(double h) {
        double x = h / 1e-7;
        return x > X_AT_PH_6_5 ? 0.7715 / x : 1 / (1 + 0.31 * x * x);
    }

    private static final double X_AT_PH_6_5 = StrictMath.pow(10, 0.5);

    /** Methaemoglobin share 0..1 at this nitrite damage, mg N/L effective. */
    public double methaemoglobin(double nitriteDamage) {
        double p = StrictMath.pow(Math.max(0, nitriteDamage) / methaemoglobinHalfMgPerL, METHAEMOGLOBIN_HILL);
        return p / (1 + p);
    }

    /** The same by a table, within 1e-5: a power in every rate would cost more than all else. */
    public double boundBlood(double nitriteDamage) {
        double x = Math.max(0, nitriteDamage) / methaemoglobinHalfMgPerL();
        return BoundBlood.share(x / (1 + x));
    }

    /** Bound share against x/(1 + x), x being damage over the half level. */
    private static final class BoundBlood {
        private static final int CELLS = 1024;
        private static final double[] TABLE = new double[CELLS + 1];

        static {
            for (int i = 0; i < CELLS; i++) {
                double u = (double) i / CELLS;
                double power = StrictMath.pow(u / (1 - u), METHAEMOGLOBIN_HILL);
                TABLE[i] = power / (1 + power);
            }
            TABLE[CELLS] = 1;
        }

        static double share(double u) {
            double cell = CELLS * u;
            int i = (int) cell;
            return i >= CELLS ? 1 : TABLE[i] + (cell - i) * (TABLE[i + 1] - TABLE[i]);
        }
    }

    /** Table ration as a share of body mass per day. @param massG g, @param temperatureC °C */
    public double tableRationFraction(double massG, double temperatureC) {
        return feed.fractionAtBest(massG) * appetite.temperature(temperatureC);
    }

    /** The species with this id. @throws IllegalArgumentException naming the ids there are */
    public static Species byId(String id) {
        return SpeciesFiles.byId(id);
    }

    public static List<String> ids() {
        return SpeciesFiles.ids();
    }
}
