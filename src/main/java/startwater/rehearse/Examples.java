package startwater.rehearse;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;

/** The form that comes with the program, to look at and to copy. */
public final class Examples {
    private Examples() {}

    /** A small barrel with a sponge filter. */
    public static Form barrel() {
        try (InputStream in = Objects.requireNonNull(Examples.class.getResourceAsStream("example.form.json"))) {
            return FormFile.parse(new String(in.readAllBytes(), StandardCharsets.UTF_8), "example.form.json");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FormFile.Unreadable e) {
            throw new IllegalStateException("example.form.json", e);
        }
    }
}
