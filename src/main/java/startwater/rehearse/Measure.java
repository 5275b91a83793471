package startwater.rehearse;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.bench.UnitSystem;
import startwater.quantity.Units;

/** What kind of number an entry asks for, with the units in which it may be typed. The first unit is the canonical one. */
public enum Measure {
    COUNT("", ""),
    DAY("", "", "d", 1, "day", 1, "día", 1),
    PH("", ""),
    PERCENT("%", "%"),
    VOLUME("L", "gal", "m3", 1000, "m³", 1000, "gallons", Units.LITRES_PER_US_GALLON, "galones", 3.785411784),
    MASS("g", "oz", "kg", 1000, "lb", Units.GRAMS_PER_POUND, "mg", 0.001),
    AREA("m²", "ft²", "m2", 1, "ft2", Units.METRES_PER_FOOT * Units.METRES_PER_FOOT),
    FLOW("L/h", "gal/h", "l/min", 60, "gph", Units.LITRES_PER_US_GALLON, "gpm", 60 * Units.LITRES_PER_US_GALLON),
    /** Air, L/min; a cubic foot is 28.317 L by the foot's definition. */
    AIR_FLOW("L/min", "cfm", "l/h", 1 / 60.0),
    POWER("W", "W"),
    DENSITY("kg/m³", "lb/gal"),
    TEMPERATURE("°C", "°F", "c", 1, "f", 1),
    CONCENTRATION("mg/L", "mg/L", "ppm", 1),
    /** mg/L as CaCO3; a German degree is 17.85 of them (10 mg CaO by definition). */
    ALKALINITY("mg/L", "mg/L", "ppm", 1, "dkh", 17.848, "meq/l", Units.MG_CACO3_PER_MEQ);

    private static final double LITRES_PER_CUBIC_FOOT = 28.316846592;

    private final String metric;
    private final String us;
    private final Map<String, Double> factors = new LinkedHashMap<>();

    Measure(String metric, String us, Object... others) {
        this.metric = metric;
        this.us = us;
        factors.put(lower(metric), 1.0);
        for (int i = 0; i + 1 < others.length; i += 2) {
            factors.put(lower((String) others[i]), ((Number) others[i + 1]).doubleValue());
        }
    }

    private static String lower(String unit) {
        return unit.toLowerCase(java.util.Locale.ROOT);
    }

    /** The unit in which a bare number is read and a value is shown. */
    public String unit(UnitSystem system) {
        return system == UnitSystem.US ? us : metric;
    }

    /** The canonical value of one that was typed. @param unit in small letters, or empty @return null for an unknown unit */
    @Nullable
    Double canonical(double typed, String unit, UnitSystem system) {
        String named = unit.isEmpty() ? lower(unit(system)) : unit;
        if (this == TEMPERATURE && (named.equals("f") || named.equals("°f"))) {
            return Units.celsiusFromFahrenheit(typed);
        }
        Double factor = named.equals(lower(us)) ? Double.valueOf(usFactor()) : factors.get(named);
        return factor == null ? null : typed * factor;
    }

    /** A canonical value in the unit of {@link #unit}. */
    public double shown(double canonical, UnitSystem system) {
        if (system == UnitSystem.METRIC) {
            return canonical;
        }
        return this == TEMPERATURE ? Units.fahrenheitFromCelsius(canonical) : canonical / usFactor();
    }

    private double usFactor() {
        return switch (this) {
            case VOLUME, FLOW -> Units.LITRES_PER_US_GALLON;
            case MASS -> Units.GRAMS_PER_OUNCE;
            case AREA -> Units.METRES_PER_FOOT * Units.METRES_PER_FOOT;
            case AIR_FLOW -> LITRES_PER_CUBIC_FOOT;
            case DENSITY -> Units.GRAMS_PER_POUND / Units.LITRES_PER_US_GALLON;
            default -> 1;
        };
    }
}
