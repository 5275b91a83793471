package startwater.tank;

import static startwater.tank.TankLayout.*;

/**
 * How far one stepper's end state lies from another's. Errors are relative above stated floors: 0.1 mg N/L of ammonia and
 * nitrite, 1 of every other nitrogen in the water and in guts, 0.1 meq/L and mmol/L of alkalinity and carbon, 1 mg/L of
 * oxygen, 1 °C, and filter activity that takes 0.1 mg N/L a day out of the water. Of the bodies the nitrogen of one living
 * fish is compared: how many live is asked of survival, once and not twice.
 */
public final class Agreement {
    private static final int[] DISSOLVED = {TAN, NITRITE, ALKALINITY, DIC};
    private static final int[] FILTER = {AOB, NOB};
    private static final int[] GUT = {GUT_1, GUT_2};
    private static final double FLOOR = 0.1;
    /** Of nitrogen that harms nobody where it is: 0.5 % of it is a twentieth of the least block of a strip. */
    private static final double STORE_FLOOR = 1;

    private Agreement() {}

    /** The greatest relative error of any state above its floor. */
    public static double stateError(double[] y, double[] reference, TankParameters p) {
        double volumeL = p.volumeL();
        double worst = Math.max(error(y, reference, OXYGEN, 1), error(y, reference, TEMPERATURE, 1));
        worst = Math.max(
                worst, bodyError(TankReadings.massG(y, p.strata()), TankReadings.massG(reference, p.strata())));
        for (int at : DISSOLVED) {
            worst = Math.max(worst, error(y, reference, at, FLOOR));
        }
        worst = Math.max(worst, error(y, reference, ORGANIC_N, STORE_FLOOR));
        worst = Math.max(worst, error(y, reference, NITRATE, STORE_FLOOR));
        for (int at : FILTER) {
            worst = Math.max(worst, error(y, reference, at, FLOOR * volumeL));
        }
        for (int at : GUT) {
            worst = Math.max(worst, error(y, reference, at, STORE_FLOOR * volumeL));
        }
        return worst;
    }

    private static double bodyError(double massG, double referenceG) {
        return massG > 0 && referenceG > 0 ? Math.abs(massG / referenceG - 1) : 0;
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
