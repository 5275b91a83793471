package startwater.tank;

import static startwater.tank.TankLayout.*;

import startwater.fish.Species;
import startwater.fish.Stressor;

/**
 * Fish on their way into a system, with what they carry: body and gut nitrogen, damage, and the losses they have had.
 *
 * @param stocked fish from which the survivors count
 * @param living of them, expected number
 * @param survivors share alive by stratum
 * @param dead share that the hazards say have died, by stratum and cause
 * @param damage by stressor, in its unit
 * @param acclimatedC temperature they are used to, °C
 * @param gut1Mg mg N, first stage
 * @param gut2Mg mg N, second stage
 * @param bodyMg mg N
 */
record Shoal(
        double stocked,
        double living,
        double[] survivors,
        double[][] dead,
        double[] damage,
        double acclimatedC,
        double gut1Mg,
        double gut2Mg,
        double bodyMg) {
    /** Unharmed, unfed fish. */
    static Shoal fresh(int strata, double count, double massG, double temperatureC) {
        double[] survivors = new double[strata];
        java.util.Arrays.fill(survivors, 1);
        return new Shoal(
                count,
                count,
                survivors,
                new double[strata][Stressor.COUNT],
                new double[Stressor.COUNT],
                temperatureC,
                0,
                0,
                count * massG * Species.BODY_NITROGEN_MG_PER_G);
    }

    /** Takes a share of the fish of a system out, with their part of its losses. @param share 0..1 */
    static Shoal leaving(double[] y, int strata, double share) {
        Shoal all = in(y, strata);
        y[STOCKED] *= 1 - share;
        y[GUT_1] *= 1 - share;
        y[GUT_2] *= 1 - share;
        y[FISH_N] *= 1 - share;
        if (!(y[STOCKED] > 0)) {
            java.util.Arrays.fill(y, DAMAGE, DAMAGE + Stressor.COUNT, 0);
        }
        return new Shoal(
                share * all.stocked,
                share * all.living,
                all.survivors,
                all.dead,
                all.damage,
                all.acclimatedC,
                all.gut1Mg - y[GUT_1],
                all.gut2Mg - y[GUT_2],
                all.bodyMg - y[FISH_N]);
    }

    private static Shoal in(double[] y, int strata) {
        double[] survivors = new double[strata];
        double[][] dead = new double[strata][Stressor.COUNT];
        for (int s = 0; s < strata; s++) {
            survivors[s] = y[TankLayout.survivors(s)];
            for (Stressor cause : Stressor.values()) {
                dead[s][cause.ordinal()] = TankReadings.deathsBy(y, s, cause);
            }
        }
        return new Shoal(
                y[STOCKED],
                TankReadings.fishAlive(y, strata),
                survivors,
                dead,
                java.util.Arrays.copyOfRange(y, DAMAGE, DAMAGE + Stressor.COUNT),
                y[ACCLIMATED_C],
                y[GUT_1],
                y[GUT_2],
                y[FISH_N]);
    }

    double nitrogenMg() {
        return gut1Mg + gut2Mg + bodyMg;
    }

    /** Mixes with the fish of a system: deaths by cause add up, damage is the mean over the living. */
    void join(double[] y, TankParameters p) {
        if (!(stocked > 0)) {
            return;
        }
        Shoal there = in(y, p.strata());
        double part = stocked / (stocked + there.stocked);
        for (int s = 0; s < p.strata(); s++) {
            y[TankLayout.survivors(s)] = part * survivors[s] + (1 - part) * there.survivors[s];
            hazards(y, s, part, dead[s], there.dead[s]);
        }
        double living = this.living + there.living > 0 ? this.living / (this.living + there.living) : 1;
        for (int i = 0; i < Stressor.COUNT; i++) {
            y[DAMAGE + i] = living * damage[i] + (1 - living) * there.damage[i];
        }
        y[ACCLIMATED_C] = living * acclimatedC + (1 - living) * there.acclimatedC;
        y[STOCKED] = stocked + there.stocked;
        y[GUT_1] += gut1Mg;
        y[GUT_2] += gut2Mg;
        y[FISH_N] += bodyMg;
    }

    /** Hazards from which the mixed deaths follow. */
    private static void hazards(double[] y, int stratum, double part, double[] ours, double[] theirs) {
        double sum = 0;
        for (int i = 0; i < Stressor.COUNT; i++) {
            sum += part * ours[i] + (1 - part) * theirs[i];
        }
        double all = -StrictMath.log1p(-Math.min(sum, ALL_DEAD));
        for (int i = 0; i < Stressor.COUNT; i++) {
            double one = part * ours[i] + (1 - part) * theirs[i];
            y[TankLayout.survivors(stratum) + 1 + i] = sum > 0 ? all * one / sum : 0;
        }
    }

    private static final double ALL_DEAD = 1 - 1e-15;
}
