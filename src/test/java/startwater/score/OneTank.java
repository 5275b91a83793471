package startwater.score;

import java.util.Arrays;
import startwater.drill.Calendar;
import startwater.drill.Scenario;
import startwater.drill.TankDraw;
import startwater.drill.TankSim;
import startwater.drill.Unknown;
import startwater.fish.Stressor;
import startwater.tank.FastStepper;
import startwater.tank.Sensitivity;
import startwater.tank.TankLayout;

/** The tank of a drill in which every unknown is at its median, at the first visit; tests put its state by hand. */
final class OneTank {
    private OneTank() {}

    static TankSim of(Scenario s) {
        double[] even = new double[Belief.STRATA];
        Arrays.fill(even, 1);
        TankDraw draw = TankDraw.of(s, new double[Unknown.values().length], Sensitivity.of(even));
        return TankSim.atFirstVisit(s, Calendar.of(s), draw, new FastStepper());
    }

    /** Lets a share of the fish of one sensitivity have died of a cause, and nobody else of it. */
    static void died(TankSim sim, int stratum, Stressor cause, double share) {
        sim.state()[TankLayout.hazard(stratum, cause)] = -StrictMath.log1p(-share);
    }
}
