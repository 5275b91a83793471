package startwater.bench;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sum worked once.
 *
 * @param kind which sum
 * @param inputs what went in, in metric units
 * @param values what came out, in metric units; the first is the answer
 * @param steps constants and numbers on the way, for the line of working
 * @param working key of the line of working
 * @param notes keys of what to bear in mind
 */
public record Sum(
        SumKind kind,
        List<Measure> inputs,
        List<Measure> values,
        List<Measure> steps,
        String working,
        List<String> notes) {
    public Sum {
        inputs = List.copyOf(inputs);
        values = List.copyOf(values);
        steps = List.copyOf(steps);
        notes = List.copyOf(notes);
        if (values.isEmpty()) {
            throw new IllegalArgumentException("A sum needs an answer: " + kind);
        }
    }

    /** The answer. */
    public Measure answer() {
        return values.get(0);
    }

    /** The value of this name among answers, inputs and steps, in that order. */
    public double value(String name) {
        return Stream.of(values, inputs, steps)
                .flatMap(List::stream)
                .filter(measure -> measure.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Sum " + kind + " has no '" + name + "'"))
                .value();
    }
}
