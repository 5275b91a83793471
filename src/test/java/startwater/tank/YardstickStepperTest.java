package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import java.util.function.Supplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The general methods that speed is measured against solve the same tank; and what the referee does at its edges. */
class YardstickStepperTest {
    /** A method, and how near it comes to the referee on constants that are held over an interval. */
    enum Method {
        DORMAND_PRINCE(() -> YardstickStepper.dormandPrince853(1e-7, 1e-7)),
        RUNGE_KUTTA(() -> YardstickStepper.rungeKutta4(5));

        private final Supplier<Stepper> made;

        Method(Supplier<Stepper> made) {
            this.made = made;
        }
    }

    private static TestTank nursery() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .seeds(0.3, 0.2)
                .water(7.6, 120, 1, 60)
                .stock(3, 12);
        tank.y[NITRITE] = 25;
        tank.y[FREE_CHLORINE] = 0.3;
        tank.event(new TankEvent.Meal(1, 0.5, Double.NaN));
        return tank;
    }

    private static void agree(TestTank tank, Controls c, double days, Stepper stepper, double share) {
        double[] exact = tank.y.clone();
        new ReferenceStepper(1e-9, 1e-9).advance(exact, tank.parameters, c, days);
        stepper.advance(tank.y, tank.parameters, c, days);
        assertThat(Agreement.stateError(tank.y, exact, tank.parameters)).isLessThan(share);
        assertThat(Agreement.survivalError(tank.y, exact, 1)).isLessThan(share);
        assertThat(tank.y[H_ION]).isCloseTo(exact[H_ION], within(0.003 * exact[H_ION]));
        assertThat(tank.y[TEMPERATURE]).isCloseTo(exact[TEMPERATURE], within(1e-6));
        assertThat(tank.y[FREE_CHLORINE]).isCloseTo(exact[FREE_CHLORINE], within(1e-6));
        for (double state : tank.y) {
            assertThat(state).isNotNegative();
        }
    }

    @ParameterizedTest
    @EnumSource
    void itFollowsTheReferee(Method method) {
        TestTank tank = nursery();
        agree(tank, tank.controls, 0.4, method.made.get(), 2e-4);
    }

    @ParameterizedTest
    @EnumSource
    void itFollowsTheRefereeWhereWaterWarms(Method method) {
        TestTank tank = nursery();
        agree(tank, tank.controls.withSetPoint(31), 0.4, method.made.get(), 1e-3);
    }

    @ParameterizedTest
    @EnumSource
    void oneSystemLeavesNoTraceInAnother(Method method) {
        Stepper shared = method.made.get();
        RandomTank other = RandomTank.plain(5, 1, 2);
        shared.advance(other.start().clone(), other.parameters(), other.controls(), 0.1);
        TestTank tank = nursery();
        double[] alone = tank.y.clone();
        method.made.get().advance(alone, tank.parameters, tank.controls, 0.2);
        shared.advance(tank.y, tank.parameters, tank.controls, 0.2);
        assertThat(tank.y).isEqualTo(alone);
    }

    /** Half an hour in steps of at most seven minutes is five steps of six, not four of seven and a half. */
    @Test
    void rungeKuttaKeepsToItsLongestStep() {
        TestTank seven = nursery();
        TestTank six = nursery();
        YardstickStepper.rungeKutta4(7).advance(seven.y, seven.parameters, seven.controls, 0.5 / 24);
        YardstickStepper.rungeKutta4(6).advance(six.y, six.parameters, six.controls, 0.5 / 24);
        assertThat(seven.y).isEqualTo(six.y);
    }

    /** Ammonia binds free chlorine before anything else moves; over no time at all nothing else does. */
    @Test
    void overNoTimeTheRefereeOnlyCombinesChlorine() {
        TestTank tank = nursery();
        double[] expected = tank.y.clone();
        ChlorineReactions.combine(expected);
        new ReferenceStepper().advance(tank.y, tank.parameters, tank.controls, 0);
        assertThat(tank.y).isEqualTo(expected);
        assertThat(tank.y[FREE_CHLORINE]).isZero();
    }

    /** Every stepper. */
    enum Every {
        FAST(FastStepper::new),
        REFERENCE(ReferenceStepper::new),
        DORMAND_PRINCE(() -> YardstickStepper.dormandPrince853(1e-8, 1e-8)),
        RUNGE_KUTTA(() -> YardstickStepper.rungeKutta4(5));

        private final Supplier<Stepper> made;

        Every(Supplier<Stepper> made) {
            this.made = made;
        }
    }

    /**
     * Half a volume a day of exchange and a tenth to make up for the air's share, for a fifth of a day: 0.12 volumes of 2,400
     * L at 0.4 + 0.3 + 2 mg N/L come in. Free chlorine falls by its decay, 12 a day, and by the exchange.
     */
    @ParameterizedTest
    @EnumSource
    void whatFlowsInIsBookedAndWhatFlowsOutTakesItsShare(Every every) {
        TestTank tank = TestTank.plan().temperature(20).seeds(0, 0).fill();
        tank.y[FREE_CHLORINE] = 0.5;
        SourceWater in = new SourceWater(20, 0.4, 0.3, 2, 2, 2, 9, 30, 0, 0);
        tank.y[TAN] = 0;
        every.made.get().advance(tank.y, tank.parameters, tank.controls.withInflow(0.5, 0.1, in), 0.2);
        assertThat(tank.y[BROUGHT_IN]).isCloseTo(0.12 * 2400 * 2.7, within(1e-3));
        assertThat(tank.y[VOLUMES]).isCloseTo(0.1, within(1e-9));
        double left = 0.5 * StrictMath.exp(-12.5 * 0.2);
        assertThat(tank.y[FREE_CHLORINE]).isCloseTo(left, within(0.02 * left));
    }

    /** After it the water has the pH of what it holds, and no state lies below nothing. */
    @Test
    void theRefereeEndsSettledAndNotBelowNothing() {
        TestTank tank = nursery();
        tank.y[ORGANIC_N] = 1e-13;
        new ReferenceStepper(1e-5, 1e-5).advance(tank.y, tank.parameters, tank.controls.withAir(false), 1);
        double alkalinity = TankReadings.carbonate(tank.y).alkalinity(tank.y[H_ION], tank.y[DIC], tank.tan());
        assertThat(alkalinity).isCloseTo(tank.y[ALKALINITY], within(1e-6));
        for (double state : tank.y) {
            assertThat(state).isNotNegative();
        }
    }

    /**
     * Five hours without the pump: four are borne, in the fifth a tenth of the bed rots, besides what decays (0.06 a day at
     * 20 °C); the clock of the bed shows the hours, however they are cut.
     */
    @ParameterizedTest
    @EnumSource
    void theIntervalIsCutWhereABedBeginsToFoul(Method method) {
        TestTank tank = TestTank.plan().temperature(20).seeds(0.5, 0.5).fill();
        tank.y[HELD_N] = 1000;
        double aob = tank.y[AOB];
        Controls off = tank.controls.withPump(false);
        Stepper stepper = method.made.get();
        stepper.advance(tank.y, tank.parameters, off, 3.0 / 24);
        assertThat(tank.y[STAGNANT_HOURS]).isCloseTo(3, within(1e-9));
        assertThat(tank.y[LOOSE_N]).isZero();
        stepper.advance(tank.y, tank.parameters, off, 2.0 / 24);
        assertThat(tank.y[STAGNANT_HOURS]).isCloseTo(5, within(1e-9));
        assertThat(tank.y[LOOSE_N]).isCloseTo(100, within(0.1));
        assertThat(tank.y[AOB] / aob).isCloseTo(0.9 * StrictMath.exp(-0.06 * 5 / 24), within(1e-5));
        stepper.advance(tank.y, tank.parameters, off, 1.0 / 24);
        assertThat(tank.y[STAGNANT_HOURS]).isCloseTo(6, within(1e-9));
        assertThat(tank.y[LOOSE_N]).isCloseTo(190, within(0.2));
        stepper.advance(tank.y, tank.parameters, tank.controls, 1e-6);
        assertThat(tank.y[STAGNANT_HOURS]).isZero();
        assertThat(tank.y[ORGANIC_N]).isCloseTo(0.8 * 190 / 2400, within(1e-3));
    }
}
