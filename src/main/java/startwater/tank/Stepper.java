package startwater.tank;

/** Carries one system from one event to the next. */
public interface Stepper {
    /**
     * Advances the state in place. Meals, changes and doses happen at the ends of the interval. Within it the only thing
     * that switches by itself is a filter without flow, which begins to foul; the interval is cut there. Where flow comes
     * back, what the bed has let go comes with it.
     *
     * @param y state as laid out in {@link TankLayout}
     * @param days length of the interval, 0 or more
     */
    default void advance(double[] y, TankParameters parameters, Controls controls, double days) {
        if (controls.pump()) {
            FilterBed.flush(y, parameters);
            advanceSmoothly(y, parameters, controls, days);
            return;
        }
        double first = Math.min(days, FilterBed.daysToFouling(y, controls));
        advanceSmoothly(y, parameters, controls, first);
        y[TankLayout.STAGNANT_HOURS] += 24 * first;
        if (first < days) {
            advanceSmoothly(y, parameters, controls, days - first);
            y[TankLayout.STAGNANT_HOURS] += 24 * (days - first);
        }
    }

    /** Advances over an interval in which nothing switches. */
    void advanceSmoothly(double[] y, TankParameters parameters, Controls controls, double days);
}
