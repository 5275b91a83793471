package startwater.bench;

import java.util.OptionalDouble;

/**
 * One number a sum asks for.
 *
 * @param name stable name, also that of the command's option
 * @param label ending of its key in the language files
 * @param unit unit it is worked in
 * @param low least value allowed
 * @param high greatest value allowed
 * @param aboveLow whether the least value itself is refused (a volume of nothing)
 * @param required whether the sum cannot do without it
 * @param preset value taken when it is left out, if there is one
 */
public record Input(
        String name,
        String label,
        Unit unit,
        double low,
        double high,
        boolean aboveLow,
        boolean required,
        OptionalDouble preset) {

    static Input required(String name, Unit unit, double low, double high) {
        return new Input(name, name, unit, low, high, false, true, OptionalDouble.empty());
    }

    static Input positive(String name, Unit unit, double high) {
        return new Input(name, name, unit, 0, high, true, true, OptionalDouble.empty());
    }

    /** May be left out: then the preset holds, or the sum does without where that is empty. */
    Input optional(OptionalDouble instead) {
        return new Input(name, label, unit, low, high, aboveLow, false, instead);
    }

    Input optional(double instead) {
        return optional(OptionalDouble.of(instead));
    }

    /** The same input under words of its own, where one name means different things in different sums. */
    Input labelled(String other) {
        return new Input(name, other, unit, low, high, aboveLow, required, preset);
    }

    /**
     * Returns the value when it may be used; NaN never may.
     *
     * @throws RefusedInputException when it may not
     */
    public double check(double value) {
        boolean enough = aboveLow ? value > low : value >= low;
        if (enough && value <= high) {
            return value;
        }
        Measure given = new Measure(name, value, unit);
        if (!(value <= low) && !(value > high)) {
            throw new RefusedInputException(name, RefusedInputException.Reason.NOT_A_NUMBER, given);
        }
        throw new RefusedInputException(
                name,
                aboveLow ? RefusedInputException.Reason.OUTSIDE_ABOVE : RefusedInputException.Reason.OUTSIDE,
                given,
                new Measure("low", low, unit),
                new Measure("high", high, unit));
    }
}
