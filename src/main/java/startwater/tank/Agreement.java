package startwater.tank;

import static startwater.tank.TankLayout.*;

/**
 * How far one stepper's end state lies from another's. Errors are relative above stated floors: 0.1 mg N/L of ammonia and
 * nitrite, 0.5 of organic nitrogen and 1 of nitrate, 0.1 meq/L and mmol/L of alkalinity and carbon, 1 mg/L of oxygen,
 * 1 °C, filter activity that takes 0.1 mg N/L a day out of the water, and, per litre of water, 0.5 mg N in gut and 1 mg N
 * in body.
 */
public final class Agreement {
    private static final int[] DISSOLVED = {TAN, NITRITE, ALKALINITY, DIC};
    private static final int[] FILTER = {AOB, NOB};
    private static final int[] GUT = {GUT_1, GUT_2};
    private static final double FLOOR = 0.1;
    private static final double ORGANIC_FLOOR = 0.5;
    private static final double NITRATE_FLOOR = 1;
    private static final double GUT_FLOOR_MG_PER_L = 0.5;
    private static final double BODY_FLOOR_MG_PER_L = 1;

    private Agreement() {}

    /** The greatest relative error of any state above its floor. */
    public static double stateError(double[] y, double[] reference, double volumeL) {
        double worst = Math.max(error(y, reference, OXYGEN, 1), error(y, reference, TEMPERATURE, 1));
        worst = Math.max(worst, error(y, reference, FISH_N, BODY_FLOOR_MG_PER_L * volumeL));
        for (int at : DISSOLVED) {
            worst = Math.max(worst, error(y, reference, at, FLOOR));
        }
        worst = Math.max(worst, error(y, reference, ORGANIC_N, ORGANIC_FLOOR));
        worst = Math.max(worst, error(y, reference, NITRATE, NITRATE_FLOOR));
        for (int at : FILTER) {
            worst = Math.max(worst, error(y, reference, at, FLOOR * volumeL));
        }
        for (int at : GUT) {
            worst = Math.max(worst, error(y, reference, at, GUT_FLOOR_MG_PER_L * volumeL));
        }
        return worst;
    }

    private static double error(double[] y, double[] reference, int at, double floor) {
        return Math.abs(y[at] - reference[at]) / Math.max(floor, Math.abs(reference[at]));
    }

    /** The greatest difference in the survival of any stratum, 0..1. */
    public static double survivalError(double[] y, double[] reference, int strata) {
        double worst = 0;
        for (int s = 0; s < strata; s++) {
            double difference = TankReadings.survivalOf(y, s) - TankReadings.survivalOf(reference, s);
            worst = Math.max(worst, Math.abs(difference));
        }
        return worst;
    }
}
