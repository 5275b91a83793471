package startwater.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every sentence in both languages, with the same places to fill, and none that nobody says. */
class LanguageFilesTest {
    private static final String WINDOW = "/startwater/app/text/window";
    private static final String SHELL = "/startwater/app/text/shell";
    private static final String PROGRESS = "/startwater/app/text/progress";
    private static final String CLI = "/startwater/cli/cli";
    private static final String CRASH = "/startwater/cli/crash";
    private static final String CLASS = "/startwater/classroom/class";
    private static final String REHEARSAL = "/startwater/app/text/rehearsal";
    private static final String REHEARSE = "/startwater/rehearse/rehearse";
    private static final String FORM = "/startwater/rehearse/form";
    /** All files of words; a new one goes here. The help of the command line is named by its options, not in the code. */
    private static final List<String> FILES = List.of(
            Texts.DRILL,
            Texts.LESSON,
            Texts.RECORD,
            WINDOW,
            SHELL,
            PROGRESS,
            CLI,
            REHEARSAL,
            REHEARSE,
            FORM,
            CLASS,
            CRASH);

    private static final Pattern PLACE = Pattern.compile("\\{(\\d+)");
    /** The whole of a literal, or the beginning of a key that the code completes. */
    private static final Pattern LITERAL = Pattern.compile("\"([A-Za-z][A-Za-z0-9.\\-_]*)\"");

    static List<String> files() {
        return FILES;
    }

    static Stream<String> withHelp() {
        return Stream.concat(FILES.stream(), Stream.of("/startwater/cli/help"));
    }

    @ParameterizedTest
    @MethodSource("withHelp")
    void bothLanguagesHaveTheSameKeys(String file) {
        assertThat(Texts.of(Language.ES, file).keys())
                .isNotEmpty()
                .isEqualTo(Texts.of(Language.EN, file).keys());
    }

    @ParameterizedTest
    @MethodSource("files")
    void bothLanguagesFillTheSamePlaces(String file) throws IOException {
        var english = raw(file, "en");
        var spanish = raw(file, "es");
        english.forEach((key, words) -> assertThat(places(spanish.getOrDefault(key, "")))
                .as("places of %s", key)
                .isEqualTo(places(words)));
    }

    @Test
    void everyKeyIsSaidSomewhere() throws IOException {
        Set<String> literals = literals();
        Set<String> unsaid = new TreeSet<>();
        for (String file : files()) {
            for (String key : Texts.of(Language.EN, file).keys()) {
                if (!said(key, literals)) {
                    unsaid.add(key);
                }
            }
        }
        assertThat(unsaid).isEmpty();
    }

    /** A key stands whole in the code, or its beginning up to a point or its end from the last capital is put together. */
    private static boolean said(String key, Set<String> literals) {
        if (literals.contains(key)) {
            return true;
        }
        for (int at = key.length() - 1; at > 0; at--) {
            boolean joint = key.charAt(at) == '.' || Character.isUpperCase(key.charAt(at));
            String start = key.substring(0, key.charAt(at) == '.' ? at + 1 : at);
            if (joint && literals.contains(start)) {
                return true;
            }
        }
        return false;
    }

    @Test
    void noKeyInTheCodeIsMissing() throws IOException {
        Set<String> keys = new TreeSet<>();
        for (String file : files()) {
            keys.addAll(Texts.of(Language.EN, file).keys());
        }
        Set<String> missing = new TreeSet<>();
        for (String literal : literals()) {
            boolean key = literal.matches(
                    "(win|shell|home|progress|coach|habit|lesson|end|play|cli|run|entry|state|seen|haze|when|record|learner|learners|replay)\\..*[^.]");
            boolean beginning = keys.stream().anyMatch(k -> k.startsWith(literal));
            if (key && !keys.contains(literal) && !beginning && !literal.startsWith("run.")) {
                missing.add(literal);
            }
        }
        // Help texts are found by picocli under their own keys.
        missing.removeAll(Texts.of(Language.EN, "/startwater/cli/help").keys());
        assertThat(missing).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("files")
    void everySentenceCanBeFormattedAndLosesNoApostrophe(String file) throws IOException {
        for (Language language : Language.values()) {
            Texts texts = Texts.of(language, file);
            for (var entry : raw(file, language.code()).entrySet()) {
                String said = texts.text(entry.getKey(), 2, 2, 2, 2, 2, 2);
                assertThat(said).as(entry.getKey()).isNotBlank().doesNotContain("{");
                assertThat(entry.getValue().replace("''", ""))
                        .as("a lone straight apostrophe is lost: %s", entry.getKey())
                        .doesNotContain("'");
            }
        }
    }

    private static Set<String> places(String words) {
        Set<String> places = new TreeSet<>();
        Matcher m = PLACE.matcher(words);
        while (m.find()) {
            places.add(m.group(1));
        }
        return places;
    }

    private static java.util.Map<String, String> raw(String file, String language) throws IOException {
        java.util.Properties read = new java.util.Properties();
        try (var in = Texts.class.getResourceAsStream(file + "_" + language + ".properties")) {
            read.load(new java.io.InputStreamReader(
                    java.util.Objects.requireNonNull(in), java.nio.charset.StandardCharsets.UTF_8));
        }
        return read.entrySet().stream().collect(Collectors.toMap(e -> e.getKey().toString(), e -> e.getValue()
                .toString()));
    }

    private static Set<String> literals() throws IOException {
        Set<String> all = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher m = LITERAL.matcher(Files.readString(file));
                while (m.find()) {
                    all.add(m.group(1));
                }
            }
        }
        return all;
    }
}
