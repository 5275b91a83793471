package startwater.score;

import java.util.List;
import startwater.drill.DrillRun.TruthPoint;

/**
 * The whole run beside the standing rules and doing nothing on the same hidden tank.
 *
 * @param mark mean of the scored visits' marks, NaN when none was scored
 * @param passed 70 or more and no dangerous decision
 * @param own the hidden tank hour by hour under the learner
 * @param rules the same tank under the standing rules
 * @param nothing the same tank with nothing done
 * @param ownAlive fish alive at the end
 * @param rulesAlive under the standing rules
 * @param nothingAlive with nothing done
 * @param expectedDeaths deaths to be expected of the decisions made, fish
 * @param luck deaths expected less deaths that came: above 0 the fish were lucky
 */
public record RunSummary(
        double mark,
        boolean passed,
        List<TruthPoint> own,
        List<TruthPoint> rules,
        List<TruthPoint> nothing,
        int ownAlive,
        int rulesAlive,
        int nothingAlive,
        double expectedDeaths,
        double luck) {
    public RunSummary {
        own = List.copyOf(own);
        rules = List.copyOf(rules);
        nothing = List.copyOf(nothing);
    }
}
