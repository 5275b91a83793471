package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The steppers as they are used, on systems in which some state has a solution on paper: decay, a chain of two stages,
 * forced relaxation, and a switch at a known time. And their order, by halving the step or by tightening the tolerance.
 */
class StepperProofTest {
    private static final double GUT = Kinetics.GUT_RATE_PER_DAY;

    /** A stepper and how far from the solution on paper it may end, as a share. */
    enum Proved {
        REFERENCE(new ReferenceStepper(), 1e-8),
        /** Its rational exponential leaves a few parts in ten thousand over a step of three hours. */
        FAST(new FastStepper(), 1e-3);

        private final Stepper stepper;
        private final double share;

        Proved(Stepper stepper, double share) {
            this.stepper = stepper;
            this.share = share;
        }

        void is(String what, double computed, double exact) {
            assertThat(computed)
                    .as("%s of %s", what, this)
                    .isCloseTo(exact, within(share * Math.abs(exact) + share * 1e-3));
        }
    }

    /** A system without fish and bacteria at 20 °C: nothing but what the test puts in moves. */
    private static TestTank still() {
        return TestTank.plan().temperature(20).seeds(0, 0).fill();
    }

    @ParameterizedTest
    @EnumSource
    void decay(Proved proved) {
        TestTank tank = still();
        tank.y[TankLayout.FREE_CHLORINE] = 2;
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 0.25);
        proved.is(
                "free chlorine",
                tank.y[TankLayout.FREE_CHLORINE],
                2 * StrictMath.exp(-ChlorineReactions.FREE_DECAY_PER_DAY * 0.25));
    }

    /** Chloramine decays and hands its nitrogen to ammonia: what is lost there is found here, at every rate. */
    @ParameterizedTest
    @EnumSource
    void decayHandsOnWhatItLoses(Proved proved) {
        TestTank tank = still();
        tank.y[TankLayout.COMBINED_CHLORINE] = 3;
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 5);
        double left = 3 * StrictMath.exp(-ChlorineReactions.COMBINED_DECAY_PER_DAY * 5);
        proved.is("chloramine", tank.y[TankLayout.COMBINED_CHLORINE], left);
        proved.is("its ammonia", tank.tan(), (3 - left) * ChlorineReactions.NITROGEN_PER_COMBINED);
    }

    /** Tilapia too cold to eat or to fast, and not yet cold enough to die: only the gut moves. */
    private static TestTank fedAndCold(double gutMg) {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .sensitivity(TestTank.UNHARMED)
                .temperature(16)
                .seeds(0, 0)
                .stock(2, 12);
        tank.y[TankLayout.GUT_1] = gutMg;
        return tank;
    }

    /** Two equal stages: g1 = e^(-kt), g2 = kt e^(-kt), excreted 1 - (1 + kt) e^(-kt). */
    @ParameterizedTest
    @EnumSource
    void chainOfTwoStages(Proved proved) {
        double gut = 2000;
        for (double days : new double[] {0.05, 0.25, 1}) {
            TestTank tank = fedAndCold(gut);
            double before = tank.tan();
            proved.stepper.advance(tank.y, tank.parameters, tank.controls, days);
            double fall = StrictMath.exp(-GUT * days);
            proved.is("first stage", tank.y[TankLayout.GUT_1], gut * fall);
            proved.is("second stage", tank.y[TankLayout.GUT_2], gut * GUT * days * fall);
            proved.is(
                    "ammonia excreted",
                    tank.tan() - before,
                    gut * (1 - (1 + GUT * days) * fall) / tank.parameters.volumeL());
        }
    }

    /** Oxygen relaxes to saturation with the transfer of the devices and of the surface. */
    @ParameterizedTest
    @EnumSource
    void relaxation(Proved proved) {
        TestTank tank = still();
        double saturation = TankFlows.oxygenSaturationMgPerL(tank.y, tank.parameters, tank.controls);
        tank.y[TankLayout.OXYGEN] = 1;
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 1 / 24.0);
        double left = StrictMath.exp(-(2 + 0.1));
        proved.is("oxygen", tank.oxygen(), saturation + (1 - saturation) * left);
    }

    /** Ammonia that slow exchange pulls to the source while the gut forces it: solved with an integrating factor. */
    @ParameterizedTest
    @EnumSource
    void forcedRelaxation(Proved proved) {
        double gut = 3000;
        double q = 1.5;
        double source = 0.4;
        TestTank tank = fedAndCold(gut);
        double start = tank.tan();
        SourceWater in = SourceWater.read(16, 7.6, 120, source, 1, 200, 0, 0);
        Controls exchanged = Controls.running(16).withInflow(q, 0, in);
        double days = 0.5;
        proved.stepper.advance(tank.y, tank.parameters, exchanged, days);
        double a = GUT - q;
        double forced = GUT
                * GUT
                * gut
                / tank.parameters.volumeL()
                * StrictMath.exp(-q * days)
                * (1 - (1 + a * days) * StrictMath.exp(-a * days))
                / (a * a);
        double relaxed = source + (start - source) * StrictMath.exp(-q * days);
        proved.is("ammonia", tank.tan(), relaxed + forced);
    }

    /** Air that stops after an hour and comes back two hours later: three exponentials, joined. */
    @ParameterizedTest
    @EnumSource
    void switchAtAKnownTime(Proved proved) {
        TestTank tank = still();
        double saturation = TankFlows.oxygenSaturationMgPerL(tank.y, tank.parameters, tank.controls);
        tank.y[TankLayout.OXYGEN] = 2;
        Controls off = tank.controls.withAir(false);
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 1 / 24.0);
        proved.stepper.advance(tank.y, tank.parameters, off, 2 / 24.0);
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 0.5 / 24);
        double left = StrictMath.exp(-(2.1 * 1 + 0.1 * 2 + 2.1 * 0.5));
        proved.is("oxygen", tank.oxygen(), saturation + (2 - saturation) * left);
    }

    /** Temperature drifts to its set point by a closed form, at any place of a switch. */
    @ParameterizedTest
    @EnumSource
    void driftToANewSetPoint(Proved proved) {
        TestTank tank = still();
        Controls warm = tank.controls.withSetPoint(26);
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 0.3);
        proved.stepper.advance(tank.y, tank.parameters, warm, 0.4);
        proved.stepper.advance(tank.y, tank.parameters, tank.controls, 0.2);
        double warmed = 26 - 6 * StrictMath.exp(-2 * 0.4);
        proved.is("temperature", tank.y[TankLayout.TEMPERATURE], 20 + (warmed - 20) * StrictMath.exp(-2 * 0.2));
    }

    /** The general method of order four, by halving its step on the chain of two stages. */
    @Test
    void rungeKuttaHasOrderFour() {
        double coarse = missedOfChain(YardstickStepper.rungeKutta4(60));
        double fine = missedOfChain(YardstickStepper.rungeKutta4(30));
        assertThat(order(coarse, fine)).isBetween(3.7, 4.4);
    }

    private static double missedOfChain(Stepper stepper) {
        TestTank tank = fedAndCold(2000);
        double before = tank.tan();
        stepper.advance(tank.y, tank.parameters, tank.controls, 0.5);
        double exact = 2000 * (1 - (1 + GUT * 0.5) * StrictMath.exp(-GUT * 0.5)) / tank.parameters.volumeL();
        return Math.abs(tank.tan() - before - exact);
    }

    private static double order(double coarse, double fine) {
        return StrictMath.log(coarse / fine) / StrictMath.log(2);
    }

    /** The referee's error goes down with its tolerance. */
    @Test
    void theRefereeFollowsItsTolerance() {
        double[] exact = nursery(new ReferenceStepper(1e-12, 1e-12), 1);
        double before = Double.POSITIVE_INFINITY;
        for (double tolerance : new double[] {1e-3, 1e-6, 1e-9}) {
            double error = Agreement.stateError(
                    nursery(new ReferenceStepper(tolerance, tolerance), 1), exact, nursery().parameters);
            assertThat(error).isLessThan(before / 5).isLessThan(100 * tolerance);
            before = error;
        }
    }

    /**
     * The fast stepper chooses its steps; cut into spans shorter than any it would take, it makes one step of each span,
     * so that halving the spans halves the step. Twice halved, the error of what the filter does falls sixteenfold.
     */
    @Test
    void theFastStepperHasOrderTwo() {
        double[] exact = nursery(new ReferenceStepper(1e-12, 1e-12), 1);
        double[] coarse = nursery(new FastStepper(), 36);
        double[] fine = nursery(new FastStepper(), 144);
        for (int at : new int[] {TankLayout.NITRITE, TankLayout.NITRATE, TankLayout.ORGANIC_N}) {
            double order = order(Math.abs(coarse[at] - exact[at]), Math.abs(fine[at] - exact[at])) / 2;
            assertThat(order).as("order of state %d", at).isBetween(1.6, 3.5);
        }
        assertThat(Agreement.stateError(fine, exact, nursery().parameters)).isLessThan(1e-4);
    }

    /** Twelve hours after a meal in a nursery whose filter works, in so many equal spans. */
    private static double[] nursery(Stepper stepper, int spans) {
        TestTank tank = nursery();
        tank.y[TankLayout.NITRITE] = 2;
        tank.event(new TankEvent.Meal(1, 0.5, Double.NaN));
        for (int i = 0; i < spans; i++) {
            stepper.advance(tank.y, tank.parameters, tank.controls, 0.5 / spans);
        }
        return tank.y;
    }

    private static TestTank nursery() {
        return TestTank.plan()
                .species("nile-tilapia")
                .seeds(0.2, 0.1)
                .water(7.6, 120, 1, 200)
                .stock(4, 12);
    }
}
