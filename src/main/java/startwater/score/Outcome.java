package startwater.score;

import java.util.Arrays;
import startwater.drill.DrillRun;
import startwater.fish.Stressor;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;

/**
 * What came of one run on its hidden tank.
 *
 * @param deathsFraction share of the fish that died, by the hazards of the tank, 0..1
 * @param daysToFilter days from the first visit in which the filter could not yet carry the full ration; without fish,
 *     days until it first could carry that of the planned fish with ammonia and nitrite under 1 mg/L, all days if never
 * @param waterVolumes water changed, tank volumes
 */
public record Outcome(double deathsFraction, double daysToFilter, double waterVolumes) {
    /** The outcome of a run that is over. */
    public static Outcome of(DrillRun run) {
        double[] y = run.hidden().state();
        boolean fish = run.past().visits().stream().anyMatch(v -> v.seen().alive() > 0);
        double deaths = !fish
                ? 0
                : Arrays.stream(Stressor.values())
                        .mapToDouble(cause -> TankReadings.deathsBy(y, 0, cause))
                        .sum();
        double days = run.scenario().fish() == null ? fishlessDays(run) : y[TankLayout.DELAY];
        return new Outcome(deaths, days, y[TankLayout.VOLUMES]);
    }

    private static double fishlessDays(DrillRun run) {
        double first = run.past().visits().get(0).day();
        double end = Double.isNaN(run.filterDay()) ? run.hidden().day() : run.filterDay();
        return end - first;
    }
}
