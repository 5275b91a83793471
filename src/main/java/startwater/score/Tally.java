package startwater.score;

import java.util.Arrays;
import startwater.drill.Calendar;
import startwater.drill.TankSim;
import startwater.fish.Stressor;
import startwater.tank.TankLayout;

/**
 * Adds up what the planned fish go through on their way in: those in the system, in the nursery, and still to be bought,
 * each by its share of the planned number. A fish that is nowhere yet does not grow. Mutable, for one roll-out.
 */
final class Tally {
    private static final int[] KEPT = {TankLayout.GROWTH_LOST, TankLayout.WASTED, TankLayout.STRESS, TankLayout.SHOCK};
    private static final int GROWTH = 0;

    private final double planned;
    private final double[] sum = new double[KEPT.length];
    private final double[] deadBeside = new double[Belief.STRATA];
    private final double[][] seen = new double[2][KEPT.length];
    private final double[] seenBeside = new double[Belief.STRATA];
    private int minute;

    /** From here on. @param planned fish, 1 or more */
    Tally(TankSim sim, double planned) {
        this.planned = planned;
        look(sim);
    }

    /**
     * Comes up to now: before fish are moved, and once more after. A fish that is moved takes its share of the nursery's dead
     * along to where it goes: what falls there then has been counted.
     */
    void take(TankSim sim) {
        double here = sim.living() / planned;
        double beside = sim.nursery() == null ? 0 : sim.nursery().living() / planned;
        double bought = sim.nursery() == null ? sim.toCome() / planned : 0;
        for (int i = 0; i < KEPT.length; i++) {
            sum[i] += here * (sim.state()[KEPT[i]] - seen[0][i]);
            if (sim.nursery() != null) {
                sum[i] += beside * (sim.nursery().state()[KEPT[i]] - seen[1][i]);
            }
        }
        sum[GROWTH] += bought * (sim.minute() - minute) / Calendar.DAY;
        for (int k = 0; k < deadBeside.length; k++) {
            deadBeside[k] += Math.max(0, beside(sim, k) - seenBeside[k]);
        }
        look(sim);
    }

    private void look(TankSim sim) {
        for (int i = 0; i < KEPT.length; i++) {
            seen[0][i] = sim.state()[KEPT[i]];
            seen[1][i] = sim.nursery() == null ? 0 : sim.nursery().state()[KEPT[i]];
        }
        for (int k = 0; k < seenBeside.length; k++) {
            seenBeside[k] = beside(sim, k);
        }
        minute = sim.minute();
    }

    private static double beside(TankSim sim, int stratum) {
        return Arrays.stream(Stressor.values())
                .mapToDouble(cause -> sim.deadBeside(stratum, cause))
                .sum();
    }

    /** Full-ration days of growth lost. */
    double growthLost() {
        return sum[GROWTH];
    }

    /** Ration-days left uneaten. */
    double wasted() {
        return sum[1];
    }

    /** Days times ln-units over guidance. */
    double stress() {
        return sum[2];
    }

    /** Share of the planned fish lost to sudden change. */
    double shock() {
        return sum[3];
    }

    /** Fish that died in the nursery, were all as sensitive as this stratum. */
    double deadBeside(int stratum) {
        return deadBeside[stratum];
    }
}
