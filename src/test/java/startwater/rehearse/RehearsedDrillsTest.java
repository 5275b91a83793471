package startwater.rehearse;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import startwater.drill.Scenario;
import startwater.score.DrillTrial;
import startwater.score.Trial;
import startwater.score.TrialPlan;
import startwater.score.TrialStore;

/** What is written from sensible systems is fit to be played, and the guide names every line of the form. */
class RehearsedDrillsTest {
    @Tag("full")
    @ParameterizedTest
    @FieldSource("startwater.rehearse.Systems#ALL")
    void aQuickTrialCallsThemFit(String name) {
        Scenario drill = RehearsalFiles.drill(Systems.form(name), name);
        DrillTrial trial = Trial.of(drill, TrialPlan.quick(TrialPlan.SEEDS), TrialStore.NONE, (done, most) -> {});
        assertThat(trial.fit()).as(trial.why().toString()).isTrue();
    }

    @Test
    void theGuideNamesEveryLineOfTheForm() throws IOException {
        String guide = Files.readString(Path.of("src/docs/rehearsal.md"));
        for (Entry entry : Entry.values()) {
            assertThat(guide).contains("`" + entry.key() + "`");
            entry.options().stream().filter(option -> entry != Entry.SPECIES).forEach(option -> assertThat(guide)
                    .contains("`" + option + "`"));
        }
    }

    @Test
    void everyFactSaysWhereItComesFrom() {
        assertThat(Facts.all()).isNotEmpty().allSatisfy((key, fact) -> {
            assertThat(fact.source()).hasSizeGreaterThan(10);
            assertThat(fact.sd()).isBetween(0.0, 1.0);
        });
    }
}
