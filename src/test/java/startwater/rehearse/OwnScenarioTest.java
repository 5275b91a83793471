package startwater.rehearse;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.content.ContentFiles;
import startwater.content.Library;
import startwater.content.ScenarioReader;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.quantity.Stream;

class OwnScenarioTest {
    @TempDir
    Path folder;

    private static Scenario drill(Form form) {
        return RehearsalFiles.drill(form, "own");
    }

    private static Prior.LogNormal prior(Form form, Unknown unknown) {
        return (Prior.LogNormal)
                java.util.Objects.requireNonNull(drill(form).unknowns().get(unknown));
    }

    @ParameterizedTest
    @FieldSource("startwater.rehearse.Systems#ALL")
    void theWrittenDrillReadsBackTheSameAndPassesTheCheck(String name) throws IOException {
        Form form = Systems.form(name);
        Outlook outlook = Rehearsal.of(OwnSystem.of(form), 4, 1, Rehearsal.Progress.NONE);
        RehearsalFiles.Written written = RehearsalFiles.write(form, folder.resolve(name + ".yaml"), outlook);
        assertThat(ScenarioReader.read(written.drill()).get()).isEqualTo(RehearsalFiles.drill(form, name));
        assertThat(ContentFiles.at(List.of(folder)).checkAndPlay()).isEmpty();
        assertThat(folder.resolve(name + "-second.yaml").toFile().exists()).isEqualTo(name.equals(Systems.RAIN_CARP));
        assertThat(Files.readString(written.drill())).contains("# A system of one", "# El sistema propio");
    }

