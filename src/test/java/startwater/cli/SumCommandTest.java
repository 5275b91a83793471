package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.OptionSpec;
import startwater.bench.SumKind;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class SumCommandTest {
    /** What a run left behind. */
    private record Run(int exit, String out, String err) {}

    private static Run run(String line) {
        return run(new CommandLine(new SumCommand()), line);
    }

    private static Run run(CommandLine command, String line) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        command.setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true));
        int exit = command.execute(line.isEmpty() ? new String[0] : line.split(" "));
        return new Run(exit, out.toString(), err.toString());
    }

    private static JsonNode json(String line) {
        Run run = run(line + " --json");
        assertThat(run.exit()).as(run.err()).isZero();
        return JsonMapper.builder().build().readTree(run.out());
    }

    /** SRAC 463 (Durborow, Crosby and Brunson 1992): 3 mg/L, pH 8.6, 30 °C leave 0.73 mg/L. */
    @Test
    void printsAnswerWorkingSourceAndCaution() {
        Run run = run("toxic-ammonia --tan 3 --ph 8.6 --temperature 30");
        assertThat(run.exit()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("0.7266 mg N/L", "Working: ", "Emerson", "Mind: ");
    }

    @Test
    void jsonHoldsValueUnitExtrasWorkingAndSource() {
        JsonNode node = json("salt --volume 100 --nitrite 1 --chloride 0");
        assertThat(node.path("unit").asString()).isEqualTo("g");
        assertThat(node.path("value").asDouble()).isEqualTo(node.path("per_ion").asDouble());
        assertThat(node.path("per_ion").asDouble() / node.path("per_n").asDouble())
                .isCloseTo(3.2844, within(1e-3));
        assertThat(node.path("inputs").path("ratio").asDouble()).isEqualTo(10);
        assertThat(node.path("working").asString()).contains("×");
        assertThat(node.path("source").asString()).isNotBlank();
        assertThat(node.path("notes").isEmpty()).isFalse();
    }

    /** The USGS code PHREEQC 3: 84.0 mg/L of baking soda take this water to alkalinity 110, pH 7.254, CO2 11.09. */
    @Test
    void waterNamesAlkalinityPhAndCarbonDioxide() {
        JsonNode node = json("water --temperature 28 --alkalinity 60 --ph 7.00 --bicarbonate 84.0");
        assertThat(node.path("ph").asDouble()).isCloseTo(7.254, within(0.01));
        assertThat(node.path("value").asDouble()).isEqualTo(node.path("ph").asDouble());
        assertThat(node.path("alkalinity").asDouble()).isCloseTo(110.0, within(0.05));
        assertThat(node.path("co2").asDouble()).isCloseTo(11.09, within(0.05));
    }

    @Test
    void waterTakesCarbonDioxideOutForANegativeAmount() {
        JsonNode node = json("water --temperature 28 --alkalinity 100 --ph 7.00 --carbon-dioxide -13.13");
        assertThat(node.path("ph").asDouble()).isCloseTo(7.557, within(0.04));
    }

    @Test
    void loadNamesFeedAndFish() {
        JsonNode node = json("load --cleared 2 --volume 1000 --protein 40 --ration 5");
        assertThat(node.path("feed_g").asDouble()).isCloseTo(2 / 0.0368, within(1e-9));
        assertThat(node.path("fish_kg").asDouble()).isCloseTo(0.04 / 0.0368, within(1e-9));
    }

    @Test
    void ammoniaDoseAnswersInSolutionOnceTheStrengthIsKnown() {
        assertThat(json("ammonia-dose --volume 100 --target 2").path("value").asDouble())
                .isCloseTo(0.7638, within(2e-4));
        JsonNode solution = json("ammonia-dose --volume 100 --target 2 --strength 10");
        assertThat(solution.path("value").asDouble()).isCloseTo(2.432, within(2e-3));
        assertThat(solution.path("nh4cl_g").asDouble()).isCloseTo(0.7638, within(2e-4));
        assertThat(run("ammonia-dose --volume 100 --target 2 --strength 10").out())
                .contains("density on the label");
    }

    @Test
    void rationNamesItsSpecies() {
        JsonNode node = json("ration --fish 100 --mass 5 --temperature 28 --species nile-tilapia");
        assertThat(node.path("inputs").path("species").asString()).isEqualTo("nile-tilapia");
        assertThat(node.path("value").asDouble()).isPositive();
        Run unknown = run("ration --fish 100 --mass 5 --temperature 28 --species herring");
        assertThat(unknown.exit()).isEqualTo(2);
        assertThat(unknown.err()).contains("--species", "herring", "channel-catfish");
        assertThat(run("ration --fish 100 --mass 5 --temperature 28").err()).contains("--species", "missing");
    }

    /** The same water in both systems of units must give the same amount. */
    @Test
    void usUnitsGiveTheSameAmounts() {
        double grams = json("buffer --volume 378.5411784 --alkalinity 40 --target 90")
                .path("value")
                .asDouble();
        JsonNode us = json("buffer --volume 100 --alkalinity 40 --target 90 --units us");
        assertThat(us.path("unit").asString()).isEqualTo("oz");
        assertThat(us.path("value").asDouble() * 28.349523125).isCloseTo(grams, within(1e-9));
        assertThat(us.path("baking_soda_oz").asDouble())
                .isEqualTo(us.path("value").asDouble());
        assertThat(json("oxygen --temperature 68 --altitude 1000 --units us")
                        .path("value")
                        .asDouble())
                .isCloseTo(
                        json("oxygen --temperature 20 --altitude 304.8")
                                .path("value")
                                .asDouble(),
                        within(1e-12));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "toxic-ammonia --tan 1 --ph 15 --temperature 25",
                "toxic-ammonia --tan -1 --ph 7 --temperature 25",
                "toxic-ammonia --tan NaN --ph 7 --temperature 25",
                "toxic-ammonia --tan 1d --ph 7 --temperature 25",
                "toxic-ammonia --tan 1,5 --ph 7 --temperature 25",
                "toxic-ammonia --tan 1e999 --ph 7 --temperature 25",
                "toxic-ammonia --tan 1 --ph 7",
                "oxygen --temperature 41",
                "oxygen --temperature 20 --altitude 5000",
                "oxygen --temperature 20 --units imperial",
                "oxygen --temperature 20 --lang fr",
                "oxygen --temperatur 20",
                "water-change --now 4 --target 5 --source 0",
                "salt --volume -100 --nitrite 1 --chloride 0",
                "salt --volume 100 --nitrite 1 --chloride 0 --ratio 0",
                "buffer --volume 100 --alkalinity 100 --target 50",
                "ammonia-dose --volume 100 --target 2 --strength 101",
                "dechlorinate --volume 0 --chlorine 1",
                "ration --fish 2.5 --mass 5 --species nile-tilapia --temperature 28",
                "load --cleared 1 --volume 10 --protein 140",
                "water --temperature 25 --alkalinity 1 --ph 11",
                "water --temperature 25 --alkalinity 50 --ph 7 --carbon-dioxide -500"
            })
    void refusesTheImpossibleWithAReasonAndNoTrace(String line) {
        Run run = run(line);
        assertThat(run.exit()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("--").doesNotContain("Exception").doesNotContain("\tat ");
    }

    @Test
    void refusalsSayWhatWhereAndWhatToDo() {
        assertThat(run("toxic-ammonia --tan 1 --ph 15 --temperature 25").err())
                .startsWith("--ph: 15 ")
                .contains("from 0 to 14", "Check");
        assertThat(run("toxic-ammonia --tan 1,5 --ph 7 --temperature 25").err()).contains("1,5", "27.5");
    }

    @Test
    void speaksSpanishWhenAsked() {
        Run run = run("oxygen --temperature 20 --lang es");
        assertThat(run.out()).contains("Oxígeno en saturación: 9,092 mg/L", "Fuente: ");
        assertThat(run("oxygen --temperature 99 --lang es").err()).contains("Revise");
        assertThat(run("--lang es oxygen --temperature 20").out()).contains("Oxígeno");
        assertThat(run("oxygen --help --lang es").out()).contains("Temperatura del agua", "Uso:");
    }

    @ParameterizedTest
    @EnumSource(SumKind.class)
    void everySumHasHelpThatNamesItsOptionsAndUnits(SumKind kind) {
        Run run = run(kind.id() + " --help");
        assertThat(run.exit()).isZero();
        assertThat(run.out()).contains("--units", "--json", "--lang", "Source: ");
        kind.inputs().forEach(input -> assertThat(run.out()).contains("--" + input.name()));
    }

    @Test
    void theListOfSumsIsInTheHelp() {
        Run run = run("--help");
        assertThat(run.exit()).isZero();
        List<String> missing = new ArrayList<>();
        for (SumKind kind : SumKind.values()) {
            if (!run.out().contains("  " + kind.id())) {
                missing.add(kind.id());
            }
        }
        assertThat(missing).isEmpty();
        Run bare = run("");
        assertThat(bare.exit()).isEqualTo(2);
        assertThat(bare.err()).contains("--help");
    }

    /** A command that holds the sums, as the program does. */
    @Command(name = "top", subcommands = SumCommand.class)
    private static final class Top {}

    private static CommandLine top() {
        CommandLine line = new CommandLine(new Top());
        line.getCommandSpec()
                .addOption(OptionSpec.builder("--lang").type(String.class).build());
        return line;
    }

    @Test
    void worksUnderAnotherCommandAndTakesItsLanguage() {
        assertThat(run(top(), "sum oxygen --temperature 20").out()).contains("Oxygen");
        assertThat(run(top(), "--lang es sum oxygen --temperature 20").out()).contains("Oxígeno");
        assertThat(run(top(), "sum oxygen --help").out()).contains("top sum oxygen");
    }

    @Test
    void aSecondRunDoesNotRememberTheFirst() {
        CommandLine line = new CommandLine(new SumCommand());
        assertThat(run(line, "oxygen --temperature 20 --altitude 2000 --lang es")
                        .out())
                .contains("7,088");
        assertThat(run(line, "oxygen --temperature 20").out()).contains("9.092", "Oxygen");
    }
}
