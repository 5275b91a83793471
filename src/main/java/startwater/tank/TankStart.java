package startwater.tank;

import static startwater.tank.TankLayout.*;

import startwater.fish.Stressor;

/** Makes the first state of a system. */
public final class TankStart {
    private TankStart() {}

    /**
     * A system filled with {@code water}, its filter holding a share of its capacity, without fish.
     *
     * @param aobShare of the capacity of ammonia oxidisers, 0..1
     * @param nobShare of the capacity of nitrite oxidisers, 0..1
     */
    public static double[] filled(TankParameters p, SourceWater water, double aobShare, double nobShare) {
        double[] y = new double[TankLayout.length(p.strata())];
        y[TAN] = water.tanMgPerL();
        y[NITRITE] = water.nitriteMgPerL();
        y[NITRATE] = water.nitrateMgPerL();
        y[ALKALINITY] = water.alkalinityMeqPerL();
        y[DIC] = water.dicMmolPerL();
        y[OXYGEN] = water.oxygenMgPerL();
        y[CHLORIDE] = water.chlorideMgPerL();
        y[FREE_CHLORINE] = water.freeChlorineMgPerL();
        y[COMBINED_CHLORINE] = water.combinedChlorineMgPerL();
        y[TEMPERATURE] = water.temperatureC();
        y[AOB] = aobShare * p.aobCapacityMgPerDay();
        y[NOB] = nobShare * p.nobCapacityMgPerDay();
        y[ACCLIMATED_C] = water.temperatureC();
        y[H_ION] = 1e-8;
        for (int s = 0; s < p.strata(); s++) {
            y[survivors(s)] = 1;
        }
        TankReadings.settlePh(y);
        return y;
    }

    /**
     * Puts fish in. They arrive unharmed, unfed and used to the water.
     *
     * @param count fish
     * @param massG mean body mass, g
     */
    public static void stock(double[] y, TankParameters p, double count, double massG) {
        if (p.species() == null) {
            throw new IllegalArgumentException("Stock: the system has no species to stock " + count + " fish of.");
        }
        Shoal fresh = Shoal.fresh(p.strata(), count, massG, y[TEMPERATURE]);
        y[BROUGHT_IN] += fresh.nitrogenMg();
        fresh.join(y, p);
    }

    /** Harm counts from here: the living are the stock, and none of them has died yet. */
    public static void fromHere(double[] y, TankParameters p) {
        double alive = TankReadings.fishAlive(y, p.strata());
        for (int s = 0; s < p.strata(); s++) {
            y[survivors(s)] = alive > 0 ? y[survivors(s)] * y[STOCKED] / alive : 1;
            for (Stressor cause : Stressor.values()) {
                y[hazard(s, cause)] = 0;
            }
        }
        y[STOCKED] = alive;
    }

    /**
     * The living are counted: from now on so many eat, breathe and excrete. Their mean mass stays; what goes out or
     * comes in with the correction stands in the ledgers.
     */
    public static void counted(double[] y, TankParameters p, double alive) {
        double expected = TankReadings.fishAlive(y, p.strata());
        double ratio = expected > 0 ? alive / expected : 0;
        double nitrogen = y[GUT_1] + y[GUT_2] + y[FISH_N];
        y[GUT_1] *= ratio;
        y[GUT_2] *= ratio;
        y[FISH_N] *= ratio;
        double change = y[GUT_1] + y[GUT_2] + y[FISH_N] - nitrogen;
        if (change < 0) {
            y[REMOVED] -= change;
        } else {
            y[BROUGHT_IN] += change;
        }
        for (int s = 0; s < p.strata(); s++) {
            y[survivors(s)] = y[STOCKED] > 0 ? alive / y[STOCKED] : 0;
        }
    }
}
