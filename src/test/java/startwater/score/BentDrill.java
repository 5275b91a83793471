package startwater.score;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;

/** A drill file bent line by line into a setting of one's own. */
final class BentDrill {
    private String text;
    private final String id;

    private BentDrill(String id, String text) {
        this.id = id;
        this.text = text;
    }

    /** The second week of a fish tank. */
    static BentDrill withFish(String id) {
        return of(id, "hungry-second-week");
    }

    /** A tank that waits for its fish. */
    static BentDrill fishless(String id) {
        return of(id, "first-strips");
    }

    /** A tank that waits for fish which live in a nursery beside. */
    static BentDrill beside(String id) {
        return of(id, "moving-day");
    }

    private static BentDrill of(String id, String file) {
        try {
            String text = Files.readString(Path.of("scenarios", file + ".yaml"));
            return new BentDrill(id, text).set("id", id);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Puts a value in place of that of a key, at its first line. */
    BentDrill set(String key, Object value) {
        Matcher line = Pattern.compile("(?m)^( *(?:- )?)" + key + ":.*$").matcher(text);
        if (!line.find()) {
            throw new IllegalArgumentException("The drill has no key " + key + ".");
        }
        text = line.replaceFirst("$1" + Matcher.quoteReplacement(key + ": " + value));
        return this;
    }

    /** Puts a value in place of that of a key within a block at the margin. */
    BentDrill setIn(String block, String key, Object value) {
        Matcher line = Pattern.compile("(?m)(^" + block + ":\\n(?:[ #].*\\n)*?  " + key + ": ).*$")
                .matcher(text);
        if (!line.find()) {
            throw new IllegalArgumentException("The drill has no key " + key + " under " + block + ".");
        }
        text = line.replaceFirst("$1" + Matcher.quoteReplacement(value.toString()));
        return this;
    }

    /** Puts a whole block, lists and all, in place of that of a key at the margin. */
    BentDrill block(String key, String block) {
        text = Pattern.compile("(?m)^" + key + ":.*\\n(?:[ #].*\\n)*")
                .matcher(text)
                .replaceFirst(Matcher.quoteReplacement(key + ":" + block + "\n"));
        return this;
    }

    Scenario made() {
        Parsed<Scenario> parsed = ScenarioReader.read(id + ".yaml", text.getBytes(StandardCharsets.UTF_8));
        if (!parsed.ok()) {
            throw new IllegalArgumentException(
                    parsed.faults().stream().map(f -> f.line("en")).toList().toString());
        }
        return parsed.get();
    }
}
