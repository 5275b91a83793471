package startwater.tank;

import static startwater.tank.TankLayout.*;

import startwater.quantity.Molar;

/**
 * A bed without flow. Common practice, no source: some hours are borne, then the bed rots; what it lets go fouls the water
 * when flow comes back, unless the bed is drained first. All numbers tuned.
 */
final class FilterBed {
    /** Hours without flow that a bed bears. */
    static final double BORNE_HOURS = 4;
    /** From then on both groups lose, and solids come loose, at 10 % per hour: 1/d. */
    static final double FOULING_PER_DAY = -24 * StrictMath.log(0.9);
    /** Solids held in a bed mineralise slowly: they are what was left after days, 1/d at 20 °C. */
    static final double HELD_MINERALISATION_PER_DAY = 0.02;
    /** Share of the loose nitrogen that has already rotted to ammonia. */
    private static final double ROTTED = 0.2;
    /** Oxygen that the rotted share takes at once, mg per mg N, like mineralising in the open. */
    private static final double OXYGEN_PER_ROTTED_N = 15;

    private static final double JUST = 1e-6;

    private FilterBed() {}

    static boolean fouling(double[] y, Controls c) {
        return !c.pump() && y[STAGNANT_HOURS] >= BORNE_HOURS - JUST;
    }

    /** Days until a standing bed begins to foul; infinite while it flows, or once it does. */
    static double daysToFouling(double[] y, Controls c) {
        return c.pump() || fouling(y, c) ? Double.POSITIVE_INFINITY : (BORNE_HOURS - y[STAGNANT_HOURS]) / 24;
    }

    /** Flow is there: what a standing bed has let go comes with the first of it. */
    static void flush(double[] y, TankParameters p) {
        double loose = y[LOOSE_N];
        y[STAGNANT_HOURS] = 0;
        if (!(loose > 0)) {
            return;
        }
        double rotted = ROTTED * loose / p.volumeL();
        y[LOOSE_N] = 0;
        y[ORGANIC_N] += (1 - ROTTED) * loose / p.volumeL();
        y[TAN] += rotted;
        y[ALKALINITY] += rotted / Molar.N;
        y[OXYGEN] = Math.max(0, y[OXYGEN] - OXYGEN_PER_ROTTED_N * rotted);
        TankReadings.settlePh(y);
    }

    /** The standing water and what it holds are let out; the bed may stand damp anew. */
    static void drain(double[] y) {
        y[REMOVED] += y[LOOSE_N];
        y[LOOSE_N] = 0;
        y[STAGNANT_HOURS] = 0;
    }

    /**
     * Cleans the media: solids go out, and bacteria with them.
     *
     * @param loss share of both groups lost
     * @param solids share of the held solids taken out
     */
    static void clean(double[] y, double loss, double solids) {
        y[AOB] *= 1 - loss;
        y[NOB] *= 1 - loss;
        y[REMOVED] += solids * (y[HELD_N] + y[LOOSE_N]);
        y[HELD_N] *= 1 - solids;
        y[LOOSE_N] *= 1 - solids;
    }
}
