package startwater.rehearse;

import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.drill.TankWatch;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/** One hidden tank, day by day at noon. */
final class DayBook implements TankWatch {
    private static final double NOON = 0.5;

    final double[] ammonia;
    final double[] nitrite;
    final double[] massG;
    /** Share of the full ration that the filter carries, both groups, at 1 mg/L. */
    final double[] carried;

    /** Share of the fish that have died. */
    final double[] dead;

    private final Scenario.Fish fish;
    private int next;

    /** @param fish here or to come */
    DayBook(int days, Scenario.Fish fish) {
        this.fish = fish;
        ammonia = new double[days];
        nitrite = new double[days];
        massG = new double[days];
        carried = new double[days];
        dead = new double[days];
    }

    @Override
    public void passed(TankSim tank, double[] before, double days) {
        while (next < ammonia.length && tank.day() >= next + NOON) {
            note(tank.state(), tank.draw().parameters());
        }
    }

    private void note(double[] y, TankParameters p) {
        double alive = TankReadings.fishAlive(y, p.strata());
        double mass = alive >= 1 ? TankReadings.massG(y, p.strata()) : fish.massG();
        double count = alive >= 1 ? alive : fish.count();
        double temperature = y[TankLayout.TEMPERATURE];
        ammonia[next] = y[TankLayout.TAN];
        nitrite[next] = y[TankLayout.NITRITE];
        massG[next] = mass;
        carried[next] = Math.min(
                y[TankLayout.AOB] / TankReadings.aobForRation(p, count, mass, temperature),
                y[TankLayout.NOB] / TankReadings.nobForRation(p, count, mass, temperature));
        dead[next] = 1 - TankReadings.survivalOf(y, 0);
        next++;
    }
}
