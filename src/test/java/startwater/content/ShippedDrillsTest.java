package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import startwater.drill.Calendar;
import startwater.drill.DrillRun;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.Notebook;
import startwater.score.Policies;
import startwater.score.Policy;
import startwater.score.PolicyPlayer;
import startwater.score.StandingRules;

/** Every drill that ships keeps what its file promises: care brings it through, its habits do worse, its rules speak. */
class ShippedDrillsTest {
    private static final int SEEDS = 4;
    /** Deaths that a careful keeper may have on a mean tank, share of the stock. */
    private static final double CAREFUL_MOST = 0.03;

    private static List<Scenario> drills() {
        return Library.shipped().scenarios();
    }

    private static List<DrillRun> play(Scenario drill, String policy) {
        Policy player = Policies.byId(policy);
        List<DrillRun> runs = new ArrayList<>();
        for (long variant = 1; variant <= SEEDS; variant++) {
            runs.add(PolicyPlayer.play(drill, player, variant, DrillRun.Pace.EVERY_VISIT));
        }
        return runs;
    }

    /** Expected deaths, share of the stock, mean over the runs. */
    private static double deaths(Scenario drill, List<DrillRun> runs) {
        return runs.stream()
                .mapToDouble(run -> 1 - run.truth().get(run.truth().size() - 1).expectedAlive() / drill.fishCount())
                .average()
                .orElseThrow();
    }

    /** Day on which the filter is ready, mean over the runs; one that never is counts as ten days past the end. */
    private static double ready(Scenario drill, List<DrillRun> runs) {
        double never = Calendar.of(drill).end() / (double) Calendar.DAY + 10;
        return runs.stream()
                .mapToDouble(run -> Double.isNaN(run.filterDay()) ? never : run.filterDay())
                .average()
                .orElseThrow();
    }

    @TestFactory
    Stream<DynamicTest> careBringsItThroughAndItsHabitsDoWorse() {
        return drills().stream()
                .map(drill -> DynamicTest.dynamicTest(drill.id(), () -> {
                    List<DrillRun> careful = play(drill, "careful");
                    List<String> worse = new ArrayList<>(drill.exposes());
                    if (drill.fish() == null) {
                        for (String habit : worse) {
                            assertThat(ready(drill, play(drill, habit)))
                                    .as("%s: day of a ready filter under %s", drill.id(), habit)
                                    .isGreaterThanOrEqualTo(ready(drill, careful));
                        }
                        return;
                    }
                    double least = deaths(drill, careful);
                    assertThat(least).as("%s: deaths under careful", drill.id()).isLessThan(CAREFUL_MOST);
                    worse.add("do-nothing");
                    for (String habit : worse) {
                        assertThat(deaths(drill, play(drill, habit)))
                                .as("%s: deaths under %s", drill.id(), habit)
                                .isGreaterThan(least);
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> aRuleThatTheDebriefShouldEndInSpeaksAtADecision() {
        return drills().stream()
                .map(drill -> DynamicTest.dynamicTest(drill.id(), () -> {
                    Set<Integer> spoken = new HashSet<>();
                    for (DrillRun run : play(drill, "careful")) {
                        spoken.addAll(spoken(drill, run));
                    }
                    assertThat(spoken).as(drill.id()).containsAnyElementsOf(drill.rules());
                }));
    }

    private static Set<Integer> spoken(Scenario drill, DrillRun run) {
        StandingRules rules = new StandingRules();
        Set<Integer> spoken = new HashSet<>();
        List<VisitRecord> visits = run.past().visits();
        for (int i = 0; i < visits.size(); i++) {
            VisitRecord visit = visits.get(i);
            if (visit.decision() == null) {
                continue;
            }
            List<VisitRecord> known = new ArrayList<>(visits.subList(0, i));
            known.add(visit.decided(startwater.drill.Decision.LEAVE_ALONE, null));
            spoken.addAll(
                    rules.ruling(Notebook.of(drill, run.calendar(), known)).rules());
        }
        return spoken;
    }

    /** The card says how many fish there are; it must not stay behind when the file is tuned. */
    @Test
    void theCardTellsTheNumberOfFish() {
        for (Scenario drill : drills()) {
            for (String language : Languages.ALL) {
                String digits = drill.words(language).stock().replaceAll("(?<=[0-9])[ .,](?=[0-9]{3})", "");
                if (digits.matches(".*[0-9].*")) {
                    assertThat(digits)
                            .as(drill.id())
                            .contains(Integer.toString(java.util.Objects.requireNonNull(drill.fishHereOrPlanned())
                                    .count()));
                }
            }
        }
    }

    /** A habit that one drill alone exposes may be luck; two drills make it a lesson. */
    @Test
    void everyHabitIsExposedByTwoDrills() {
        Map<String, Integer> count = new TreeMap<>();
        for (Habit habit : Habit.values()) {
            count.put(habit.id(), 0);
        }
        drills().forEach(drill -> drill.exposes().forEach(habit -> count.merge(habit, 1, Integer::sum)));
        assertThat(count)
                .allSatisfy((habit, drills) -> assertThat(drills).as(habit).isGreaterThanOrEqualTo(2));
    }

    @Test
    void everyFileStartsWithItsDesignNote() throws IOException {
        for (Scenario drill : drills()) {
            String text = Files.readString(Path.of("scenarios", drill.id() + ".yaml"));
            String header = text.substring(0, text.indexOf("schema:"));
            for (String part : List.of("Goal", "Out of scope", "Exposes", "Reference play", "Story")) {
                assertThat(header).as(drill.id()).contains("# " + part + ": ");
            }
            assertThat(drill.keeper().decisions()).as(drill.id()).isLessThanOrEqualTo(8);
            assertThat(drill.unknowns())
                    .as(drill.id() + ": what makes every play a new case")
                    .isNotEmpty();
        }
    }
}
