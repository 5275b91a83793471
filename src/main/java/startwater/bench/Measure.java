package startwater.bench;

/**
 * A named number with its unit.
 *
 * @param name stable name, as in data and as in the keys of the language files; one in grams may end in {@code _g}
 * @param value in that unit
 * @param unit the unit
 */
public record Measure(String name, double value, Unit unit) {
    /** The same amount in the units of a system; a name that ends in the unit changes with it. */
    public Measure in(UnitSystem system) {
        Unit shown = unit.in(system);
        String suffix = unit.suffix();
        String renamed = shown != unit && !suffix.isEmpty() && name.endsWith(suffix)
                ? name.substring(0, name.length() - suffix.length()) + shown.suffix()
                : name;
        return new Measure(renamed, unit.to(system, value), shown);
    }
}
