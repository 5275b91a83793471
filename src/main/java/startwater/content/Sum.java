package startwater.content;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import startwater.water.UnionisedAmmonia;

/** The sums that lessons may show, work and ask for. Each names its inputs and results; the work is done elsewhere. */
@SuppressWarnings("ImmutableEnumChecker") // unmodifiable lists and functions without state
public enum Sum {
    /** Un-ionised ammonia from total ammonia, pH and temperature (Emerson et al. 1975). */
    TOXIC_AMMONIA(
            "toxic-ammonia",
            List.of(
                    new Quantity("totalAmmoniaMgPerL", "mg/L", 0, 100),
                    new Quantity("ph", "", 5, 10),
                    new Quantity("temperatureC", "°C", 0, 40)),
            List.of(new Quantity("sharePercent", "%", 0, 100), new Quantity("toxicMgPerL", "mg/L", 0, 100)),
            in -> {
                double share = UnionisedAmmonia.fraction(in.get("ph"), in.get("temperatureC"));
                return Map.of("sharePercent", 100 * share, "toxicMgPerL", share * in.get("totalAmmoniaMgPerL"));
            });

    /**
     * An input or a result.
     *
     * @param name its name in a lesson
     * @param unit its unit as shown; empty for none
     * @param low least value
     * @param high greatest value
     */
    public record Quantity(String name, String unit, double low, double high) {}

    /** Inputs by name; every one is there. */
    private record Inputs(Map<String, Double> values) {
        double get(String name) {
            Double value = values.get(name);
            if (value == null) {
                throw new IllegalArgumentException("The sum needs " + name + ", and got only " + values.keySet() + ".");
            }
            return value;
        }
    }

    private final String id;
    private final List<Quantity> inputs;
    private final List<Quantity> results;
    private final Function<Inputs, Map<String, Double>> work;

    Sum(String id, List<Quantity> inputs, List<Quantity> results, Function<Inputs, Map<String, Double>> work) {
        this.id = id;
        this.inputs = inputs;
        this.results = results;
        this.work = work;
    }

    /** Its name in a lesson. */
    public String id() {
        return id;
    }

    public List<Quantity> inputs() {
        return inputs;
    }

    public List<Quantity> results() {
        return results;
    }

    public Optional<Quantity> input(String name) {
        return inputs.stream().filter(input -> input.name().equals(name)).findFirst();
    }

    public Optional<Quantity> result(String name) {
        return results.stream().filter(result -> result.name().equals(name)).findFirst();
    }

    /**
     * Works the sum.
     *
     * @param values every input by name, in its unit
     * @return every result by name, in its unit
     * @throws IllegalArgumentException when an input is missing
     * @throws startwater.quantity.OutOfRangeException when one lies outside the range of the equation
     */
    public Map<String, Double> work(Map<String, Double> values) {
        return work.apply(new Inputs(values));
    }

    /** The sum with this name. */
    public static Optional<Sum> byId(String id) {
        return Arrays.stream(values()).filter(sum -> sum.id.equals(id)).findFirst();
    }

    static List<String> ids() {
        return Arrays.stream(values()).map(Sum::id).toList();
    }

    static String names(List<Quantity> quantities) {
        return quantities.stream().map(Quantity::name).collect(Collectors.joining(", "));
    }
}
