package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/** The step formulas on problems with a solution on paper. */
class RelaxationTest {
    @Test
    void decayIsTheExponentialToTheSeriesAndNeverNegative() {
        for (double x = 0; x <= 1; x += 0.01) {
            // The first term left out is x^7/5040, and the exponential itself is 1 or less.
            assertThat(Relaxation.decay(x)).isCloseTo(Math.exp(-x), within(Math.pow(x, 7) / 5040 + 1e-15));
        }
        for (double x : new double[] {5, 50, 5e3, 1e30}) {
            assertThat(Relaxation.decay(x)).isGreaterThan(0).isLessThan(0.02);
        }
    }

    @Test
    void constantProductionRelaxesToItsBalance() {
        for (double dt : new double[] {0.01, 0.05, 0.1}) {
            double exact = 3 / 7.0 + (2 - 3 / 7.0) * Math.exp(-7 * dt);
            assertThat(Relaxation.end(2, 3, 7, dt)).isCloseTo(exact, within(1e-4));
        }
        assertThat(Relaxation.end(2, 3, 7, 1e6)).isCloseTo(3 / 7.0, within(1e-4));
    }

    @Test
    void withoutLossProductionAddsUp() {
        assertThat(Relaxation.end(1, 4, 0, 0.5)).isEqualTo(3);
        assertThat(Relaxation.end(1, 4, 100, 0, 0.5)).isEqualTo(3);
    }

    /** y' = a + b t - L y has y = c e^(-Lt) + a/L - b/L^2 + b t/L. */
    @Test
    void forcingOnAStraightLineIsSolvedInClosedForm() {
        double a = 2;
        double b = 30;
        double loss = 6;
        double dt = 0.1;
        double steady = a / loss - b / (loss * loss);
        double exact = (0.5 - steady) * Math.exp(-loss * dt) + steady + b * dt / loss;
        assertThat(Relaxation.end(0.5, a + b * dt / 2, b * dt, loss, dt)).isCloseTo(exact, within(1e-5));
    }

    /** y' = a + b t + c t (dt - t) - L y: undetermined coefficients give the parabola that y comes to follow. */
    @Test
    void forcingOnAParabolaIsSolvedInClosedForm() {
        double dt = 0.2;
        double a = 2;
        double b = 30;
        double c = 90;
        for (double loss : new double[] {0.5, 4, 12}) {
            double p2 = -c / loss;
            double p1 = (b + c * dt - 2 * p2) / loss;
            double p0 = (a - p1) / loss;
            double exact = (0.5 - p0) * Math.exp(-loss * dt) + p0 + dt * (p1 + dt * p2);
            Response response = new Response();
            response.over(loss, dt);
            assertThat(response.end(0.5, a + b * dt, b * dt, c * dt * dt)).isCloseTo(exact, within(2e-4 * exact));
        }
    }

    /** What is in balance stays so, and nothing turns negative, however long the step. */
    @Test
    void aBalanceStaysPutAtEveryStep() {
        Response response = new Response();
        for (double dt : new double[] {1e-3, 0.1, 3, 1000}) {
            response.over(7, dt);
            assertThat(response.end(3, 21, 0)).isCloseTo(3, within(1e-12));
            assertThat(response.end(2, 0, 0)).isBetween(0.0, 2.0);
        }
    }

    /** A chain of two stages, the first's loss the second's gain: y2 = L1/(L2-L1) (e^(-L1 t) - e^(-L2 t)). */
    @Test
    void aChainOfTwoConvergesFasterThanTheSquareOfTheStep() {
        double exact = 3 / (5.0 - 3) * (Math.exp(-3 * 0.5) - Math.exp(-5 * 0.5));
        double coarse = Math.abs(chain(8) - exact);
        double fine = Math.abs(chain(16) - exact);
        assertThat(coarse / fine).isGreaterThan(8);
        assertThat(fine).isLessThan(1e-4);
    }

    private static double chain(int steps) {
        double dt = 0.5 / steps;
        double first = 1;
        double second = 0;
        for (int i = 0; i < steps; i++) {
            double next = Relaxation.end(first, 0, 3, dt);
            second = Relaxation.end(second, (first - next) / dt, 3 * (next - first), 5, dt);
            first = next;
        }
        return second;
    }

    /** y' = c - V y / (K + y): predicted on the line through its start, corrected with that of its end. */
    @Test
    void saturatingUptakeConvergesWithTheSquareOfTheStep() {
        double exact = uptake(4096, 1);
        double coarse = Math.abs(uptake(16, 1) - exact);
        double fine = Math.abs(uptake(32, 1) - exact);
        assertThat(coarse / fine).isBetween(3.3, 5.0);
        assertThat(fine).isLessThan(2e-3);
    }

    /** A switch at a known time costs no order, since a step ends there. */
    @Test
    void aSwitchAtAStepsEndKeepsTheOrder() {
        double exact = switched(2048);
        double coarse = Math.abs(switched(8) - exact);
        double fine = Math.abs(switched(16) - exact);
        assertThat(coarse / fine).isBetween(3.0, 5.5);
    }

    private static double switched(int steps) {
        double y = uptake(steps, 1);
        return carried(y, t -> 6, steps, 0.3);
    }

    private static double uptake(int steps, double start) {
        return carried(start, t -> 1 + 2 * Math.sin(3 * t), steps, 0.5);
    }

    private static double carried(double start, DoubleUnaryOperator source, int steps, double days) {
        double most = 8;
        double half = 0.4;
        double dt = days / steps;
        double y = start;
        for (int i = 0; i < steps; i++) {
            double c0 = source.applyAsDouble(i * dt);
            double c1 = source.applyAsDouble((i + 1) * dt);
            double slope0 = most * half / ((half + y) * (half + y));
            double bend0 = most * y / (half + y) - slope0 * y;
            double guess = Relaxation.end(y, (c0 + c1) / 2 - bend0, c1 - c0, slope0, dt);
            double slope1 = most * half / ((half + guess) * (half + guess));
            double bend1 = most * guess / (half + guess) - slope1 * guess;
            Response middle = new Response();
            middle.over((slope0 + slope1) / 2, dt);
            double less = slope0 - slope1;
            double end = c1 - bend1 + less / 2 * guess;
            double rise = c1 - c0 + bend0 - bend1 + less / 2 * (y + guess);
            y = middle.end(y, end, rise, less / 2 * (y - guess));
        }
        return y;
    }
}
