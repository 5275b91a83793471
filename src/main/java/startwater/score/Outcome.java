package startwater.score;

import java.util.Arrays;
import startwater.drill.DrillRun;
import startwater.fish.Stressor;
import startwater.tank.TankLayout;

/**
 * What came of one run on its hidden tank.
 *
 * @param deathsFraction share of the fish, or of those planned, that died, here and in a nursery beside, by the hazards of
 *     the water, 0..1
 * @param daysToFilter days from the first visit in which the filter could not yet carry the full ration; without fish,
 *     days until it first could carry that of the planned fish with ammonia and nitrite under 1 mg/L, all days if never
 * @param waterVolumes water changed, tank volumes
 */
public record Outcome(double deathsFraction, double daysToFilter, double waterVolumes) {
    /** The outcome of a run that is over. */
    public static Outcome of(DrillRun run) {
        double[] y = run.hidden().state();
        double deaths = Arrays.stream(Stressor.values())
                .mapToDouble(cause -> deathsFraction(run, cause))
                .sum();
        double days = run.scenario().fish() == null ? fishlessDays(run) : y[TankLayout.DELAY];
        return new Outcome(deaths, days, y[TankLayout.VOLUMES]);
    }

    /** Share of the fish, or of those planned, that died of a cause here and in a nursery beside, 0..1; 0 without any. */
    public static double deathsFraction(DrillRun run, Stressor cause) {
        int stock = run.scenario().stockCount();
        return stock == 0 ? 0 : run.hidden().dead(0, cause) / stock;
    }

    private static double fishlessDays(DrillRun run) {
        double first = run.past().visits().get(0).day();
        double end = Double.isNaN(run.filterDay()) ? run.hidden().day() : run.filterDay();
        return end - first;
    }
}
