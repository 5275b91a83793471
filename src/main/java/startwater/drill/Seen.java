package startwater.drill;

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
        boolean pump) {}
