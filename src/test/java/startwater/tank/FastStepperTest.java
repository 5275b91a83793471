package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.biofilter.FilterMedia;
import startwater.fish.Stressor;
import startwater.water.CarbonateSystem;
import startwater.water.Dose;

/** How near the fast stepper keeps to the referee where much moves, and how many steps it takes for that. */
class FastStepperTest {
    private static final double MINUTE = 1.0 / 1440;

    /** A nursery with a meal in it, and what befalls it: for so many days, near so much, in so many steps at the most. */
    enum Course {
        FED(0.5, 4e-4, 9) {
            @Override
            void befall(TestTank tank) {
                tank.y[NITRITE] = 3;
            }
        },
        AIR_FAILS(0.25, 1.5e-4, 260) {
            @Override
            void befall(TestTank tank) {
                tank.event(new TankEvent.Stock(600, 12));
                tank.controls = tank.controls.withAir(false);
            }
        },
        AMMONIA_KILLS(0.5, 1e-4, 110) {
            @Override
            void befall(TestTank tank) {
                tank.y[TAN] = 12;
                tank.event(new TankEvent.Dosing(Dose.SODIUM_CARBONATE, 300));
            }
        },
        NITRITE_KILLS(1, 5e-4, 65) {
            @Override
            void befall(TestTank tank) {
                tank.y[NITRITE] = 40;
                tank.y[CHLORIDE] = 20;
            }
        },
        WARMED(1, 1e-4, 42) {
            @Override
            void befall(TestTank tank) {
                tank.controls = tank.controls.withSetPoint(32);
            }
        },
        DRIFTING(1, 5e-4, 14) {
            @Override
            void befall(TestTank tank) {
                tank.controls = tank.controls.withSetPoint(27.4);
            }
        },
        EXCHANGED(1, 1e-4, 165) {
            @Override
            void befall(TestTank tank) {
                SourceWater well = SourceWater.read(20, 7, 60, 0.3, 2, 20, 0, 0);
                tank.controls = tank.controls.withInflow(1.5, 0.1, well);
                tank.y[COMBINED_CHLORINE] = 0.1;
                tank.y[MEDICATION] = 0.3;
            }
        },
        CHLORINE_KILLS(0.5, 1e-4, 190) {
            @Override
            void befall(TestTank tank) {
                tank.y[TAN] = 0.3;
                tank.y[COMBINED_CHLORINE] = 0.5;
                tank.y[FREE_CHLORINE] = 0.2;
            }
        },
        PUMP_FAILS(0.5, 1e-4, 12) {
            @Override
            void befall(TestTank tank) {
                tank.controls = tank.controls.withPump(false);
            }
        };

        private final double days;
        private final double near;
        private final int steps;

        Course(double days, double near, int steps) {
            this.days = days;
            this.near = near;
            this.steps = steps;
        }

        abstract void befall(TestTank tank);
    }

