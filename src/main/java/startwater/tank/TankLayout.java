package startwater.tank;

import startwater.fish.Stressor;

/**
 * Where each quantity of one system stands in its state array. Nitrogen is mg N/L dissolved and mg N in fish; see each
 * constant. After {@link #STRATA} every sensitivity stratum has its survivors and one cumulative hazard by stressor.
 */
public final class TankLayout {
    /** Total ammonia nitrogen, mg N/L. */
    public static final int TAN = 0;
    /** Nitrite, mg N/L. */
    public static final int NITRITE = 1;
    /** Nitrate, mg N/L. */
    public static final int NITRATE = 2;
    /** Alkalinity, meq/L; un-ionised ammonia counts. */
    public static final int ALKALINITY = 3;
    /** Dissolved inorganic carbon, mmol/L. */
    public static final int DIC = 4;
    /** Oxygen, mg/L. */
    public static final int OXYGEN = 5;
    /** Chloride, mg/L. */
    public static final int CHLORIDE = 6;
    /** Free chlorine, mg/L as Cl2. */
    public static final int FREE_CHLORINE = 7;
    /** Combined chlorine, mg/L as Cl2; its nitrogen is in the balance. */
    public static final int COMBINED_CHLORINE = 8;
    /** Water temperature, °C. */
    public static final int TEMPERATURE = 9;
    /** What the ammonia oxidisers could oxidise without limitation at 20 °C, mg N/d. */
    public static final int AOB = 10;
    /** The same for nitrite oxidisers, mg N/d. */
    public static final int NOB = 11;
    /** Nitrogen in uneaten feed and faeces, mg N/L. */
    public static final int ORGANIC_N = 12;
    /** Eaten and not yet excreted, first and second stage, mg N. */
    public static final int GUT_1 = 13;

    public static final int GUT_2 = 14;
    /** Body nitrogen of the living fish, mg N. */
    public static final int FISH_N = 15;
    /** Fish that were stocked, from which the strata's survivors count. */
    public static final int STOCKED = 16;
    /** Activity of the hydrogen ion, mol/L: follows from the others, kept as the start of the next solution. */
    public static final int H_ION = 17;
    /** Scaled damage by stressor, each in the stressor's unit. */
    public static final int DAMAGE = 18;
    /** Integral of stress, day times ln-units over guidance. */
    public static final int STRESS = DAMAGE + Stressor.COUNT;
    /** Days in which the filter could not yet carry the full ration (capacity of the lesser group). */
    public static final int DELAY = STRESS + 1;
    /** Nitrogen ledgers, mg N: fed, dosed, brought in, exchanged out, removed. */
    public static final int FED = DELAY + 1;

    public static final int DOSED = FED + 1;
    public static final int BROUGHT_IN = DOSED + 1;
    public static final int EXCHANGED_OUT = BROUGHT_IN + 1;
    public static final int REMOVED = EXCHANGED_OUT + 1;
    /** Full-ration days of growth lost, and ration-days offered but left uneaten. */
    public static final int GROWTH_LOST = REMOVED + 1;

    public static final int WASTED = GROWTH_LOST + 1;
    /** Feed that lies uneaten, g. */
    public static final int UNEATEN_G = WASTED + 1;
    /** Tank volumes of water changed. */
    public static final int VOLUMES = UNEATEN_G + 1;
    /** Share of the stock lost to sudden change, as a loss and not as deaths. */
    public static final int SHOCK = VOLUMES + 1;
    /** Hours the filter has stood without flow; 0 again when water flows or the bed is drained. */
    public static final int STAGNANT_HOURS = SHOCK + 1;
    /** Nitrogen of the solids that the filter holds, mg N; and of those that a standing bed has let go, mg N. */
    public static final int HELD_N = STAGNANT_HOURS + 1;

    public static final int LOOSE_N = HELD_N + 1;
    /** Ledger: nitrogen that plants have taken up, mg N. */
    public static final int TAKEN_UP = LOOSE_N + 1;
    /** A drug in the water, as the share of both filter groups that it kills per day, 1/d. */
    public static final int MEDICATION = TAKEN_UP + 1;
    /** Temperature that the fish are used to, °C. */
    public static final int ACCLIMATED_C = MEDICATION + 1;

    public static final int STRATA = ACCLIMATED_C + 1;
    /** Numbers per stratum: share surviving, then one cumulative hazard by stressor. */
    public static final int PER_STRATUM = 1 + Stressor.COUNT;

    private TankLayout() {}

    public static int length(int strata) {
        return STRATA + strata * PER_STRATUM;
    }

    public static int survivors(int stratum) {
        return STRATA + stratum * PER_STRATUM;
    }

    public static int hazard(int stratum, Stressor stressor) {
        return survivors(stratum) + 1 + stressor.ordinal();
    }
}
