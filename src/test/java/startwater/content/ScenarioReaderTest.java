package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.DrillRun;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;

class ScenarioReaderTest {
    private static final Edited SECOND_WEEK = Edited.shipped("scenarios/hungry-second-week.yaml");

    private static Scenario read(Edited edited) {
        return ScenarioReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8))
                .get();
    }

    @Test
    void everyPartOfAFileArrives() {
        Scenario s = ScenarioReader.read(Path.of("scenarios/hungry-second-week.yaml"))
                .get();
        assertThat(s.id()).isEqualTo("hungry-second-week");
        assertThat(s.number()).isEqualTo(2);
        assertThat(s.text()).containsOnlyKeys("en", "es");
        assertThat(s.words("es").title()).isEqualTo("La segunda semana, con hambre");
        assertThat(s.words("en").story()).startsWith("A friend filled").doesNotContain("\n");
        assertThat(s.skills()).containsExactly("nitrite-chloride", "ration", "read-strip", "cycle-sense");
        assertThat(s.rules()).containsExactly(5, 3);
        assertThat(s.system().volumeL()).isEqualTo(2400);
        assertThat(s.fish()).isEqualTo(new Scenario.Fish("channel-catfish", 240, 13.2, 32, List.of(8.0, 12.0, 16.0)));
        assertThat(s.plannedFish()).isNull();
        assertThat(s.source().chlorideMgPerL()).isEqualTo(15);
        assertThat(s.start().before()).containsExactly(new Scenario.Before(0, 0.5, 0.1, 0, 0, 0));
        assertThat(s.unknowns())
                .isEqualTo(Map.of(
                        Unknown.AOB_SEED,
                        new Prior.LogNormal(0.003, 0.8),
                        Unknown.NOB_SEED,
                        new Prior.LogNormal(0.0012, 0.8),
                        Unknown.SOURCE_CHLORIDE,
                        new Prior.Uniform(12, 18),
                        Unknown.SOURCE_ALKALINITY,
                        new Prior.Uniform(60, 160)));
        assertThat(s.keeper().decisionVisits()).containsExactly(0, 2, 4, 8, 14, 20);
        assertThat(s.shelf()).isEqualTo(new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false));
        assertThat(s.events()).isEmpty();
    }

    @Test
    void aSystemWithoutFishReadsWithItsPlan() {
        Scenario s = ScenarioReader.read(Path.of("scenarios/first-strips.yaml")).get();
        assertThat(s.fish()).isNull();
        assertThat(s.plannedFish()).extracting(Scenario.Fish::species).isEqualTo("nile-tilapia");
    }

    /** The priors of the shipped drill against their quantiles: 1.2816 is the 90 % point of the standard normal. */
    @Test
    void allKindsOfPriorAreRead() {
        Scenario s = read(SECOND_WEEK
                .with("{lognormal: {median: 0.003, sd: 0.8}}", "{known: 0.01}")
                .with("{uniform: {low: 12, high: 18}}", "{normal: {mean: 15, sd: 2}}"));
        assertThat(s.unknowns().get(Unknown.AOB_SEED)).isEqualTo(new Prior.Known(0.01));
        Prior chloride = Objects.requireNonNull(s.unknowns().get(Unknown.SOURCE_CHLORIDE));
        assertThat(chloride).isEqualTo(new Prior.Gaussian(15, 2));
        assertThat(chloride.at(1.2816)).isCloseTo(17.563, within(1e-3));
    }

    @Test
    void eventsAndAbsencesAreRead() {
        Scenario s = read(SECOND_WEEK
                .with("away: []", "away: [{fromDay: 10, toDay: 12.5}]")
                .with(
                        "events: []",
                        "events: [{atDay: 9.5, kind: power-off, hours: 3},"
                                + " {atDay: 11, kind: overfed, amount: 2},"
                                + " {atDay: 12, kind: set-point, amount: 22},"
                                + " {atDay: 13, kind: pump-off}]"));
        assertThat(s.keeper().away()).containsExactly(new Scenario.Away(10, 12.5));
        assertThat(s.events())
                .containsExactly(
                        new Scenario.Happening(9.5, Scenario.Happening.Kind.POWER_OFF, 3, 0),
                        new Scenario.Happening(11, Scenario.Happening.Kind.OVERFED, 0, 2),
                        new Scenario.Happening(12, Scenario.Happening.Kind.SET_POINT, 0, 22),
                        new Scenario.Happening(13, Scenario.Happening.Kind.PUMP_OFF, 0, 0));
    }

    @Test
    void whatMayBeLeftOutMayBeLeftOut() {
        int from = SECOND_WEEK.text().indexOf("unknowns:");
        int to = SECOND_WEEK.text().indexOf("keeper:\n  visits");
        String without =
                SECOND_WEEK.text().substring(0, from) + SECOND_WEEK.text().substring(to);
        Scenario s = read(new Edited(SECOND_WEEK.file(), without.replace("events: []\n", "")));
        assertThat(s.unknowns()).isEmpty();
        assertThat(s.events()).isEmpty();
    }

    @Test
    void theLastVisitThatMayBeAskedForIsTheLastOneThereIs() {
        Edited away = SECOND_WEEK
                .with("away: []", "away: [{fromDay: 10, toDay: 12}]")
                .with("[0, 2, 4, 8, 14, 20]", "[0, 23]");
        int visits = Calendar.of(read(away)).visits().size();
        assertThat(visits).isEqualTo(24);
        Edited over = away.with("[0, 23]", "[0, " + visits + "]");
        assertThat(ScenarioMistakesTest.read(over).faults())
                .extracting(Fault::complaint)
                .containsExactly(Complaint.DECISION_AFTER_END);
    }

    @Test
    void shippedDrillsCanBeStarted() {
        for (Scenario s : Library.shipped().scenarios()) {
            DrillRun run = DrillRun.start(s, 1, DrillRun.Pace.LEARNER);
            assertThat(run.over()).as(s.id()).isFalse();
            List<Integer> asked = s.keeper().decisionVisits();
            assertThat(run.calendar().visits()).as(s.id()).hasSizeGreaterThan(asked.get(asked.size() - 1));
        }
    }
}
