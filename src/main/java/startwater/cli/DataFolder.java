package startwater.cli;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** Where this computer keeps what belongs to the tutor: attempts, results, settings, what a trial has played. */
public final class DataFolder {
    private DataFolder() {}

    /** The folder given, or the usual one of this computer. */
    public static Path at(@Nullable Path given) {
        return given == null ? usual() : given;
    }

    /** The folder that a command line asks for, before it is parsed: for faults that come early. */
    public static Path asked(String... args) {
        String given = CliTexts.value("--data", args);
        try {
            return given == null ? usual() : Path.of(given);
        } catch (InvalidPathException none) {
            return usual();
        }
    }

    private static Path usual() {
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        Path home = Path.of(System.getProperty("user.home", "."));
        if (system.contains("win")) {
            return environment("APPDATA", home).resolve("startwater");
        }
        return system.contains("mac")
                ? home.resolve("Library/Application Support/startwater")
                : environment("XDG_DATA_HOME", home.resolve(".local/share")).resolve("startwater");
    }

    private static Path environment(String name, Path otherwise) {
        String value = System.getenv(name);
        return value == null || value.isBlank() ? otherwise : Path.of(value);
    }
}
