package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.drill.Decision;
import startwater.score.Act;
import startwater.score.DrillTrial;
import startwater.score.Policies;
import startwater.text.Language;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class TrialCommandTest {
    @TempDir
    private Path folder;

    private Path drill = Path.of("");

    private record Ran(int exit, String out, String err) {}

    /** The hungry second week cut to three days and two decisions, so that a trial takes seconds. */
    @BeforeEach
    void shortDrill() throws IOException {
        String text = Files.readString(Path.of("scenarios/hungry-second-week.yaml"))
                .replace("id: hungry-second-week", "id: short-week")
                .replace("days: 14", "days: 3")
                .replace("decisionVisits: [0, 2, 4, 8, 14, 20]", "decisionVisits: [0, 2]")
                .replaceAll("exposes: .*", "exposes: [do-nothing]");
        drill = Files.writeString(folder.resolve("short-week.yaml"), text);
    }

    private Ran trial(String... more) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> args = new java.util.ArrayList<>(
                List.of("--data", folder.toString(), "trial", drill.toString(), "--quick", "--seeds", "1"));
        args.addAll(List.of(more));
        int exit = Startwater.run(
                args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 77);
        return new Ran(exit, out.toString(), err.toString());
    }

    @Test
    void theJsonHasOneEntryADrillAndOneRowAPolicy() {
        Ran ran = trial("--json", "--lang", "en");
        assertThat(ran.exit()).isZero();
        JsonNode all = JsonMapper.builder().build().readTree(ran.out());
        assertThat(all.isArray()).isTrue();
        assertThat(all.size()).isEqualTo(1);
        assertThat(all.get(0).propertyNames()).containsExactlyInAnyOrder("scenario", "fit", "why", "policies");
        assertThat(all.get(0).path("scenario").asString()).isEqualTo("short-week");
        assertThat(all.get(0).path("fit").isBoolean()).isTrue();
        assertThat(all.get(0).path("why").asString()).isNotBlank();
        assertThat(all.get(0).path("policies").size()).isEqualTo(Policies.ids().size());
        for (JsonNode row : all.get(0).path("policies")) {
            assertThat(row.propertyNames())
                    .containsExactlyInAnyOrder("policy", "mark", "deaths_fraction", "days_to_filter", "water_volumes");
            assertThat(row.path("deaths_fraction").asDouble()).isBetween(0.0, 1.0);
        }
        assertThat(ran.err()).contains("1 of 1: short-week");
    }

    @Test
    void whatIsDoneIsKeptAndNotPlayedAgain() throws IOException {
        Path kept = folder.resolve("kept.jsonl");
        Ran first = trial("--json", "--resume", kept.toString());
        List<String> lines = Files.readAllLines(kept);
        assertThat(lines).isNotEmpty();
        // As a stop leaves it: the last line is cut short.
        String cut = String.join("\n", lines.subList(0, lines.size() - 1)) + "\n"
                + lines.get(lines.size() - 1).substring(0, 30);
        Files.writeString(kept, cut);
        assertThat(trial("--json", "--resume", kept.toString(), "--threads", "1")
                        .out())
                .isEqualTo(first.out());
        List<String> after = Files.readAllLines(kept);
        assertThat(after).hasSize(lines.size() + 1);
        assertThat(after.get(after.size() - 1)).isEqualTo(lines.get(lines.size() - 1));
        trial("--json", "--resume", kept.toString());
        assertThat(Files.readAllLines(kept)).isEqualTo(after);
    }

    @Test
    void whatAnotherBuildHasPlayedDoesNotCount() throws IOException {
        Path kept = folder.resolve("kept.jsonl");
        trial("--resume", kept.toString());
        List<String> lines = Files.readAllLines(kept);
        Files.write(
                kept,
                lines.stream()
                        .map(l -> l.replaceFirst("\"build\":\"", "\"build\":\"0"))
                        .toList());
        trial("--resume", kept.toString());
        assertThat(Files.readAllLines(kept)).hasSize(2 * lines.size());
    }

    /** Acts are named by their parts; a part without words would end a trial of half an hour in nothing. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void everyPartOfAnActHasItsWords(String language) {
        TrialPage page = new TrialPage(CliTexts.of(Language.of(language)));
        for (int fifth = 0; fifth <= 5; fifth++) {
            for (boolean neutralised : new boolean[] {true, false}) {
                Decision d = new Decision(
                        fifth / 5.0,
                        Math.min(0.95, fifth / 4.0),
                        neutralised,
                        fifth,
                        fifth,
                        fifth,
                        fifth,
                        Decision.Air.values()[fifth % Decision.Air.values().length],
                        Decision.FilterCare.values()[fifth % Decision.FilterCare.values().length],
                        Decision.FollowUp.values()[fifth % Decision.FollowUp.values().length],
                        neutralised,
                        neutralised,
                        fifth / 5.0,
                        fifth / 5.0);
                String said = page.sentence(new DrillTrial.Reason("trial.course.act", List.of(Act.of(d), 40.0)));
                assertThat(said).isNotBlank().doesNotContain("stock-", "change-");
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void theTableNamesEveryPolicyAndSaysThatItIsRough(String language) {
        Ran ran = trial("--lang", language);
        assertThat(ran.exit()).isZero();
        assertThat(ran.out())
                .contains(language.equals("en") ? "Arguable as well: " : "También discutibles: ")
                .contains(language.equals("en") ? "Over these drills: " : "En estas prácticas: ");
        assertThat(ran.out()).contains(Policies.ids()).contains(language.equals("en") ? "rough" : "aproximada");
        assertThat(folder.resolve("trial.jsonl")).isNotEmptyFile();
    }

    @Test
    void wrongUseIsOneSentence() {
        for (String[] wrong :
                new String[][] {{"--seeds", "0"}, {"--threads", "0"}, {"no-such-drill"}, {"--resume", folder.toString()}
                }) {
            Ran ran = trial(wrong);
            assertThat(ran.exit()).as(wrong[0]).isEqualTo(2);
            assertThat(ran.err().strip()).doesNotContain("Exception").doesNotContain("\n");
        }
    }
}
