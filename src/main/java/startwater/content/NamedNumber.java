package startwater.content;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import startwater.bench.Given;
import startwater.bench.Measure;
import startwater.bench.Sum;
import startwater.bench.SumKind;

/** Numbers that content names by a sum, its inputs and one of its results. */
final class NamedNumber {
    private NamedNumber() {}

    static List<String> sumIds() {
        return java.util.Arrays.stream(SumKind.values()).map(SumKind::id).toList();
    }

    /** The sum with this name. */
    static Optional<SumKind> sum(String id) {
        return java.util.Arrays.stream(SumKind.values())
                .filter(kind -> kind.id().equals(id))
                .findFirst();
    }

    /** What a block gives to its sum. */
    static Given given(Fields f) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        Fields inputs = f.group("inputs");
        inputs.keys().forEach(key -> numbers.put(key, inputs.number(key)));
        return new Given(numbers, f.text("species"));
    }

    static List<String> resultNames(Sum sum) {
        return sum.values().stream().map(Measure::name).toList();
    }

    /** A result by its name. @throws IllegalArgumentException when the sum has no such result */
    static Measure result(Sum sum, String name) {
        return sum.values().stream()
                .filter(value -> value.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(
                        "The sum " + sum.kind().id() + " gives " + resultNames(sum) + ", not " + name));
    }
}
