package startwater.content;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/**
 * A file on its way to a reader.
 *
 * @param file its name, as faults should give it
 * @param text what stands in it, or null when it could not be had
 * @param faults what has been found wrong so far
 */
record Loaded(String file, @Nullable String text, Faults faults) {
    static Loaded of(Path path) {
        Faults faults = Faults.of(path.toString());
        return new Loaded(path.toString(), SourceText.read(path, faults), faults);
    }

    static Loaded of(String file, byte[] bytes) {
        Faults faults = Faults.of(file);
        return new Loaded(file, SourceText.decode(bytes, faults), faults);
    }

    /** The same file with nothing found wrong yet: a reader notes its faults in the file it is given. */
    Loaded anew() {
        return text == null ? this : new Loaded(file, text, Faults.of(file));
    }
}
