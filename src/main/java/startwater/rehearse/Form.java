package startwater.rehearse;

import java.util.EnumMap;
import java.util.Map;
import startwater.bench.UnitSystem;

/**
 * The form as it was filled in: every answer as typed, so that nothing is lost and nothing is rounded. Immutable.
 *
 * @param units what a bare number is in
 * @param answers by entry; what is left out or blank is unknown
 */
public record Form(UnitSystem units, Map<Entry, String> answers) {
    /** Nothing filled in. */
    public static final Form EMPTY = new Form(UnitSystem.METRIC, Map.of());

    public Form {
        Map<Entry, String> kept = new EnumMap<>(Entry.class);
        answers.forEach((entry, typed) -> {
            if (!typed.isBlank()) {
                kept.put(entry, typed.strip());
            }
        });
        answers = java.util.Collections.unmodifiableMap(kept);
    }

    /** What was typed, or nothing. */
    public String answer(Entry entry) {
        return answers.getOrDefault(entry, "");
    }

    /** The same form with another answer. */
    public Form with(Entry entry, String typed) {
        Map<Entry, String> changed = new EnumMap<>(Entry.class);
        changed.putAll(answers);
        changed.put(entry, typed);
        return new Form(units, changed);
    }

    /** The same answers, bare numbers now in other units: what was typed bare is given its unit first. */
    public Form in(UnitSystem system) {
        if (system == units) {
            return this;
        }
        Map<Entry, String> changed = new EnumMap<>(Entry.class);
        answers.forEach((entry, typed) -> changed.put(entry, withUnit(entry, typed)));
        return new Form(system, changed);
    }

    private String withUnit(Entry entry, String typed) {
        boolean bare = entry.kind() == Entry.Kind.NUMBER && typed.matches("[0-9.,]+");
        String unit = entry.measure().unit(units);
        return bare && !unit.isEmpty() ? typed + " " + unit : typed;
    }
}
