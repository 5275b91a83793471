package startwater.score;

import startwater.biofilter.Nitrification;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.fish.Stressor;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/**
 * What one way through the days ahead has cost, reckoned at its end: all parts of a {@link Bill} in % of the stock. Begun
 * before anything is done, since costs count from there.
 */
final class Billing {
    /** Activity below this counts as this, mg N/d at 20 °C: a logarithm needs something. */
    private static final double LEAST_ACTIVITY = 1e-9;

    /** A filter has proved itself where ammonia and nitrite are both under this, mg N/L. */
    private static final double PROVED_MG_PER_L = 1;

    private final Scenario scenario;
    private final TankSim sim;
    private final TankParameters parameters;
    private final double[] before;

    Billing(Scenario scenario, TankSim sim) {
        this.scenario = scenario;
        this.sim = sim;
        this.parameters = sim.draw().parameters();
        this.before = sim.state().clone();
    }

    /** Without fish: whether the filter carries the planned ration and both readings are under 1 mg/L. */
    boolean proved() {
        double[] y = sim.state();
        return y[TankLayout.TAN] < PROVED_MG_PER_L && y[TankLayout.NITRITE] < PROVED_MG_PER_L && behind() <= 0;
    }

    /** What is asked of every way: jobs, water and salt. */
    Bill bill(double jobs) {
        double[] y = sim.state();
        Bill bill = Bill.empty();
        bill.add(Component.JOBS, jobs);
        bill.add(Component.WATER, LossWeights.WATER * (y[TankLayout.VOLUMES] - before[TankLayout.VOLUMES]));
        double free =
                Math.max(LossWeights.SALT_FREE_MG_PER_L, LossWeights.SALT_FREE_PER_NITRITE * y[TankLayout.NITRITE]);
        bill.add(Component.SALT, LossWeights.SALT * Math.max(0, StrictMath.log(y[TankLayout.CHLORIDE] / free)));
        return bill;
    }

    /**
     * Adds what the way of planned fish into the system costs.
     *
     * @param ready days until the filter could carry them, or NaN
     * @param days days looked ahead
     */
    void ofFishToCome(Bill bill, Tally tally, double ready, double days) {
        double late = Double.isNaN(ready) ? days + Math.max(0, behind()) + backlog() : ready;
        bill.add(Component.DELAY, LossWeights.FISHLESS_DELAY * late);
        bill.add(Component.GROWTH, LossWeights.FISHLESS_GROWTH * tally.growthLost());
        bill.add(Component.WASTE, LossWeights.WASTE * tally.wasted());
        bill.add(Component.STRESS, LossWeights.STRESS * tally.stress());
        bill.add(Component.SHOCK, 100 * tally.shock());
        deaths(bill, scenario.stockCount());
        for (int k = 0; k < bill.beside().length && scenario.stockCount() > 0; k++) {
            bill.beside()[k] = 100 * tally.deadBeside(k) / scenario.stockCount();
        }
    }

    /** Adds what fish that were there from the start go through. */
    void ofFishHere(Bill bill) {
        double[] y = sim.state();
        double massG = TankReadings.massG(before, parameters.strata());
        bill.add(Component.GROWTH, LossWeights.growth(since(TankLayout.GROWTH_LOST), massG));
        bill.add(Component.WASTE, LossWeights.WASTE * since(TankLayout.WASTED));
        bill.add(Component.STRESS, LossWeights.STRESS * since(TankLayout.STRESS));
        bill.add(Component.DELAY, LossWeights.DELAY * (since(TankLayout.DELAY) + Math.max(0, behind())));
        bill.add(Component.SHOCK, 100 * since(TankLayout.SHOCK));
        deaths(bill, y[TankLayout.STOCKED]);
    }

    private double since(int at) {
        return sim.state()[at] - before[at];
    }

    /** Deaths from the visit on, % of the stock, by stratum and cause. */
    private void deaths(Bill bill, double stock) {
        if (!(stock > 0)) {
            return;
        }
        for (int k = 0; k < bill.deaths().length; k++) {
            double sum = 0;
            for (Stressor cause : Stressor.values()) {
                double dead = 100 * sim.dead(k, cause) / stock;
                bill.deaths()[k][cause.ordinal()] = dead;
                sum += dead;
            }
            bill.parts()[k][Component.DEATHS.ordinal()] = sum;
        }
    }

    /** Days by which the lesser group is behind the planned or present full ration at its net growth; 0 or less: none. */
    private double behind() {
        Scenario.Fish fish = scenario.fishHereOrPlanned();
        if (fish == null) {
            return 0;
        }
        double[] y = sim.state();
        boolean here = scenario.fish() != null;
        double living = here ? TankReadings.fishAlive(y, parameters.strata()) : fish.count();
        double mass = here ? TankReadings.massG(y, parameters.strata()) : fish.massG();
        if (!(living > 0) || !(mass > 0)) {
            return 0;
        }
        double temperatureC = y[TankLayout.TEMPERATURE];
        double aob = TankReadings.aobForRation(parameters, living, mass, temperatureC);
        double nob = TankReadings.nobForRation(parameters, living, mass, temperatureC);
        double times = Math.max(
                aob / Math.max(LEAST_ACTIVITY, y[TankLayout.AOB]), nob / Math.max(LEAST_ACTIVITY, y[TankLayout.NOB]));
        return Math.min(LossWeights.CATCH_UP_MOST_DAYS, StrictMath.log(times) / LossWeights.CATCH_UP_PER_DAY);
    }

    /** Days that a filter which carries the planned ration needs for the ammonia and nitrite that stand over 1 mg/L. */
    private double backlog() {
        Scenario.Fish fish = scenario.fishHereOrPlanned();
        if (fish == null) {
            return 0;
        }
        double[] y = sim.state();
        double temperatureC = y[TankLayout.TEMPERATURE];
        double nob = Math.max(
                y[TankLayout.NOB], TankReadings.nobForRation(parameters, fish.count(), fish.massG(), temperatureC));
        double perDay = nob * StrictMath.exp(Nitrification.LN_THETA_NOB * (temperatureC - 20)) / parameters.volumeL();
        double pending = Math.max(0, y[TankLayout.TAN] + y[TankLayout.NITRITE] - PROVED_MG_PER_L);
        return perDay > 0 ? Math.min(LossWeights.CATCH_UP_MOST_DAYS, pending / perDay) : 0;
    }
}
