package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class StartwaterTest {
    @TempDir
    private Path folder;

    private record Ran(int exit, String out, String err) {}

    private static Ran run(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Startwater.run(args, new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 77);
        return new Ran(exit, out.toString(), err.toString());
    }

    @Test
    void withoutACommandTheWindowOpens() {
        assertThat(run().exit()).isEqualTo(77);
        assertThat(run("--data", "somewhere", "--lang", "es").exit()).isEqualTo(77);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "nonsense",
                "run",
                "run no-such-drill",
                "run hungry-second-week --policy luck",
                "run hungry-second-week --seeds x",
                "run hungry-second-week --seeds 0",
                "run hungry-second-week --days 0",
                "run hungry-second-week --bogus",
                "run no/such/file.yaml",
                "play hungry-second-week --answers no-such-file",
                "play",
                "--lang xx",
                "run hungry-second-week --csv no/such/folder/a.csv",
                "run hungry-second-week --csv - --json",
                "run hungry-second-week --compare careful",
                "run hungry-second-week --compare careful,luck",
                "run hungry-second-week --compare careful,do-nothing --csv a.csv"
            })
    void wrongUseIsOneSentenceAndExitCodeTwo(String line) {
        for (String language : List.of("en", "es")) {
            String[] args = (line.contains("--lang") ? line : line + " --lang " + language).split(" ");
            Ran ran = run(args);
            assertThat(ran.exit()).as(line).isEqualTo(2);
            assertThat(ran.err().strip())
                    .as(line)
                    .isNotEmpty()
                    .doesNotContain("Exception")
                    .doesNotContain("\n");
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"--help", "play --help", "run --help", "sum --help", "check --help", "--version"})
    void helpIsGood(String line) {
        Ran ran = run(line.split(" "));
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("tartwater");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aPolicyIsPlayedAndCountedWhateverTheNumberOfThreads() {
        JsonNode first = json("run hungry-second-week --policy do-nothing --seeds 4 --days 5 --json");
        assertThat(first.path("policy").asString()).isEqualTo("do-nothing");
        assertThat(first.path("seeds").asInt()).isEqualTo(4);
        double deaths = first.path("deaths_fraction").asDouble();
        assertThat(deaths).isBetween(0.0, 1.0);
        double causes = 0;
        for (JsonNode cause : first.path("deaths_fraction_by_cause")) {
            causes += cause.asDouble();
        }
        assertThat(causes).isEqualTo(deaths);
        assertThat(first.path("water_volumes").asDouble()).isZero();
        assertThat(json("run hungry-second-week --policy do-nothing --seeds 4 --days 5 --json"))
                .isEqualTo(first);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void policiesStandSideBySideOnTheSameTanks(String language) {
        Ran ran = run(("run hungry-second-week --compare careful,do-nothing,half-every-day --seeds 6 --days 10 --lang "
                        + language)
                .split(" "));
        assertThat(ran.exit()).isZero();
        List<String> lines = ran.out().lines().toList();
        assertThat(lines.get(1).strip().split("\\s+")).containsExactly("careful", "do-nothing", "half-every-day");
        assertThat(lines.subList(1, lines.size())).allSatisfy(l -> assertThat(l).hasSameSizeAs(lines.get(1)));
        assertThat(ran.out()).contains(language.equals("en") ? "deaths of 240 fish, %" : "muertes de 240 peces, %");
    }

    @Test
    void aSideOfAComparisonIsWhatThePolicyGivesAlone() {
        JsonNode both = json("run hungry-second-week --compare careful,do-nothing --seeds 6 --days 10 --json");
        for (JsonNode side : both.path("policies")) {
            String name = side.path("policy").asString();
            JsonNode alone = json("run hungry-second-week --policy " + name + " --seeds 6 --days 10 --json");
            for (String key : List.of(
                    "deaths_fraction",
                    "deaths_fraction_5",
                    "deaths_fraction_95",
                    "deaths_fraction_by_cause",
                    "days_to_filter",
                    "water_volumes",
                    "feed_g")) {
                assertThat(side.path(key)).as(name + " " + key).isEqualTo(alone.path(key));
            }
            assertThat(side.path("deaths_fraction").asDouble())
                    .isBetween(0.0, 1.0)
                    .isLessThanOrEqualTo(side.path("deaths_fraction_95").asDouble() + 1);
            assertThat(side.path("feed_g").asDouble()).isPositive();
        }
        assertThat(both.path("policies").get(0).path("water_volumes").asDouble())
                .isPositive();
        assertThat(both.path("policies").get(1).path("water_volumes").asDouble())
                .isZero();
    }

    private static JsonNode json(String line) {
        Ran ran = run(line.split(" "));
        assertThat(ran.exit()).isZero();
        return JsonMapper.builder().build().readTree(ran.out());
    }

    @Test
    void theHiddenTankIsWrittenHourByHour() throws IOException {
        Path csv = folder.resolve("truth.csv");
        assertThat(run("run", "first-strips", "--days", "3", "--csv", csv.toString())
                        .exit())
                .isZero();
        List<String> lines = Files.readAllLines(csv);
        assertThat(lines.get(0)).startsWith("seed,day_d,ammonia_mg_N_per_L,nitrite_mg_N_per_L");
        assertThat(lines.size()).isGreaterThanOrEqualTo(3 * 24);
        assertThat(lines.get(5).split(",")).hasSameSizeAs(lines.get(0).split(","));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void aDrillIsPlayedToItsEndFromAFileOfEmptyLines(String language) throws IOException {
        Path answers = folder.resolve("answers.txt");
        Files.writeString(answers, "\n".repeat(400));
        Ran ran = run("play", "first-strips", "--answers", answers.toString(), "--lang", language);
        assertThat(ran.exit()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains(language.equals("en") ? "The end of the drill" : "El fin de la práctica");
    }

    @Test
    void aBadEntryIsRefusedWithItsReasonAndAskedAgain() throws IOException {
        Path answers = folder.resolve("answers.txt");
        Files.writeString(answers, "copper\nammonia\nmany\n40\n1\n\n\n");
        Ran ran = run("play", "hungry-second-week", "--answers", answers.toString(), "--lang", "en");
        assertThat(ran.out())
                .contains("There is no pad 'copper'.")
                .contains("This is no number.")
                .contains("The scale ends at 20.")
                .contains("Written: ammonia 1.");
    }

    @Test
    void theEndOfTheInputEndsTheDrillCleanly() throws IOException {
        Path answers = folder.resolve("answers.txt");
        Files.writeString(answers, "");
        Ran ran = run("play", "first-strips", "--answers", answers.toString(), "--lang", "en");
        assertThat(ran.exit()).isZero();
        assertThat(ran.out()).contains("The input has ended");
        assertThat(ran.err()).isEmpty();
    }
}
