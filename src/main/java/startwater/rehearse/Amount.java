package startwater.rehearse;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.DoubleUnaryOperator;
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
        return say(texts, system, shown -> shown);
    }

    /** The value rounded up to two figures: what to buy. */
    public String enough(Texts texts, UnitSystem system) {
        return say(texts, system, shown -> twoFigures(shown, RoundingMode.CEILING));
    }

    /** The value to two figures: a forecast knows no more. */
    public String about(Texts texts, UnitSystem system) {
        return say(texts, system, shown -> twoFigures(shown, RoundingMode.HALF_EVEN));
    }

    /** A value to two figures, rounded so. */
    static double twoFigures(double value, RoundingMode mode) {
        return new BigDecimal(value).round(new MathContext(2, mode)).doubleValue();
    }

    private String say(Texts texts, UnitSystem system, DoubleUnaryOperator rounding) {
        double shown = measure.shown(value, system);
        String unit = measure.unit(system);
        if (measure == Measure.MASS && system == UnitSystem.METRIC && value >= MANY_GRAMS) {
            shown = value / 1000;
            unit = "kg";
        } else if (measure == Measure.MASS && system == UnitSystem.US && value >= MANY_OUNCES * Units.GRAMS_PER_OUNCE) {
            shown = shown / OUNCES_PER_POUND;
            unit = "lb";
        }
        String number = texts.number(rounding.applyAsDouble(shown), FIGURES);
        return unit.isEmpty() ? number : number + " " + unit;
    }
}
