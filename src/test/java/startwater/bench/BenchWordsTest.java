package startwater.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The two language files against the code and against each other. */
class BenchWordsTest {
    private static final int LONGEST_SENTENCE = 16;
    private static final Pattern LITERAL_KEY =
            Pattern.compile("\"((?:help|text|note|unit|refusal|input)\\.[a-z0-9-]+)\"");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{[^}]*}");
    private static final Properties ENGLISH = load("Bench.properties");
    private static final Properties SPANISH = load("Bench_es.properties");

    private static Properties load(String name) {
        Properties properties = new Properties();
        try (Reader reader = new InputStreamReader(
                Objects.requireNonNull(BenchWordsTest.class.getResourceAsStream("/startwater/bench/" + name)),
                StandardCharsets.UTF_8)) {
            properties.load(reader);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
        return properties;
    }

    @Test
    void bothLanguagesHaveTheSameKeys() {
        assertThat(SPANISH.stringPropertyNames()).isEqualTo(ENGLISH.stringPropertyNames());
    }

    @Test
    void everyKeyIsUsedAndEveryKeyUsedIsThere() throws IOException {
        assertThat(used()).isEqualTo(new TreeSet<>(ENGLISH.stringPropertyNames()));
    }

    private static Set<String> used() throws IOException {
        Set<String> keys = new TreeSet<>();
        for (SumKind kind : SumKind.values()) {
            keys.addAll(List.of("sum." + kind.id() + ".title", "sum." + kind.id() + ".source"));
            kind.inputs().forEach(input -> keys.add("input." + input.label()));
        }
        for (Sum sum : SumSamples.all()) {
            keys.add(sum.working());
            keys.addAll(sum.notes());
            sum.values().forEach(value -> keys.add("value." + value.name()));
        }
        for (RefusedInputException.Reason reason : RefusedInputException.Reason.values()) {
            keys.add(reason.key());
        }
        keys.addAll(literals("bench", ".java"));
        keys.addAll(literals("cli", "Sum"));
        return keys;
    }

    /** Keys written out in the sources of a room, in files whose name holds this. */
    private static Set<String> literals(String room, String nameHolds) throws IOException {
        Set<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/java/startwater", room))) {
            for (Path file : files.filter(f -> f.getFileName().toString().contains(nameHolds))
                    .toList()) {
                LITERAL_KEY.matcher(Files.readString(file)).results().forEach(found -> keys.add(found.group(1)));
            }
        }
        return keys;
    }

    @Test
    void bothLanguagesFillTheSamePlaceholders() {
        for (String key : ENGLISH.stringPropertyNames()) {
            assertThat(placeholders(SPANISH.getProperty(key)))
                    .as(key)
                    .isEqualTo(placeholders(ENGLISH.getProperty(key)));
        }
    }

    private static List<String> placeholders(String text) {
        return PLACEHOLDER.matcher(text).results().map(r -> r.group()).sorted().toList();
    }

    @Test
    void everySumCanBeSaidInBothLanguagesAndBothSystems() {
        for (String language : Words.LANGUAGES) {
            for (UnitSystem system : UnitSystem.values()) {
                SumText text = new SumText(Words.of(language), system);
                for (Sum sum : SumSamples.all()) {
                    assertThat(text.title(sum.kind())).isNotBlank();
                    assertThat(text.source(sum.kind())).isNotBlank();
                    assertThat(text.answers(sum)).hasSameSizeAs(sum.values());
                    assertThat(text.working(sum)).isNotBlank().doesNotContain("{");
                    assertThat(text.notes(sum)).isNotEmpty().noneMatch(note -> note.contains("{"));
                }
            }
        }
    }

    @Test
    void notesAndRefusalsAreShortSentences() {
        for (Properties language : List.of(ENGLISH, SPANISH)) {
            for (String key : language.stringPropertyNames()) {
                if (key.startsWith("note.") || key.endsWith(".note") || key.startsWith("refusal.")) {
                    for (String sentence : language.getProperty(key).split("[.:;](\\s|$)")) {
                        assertThat(sentence.strip().split("\\s+"))
                                .as("%s: %s", key, sentence)
                                .hasSizeLessThanOrEqualTo(LONGEST_SENTENCE);
                    }
                }
            }
        }
    }

    @Test
    void theComputersOwnLanguageDoesNotReplaceTheOneAskedFor() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("es-MX"));
            assertThat(Words.of("en").text("help.sum")).isEqualTo(ENGLISH.getProperty("help.sum"));
            assertThat(Words.of("es").text("help.sum")).isEqualTo(SPANISH.getProperty("help.sum"));
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void refusalsNameTheValueAndItsLimitsInTheReadersUnits() {
        try {
            WaterSums.oxygen(45, 0, 0);
        } catch (RefusedInputException e) {
            assertThat(e.say(Words.of("en"), UnitSystem.METRIC)).contains("45 °C", "0 °C", "40 °C");
            assertThat(e.say(Words.of("es"), UnitSystem.US)).contains("113 °F", "32 °F", "104 °F");
            return;
        }
        throw new AssertionError("45 °C was not refused");
    }

    @Test
    void anUnknownLanguageOrPlaceholderIsAFault() {
        assertThatThrownBy(() -> Words.of("xx")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Words.of("en").text("refusal.outside", Map.of()))
                .isInstanceOf(IllegalStateException.class)
                .hasMessageContaining("{value}");
    }

    @Test
    void everyRefusalHasItsWords() {
        assertThat(Arrays.stream(RefusedInputException.Reason.values())
                        .map(RefusedInputException.Reason::key)
                        .filter(key -> !ENGLISH.containsKey(key)))
                .isEmpty();
    }
}
