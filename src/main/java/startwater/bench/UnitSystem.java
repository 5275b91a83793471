package startwater.bench;

/** The units a keeper measures in. Concentrations are mg/L in both. */
public enum UnitSystem {
    /** Litres, grams, degrees Celsius, metres. */
    METRIC,
    /** US gallons, pounds and ounces, degrees Fahrenheit, feet. */
    US
}
