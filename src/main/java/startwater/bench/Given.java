package startwater.bench;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import startwater.fish.Species;

/**
 * What somebody typed into a sum, in metric units.
 *
 * @param numbers by the names of the inputs; those left out are absent
 * @param speciesId species asked for, or empty
 */
public record Given(Map<String, Double> numbers, String speciesId) {
    public Given {
        numbers = Map.copyOf(numbers);
    }

    /** Numbers only. */
    public static Given of(Map<String, Double> numbers) {
        return new Given(numbers, "");
    }

    /** This, with presets filled in; refuses what the sum cannot do without. */
    Given of(SumKind kind) {
        Map<String, Double> all = new HashMap<>(numbers);
        for (Input input : kind.inputs()) {
            if (!all.containsKey(input.name()) && input.required()) {
                throw new RefusedInputException(input.name(), RefusedInputException.Reason.MISSING);
            }
            input.preset().ifPresent(preset -> all.putIfAbsent(input.name(), preset));
        }
        return new Given(all, speciesId);
    }

    boolean has(String name) {
        return numbers.containsKey(name);
    }

    double get(String name) {
        Double number = numbers.get(name);
        if (number == null) {
            throw new RefusedInputException(name, RefusedInputException.Reason.MISSING);
        }
        return number;
    }

    Species species() {
        List<String> ids = Species.ids();
        if (!ids.contains(speciesId)) {
            throw new RefusedInputException("species", RefusedInputException.Reason.UNKNOWN_CHOICE, speciesId, ids);
        }
        return Species.byId(speciesId);
    }
}
