package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.bench.UnitSystem;
import startwater.rehearse.Entry;
import startwater.rehearse.Examples;
import startwater.rehearse.Form;
import startwater.rehearse.FormFile;
import startwater.rehearse.RehearseTexts;
import startwater.text.Language;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class RehearseCommandTest {
    @TempDir
    Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Startwater.run(args, new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 9);
    }

    @Test
    void theExampleIsRehearsedWrittenCheckedAndPlayed() throws IOException, FormFile.Unreadable {
        Path drill = folder.resolve("my-barrel.yaml");
        Path list = folder.resolve("list.html");
        assertThat(run(
                        "rehearse",
                        "--example",
                        "--seeds",
                        "4",
                        "--lang",
                        "en",
                        "--out",
                        drill.toString(),
                        "--list",
                        list.toString()))
                .isZero();
        assertThat(out.toString()).contains("Filter ready: day", "A forecast never moves fish", " gal ");
        assertThat(FormFile.read(folder.resolve("my-barrel.form.json"))).isEqualTo(Examples.barrel());
        assertThat(Files.readString(list)).contains("Ready to fill: Example barrel");
        assertThat(run("check", drill.toString())).isZero();
        Path answers = Files.writeString(folder.resolve("answers.txt"), "");
        assertThat(run("play", drill.toString(), "--answers", answers.toString(), "--lang", "en"))
                .isZero();
        assertThat(out.toString()).contains("Example barrel");
    }

    @Test
    void jsonIsMetricAndHoldsTheWholeBand() {
        assertThat(run("rehearse", "--example", "--seeds", "4", "--json", "--lang", "es"))
                .isZero();
        JsonNode root = JsonMapper.builder().build().readTree(out.toString());
        assertThat(root.path("possible").asBoolean()).isTrue();
        JsonNode outlook = root.path("outlook");
        assertThat(outlook.path("ready_day")).hasSize(3);
        assertThat(outlook.path("ready_by_day")).hasSize(outlook.path("days").asInt() + 1);
        assertThat(root.path("findings").get(0).path("reason").asString()).isNotBlank();
    }

    @Test
    void theImpossibleEndsWithOneAndSaysWhy() throws IOException {
        Path form = Files.writeString(
                folder.resolve("f.json"),
                FormFile.write(Examples.barrel().with(Entry.COUNT, "500").with(Entry.VOLUME, "50 L")));
        assertThat(run("rehearse", form.toString(), "--lang", "en")).isEqualTo(1);
        assertThat(out.toString()).contains("Cannot be", "Number of fish:", "Fewer fish or more water");
    }

    @Test
    void wrongUseIsOneSentence() throws IOException {
        Path broken = Files.writeString(folder.resolve("broken.json"), "{");
        assertThat(run("rehearse", broken.toString(), "--lang", "en")).isEqualTo(2);
        assertThat(run("rehearse", "--lang", "en")).isEqualTo(2);
        assertThat(run("rehearse", "--example", "--seeds", "0", "--lang", "en")).isEqualTo(2);
        assertThat(run("rehearse", folder.resolve("none.json").toString(), "--lang", "es"))
                .isEqualTo(2);
        assertThat(err.toString().lines()).hasSize(4).allMatch(line -> !line.contains("Exception"));
    }

    @Test
    void askingHelpsRefusesAndTakesNothingForUnknown() {
        String typed = "Yard\n?\nfishless\n12 parsecs\n300 L\n";
        StringWriter said = new StringWriter();
        Terminal terminal =
                new Terminal(new BufferedReader(new StringReader(typed)), new PrintWriter(said, true), false);
        Form form = new RehearseTalk(terminal, RehearseTexts.of(Language.EN)).ask(UnitSystem.US);
        assertThat(form.answers())
                .containsOnlyKeys(Entry.NAME, Entry.START, Entry.VOLUME)
                .containsEntry(Entry.VOLUME, "300 L");
        assertThat(said.toString())
                .contains("Without fish is safest", "“parsecs” is not known here", "what is left counts as unknown");
    }
}
