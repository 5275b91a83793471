package startwater.tank;

import static startwater.tank.TankLayout.*;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.quantity.Molar;
import startwater.quantity.Powers;
import startwater.water.CarbonateSystem;
import startwater.water.UnionisedAmmonia;

/** What follows from the state of a system: pH, toxic ammonia, survivors. None of it is a state of its own. */
public final class TankReadings {
    /** Fewer fish than this are none; their mean mass would be rounding. */
    static final double LEAST_FISH = 1e-4;

    private TankReadings() {}

    public static double ph(double[] y) {
        return -StrictMath.log10(y[H_ION]);
    }

    /** Un-ionised ammonia, mg N/L. */
    public static double toxicAmmoniaMgPerL(double[] y) {
        double kn = UnionisedAmmonia.acidConstant(y[TEMPERATURE]);
        return y[TAN] * kn / (kn + y[H_ION]);
    }

    /** Nitrite counted against chloride, mg N/L. */
    public static double effectiveNitriteMgPerL(double[] y, double chlorideHalfMgPerL) {
        return y[NITRITE] / (1 + y[CHLORIDE] / chlorideHalfMgPerL);
    }

    /** Dissolved carbon dioxide, mg/L. */
    public static double carbonDioxideMgPerL(double[] y) {
        return carbonate(y).co2(y[H_ION], y[DIC]) * Molar.CO2;
    }

    public static double alkalinityMgPerL(double[] y) {
        return y[ALKALINITY] * SourceWater.MG_CACO3_PER_MEQ;
    }

    /** The carbonate system at this temperature and salt. */
    static CarbonateSystem carbonate(double[] y) {
        return TemperatureTerms.near(y[TEMPERATURE])
                .carbonate
                .with(CarbonateSystem.ionicStrength(y[ALKALINITY], y[CHLORIDE], y[NITRITE], y[NITRATE]));
    }

    /** Solves pH afresh, as is due after a dose or a change. */
    static void settlePh(double[] y) {
        y[H_ION] = carbonate(y).settleH(y[ALKALINITY], y[DIC], y[TAN], y[H_ION]);
    }

    /** Share of the stocked fish alive, mean over the strata. */
    public static double survival(double[] y, int strata) {
        double sum = 0;
        for (int s = 0; s < strata; s++) {
            sum += y[survivors(s)];
        }
        return sum / strata;
    }

    /** Share of one stratum's fish alive, from its hazards: exp(-sum). */
    public static double survivalOf(double[] y, int stratum) {
        double sum = 0;
        for (int k = 0; k < Stressor.COUNT; k++) {
            sum += y[survivors(stratum) + 1 + k];
        }
        return StrictMath.exp(-sum);
    }

    /** Share of one stratum's fish that died of a cause: all causes add up to 1 - survival. */
    public static double deathsBy(double[] y, int stratum, Stressor stressor) {
        double sum = 0;
        for (int k = 0; k < Stressor.COUNT; k++) {
            sum += y[survivors(stratum) + 1 + k];
        }
        return sum > 0 ? -StrictMath.expm1(-sum) * y[hazard(stratum, stressor)] / sum : 0;
    }

    /** Fish of one stratum's sensitivity that died of a cause, expected number were all of the stock like it. */
    public static double deadBy(double[] y, int stratum, Stressor stressor) {
        return y[STOCKED] * deathsBy(y, stratum, stressor);
    }

    /** Fish alive, expected number. */
    public static double fishAlive(double[] y, int strata) {
        return y[STOCKED] * survival(y, strata);
    }

    /** Mean body mass, g; 0 without fish. */
    public static double massG(double[] y, int strata) {
        double alive = fishAlive(y, strata);
        return alive > LEAST_FISH ? y[FISH_N] / (alive * Species.BODY_NITROGEN_MG_PER_G) : 0;
    }

    public static double biomassG(double[] y, int strata) {
        return y[STOCKED] > 0 ? y[FISH_N] / Species.BODY_NITROGEN_MG_PER_G : 0;
    }

    /** Share of haemoglobin bound by nitrite, 0..1; 0 without fish. */
    public static double methaemoglobin(double[] y, @Nullable Species species) {
        return species == null ? 0 : species.methaemoglobin(y[DAMAGE + Stressor.NITRITE.ordinal()]);
    }

    /** Appetite 0..1 of the fish at this moment; 0 without fish. */
    public static double appetite(double[] y, TankParameters p) {
        Species species = p.species();
        if (species == null) {
            return 0;
        }
        double kn = TemperatureTerms.near(y[TEMPERATURE]).carbonate.ammoniumAcidConstant();
        double ammonia = y[TAN] * kn / (kn + y[H_ION]) / Species.ammoniumFactor(y[H_ION]);
        double bound = species.boundBlood(y[DAMAGE + Stressor.NITRITE.ordinal()]);
        return species.appetite().of(ammonia, y[OXYGEN], bound, y[TEMPERATURE]);
    }

    /** Hours that a filter without flow still bears before it begins to foul; 0 once it does. */
    public static double hoursBorne(double[] y) {
        return Math.max(0, FilterBed.BORNE_HOURS - y[STAGNANT_HOURS]);
    }

    /** All nitrogen in water, filter bed solids and fish, mg N. */
    public static double nitrogenMg(double[] y, double volumeL) {
        double dissolved = y[TAN]
                + y[NITRITE]
                + y[NITRATE]
                + y[ORGANIC_N]
                + y[COMBINED_CHLORINE] * ChlorineReactions.NITROGEN_PER_COMBINED;
        return dissolved * volumeL + y[HELD_N] + y[LOOSE_N] + y[GUT_1] + y[GUT_2] + y[FISH_N];
    }

    /** What the ledgers say came in, less what went out, mg N: differs from nitrogenMg by a constant. */
    public static double ledgerMg(double[] y) {
        return y[FED] + y[DOSED] + y[BROUGHT_IN] - y[EXCHANGED_OUT] - y[REMOVED] - y[TAKEN_UP];
    }

    /** Activity of ammonia oxidisers at 20 °C, mg N/d, that carries the full ration of such fish at 1 mg N/L. */
    public static double aobForRation(TankParameters p, double fish, double massG, double temperatureC) {
        return loadMgPerDay(p, fish, massG)
                * (1 + Nitrification.AMMONIA_HALF_MG_PER_L)
                / Powers.theta(Nitrification.LN_THETA_AOB, temperatureC - 20);
    }

    /** The same for nitrite oxidisers. */
    public static double nobForRation(TankParameters p, double fish, double massG, double temperatureC) {
        return loadMgPerDay(p, fish, massG)
                * (1 + Nitrification.NITRITE_HALF_MG_PER_L)
                / Powers.theta(Nitrification.LN_THETA_NOB, temperatureC - 20);
    }

    /** Ammonia nitrogen that the full ration of such fish comes to, mg N/d; 0 without a species. */
    static double loadMgPerDay(TankParameters p, double fish, double massG) {
        Species species = p.species();
        return species == null
                ? 0
                : Meals.AMMONIA_PER_PROTEIN
                        * 1000
                        * fish
                        * massG
                        * species.feed().fractionAtBest(massG)
                        * p.proteinFraction()
                        * p.excretionFactor();
    }
}
