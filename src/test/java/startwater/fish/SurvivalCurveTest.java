package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** The closed forms of the survival curve against the differential equations they solve. */
class SurvivalCurveTest {
    private static final double CLOSE = 1e-4;

    /** D and cumulative hazard by Commons Math, where the threshold's kink is met with small steps. */
    private static double integrated(SurvivalCurve curve, double exposure, double days) {
        FirstOrderDifferentialEquations equations = new FirstOrderDifferentialEquations() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public void computeDerivatives(double t, double[] y, double[] dy) {
                dy[0] = curve.killRatePerDay() * (exposure - y[0]);
                dy[1] = curve.hazardPerDay(y[0], 1);
            }
        };
        double[] y = new double[2];
        new DormandPrince853Integrator(1e-9, 0.01, 1e-11, 1e-11).integrate(equations, 0, y, days, y);
        return y[1];
    }

    private static SurvivalCurve random(SplittableRandom r) {
        double z = 2 * r.nextDouble();
        return new SurvivalCurve(0.3 + 20 * r.nextDouble(), z, 3 * r.nextDouble(), z * r.nextDouble(), r.nextDouble());
    }

    @Test
    void cumulativeHazardSolvesItsEquations() {
        SplittableRandom r = new SplittableRandom(5);
        for (int i = 0; i < 60; i++) {
            SurvivalCurve curve = random(r);
            double exposure = 4 * r.nextDouble();
            double days = 0.2 + 5 * r.nextDouble();
            double expected = integrated(curve, exposure, days);
            assertThat(curve.cumulativeHazard(exposure, days))
                    .as("%s at %s for %s d", curve, exposure, days)
                    .isCloseTo(expected, within(CLOSE * StrictMath.max(1, expected)));
        }
    }

    @Test
    void lc50LeavesHalf() {
        SplittableRandom r = new SplittableRandom(6);
        for (int i = 0; i < 200; i++) {
            SurvivalCurve curve = random(r);
            double days = 0.2 + 5 * r.nextDouble();
            assertThat(StrictMath.exp(-curve.cumulativeHazard(curve.lc50(days), days)))
                    .isCloseTo(0.5, within(1e-9));
        }
    }

    @Test
    void slopeForAnLc50GivesThatLc50() {
        SplittableRandom r = new SplittableRandom(7);
        for (int i = 0; i < 200; i++) {
            double kd = 1 + 10 * r.nextDouble();
            double lc50 = 0.5 + 5 * r.nextDouble();
            double z = 0.9 * lc50;
            double slope = SurvivalCurve.slopeForLc50(kd, z, 0.1 * lc50, 0.01, lc50, 4);
            assertThat(new SurvivalCurve(kd, z, slope, 0.1 * lc50, 0.01).lc50(4))
                    .isCloseTo(lc50, within(1e-9 * lc50));
        }
    }

    @Test
    void longerExposureNeverTakesMoreToKill() {
        SplittableRandom r = new SplittableRandom(8);
        for (int i = 0; i < 200; i++) {
            SurvivalCurve curve = random(r);
            assertThat(curve.lc50(4)).isLessThanOrEqualTo(curve.lc50(2)).isLessThanOrEqualTo(curve.lc50(1));
        }
    }

    @Test
    void nothingDiesUnderTheThreshold() {
        assertThat(SurvivalCurve.plain(3, 2, 5).cumulativeHazard(2, 100)).isZero();
        assertThat(SurvivalCurve.plain(3, 2, 5).hazardPerDay(2, 1)).isZero();
        assertThat(SurvivalCurve.plain(3, 2, 5).hazardPerDay(3, 1)).isEqualTo(5);
        assertThat(SurvivalCurve.plain(3, 2, 5).hazardPerDay(3, 1.5)).isZero();
    }

    @Test
    void refusesACurveThatCannotBe() {
        assertThatThrownBy(() -> SurvivalCurve.plain(0, 1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SurvivalCurve.plain(1, -1, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> SurvivalCurve.plain(1, 1, Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
