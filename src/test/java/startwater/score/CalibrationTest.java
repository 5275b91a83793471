package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Tag;
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
@Tag("slow")
class CalibrationTest {
    private static final List<ToDoubleFunction<TankSim>> QUANTITIES = List.of(
            t -> t.state()[TankLayout.TAN],
            t -> t.state()[TankLayout.NITRITE],
            t -> TankReadings.ph(t.state()),
            t -> t.state()[TankLayout.AOB],
            t -> t.state()[TankLayout.NOB],
            t -> t.draw().value(Unknown.VOLUME));

    /** Ranks and intervals of many tanks drawn from the prior and read as the model says. */
    private record Counts(int runs, int[] inside, int[][] ranks) {}

    private static Counts calibrated(int runs, long first) {
        Scenario s = TrialScenario.secondWeek(15);
        int[] inside = new int[QUANTITIES.size()];
        int[][] ranks = new int[QUANTITIES.size()][RANKS];
        for (int variant = 0; variant < runs; variant++) {
            DrillRun run = DrillRun.start(s, first + variant, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
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
                // Among N waters and the truth itself there are N + 1 places: the middle of the truth's place counts.
                below = (below * belief.waters() + 0.5) / (belief.waters() + 1);
                inside[q] += below > 0.05 && below < 0.95 ? 1 : 0;
                ranks[q][(int) Math.min(RANKS - 1, RANKS * below)]++;
            }
        }
        return new Counts(runs, inside, ranks);
    }

    private static final int RANKS = 5;

    @Test
    void nineInTenTruthsLieInTheNinetyPercentInterval() {
        Counts c = calibrated(40, 70_000);
        for (int q = 0; q < QUANTITIES.size(); q++) {
            assertThat((double) c.inside()[q] / c.runs()).as("quantity " + q).isBetween(0.73, 1.0);
        }
    }

    /** Chi-square with 4 degrees of freedom: 18.5 is passed by chance once in a thousand (printed tables). */
    @Test
    @Tag("full")
    void overFiveHundredTanksTheRankIsEvenAndTheIntervalHoldsItsShare() {
        Counts c = calibrated(500, 80_000);
        for (int q = 0; q < QUANTITIES.size(); q++) {
            double expected = (double) c.runs() / RANKS;
            double chiSquare = 0;
            for (int rank : c.ranks()[q]) {
                chiSquare += (rank - expected) * (rank - expected) / expected;
            }
            assertThat((double) c.inside()[q] / c.runs()).as("quantity " + q).isBetween(0.85, 0.95);
            assertThat(chiSquare).as("quantity " + q).isLessThan(18.5);
        }
    }
}
