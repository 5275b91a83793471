package startwater.content;

import java.util.List;
import java.util.OptionalDouble;
import startwater.bench.Given;
import startwater.bench.Input;
import startwater.bench.Measure;
import startwater.bench.Unit;

/**
 * Plain arithmetic for what a lesson works out by the way: {@code of} times {@code times} over {@code over}, plus
 * {@code plus}, less {@code less}. The numbers have no unit; the sentence around them says what they are.
 */
final class PlainSum {
    private static final double MOST = 1e6;
    private static final double LEAST_DIVISOR = 1e-6;

    static final List<Input> INPUTS = List.of(
            new Input("of", "of", Unit.NONE, -MOST, MOST, false, true, OptionalDouble.empty()),
            optional("times", -MOST, 1),
            optional("over", LEAST_DIVISOR, 1),
            optional("plus", -MOST, 0),
            optional("less", -MOST, 0));

    private PlainSum() {}

    private static Input optional(String name, double low, double preset) {
        return new Input(name, name, Unit.NONE, low, MOST, false, false, OptionalDouble.of(preset));
    }

    /** The one result, {@code number}. */
    static List<Measure> work(Given given) {
        double[] value = INPUTS.stream()
                .mapToDouble(input -> input.check(given.numbers()
                        .getOrDefault(input.name(), input.preset().orElse(Double.NaN))))
                .toArray();
        return List.of(new Measure("number", value[0] * value[1] / value[2] + value[3] - value[4], Unit.NONE));
    }
}
