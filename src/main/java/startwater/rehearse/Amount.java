package startwater.rehearse;

import startwater.bench.UnitSystem;
import startwater.quantity.Units;
import startwater.text.Texts;

/** A canonical value that is shown in the learner's own units. @param value in the first unit of {@code measure} */
public record Amount(double value, Measure measure) {
    private static final double MANY_GRAMS = 10_000;
    private static final double OUNCES_PER_POUND = 16;
    private static final double MANY_OUNCES = 32;
    private static final int FIGURES = 3;

    /** The value with its unit: large masses in kg or lb. */
    public String say(Texts texts, UnitSystem system) {
        double shown = measure.shown(value, system);
        String unit = measure.unit(system);
        if (measure == Measure.MASS && system == UnitSystem.METRIC && value >= MANY_GRAMS) {
            shown = value / 1000;
            unit = "kg";
        } else if (measure == Measure.MASS && system == UnitSystem.US && value >= MANY_OUNCES * Units.GRAMS_PER_OUNCE) {
            shown = shown / OUNCES_PER_POUND;
            unit = "lb";
        }
        String number = texts.number(shown, FIGURES);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
