package startwater.content;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Sentences in one language, with named placeholders such as {@code {key}}. */
public final class Phrases {
    static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z]+)}");

    private static final Phrases ENGLISH = in(Phrases.class, "check", Languages.ENGLISH);
    private static final Phrases SPANISH = in(Phrases.class, "check", Languages.SPANISH);

    private final Properties words = new Properties();

    private Phrases(Class<?> room, String file) {
        try (InputStream in = Objects.requireNonNull(room.getResourceAsStream(file), file)) {
            words.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The sentences of a language file that lies beside a class. @param name its name without language and ending */
    public static Phrases in(Class<?> room, String name, String language) {
        return new Phrases(room, name + (language.equals(Languages.ENGLISH) ? "" : "_" + language) + ".properties");
    }

    /** The sentences of this room in a language; English where there is none. */
    static Phrases of(String language) {
        return language.equals(Languages.SPANISH) ? SPANISH : ENGLISH;
    }

    Set<String> keys() {
        return words.stringPropertyNames();
    }

    /** The sentence under a key, its placeholders filled. @throws IllegalArgumentException without such a key */
    public String say(String key, Map<String, String> values) {
        String sentence = words.getProperty(key);
        if (sentence == null) {
            throw new IllegalArgumentException("No sentence for " + key);
        }
        return PLACEHOLDER
                .matcher(sentence)
                .replaceAll(found -> Matcher.quoteReplacement(values.getOrDefault(found.group(1), found.group())));
    }
}
