package startwater.tank;

/** Carries one system from one event to the next. */
public interface Stepper {
    /**
     * Advances the state in place. Nothing switches within the interval; meals, changes and doses happen at its ends.
     *
     * @param y state as laid out in {@link TankLayout}
     * @param days length of the interval, 0 or more
     */
    void advance(double[] y, TankParameters parameters, Controls controls, double days);
}
