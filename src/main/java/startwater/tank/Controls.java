package startwater.tank;

import org.jspecify.annotations.Nullable;

/**
 * What is switched on, and what stands still between two events.
 *
 * @param air whether the air devices run
 * @param pump whether water flows through the filter
 * @param setPointC temperature that the water drifts to, °C: the heater's, or the room's when it is off
 * @param exchangePerDay slow exchange, tank volumes a day
 * @param exchangeSource the water that the slow exchange brings, or null without
 */
public record Controls(
        boolean air,
        boolean pump,
        double setPointC,
        double exchangePerDay,
        @Nullable SourceWater exchangeSource) {
    public static Controls running(double setPointC) {
        return new Controls(true, true, setPointC, 0, null);
    }

    public Controls withAir(boolean on) {
        return new Controls(on, pump, setPointC, exchangePerDay, exchangeSource);
    }

    public Controls withPump(boolean on) {
        return new Controls(air, on, setPointC, exchangePerDay, exchangeSource);
    }

    public Controls withSetPoint(double otherC) {
        return new Controls(air, pump, otherC, exchangePerDay, exchangeSource);
    }
}
