package startwater.tank;

import static startwater.tank.TankLayout.FISH_N;
import static startwater.tank.TankLayout.GUT_1;
import static startwater.tank.TankLayout.GUT_2;
import static startwater.tank.TankLayout.REMOVED;

import startwater.quantity.Powers;

/** Gut and body over one step: the living pass on, the dead take their share out with them. A scratch pad. */
final class GutStep {
    private static final double G = Kinetics.GUT_RATE_PER_DAY;

    /** What the fish excrete over the step, mg N/L. */
    double excreted;
    /** How much excretion rises from start to end, and how far its middle lies over that line (four times), mg N/L/d. */
    double rise;

    double bend;
    /** How much breathing rises by digestion beyond what the rates at the end say, and how far it bends, mg O2/L/d. */
    double breathRise;

    double breathBend;
    private double dt;
    private double halfLeft;
    private double left;

    /** Takes a step of {@code days}. */
    void over(double days) {
        dt = days;
        halfLeft = Powers.quickExp(-G / 2 * days);
        left = halfLeft * halfLeft;
    }

    /** No fish, nothing moves. */
    void none() {
        excreted = 0;
        rise = 0;
        bend = 0;
        breathRise = 0;
        breathBend = 0;
    }

    /** @param living share of the living that still lives at the end */
    void carry(double[] now, double[] to, Kinetics start, Kinetics end, double volumeL, double living) {
        double gut1 = now[GUT_1] * left * living;
        double gut2 = (now[GUT_2] + G * dt * now[GUT_1]) * left * living;
        double perVolume = 1 / volumeL;
        double body = now[FISH_N] * living;
        double fasting = Math.min(body, (start.fastingExcretion + end.fastingExcretion) / 2 * volumeL * dt);
        double lost1 = now[GUT_1] - gut1;
        double passed;
        if (living == 1) {
            passed = now[GUT_2] + lost1 - gut2;
        } else {
            double dying = 2 * (1 - living) / (1 + living) / dt;
            double passing = G / (G + dying);
            double lost2 = now[GUT_2] + lost1 * passing - gut2;
            passed = lost2 * passing;
            to[REMOVED] = now[REMOVED] + (lost1 + lost2) * (1 - passing) + now[FISH_N] - body;
        }
        to[GUT_1] = gut1;
        to[GUT_2] = gut2;
        to[FISH_N] = body - fasting;
        excreted = (passed + fasting) * perVolume;
        rise = G * (gut2 - now[GUT_2]) * perVolume + end.fastingExcretion - start.fastingExcretion;
        bend = (6 * passed / dt - 3 * G * (gut2 + now[GUT_2])) * perVolume;
        breath(now, start, end, gut2, living);
    }

    /** Breathing follows excretion, which is known on its way; of all else in it the rates at both ends tell. */
    private void breath(double[] now, Kinetics start, Kinetics end, double gut2, double living) {
        double middle = (now[GUT_2] + G / 2 * dt * now[GUT_1]) * halfLeft * (1 + living) / 2;
        double fed0 = Kinetics.fedFactor(G * now[GUT_2], start.fedExcretion);
        double fed = Kinetics.fedFactor(G * middle, start.fedExcretion);
        double fed1 = Kinetics.fedFactor(G * gut2, start.fedExcretion);
        double perFed = start.breathed / fed0;
        breathRise = end == start ? perFed * (fed1 - fed0) : 0;
        breathBend = perFed * (4 * fed - 2 * (fed0 + fed1));
    }
}
