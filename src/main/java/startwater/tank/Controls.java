package startwater.tank;

import org.jspecify.annotations.Nullable;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/**
 * What is switched on, and what stands still between two events.
 *
 * @param air whether the air devices run
 * @param pump whether water flows through the filter
 * @param setPointC temperature that the water drifts to, °C: the heater's, or the room's when it is off
 * @param exchangePerDay slow exchange, tank volumes a day
 * @param evaporationPerDay water that evaporates and is topped up, tank volumes a day: salts stay behind
 * @param source the water that slow exchange and top-up bring, free of chlorine; null without either
 * @param spareAirPerHour oxygen transfer of spare air that runs beside, at 20 °C, 1/h
 */
public record Controls(
        boolean air,
        boolean pump,
        double setPointC,
        double exchangePerDay,
        double evaporationPerDay,
        @Nullable SourceWater source,
        double spareAirPerHour) {
    /** Slow exchange and top-up, tank volumes a day each. */
    public static final Validity FLOW_PER_DAY =
            new Validity("tank", "inflow in volumes a day", 0, 1000, "what the equations of the tank can carry");

    /**
     * @throws OutOfRangeException for an inflow or spare air that cannot be
     * @throws IllegalArgumentException for an inflow without a source
     */
    public Controls {
        FLOW_PER_DAY.check(exchangePerDay);
        FLOW_PER_DAY.check(evaporationPerDay);
        TankParameters.KLA_PER_HOUR.check(spareAirPerHour);
        if (source == null && exchangePerDay + evaporationPerDay > 0) {
            throw new IllegalArgumentException("Controls: exchange and top-up need a source of water.");
        }
    }

    public static Controls running(double setPointC) {
        return new Controls(true, true, setPointC, 0, 0, null, 0);
    }

    public Controls withAir(boolean on) {
        return new Controls(on, pump, setPointC, exchangePerDay, evaporationPerDay, source, spareAirPerHour);
    }

    public Controls withPump(boolean on) {
        return new Controls(air, on, setPointC, exchangePerDay, evaporationPerDay, source, spareAirPerHour);
    }

    public Controls withSetPoint(double otherC) {
        return new Controls(air, pump, otherC, exchangePerDay, evaporationPerDay, source, spareAirPerHour);
    }

    public Controls withSpareAir(double perHour) {
        return new Controls(air, pump, setPointC, exchangePerDay, evaporationPerDay, source, perHour);
    }

    /** Slow exchange and top-up from this water, tank volumes a day each. */
    public Controls withInflow(double exchange, double evaporation, @Nullable SourceWater from) {
        return new Controls(air, pump, setPointC, exchange, evaporation, from, spareAirPerHour);
    }

    /** What flows in, tank volumes a day. */
    double inflowPerDay() {
        return exchangePerDay + evaporationPerDay;
    }

    /** How fast the water follows {@link #restsAtC}, 1/d: room, heater and what flows in. */
    double temperatureRatePerDay(TankParameters p) {
        return p.temperatureRatePerDay() + inflowPerDay();
    }

    /** Where the water's temperature comes to rest, °C. What evaporates leaves with the tank's own heat. */
    double restsAtC(TankParameters p) {
        double q = inflowPerDay();
        return source == null || q == 0
                ? setPointC
                : (p.temperatureRatePerDay() * setPointC + q * source.temperatureC()) / (p.temperatureRatePerDay() + q);
    }
}
