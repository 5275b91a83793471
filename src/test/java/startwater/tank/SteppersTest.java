package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** The fast stepper against the referee, and what must hold for every system. */
class SteppersTest {
    private static final int[] COMPARED = {
        TankLayout.TAN, TankLayout.NITRITE, TankLayout.NITRATE, TankLayout.ALKALINITY, TankLayout.DIC,
        TankLayout.OXYGEN, TankLayout.TEMPERATURE, TankLayout.AOB, TankLayout.NOB, TankLayout.ORGANIC_N,
        TankLayout.GUT_1, TankLayout.GUT_2, TankLayout.FISH_N
    };

    /** Errors are relative above these floors: mg/L, meq/L, mmol/L, °C, mg. */
    private static final double[] FLOOR = {0.1, 0.1, 0.1, 0.1, 0.1, 1, 1, 1, 1, 0.1, 20, 20, 20};

    @Test
    void fastStepperFollowsTheReferee() {
        double worst = 0;
        double worstSurvival = 0;
        String where = "";
        for (int seed = 0; seed < 60; seed++) {
            RandomTank tank = RandomTank.of(seed, 7, 1);
            double[] fast = tank.run(new FastStepper());
            double[] reference = tank.run(new ReferenceStepper(1e-9, 1e-9));
            for (int i = 0; i < COMPARED.length; i++) {
                int at = COMPARED[i];
                double error = Math.abs(fast[at] - reference[at]) / Math.max(FLOOR[i], Math.abs(reference[at]));
                if (error > worst) {
                    worst = error;
                    where = "seed " + seed + " state " + at + ": " + fast[at] + " against " + reference[at] + " alive "
                            + TankReadings.survivalOf(reference, 0) + " O2 " + reference[TankLayout.OXYGEN];
                }
            }
            worstSurvival = Math.max(
                    worstSurvival, Math.abs(TankReadings.survivalOf(fast, 0) - TankReadings.survivalOf(reference, 0)));
        }
        assertThat(worst).as(where).isLessThan(0.01);
        assertThat(worstSurvival).isLessThan(0.003);
    }

    @Test
    void nitrogenClosesAndNothingTurnsNegativeInAThousandRandomSystems() {
        FastStepper stepper = new FastStepper();
        for (int seed = 0; seed < 1000; seed++) {
            RandomTank tank = RandomTank.of(10_000 + seed, 7, 2);
            double volume = tank.parameters().volumeL();
            double before = TankReadings.nitrogenMg(tank.start(), volume) - TankReadings.ledgerMg(tank.start());
            double[] y = tank.run(stepper);
            double after = TankReadings.nitrogenMg(y, volume) - TankReadings.ledgerMg(y);
            double scale = TankReadings.nitrogenMg(y, volume) + y[TankLayout.FED] + y[TankLayout.EXCHANGED_OUT];
            assertThat(after).as("nitrogen of seed " + seed).isCloseTo(before, within(1e-9 * scale));
            for (int i = 0; i < y.length; i++) {
                assertThat(y[i]).as("seed " + seed + ", state " + i).isNotNaN().isGreaterThanOrEqualTo(0);
            }
        }
    }
}
