package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Properties;
import java.util.TreeSet;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;
import startwater.content.Rule;

class CheckCommandTest {
    private static final String DRILL = "scenarios/first-strips.yaml";

    @TempDir
    Path folder;

    private record Ran(int exit, List<String> out, String err) {}

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = new CommandLine(new CheckCommand())
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(args);
        return new Ran(exit, out.toString().lines().toList(), err.toString());
    }

    private Path broken() throws IOException {
        String text = Files.readString(Path.of(DRILL))
                .replace("volumeL: 400", "volumel: 400")
                .replace("  ph: 7.6", "  ph: 76");
        return Files.writeString(folder.resolve("first-strips.yaml"), text);
    }

    private static int lineOf(Path file, String start) throws IOException {
        List<String> lines = Files.readAllLines(file);
        return lines.indexOf(lines.stream()
                        .filter(line -> line.startsWith(start))
                        .findFirst()
                        .orElseThrow())
                + 1;
    }

    @Test
    void whatShipsIsClean() {
        Ran ran = run("--lang", "en", "scenarios", "lessons");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).singleElement().asString().matches("Files: \\d+\\. Faults: 0\\.");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void eachFaultIsALineAndTheCountComesLast() throws IOException {
        Path file = broken();
        Ran ran = run("--lang", "en", file.toString());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out())
                .containsExactly(
                        file + ":" + lineOf(file, "  volumel")
                                + ": R05 'volumel' is not known here. Did you mean 'volumeL'?",
                        file + ":" + lineOf(file, "  ph: 76") + ": R08 'ph' is 76; it must lie between 5 and 9.5.",
                        "Files: 1. Faults: 2.");
    }

    @Test
    void theReaderIsAnsweredInSpanish() throws IOException {
        Ran ran = run("--lang", "es", broken().toString());
        assertThat(ran.exit()).isEqualTo(1);
        assertThat(ran.out().get(0)).endsWith("R05 'volumel' no se conoce aquí. ¿Quiso decir 'volumeL'?");
        assertThat(ran.out().get(2)).isEqualTo("Archivos: 1. Faltas: 2.");
    }

    @Test
    void wrongUseEndsWithTwoAndASentence() {
        for (List<String> args : List.of(
                List.<String>of(),
                List.of("no/such/path"),
                List.of(DRILL, "no/such/path"),
                List.of(""),
                List.of("a\u0000b"),
                List.of("--lang", "xx", DRILL),
                List.of("--no-such-option", DRILL),
                List.of(folder.toString()))) {
            Ran ran = run(args.toArray(new String[0]));
            assertThat(ran.exit()).as(args.toString()).isEqualTo(2);
            assertThat(ran.out()).as(args.toString()).isEmpty();
            assertThat(ran.err()).as(args.toString()).isNotBlank().doesNotContain("Exception", "\tat ");
        }
    }

    @Test
    void allRulesAreListed() {
        for (String language : List.of("en", "es")) {
            Ran ran = run("--rules", "--lang", language);
            assertThat(ran.exit()).isZero();
            assertThat(ran.out()).hasSize(Rule.values().length);
            assertThat(ran.out().get(0)).startsWith("R01 ");
        }
        assertThat(run("--rules", "--lang", "es").out())
                .isNotEqualTo(run("--rules", "--lang", "en").out());
    }

    @Test
    void helpIsThereInBothLanguages() {
        assertThat(run("--help", "--lang", "es").out()).anyMatch(line -> line.contains("Revisa prácticas"));
        assertThat(run("-h", "--lang", "en").out()).anyMatch(line -> line.contains("Checks drills"));
        assertThat(run("--help").exit()).isZero();
    }

    @Test
    void bothLanguageFilesHaveTheSameKeysAndAllAreUsed() throws IOException {
        Properties english = load("Check.properties");
        assertThat(load("Check_es.properties").stringPropertyNames()).isEqualTo(english.stringPropertyNames());
        String source = Files.readString(Path.of("src/main/java/startwater/cli/CheckCommand.java"));
        TreeSet<String> used = new TreeSet<>();
        Pattern.compile("(?:say\\(\\s*|refuse\\(phrases, )\"([a-z-]+)\"")
                .matcher(source)
                .results()
                .forEach(found -> used.add(found.group(1)));
        assertThat(used).isEqualTo(new TreeSet<>(english.stringPropertyNames()));
    }

    private static Properties load(String file) throws IOException {
        Properties properties = new Properties();
        try (InputStream in = Objects.requireNonNull(CheckCommand.class.getResourceAsStream(file), file)) {
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        return properties;
    }

    @Test
    void aDeepCheckAlsoTriesTheDrillsAndSaysWhichAreNotFit() throws IOException {
        // Three days of a drill that names a habit that cannot show in them.
        Path file = Files.writeString(
                folder.resolve("short-week.yaml"),
                Files.readString(Path.of("scenarios/hungry-second-week.yaml"))
                        .replace("id: hungry-second-week", "id: short-week")
                        .replace("number: 2", "number: 3")
                        .replace("days: 14", "days: 3")
                        .replace("decisionVisits: [0, 2, 4, 8, 14, 20]", "decisionVisits: [0, 2]")
                        .replaceAll("exposes: .*", "exposes: [scrubs-filter]"));
        assertThat(run("--lang", "en", file.toString()).exit()).isZero();
        Ran deep = run("--lang", "en", "--deep", file.toString());
        assertThat(deep.out()).hasSize(2);
        assertThat(deep.out().get(0))
                .startsWith(file + ": not fit (quick trial). ")
                .contains("scrubs-filter");
        assertThat(deep.out().get(1)).isEqualTo("Files: 1. Faults: 1.");
        assertThat(deep.exit()).isEqualTo(1);
    }
}
