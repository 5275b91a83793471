package startwater.content;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What came of reading a file: the thing itself when the file kept every rule, else its faults.
 *
 * @param value the thing, or null when there are faults
 * @param faults all that was found wrong, in order of the lines; empty when there is a value
 */
public record Parsed<T>(@Nullable T value, List<Fault> faults) {
    public Parsed {
        faults = List.copyOf(faults);
        if ((value == null) == faults.isEmpty()) {
            throw new IllegalArgumentException("Either a value or faults, not both and not neither.");
        }
    }

    static <T> Parsed<T> of(T value) {
        return new Parsed<>(value, List.of());
    }

    static <T> Parsed<T> failed(Faults faults) {
        return new Parsed<>(null, faults.list());
    }

    public boolean ok() {
        return value != null;
    }

    public Optional<T> found() {
        return Optional.ofNullable(value);
    }

    /** The thing. @throws IllegalStateException with the faults, one a line */
    public T get() {
        if (value == null) {
            throw new IllegalStateException(
                    String.join("\n", faults.stream().map(Fault::toString).toList()));
        }
        return value;
    }
}
