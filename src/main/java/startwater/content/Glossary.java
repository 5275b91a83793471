package startwater.content;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;

/** The words of the trade, which no plain word can replace and which readability scores therefore pass over. */
final class Glossary {
    private static final Set<String> ENGLISH = read("glossary-en.txt");
    private static final Set<String> SPANISH = read("glossary-es.txt");

    private Glossary() {}

    static Set<String> words(String language) {
        return language.equals(Languages.SPANISH) ? SPANISH : ENGLISH;
    }

    private static Set<String> read(String file) {
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                Objects.requireNonNull(Glossary.class.getResourceAsStream(file), file), StandardCharsets.UTF_8))) {
            return in.lines()
                    .map(String::strip)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .collect(Collectors.toUnmodifiableSet());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
