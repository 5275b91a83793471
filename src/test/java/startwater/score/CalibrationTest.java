package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.drill.Unknown;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;

/**
 * The belief is honest: for tanks drawn from the prior and read as the model says, the truth's rank among the plausible
 * tanks is even and nine in ten truths lie in the ninety percent interval (simulation-based calibration, Talts et al. 2018).
 */
class CalibrationTest {
    private static final List<ToDoubleFunction<TankSim>> QUANTITIES = List.of(
            t -> t.state()[TankLayout.TAN],
            t -> t.state()[TankLayout.NITRITE],
            t -> TankReadings.ph(t.state()),
            t -> t.state()[TankLayout.AOB],
            t -> t.state()[TankLayout.NOB],
            t -> t.draw().value(Unknown.VOLUME));

    @Test
    void nineInTenTruthsLieInTheNinetyPercentInterval() {
        Scenario s = TrialScenario.secondWeek(15);
        int runs = Integer.getInteger("startwater.calibration.runs", 60);
        int[] inside = new int[QUANTITIES.size()];
        int[][] ranks = new int[QUANTITIES.size()][4];
        for (int variant = 0; variant < runs; variant++) {
            DrillRun run = DrillRun.start(s, 70_000 + variant, DrillRun.Pace.LEARNER);
            Notebook book = new Notebook(s);
            for (int visit = 0; visit < 3; visit++) {
                PolicyPlayer.visit(run, Policies.CAREFUL, book);
            }
            Belief belief = Belief.of(s, run.log());
            double[] weights = belief.waterWeights();
            for (int q = 0; q < QUANTITIES.size(); q++) {
                double truth = QUANTITIES.get(q).applyAsDouble(run.hidden());
                double below = 0;
                for (int i = 0; i < belief.waters(); i++) {
                    below += QUANTITIES.get(q).applyAsDouble(belief.water(i).sim()) < truth ? weights[i] : 0;
                }
                inside[q] += below > 0.05 && below < 0.95 ? 1 : 0;
                ranks[q][(int) Math.min(3, 4 * below)]++;
            }
        }
        for (int q = 0; q < QUANTITIES.size(); q++) {
            assertThat((double) inside[q] / runs).as("quantity " + q).isBetween(0.75, 0.97);
        }
    }
}
