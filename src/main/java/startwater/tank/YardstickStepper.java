package startwater.tank;

import static startwater.tank.TankLayout.*;

import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.jspecify.annotations.Nullable;

/**
 * General methods on the very right-hand side that the fast stepper uses: constants held over an interval and pH warm
 * from call to call. They are what {@code bench} and the tests measure the fast stepper's speed against; nothing marked
 * runs on them.
 */
public abstract sealed class YardstickStepper implements Stepper {
    private static final double MOVING_C = 0.5;
    private static final double LONGEST_WHEN_MOVING = 0.0625;

    private @Nullable IntervalConstants constants;
    private @Nullable SystemTerms system;

    /** Dormand-Prince 8(5,3) of Commons Math, event to event. */
    public static YardstickStepper dormandPrince853(double relative, double absolute) {
        return new DormandPrince853(relative, absolute);
    }

    /** The classical Runge-Kutta method of order four, in steps of at most so many minutes. */
    public static YardstickStepper rungeKutta4(double minutes) {
        return new RungeKutta4(minutes / 1440);
    }

    abstract double settled();

    abstract void integrate(ReferenceStepper.Equations equations, double[] y, double days);

    @Override
    public void advanceSmoothly(double[] y, TankParameters p, Controls c, double days) {
        SystemTerms terms = system;
        if (terms == null || !terms.serve(p)) {
            terms = SystemTerms.of(p);
            system = terms;
            constants = null;
        }
        ChlorineReactions.combine(y);
        double left = days;
        while (left > 1e-12) {
            double rest = c.restsAtC(p);
            boolean moving = Math.abs(rest - y[TEMPERATURE]) > MOVING_C;
            double span = moving ? Math.min(left, LONGEST_WHEN_MOVING) : left;
            double fall = StrictMath.exp(-c.temperatureRatePerDay(p) * span);
            double end = rest + (y[TEMPERATURE] - rest) * fall;
            IntervalConstants k = IntervalConstants.of(terms, c, y, (y[TEMPERATURE] + end) / 2, constants);
            constants = k;
            ReferenceStepper.Equations equations = new ReferenceStepper.Equations(p, c, y, k, settled());
            integrate(equations, y, span);
            y[TEMPERATURE] = end;
            y[H_ION] = k.carbonate.newtonStep(y[ALKALINITY], y[DIC], y[TAN], equations.h());
            left -= span;
        }
    }

    private static final class DormandPrince853 extends YardstickStepper {
        private final double relative;
        private final double absolute;

        DormandPrince853(double relative, double absolute) {
            this.relative = relative;
            this.absolute = absolute;
        }

        /** Its error control would take an unsettled pH for stiffness. */
        @Override
        double settled() {
            return 1e-6;
        }

        @Override
        void integrate(ReferenceStepper.Equations equations, double[] y, double days) {
            DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 0.25, absolute, relative);
            integrator.integrate(equations, 0, y.clone(), days, y);
            for (int i = 0; i < y.length; i++) {
                y[i] = Math.max(0, y[i]);
            }
        }
    }

    private static final class RungeKutta4 extends YardstickStepper {
        private final double step;
        private double[] k1 = new double[0];
        private double[] k2 = k1;
        private double[] k3 = k1;
        private double[] k4 = k1;
        private double[] at = k1;

        RungeKutta4(double step) {
            this.step = step;
        }

        @Override
        double settled() {
            return 1;
        }

        @Override
        void integrate(ReferenceStepper.Equations equations, double[] y, double days) {
            int n = y.length;
            if (k1.length != n) {
                k1 = new double[n];
                k2 = new double[n];
                k3 = new double[n];
                k4 = new double[n];
                at = new double[n];
            }
            int steps = (int) Math.ceil(days / step - 1e-9);
            double dt = days / steps;
            for (int s = 0; s < steps; s++) {
                equations.computeDerivatives(0, y, k1);
                along(y, k1, dt / 2);
                equations.computeDerivatives(0, at, k2);
                along(y, k2, dt / 2);
                equations.computeDerivatives(0, at, k3);
                along(y, k3, dt);
                equations.computeDerivatives(0, at, k4);
                for (int i = 0; i < n; i++) {
                    y[i] += dt / 6 * (k1[i] + 2 * (k2[i] + k3[i]) + k4[i]);
                }
            }
        }

        private void along(double[] y, double[] slope, double dt) {
            for (int i = 0; i < y.length; i++) {
                at[i] = y[i] + dt * slope[i];
            }
        }
    }
}
