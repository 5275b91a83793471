package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A shipped file with one slip put into it. */
record Edited(String file, String text) {
    static Edited shipped(String file) {
        try {
            return new Edited(file, Files.readString(Path.of(file)));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The same with the first {@code old} replaced, which must be there. */
    Edited with(String old, String replacement) {
        assertThat(text).as(file).contains(old);
        int at = text.indexOf(old);
        return new Edited(file, text.substring(0, at) + replacement + text.substring(at + old.length()));
    }

    /** The line, from 1, on which this text first stands. */
    int lineOf(String part) {
        assertThat(text).as("the edited file").contains(part);
        return (int) text.substring(0, text.indexOf(part))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
    }
}
