package startwater.drill;

import java.util.ArrayList;
import java.util.List;
import startwater.strip.Pad;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/** What the hidden tank of a drill went through, hour by hour, and when its filter first carried the load. */
final class HiddenCourse {
    private final Scenario scenario;
    private final TankSim sim;
    private final List<DrillRun.TruthPoint> points = new ArrayList<>();
    private double filterDay = Double.NaN;

    HiddenCourse(Scenario scenario, TankSim sim) {
        this.scenario = scenario;
        this.sim = sim;
    }

    /** Takes note of a state. @param alive fish counted */
    void note(double[] y, double day, int alive) {
        if (Double.isNaN(filterDay) && carriesTheLoad(y, alive)) {
            filterDay = day;
        }
        points.add(new DrillRun.TruthPoint(
                day,
                Observation.padValue(Pad.AMMONIA, y),
                Observation.padValue(Pad.NITRITE, y),
                y[TankLayout.NITRATE],
                TankReadings.ph(y),
                TankReadings.alkalinityMgPerL(y),
                y[TankLayout.OXYGEN],
                y[TankLayout.CHLORIDE],
                TankReadings.toxicAmmoniaMgPerL(y),
                TankReadings.effectiveNitriteMgPerL(y, sim.draw().parameters().chlorideHalfMgPerL()),
                y[TankLayout.AOB] / sim.draw().parameters().aobCapacityMgPerDay(),
                y[TankLayout.NOB] / sim.draw().parameters().nobCapacityMgPerDay(),
                y[TankLayout.STOCKED] * sim.survival(0),
                sim.toCome()));
    }

    /** Both filter groups carry the full ration of the fish here, or planned, and both readings are under 1 mg/L. */
    private boolean carriesTheLoad(double[] y, int alive) {
        Scenario.Fish fish = scenario.fishHereOrPlanned();
        if (fish == null || y[TankLayout.TAN] >= 1 || y[TankLayout.NITRITE] >= 1) {
            return false;
        }
        TankParameters p = sim.draw().parameters();
        double count = scenario.fish() != null ? alive : Math.max(alive, fish.count());
        double mass = alive > 0 ? TankReadings.massG(y, p.strata()) : fish.massG();
        return count > 0
                && mass > 0
                && y[TankLayout.AOB] >= TankReadings.aobForRation(p, count, mass, y[TankLayout.TEMPERATURE])
                && y[TankLayout.NOB] >= TankReadings.nobForRation(p, count, mass, y[TankLayout.TEMPERATURE]);
    }

    /** Day on which the filter first carried the load with both readings under 1 mg/L; NaN while it has not. */
    double filterDay() {
        return filterDay;
    }

    /** Hour by hour so far. */
    List<DrillRun.TruthPoint> points() {
        return List.copyOf(points);
    }
}
