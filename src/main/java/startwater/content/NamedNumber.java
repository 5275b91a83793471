package startwater.content;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import startwater.bench.Given;
import startwater.bench.Measure;

/** Numbers that content names by a sum, its inputs and one of its results. */
final class NamedNumber {
    private NamedNumber() {}

    /** What a block gives to its sum. */
    static Given given(Fields f) {
        Map<String, Double> numbers = new LinkedHashMap<>();
        Fields inputs = f.group("inputs");
        inputs.keys().forEach(key -> numbers.put(key, inputs.number(key)));
        return new Given(numbers, f.text("species"));
    }

    static List<String> resultNames(List<Measure> results) {
        return results.stream().map(Measure::name).toList();
    }

    /** The number that fields name. Only for fields that broke no rule. */
    static Measure of(Fields f) {
        return Reckoning.byId(f.text("sum")).orElseThrow().result(given(f), f.text("find"));
    }
}
