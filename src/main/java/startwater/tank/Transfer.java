package startwater.tank;

import static startwater.tank.TankLayout.*;

/**
 * Fish and media that go from one system to another. What leaves one system's ledger as removed enters the other's as
 * brought in, so nitrogen closes over both. Fish feel the jump of pH and temperature between the waters.
 */
public final class Transfer {
    private Transfer() {}

    /**
     * Moves fish.
     *
     * @param count so many, or all there are
     * @return how many went, expected number; none where hardly a part of a fish is left
     * @throws IllegalArgumentException where the two systems hold different species or strata
     */
    public static double fish(double[] from, TankParameters pFrom, double[] to, TankParameters pTo, double count) {
        if (pFrom.species() == null || !pFrom.species().equals(pTo.species()) || pFrom.strata() != pTo.strata()) {
            throw new IllegalArgumentException(
                    "Transfer: fish go only between systems with the same species and strata.");
        }
        double alive = TankReadings.fishAlive(from, pFrom.strata());
        double moved = Math.min(alive, Math.max(0, count));
        if (!(moved > TankReadings.LEAST_FISH)) {
            return 0;
        }
        double ph = TankReadings.ph(from);
        double temperatureC = from[TEMPERATURE];
        Shoal shoal = Shoal.leaving(from, pFrom.strata(), moved / alive);
        from[REMOVED] += shoal.nitrogenMg();
        to[BROUGHT_IN] += shoal.nitrogenMg();
        shoal.join(to, pTo);
        double share = moved / TankReadings.fishAlive(to, pTo.strata());
        WaterJumps.felt(to, pTo, ph, temperatureC, Math.min(1, share));
        return moved;
    }

    /** Moves a share 0..1 of the media, with bacteria and held solids; the media area of both systems is left as it is. */
    public static void media(double[] from, double[] to, double share) {
        to[AOB] += share * from[AOB];
        to[NOB] += share * from[NOB];
        double solids = share * from[HELD_N];
        from[REMOVED] += solids;
        to[BROUGHT_IN] += solids;
        to[HELD_N] += solids;
        from[AOB] *= 1 - share;
        from[NOB] *= 1 - share;
        from[HELD_N] -= solids;
    }
}
