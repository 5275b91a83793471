package startwater.cli;

import java.util.Arrays;
import java.util.List;
import java.util.function.LongFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.LongStream;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.TankWatch;
import startwater.fish.Stressor;
import startwater.score.Outcome;
import startwater.score.Policy;
import startwater.score.PolicyPlayer;
import startwater.tank.TankFlows;
import startwater.tank.TankLayout;

/** One policy on many hidden tanks: seeds run side by side, results in the order of the seeds. */
record PolicyRuns(Scenario scenario, Policy policy, List<DrillRun> runs) {
    PolicyRuns {
        runs = List.copyOf(runs);
    }

    static PolicyRuns play(Scenario scenario, Policy policy, long firstSeed, int seeds) {
        return play(scenario, policy, firstSeed, seeds, seed -> TankWatch.NONE);
    }

    /** The same with somebody to look on at each hidden tank, by its seed; called from several threads. */
    static PolicyRuns play(
            Scenario scenario, Policy policy, long firstSeed, int seeds, LongFunction<TankWatch> watches) {
        return new PolicyRuns(
                scenario,
                policy,
                LongStream.range(firstSeed, firstSeed + seeds)
                        .parallel()
                        .mapToObj(seed -> PolicyPlayer.play(
                                scenario, policy, seed, DrillRun.Pace.EVERY_VISIT, watches.apply(seed)))
                        .toList());
    }

    /** The same drill, longer or shorter. @param days 1 or more */
    static Scenario lasting(Scenario s, int days) {
        Scenario.Keeper k = s.keeper();
        return s.withKeeper(new Scenario.Keeper(k.visitsAtHours(), days, k.away(), k.decisions(), k.decisionVisits()));
    }

    /** Fish at the first visit, or those planned; 0 without any. */
    int fish() {
        return scenario.stockCount();
    }

    /** Mean share of the fish that die, by the hazards of each tank, so that it is the sum of its causes; 0..1. */
    double deathsFraction() {
        return Arrays.stream(Stressor.values())
                .mapToDouble(this::deathsFraction)
                .sum();
    }

    double deathsFraction(Stressor cause) {
        return mean(run -> Outcome.deathsFraction(run, cause));
    }

    /** Mean days from the first visit in which the filter could not yet carry the full ration. */
    double daysToFilter() {
        return mean(run -> Outcome.of(run).daysToFilter());
    }

    /** Mean water changed, in tank volumes. */
    double waterVolumes() {
        return mean(run -> Outcome.of(run).waterVolumes());
    }

    /** Mean feed offered from the filling of the system on, g. */
    double feedG() {
        return mean(run -> TankFlows.feedG(
                run.hidden().state()[TankLayout.FED], run.hidden().draw().parameters()));
    }

    /** Share of the fish that die, by the hazards of each tank, at a quantile over the tanks. @param share 0..1 */
    double deathsQuantile(double share) {
        double[] each = runs.stream()
                .mapToDouble(run -> Outcome.of(run).deathsFraction())
                .sorted()
                .toArray();
        double place = share * (each.length - 1);
        int below = (int) place;
        int above = Math.min(below + 1, each.length - 1);
        return each[below] + (place - below) * (each[above] - each[below]);
    }

    private double mean(ToDoubleFunction<DrillRun> of) {
        return runs.stream().mapToDouble(of).average().orElse(0);
    }
}
