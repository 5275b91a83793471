package startwater.drill;

import startwater.tank.TankEvent;

/**
 * Looks on while a tank runs through a drill, and changes nothing. States are laid out as {@link
 * startwater.tank.TankLayout} says; {@code before} is a copy, {@link TankSim#state} what came of it.
 */
public interface TankWatch {
    /** Sees nothing. */
    TankWatch NONE = new TankWatch() {};

    /** Time has passed without an event. @param days how long, d */
    default void passed(TankSim tank, double[] before, double days) {}

    /** A meal, a change of water, a dose or a cleaning has made the state jump. */
    default void happened(TankSim tank, double[] before, TankEvent event) {}

    /** The living were counted, and the state follows the count. */
    default void counted(TankSim tank, double[] before) {}
}