    private static TestTank nursery() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .media(FilterMedia.SPONGE)
                .volume(2000)
                .seeds(0.3, 0.2)
                .plants(2000)
                .water(7.6, 120, 1, 60)
                .stock(3, 12);
        tank.y[NITRITE] = 2;
        tank.y[NITRATE] = 3;
        tank.y[ORGANIC_N] = 0.5;
        tank.y[HELD_N] = 1500;
        tank.event(new TankEvent.Meal(1, 0.5, Double.NaN));
        return tank;
    }

    @ParameterizedTest
    @EnumSource
    void itKeepsToTheReferee(Course course) {
        TestTank tank = nursery();
        course.befall(tank);
        double[] fast = tank.y.clone();
        double[] exact = tank.y.clone();
        FastStepper stepper = new FastStepper();
        stepper.advance(fast, tank.parameters, tank.controls, course.days);
        new ReferenceStepper(1e-10, 1e-10).advance(exact, tank.parameters, tank.controls, course.days);
        assertThat(Agreement.stateError(fast, exact, tank.parameters)).isLessThan(course.near);
        assertThat(Agreement.survivalError(fast, exact, 1)).isLessThan(1e-4);
        near("h", fast, exact, H_ION, 2e-3, 0);
        near("stress", fast, exact, STRESS, 0.025, 0);
        near("delay", fast, exact, DELAY, 0.005, 0);
        near("removed", fast, exact, REMOVED, 1e-4, 1);
        near("taken up", fast, exact, TAKEN_UP, 5e-4, 0);
        near("held", fast, exact, HELD_N, 1e-4, 0);
        near("loose", fast, exact, LOOSE_N, 1e-4, 0);
        near("exchanged", fast, exact, EXCHANGED_OUT, 1e-4, 0);
        near("temperature", fast, exact, TEMPERATURE, 1e-9, 0);
        near("used to", fast, exact, ACCLIMATED_C, 1e-4, 0);
        for (Stressor cause : Stressor.values()) {
            near("harm by " + cause, fast, exact, DAMAGE + cause.ordinal(), 0.007, 1e-4);
        }
        assertThat(stepper.steps()).as("steps").isLessThanOrEqualTo(course.steps);
    }

    /** While water warms by 12 °C a day: pH goes by the temperature of the moment, and oxygen is corrected once more. */
    @ParameterizedTest
    @CsvSource({"10, 1e-4, 2e-5", "30, 5e-4, 6e-5", "60, 1e-3, 5e-5"})
    void phAndOxygenAreThoseOfTheEndOfASpan(double minutes, double nearInH, double nearInOxygen) {
        TestTank tank = nursery();
        tank.controls = tank.controls.withSetPoint(33);
        double[] exact = tank.y.clone();
        new FastStepper().advance(tank.y, tank.parameters, tank.controls, minutes * MINUTE);
        new ReferenceStepper(1e-10, 1e-10).advance(exact, tank.parameters, tank.controls, minutes * MINUTE);
        near("h", tank.y, exact, H_ION, nearInH, 0);
        near("oxygen", tank.y, exact, OXYGEN, nearInOxygen, 0);
    }

    /** A ripe filter in strong ammonia: how it slows as ammonia and oxygen fall sets the steps. */
    @ParameterizedTest
    @ValueSource(doubles = {30, 120, 240})
    void aFilterAtItsMostIsFollowedClosely(double minutes) {
        TestTank tank = TestTank.plan().seeds(1, 1).water(7.8, 150, 5, 50).fill();
        double[] exact = tank.y.clone();
        new FastStepper().advance(tank.y, tank.parameters, tank.controls, minutes * MINUTE);
        new ReferenceStepper(1e-10, 1e-10).advance(exact, tank.parameters, tank.controls, minutes * MINUTE);
        assertThat(Agreement.stateError(tank.y, exact, tank.parameters)).isLessThan(2.5e-4);
    }

    private static void near(String what, double[] fast, double[] exact, int at, double share, double floor) {
        assertThat(fast[at]).as(what).isCloseTo(exact[at], within(share * Math.abs(exact[at]) + floor + 1e-15));
    }

    /** Four tanks in turn on one stepper, with one and with two strata and without fish: none hears of the others. */
    @Test
    void whatAStepperDidBeforeLeavesNoTrace() {
        TestTank one = nursery();
        RandomTank two = RandomTank.plain(5, 1, 2);
        TestTank third = TestTank.plan().species("nile-tilapia").seeds(0.5, 0.5).stock(2, 12);
        TestTank empty = TestTank.plan().seeds(0.5, 0.5).fill();
        FastStepper shared = new FastStepper();
        double[][] together = {one.y.clone(), two.start().clone(), third.y.clone(), empty.y.clone()};
        double[][] alone = {one.y.clone(), two.start().clone(), third.y.clone(), empty.y.clone()};
        TankParameters[] systems = {one.parameters, two.parameters(), third.parameters, empty.parameters};
        FastStepper[] own = {new FastStepper(), new FastStepper(), new FastStepper(), new FastStepper()};
        for (int hour = 0; hour < 6; hour++) {
            for (int i = 0; i < systems.length; i++) {
                shared.advance(together[i], systems[i], one.controls, 1.0 / 24);
                own[i].advance(alone[i], systems[i], one.controls, 1.0 / 24);
            }
        }
        assertThat(together).isDeepEqualTo(alone);
    }

    /** Without fish and bacteria, all in balance with the air. */
    private static TestTank still() {
        return TestTank.plan().temperature(20).seeds(0, 0).fill().run(20);
    }

    private static int steps(TestTank tank, double minutes) {
        FastStepper stepper = new FastStepper();
        stepper.advance(tank.y.clone(), tank.parameters, tank.controls, minutes * MINUTE);
        return stepper.steps();
    }

    /**
     * The first step of an interval may be 240 minutes, all later ones 200; an interval lasts 0.34 days, 489.6 minutes, and
     * is cut evenly: 460 minutes go as 230, 115 and 115.
     */
    @ParameterizedTest
    @CsvSource({"230, 1", "300, 2", "390, 2", "460, 3", "489, 3", "720, 4", "1468, 9"})
    void whereNothingMovesStepsAreLong(double minutes, int steps) {
        assertThat(steps(still(), minutes)).isEqualTo(steps);
    }

    /** Unrest of oxygen is its way to balance over 1 mg/L and itself; forty times that cut the first step. */
    @ParameterizedTest
    @ValueSource(doubles = {7, 8, 8.5, 10})
    void theFurtherOxygenIsFromBalanceTheShorterTheFirstStep(double oxygen) {
        TestTank tank = still();
        double balance = tank.oxygen();
        tank.y[OXYGEN] = oxygen;
        double first = 240 / (1 + 40 * Math.abs(balance - oxygen) / (1 + oxygen));
        assertThat(steps(tank, 0.97 * first)).isEqualTo(1);
        assertThat(steps(tank, 1.03 * first)).isEqualTo(2);
    }

    /** Unrest of carbon is its way to balance with the air along the tangent, as a share of what there is. */
    @ParameterizedTest
    @ValueSource(doubles = {0.99, 1.01, 1.03})
    void theFurtherCarbonIsFromBalanceTheShorterTheFirstStep(double share) {
        TestTank tank = still();
        tank.y[DIC] *= share;
        TankReadings.settlePh(tank.y);
        double dic = tank.y[DIC];
        double there = carbonDioxide(tank, dic);
        double perDic = (carbonDioxide(tank, 1.0001 * dic) - carbonDioxide(tank, 0.9999 * dic)) / (2e-4 * dic);
        double balance = TankReadings.carbonate(tank.y).co2InBalanceWith(600e-6);
        double first = 240 / (1 + 40 * Math.abs(there - balance) / perDic / dic);
        assertThat(steps(tank, 0.97 * first)).isEqualTo(1);
        assertThat(steps(tank, 1.03 * first)).isEqualTo(2);
    }

    private static double carbonDioxide(TestTank tank, double dic) {
        CarbonateSystem carbonate = TankReadings.carbonate(tank.y);
        return carbonate.co2(carbonate.solveH(tank.y[ALKALINITY], dic, tank.tan()), dic);
    }

    /** From 5 minutes steps grow fourfold: 5, 20 and 80; of 305 minutes 5, 20, 70 and twice 105. */
    @ParameterizedTest
    @CsvSource({"4.9, 1", "5.1, 2", "25, 2", "105, 3", "305, 5"})
    void afterAnUpheavalStepsGrowFourfold(double minutes, int steps) {
        TestTank tank = still();
        tank.y[OXYGEN] = 1;
        assertThat(steps(tank, minutes)).isEqualTo(steps);
    }

    /** 0.03 days are 43.2 minutes, 0.125 days 180. */
    @ParameterizedTest
    @CsvSource({"30, 432, 10", "20.4, 540, 3", "20.1, 489, 3"})
    void whileItWarmsIntervalsAreShort(double setPointC, double minutes, int steps) {
        TestTank tank = still();
        tank.controls = tank.controls.withSetPoint(setPointC);
        assertThat(steps(tank, minutes)).isEqualTo(steps);
    }

    @Test
    void whereFishRunOutOfOxygenMinutesCount() {
        TestTank tank = nursery();
        tank.y[OXYGEN] = 2.4;
        tank.controls = tank.controls.withAir(false);
        assertThat(steps(tank, 60)).isBetween(30, 60);
        TestTank without = still();
        without.y[OXYGEN] = 2;
        assertThat(steps(without, 60)).isLessThan(5);
    }
}