    @Test
    void noNameTakesThatOfADrillThatComesWithTheProgram() throws IOException {
        String taken = Library.shipped().scenarios().get(0).id();
        Form form = Systems.form(Systems.TROUT_RACEWAY).with(Entry.NAME, taken.replace('-', ' '));
        assertThat(RehearsalFiles.nameOf(form)).isEqualTo(taken + "-own.yaml");
        assertThat(RehearsalFiles.write(form, folder.resolve(taken + ".yaml"), null)
                        .drill())
                .hasFileName(taken + "-own.yaml");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "null",
                "12",
                "{x: 1}",
                "a \"b\" \\ c",
                "日本の池",
                "…",
                "# no",
                "Tab\tand\nline",
                "TODO tank",
                "A very long name of a tank that no card could ever hold on one line",
                "-: -"
            })
    void anyNameCanBeWritten(String name) {
        Form form = Systems.form(Systems.TROUT_RACEWAY).with(Entry.NAME, name);
        String id = RehearsalFiles.nameOf(form).replace(".yaml", "");
        String yaml = ScenarioYaml.of(RehearsalFiles.drill(form, id));
        var read = ScenarioReader.read(id + ".yaml", yaml.getBytes(StandardCharsets.UTF_8));
        assertThat(read.faults()).isEmpty();
        assertThat(read.get()).isEqualTo(RehearsalFiles.drill(form, id));
    }

    /** A form with least answers, for every species, media and way of starting, still makes a sound drill. */
    @ParameterizedTest
    @CsvSource({
        "nile-tilapia, sponge, 26",
        "channel-catfish, sand, 27",
        "rainbow-trout, moving-bed, 13",
        "common-carp, static-plastic, 20"
    })
    void whatIsNotToldMakesASoundDrillAllTheSame(String species, String media, String room) {
        for (Starting start : Starting.values()) {
            Form form = Form.EMPTY
                    .with(Entry.START, start.id())
                    .with(Entry.VOLUME, "500")
                    .with(Entry.MEDIA, media)
                    .with(Entry.MEDIA_LITRES, "40")
                    .with(Entry.RIPE_MEDIA, "35")
                    .with(Entry.ROOM, room)
                    .with(Entry.SPECIES, species)
                    .with(Entry.COUNT, "20")
                    .with(Entry.MASS, "20");
            assertThat(SystemChecks.possible(SystemChecks.of(form))).isTrue();
            String yaml = ScenarioYaml.of(drill(form));
            assertThat(ScenarioReader.read("own.yaml", yaml.getBytes(StandardCharsets.UTF_8))
                            .faults())
                    .isEmpty();
        }
    }

    @Test
    void whatIsNotKnownIsWiderThanWhatIs() {
        Form told = Systems.form(Systems.TROUT_RACEWAY);
        Form vague = told.with(Entry.AIR_POWER, "");
        assertThat(prior(vague, Unknown.AIR).sd())
                .isGreaterThan(prior(told, Unknown.AIR).sd());
        assertThat(prior(told, Unknown.AIR).sd()).isGreaterThan(0.2);
        Form area = told.with(Entry.MEDIA_AREA, "300");
        assertThat(prior(told, Unknown.AOB_SEED).sd())
                .isGreaterThan(prior(area, Unknown.AOB_SEED).sd());
        assertThat(prior(area, Unknown.AOB_SEED).sd()).isGreaterThan(0.8);
        assertThat(drill(told).unknowns().get(Unknown.SOURCE_ALKALINITY)).isEqualTo(new Prior.Uniform(144, 216));
        assertThat(drill(told.with(Entry.TAP_ALKALINITY, "")).unknowns().get(Unknown.SOURCE_ALKALINITY))
                .isEqualTo(new Prior.LogNormal(100, 0.5));
    }

    @Test
    void airByPowerFlowStonesAndLooksComesToLikeAmounts() {
        Form bare =
                Systems.form(Systems.TROUT_RACEWAY).with(Entry.VOLUME, "1800").with(Entry.AIR_POWER, "");
        double byPower = drill(bare.with(Entry.AIR_POWER, "60")).system().airKlaPerHour();
        double byFlow = drill(bare.with(Entry.AIR_FLOW, "70")).system().airKlaPerHour();
        double byStones = drill(bare.with(Entry.AIR_STONES, "23")).system().airKlaPerHour();
        // 60 W at 0.8 kg/kWh are 48 g/h; over 9.09 mg/L in 1800 L: 2.93 a hour, worked by hand.
        assertThat(byPower).isCloseTo(2.93, within(0.01));
        // 70 L/min are 4200 L/h with 1172 g of oxygen, 3 % of it taken up: 35 g/h, 2.15 a hour.
        assertThat(byFlow).isCloseTo(2.15, within(0.01));
        assertThat(byStones).isCloseTo(byFlow, within(0.1));
    }

    @Test
    void ripeMediaMakeARipeStart() {
        Form ripe = Systems.form(Systems.TROUT_RACEWAY)
                .with(Entry.START, "ripe-media")
                .with(Entry.RIPE_MEDIA, "50");
        // 50 of 500 L, half of it alive after the move.
        assertThat(prior(ripe, Unknown.AOB_SEED).median()).isCloseTo(0.05, within(1e-9));
        double ready = ready(ripe);
        assertThat(ready).isLessThan(ready(Systems.form(Systems.TROUT_RACEWAY)) - 15);
    }

    private static double ready(Form form) {
        return Rehearsal.of(OwnSystem.of(form), 8, 1, Rehearsal.Progress.NONE)
                .ready()
                .middle();
    }

    /** Whatever is typed into the form: what is not refused is a drill that can be read. */
    @Test
    void anyFormThatIsNotRefusedMakesADrillThatCanBeRead() {
        Stream dice = Stream.of(20);
        int made = 0;
        for (int i = 0; i < 1500; i++) {
            Form form = RandomForm.of(dice);
            if (SystemChecks.possible(SystemChecks.of(form))) {
                made++;
                String yaml = ScenarioYaml.of(drill(form));
                var read = ScenarioReader.read("own.yaml", yaml.getBytes(StandardCharsets.UTF_8));
                assertThat(read.faults()).as(FormFile.write(form)).isEmpty();
                assertThat(read.get()).isEqualTo(drill(form));
            }
        }
        assertThat(made).isGreaterThan(50);
    }
}
