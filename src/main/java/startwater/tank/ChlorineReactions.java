package startwater.tank;

import static startwater.tank.TankLayout.COMBINED_CHLORINE;
import static startwater.tank.TankLayout.FREE_CHLORINE;
import static startwater.tank.TankLayout.TAN;

import startwater.water.Chlorine;

/** What residual disinfectant does in the tank. Concentrations in mg/L as Cl2. */
final class ChlorineReactions {
    /** mg N bound by 1 mg/L of combined chlorine as Cl2. */
    static final double NITROGEN_PER_COMBINED = Chlorine.NITROGEN_MG_PER_MG_CHLORAMINE;
    /** Losses per day in bubbled water. */
    static final double FREE_DECAY_PER_DAY = 24 * Chlorine.FREE_LOSS_PER_HOUR;

    static final double COMBINED_DECAY_PER_DAY = 24 * Chlorine.COMBINED_LOSS_PER_HOUR;
    /** Share of both filter groups killed per mg/L of residual let in, and the most at once (tuned). */
    static final double FILTER_KILL_PER_MG_PER_L = 0.1;

    static final double FILTER_KILL_MOST = 0.5;

    private ChlorineReactions() {}

    /** Free chlorine that meets ammonia becomes chloramine at once. */
    static void combine(double[] y) {
        double free = y[FREE_CHLORINE];
        if (free > 0) {
            double bound = Math.min(free, y[TAN] / NITROGEN_PER_COMBINED);
            y[FREE_CHLORINE] = free - bound;
            y[COMBINED_CHLORINE] += bound;
            y[TAN] = Math.max(0, y[TAN] - bound * NITROGEN_PER_COMBINED);
        }
    }

    /** Thiosulfate for {@code chlorineMgPerL} in the tank itself; the ammonia of chloramine stays. */
    static void neutralise(double[] y, double chlorineMgPerL) {
        double free = Math.min(y[FREE_CHLORINE], chlorineMgPerL);
        y[FREE_CHLORINE] -= free;
        double combined = Math.min(y[COMBINED_CHLORINE], chlorineMgPerL - free);
        y[COMBINED_CHLORINE] -= combined;
        y[TAN] += combined * NITROGEN_PER_COMBINED;
    }
}
