package startwater.drill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.strip.FishMood;

/**
 * What writes itself down at a visit: meters and the fish.
 *
 * @param temperatureC thermometer, °C
 * @param oxygenMgPerL by meter, mg/L, or null without one
 * @param ph by meter, or null without one
 * @param mood what the fish show, or null without fish
 * @param found dead fish found since the visit before
 * @param alive fish counted alive
 * @param uneatenG feed that lies there, g
 * @param haze how clouded the water is, 0..1
 * @param brownGills whether gills look brown when a fish is held
 * @param air whether the air runs
 * @param pump whether the pump runs
 * @param power whether there is mains power
 * @param heater whether heater or cooler run
 * @param flowPercent water that comes out of the filter while the pump runs, % of what a clean one passes, in tens
 * @param toCome planned fish that are not in yet: alive in the nursery, or not yet bought
 * @param toComeMassG their mean mass by a weighed sample, g
 * @param told what somebody tells of since the visit before; the rest shows by itself
 */
public record Seen(
        double temperatureC,
        @Nullable Double oxygenMgPerL,
        @Nullable Double ph,
        @Nullable FishMood mood,
        int found,
        int alive,
        double uneatenG,
        double haze,
        boolean brownGills,
        boolean air,
        boolean pump,
        boolean power,
        boolean heater,
        int flowPercent,
        int toCome,
        double toComeMassG,
        List<Scenario.Happening.Kind> told) {
    public Seen {
        told = List.copyOf(told);
    }
}
