package startwater.bench;

import startwater.quantity.Units;

/** Unit of a number on the bench. Sums work in the metric units; the US ones are for reading in and writing out. */
public enum Unit {
    NONE("", ""),
    PERCENT("%", ""),
    PERCENT_PER_DAY("%/day", ""),
    PH("pH", ""),
    LITRE("L", ""),
    US_GALLON("gal", ""),
    GRAM("g", "_g"),
    OUNCE("oz", "_oz"),
    GRAM_PER_DAY("g/day", "_g"),
    OUNCE_PER_DAY("oz/day", "_oz"),
    KILOGRAM("kg", "_kg"),
    POUND("lb", "_lb"),
    CELSIUS("°C", ""),
    FAHRENHEIT("°F", ""),
    METRE("m", ""),
    FOOT("ft", ""),
    MG_PER_L("mg/L", ""),
    MG_N_PER_L("mg N/L", ""),
    MG_N_PER_L_DAY("mg N/L/day", ""),
    MG_CACO3_PER_L("mg/L CaCO3", ""),
    MG_PER_KG_HOUR("mg/kg/h", ""),
    MMOL_PER_L("mmol/L", ""),
    G_PER_KG("g/kg", "");

    private final String symbol;
    private final String suffix;

    Unit(String symbol, String suffix) {
        this.symbol = symbol;
        this.suffix = suffix;
    }

    /** As written after a number in data; screens ask {@link Words#unit}. */
    public String symbol() {
        return symbol;
    }

    /** Ending of the names of values in this unit, such as {@code feed_g}, or nothing. */
    String suffix() {
        return suffix;
    }

    /** The unit this one is shown in. */
    public Unit in(UnitSystem system) {
        if (system == UnitSystem.METRIC) {
            return this;
        }
        return switch (this) {
            case LITRE -> US_GALLON;
            case GRAM -> OUNCE;
            case GRAM_PER_DAY -> OUNCE_PER_DAY;
            case KILOGRAM -> POUND;
            case CELSIUS -> FAHRENHEIT;
            case METRE -> FOOT;
            default -> this;
        };
    }

    /** A value of this metric unit in the unit of {@code in(system)}. */
    public double to(UnitSystem system, double metric) {
        if (system == UnitSystem.METRIC) {
            return metric;
        }
        return switch (this) {
            case LITRE -> Units.usGallonsFromLitres(metric);
            case GRAM, GRAM_PER_DAY -> Units.ouncesFromGrams(metric);
            case KILOGRAM -> Units.poundsFromGrams(1000 * metric);
            case CELSIUS -> Units.fahrenheitFromCelsius(metric);
            case METRE -> Units.feetFromMetres(metric);
            default -> metric;
        };
    }

    /** A value typed in the unit of {@code in(system)} in this metric unit. */
    public double from(UnitSystem system, double typed) {
        if (system == UnitSystem.METRIC) {
            return typed;
        }
        return switch (this) {
            case LITRE -> Units.litresFromUsGallons(typed);
            case GRAM, GRAM_PER_DAY -> Units.gramsFromOunces(typed);
            case KILOGRAM -> Units.gramsFromPounds(typed) / 1000;
            case CELSIUS -> Units.celsiusFromFahrenheit(typed);
            case METRE -> Units.metresFromFeet(typed);
            default -> typed;
        };
    }
}
