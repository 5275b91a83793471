package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.fish.Stressor;
import startwater.tank.TankReadings;

/** What ways of keeping fish come to in a hungry second week, over fifty hidden tanks each. */
class SecondWeekTest {
    private static final int SEEDS = 50;

    private record Outcome(double dead, double byNitrite) {}

    private static Outcome outcome(String policy, double chloride) {
        Scenario s = TrialScenario.secondWeek(chloride);
        double[][] each = IntStream.range(0, SEEDS)
                .parallel()
                .mapToObj(seed -> {
                    DrillRun run = PolicyPlayer.play(s, Policies.byId(policy), seed, DrillRun.Pace.EVERY_VISIT);
                    int count = s.fishCount();
                    double dead = 1.0 - (double) run.past().last().seen().alive() / count;
                    return new double[] {
                        dead, TankReadings.deathsBy(run.hidden().state(), 0, Stressor.NITRITE)
                    };
                })
                .toArray(double[][]::new);
        double dead = 0;
        double nitrite = 0;
        for (double[] e : each) {
            dead += e[0] / SEEDS;
            nitrite += e[1] / SEEDS;
        }
        return new Outcome(dead, nitrite);
    }

    @Test
    void careKeepsNearlyAllFishAlive() {
        assertThat(outcome("careful", 15).dead()).isLessThan(0.02);
    }

    @Test
    void doingNothingLosesManyByNitriteAndChlorideWouldHaveSavedThem() {
        Outcome plain = outcome("do-nothing", 15);
        Outcome salted = outcome("do-nothing", 150);
        assertThat(plain.dead()).isGreaterThan(0.20);
        assertThat(salted.byNitrite()).isLessThan(0.2 * plain.byNitrite());
    }

    @Test
    void feedingBecauseTheyBegLosesFish() {
        assertThat(outcome("feeds-because-they-beg", 15).dead()).isGreaterThan(0.05);
    }
}
