package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.score.DrillTrial.Row;

/** What makes a drill fit, and a course of drills. */
class TrialFitTest {
    private static Scenario exposing(Scenario s, List<String> habits) {
        return s.change().exposes(habits).made();
    }

    private static Row row(String policy, double mark, double deaths) {
        return row(policy, mark, deaths, policy.equals("careful") || policy.equals("optimal") ? 1 : 0);
    }

    private static Row row(String policy, double mark, double deaths, double passed) {
        return new Row(policy, mark, 1, 4, passed, new Outcome(deaths, 0, 0));
    }

    private static List<String> faults(double optimal, double careful, double habit, double deaths, double pivot) {
        Scenario s = exposing(TrialScenario.secondWeek(15), List.of("do-nothing"));
        return TrialFit.faults(
                        s,
                        List.of(
                                row("optimal", optimal, 0),
                                row("careful", careful, 0.01),
                                row("do-nothing", habit, deaths)),
                        new DrillTrial.Pivot(0, Act.of(Decision.LEAVE_ALONE), pivot))
                .stream()
                .map(DrillTrial.Reason::key)
                .toList();
    }

    @Test
    void aDrillIsFitWhereCarePaysAndTheHabitDoesNot() {
        assertThat(faults(95, 90, 60, 0.02, 0.6)).isEmpty();
        assertThat(faults(95, 70, 20, 0.02, 0.6)).isEmpty();
        assertThat(faults(95, 69, 20, 0.02, 0.6)).containsExactly("trial.why.careful");
        assertThat(faults(87, 90, 60, 0.02, 0.6)).containsExactly("trial.why.optimal");
        assertThat(faults(95, 90, 61, 0.02, 0.6)).containsExactly("trial.why.habit");
        assertThat(faults(95, 90, 60, 0.01, 0.6)).containsExactly("trial.why.deaths");
        assertThat(faults(95, 90, 60, 0.02, 0.61)).containsExactly("trial.why.pivot");
        assertThat(faults(95, Double.NaN, 60, 0.02, 0.6)).contains("trial.why.unscored", "trial.why.habit");
    }

    @Test
    void aDrillIsUnfitWhereCareFailsAPlayOrIdlenessPassesOne() {
        Scenario s = exposing(TrialScenario.secondWeek(15), List.of());
        List<Row> good = List.of(row("optimal", 95, 0), row("careful", 90, 0), row("do-nothing", 40, 0.5));
        List<Row> failing = List.of(row("optimal", 95, 0), row("careful", 90, 0, 0.8), row("do-nothing", 40, 0.5));
        List<Row> idle = List.of(row("optimal", 95, 0), row("careful", 90, 0), row("do-nothing", 40, 0.5, 0.1));
        assertThat(TrialFit.faults(s, good, null)).isEmpty();
        assertThat(TrialFit.faults(s, failing, null))
                .extracting(DrillTrial.Reason::key)
                .containsExactly("trial.why.passed");
        assertThat(TrialFit.faults(s, idle, null))
                .extracting(DrillTrial.Reason::key)
                .containsExactly("trial.why.empty");
    }

    /** Where fish are still to come, who stocks at once must kill more of them than care does; others need not. */
    @Test
    void withoutFishOnlyStockingAtOnceMustTellByDeaths() {
        for (String habit : List.of("stocks-at-once", "scrubs-filter")) {
            Scenario s = exposing(TrialScenario.fishless(), List.of(habit));
            List<DrillTrial.Reason> faults = TrialFit.faults(
                    s,
                    List.of(
                            row("optimal", 95, 0),
                            row("careful", 90, 0.01),
                            row("do-nothing", 40, 0.01),
                            row(habit, 40, 0.01)),
                    null);
            assertThat(faults).hasSize(habit.equals("stocks-at-once") ? 1 : 0);
        }
    }

    private static DrillTrial course(String id, List<String> exposed, int arguable, Map<Act, Integer> best) {
        int steps = best.values().stream().mapToInt(n -> n).sum();
        return new DrillTrial(id, true, List.of(), List.of(), null, exposed, steps, arguable, best);
    }

    @Test
    void aCourseNeedsEveryHabitTwiceNoCureAllAndFewArguableVisits() {
        List<String> habits =
                java.util.Arrays.stream(Habit.values()).map(Habit::id).toList();
        Act feed = Act.of(Decision.LEAVE_ALONE);
        Act hold = Act.of(Decision.LEAVE_ALONE.withFeed(0));
        Act change = Act.of(Decision.LEAVE_ALONE.withChange(0.5));
        Map<Act, Integer> even = Map.of(feed, 1, hold, 1, change, 1);
        assertThat(TrialFit.ofCourse(List.of(course("a", habits, 1, even), course("b", habits, 0, even))))
                .isEmpty();
        assertThat(TrialFit.ofCourse(List.of(course("a", habits, 0, even), course("b", habits.subList(1, 5), 0, even))))
                .hasSize(habits.size() - 4)
                .allMatch(fault -> fault.key().equals("trial.course.habit"));
        assertThat(TrialFit.ofCourse(
                        List.of(course("a", habits, 2, even), course("b", habits, 0, Map.of(feed, 2, hold, 1)))))
                .extracting(DrillTrial.Reason::key)
                .containsExactly("trial.course.act", "trial.course.arguable");
    }

    /** Errors of 3 and 4 make one of 5 for the difference; twice that is 10. */
    @Test
    void theSearchMayLieTwoStandardErrorsUnderCare() {
        Scenario s = exposing(TrialScenario.secondWeek(15), List.of());
        for (double optimal : new double[] {80.1, 79.9}) {
            List<Row> rows = List.of(
                    new Row("optimal", optimal, 3, 4, 1, new Outcome(0, 0, 0)),
                    new Row("careful", 90, 4, 4, 0.9, new Outcome(0, 0, 0)),
                    row("do-nothing", 0, 1));
            assertThat(TrialFit.faults(s, rows, null)).hasSize(optimal > 80 ? 0 : 1);
        }
    }

    @Test
    void everyReasonTellsItsNumbers() {
        Scenario s = exposing(TrialScenario.secondWeek(15), List.of("do-nothing"));
        Act hold = Act.of(Decision.LEAVE_ALONE.withFeed(0));
        List<Row> weak = List.of(row("optimal", 50, 0), row("careful", 65, 0.02), row("do-nothing", 45, 0.01, 0.25));
        assertThat(TrialFit.faults(s, weak, new DrillTrial.Pivot(3, hold, 0.75)))
                .containsExactly(
                        DrillTrial.Reason.of("trial.why.careful", 65.0, 70.0),
                        DrillTrial.Reason.of("trial.why.optimal", 50.0, 65.0),
                        DrillTrial.Reason.of("trial.why.empty", 25.0),
                        DrillTrial.Reason.of("trial.why.habit", "do-nothing", 45.0, 65.0, 30.0),
                        DrillTrial.Reason.of("trial.why.deaths", "do-nothing", 1.0, 2.0),
                        DrillTrial.Reason.of("trial.why.pivot", 3, hold, 75.0, 60.0));
        List<Row> failing = List.of(row("optimal", 90, 0), row("careful", 80, 0, 0.75), row("do-nothing", 0, 1));
        assertThat(TrialFit.faults(s, failing, null))
                .containsExactly(DrillTrial.Reason.of("trial.why.passed", 75.0, 90.0));
    }

    @Test
    void aHabitIsExposedWhereBothItsMarkAndItsDeathsTell() {
        Scenario s = exposing(TrialScenario.secondWeek(15), List.of("hold-feed", "chases-ph", "never-tests"));
        List<Row> rows = List.of(
                row("careful", 90, 0.01),
                row("hold-feed", 60, 0.01),
                row("chases-ph", 61, 0.5),
                row("never-tests", 60, 0.02));
        assertThat(TrialFit.exposed(s, rows)).containsExactly("never-tests");
    }

    @Test
    void aPolicyThatDidNotPlayIsNamed() {
        Scenario s = exposing(TrialScenario.secondWeek(15), List.of());
        assertThatThrownBy(() -> TrialFit.faults(s, List.of(row("optimal", 95, 0)), null))
                .hasMessage("Trial: no row for careful");
        DrillTrial trial =
                new DrillTrial("a", true, List.of(), List.of(row("careful", 90, 0)), null, List.of(), 0, 0, Map.of());
        assertThat(trial.row("careful").mark()).isEqualTo(90);
        assertThatThrownBy(() -> trial.row("optimal")).hasMessage("Trial: no row for optimal");
    }

    @Test
    void drillsAddUpAndOfTwoActsAsCommonTheFirstByNameCounts() {
        Act feed = Act.of(Decision.LEAVE_ALONE);
        Act hold = Act.of(Decision.LEAVE_ALONE.withFeed(0));
        Act change = Act.of(Decision.LEAVE_ALONE.withChange(0.5));
        TrialFit.Totals totals = TrialFit.totals(List.of(
                course("a", List.of(), 1, Map.of(feed, 1, hold, 3)),
                course("b", List.of(), 2, Map.of(feed, 2, change, 2))));
        assertThat(totals).isEqualTo(new TrialFit.Totals(8, 3, feed, 3));
        assertThat(totals.arguableShare()).isEqualTo(3.0 / 8);
        assertThat(totals.commonestShare()).isEqualTo(3.0 / 8);
        TrialFit.Totals none = TrialFit.totals(List.of());
        assertThat(none).isEqualTo(new TrialFit.Totals(0, 0, null, 0));
        assertThat(none.arguableShare()).isZero();
        assertThat(none.commonestShare()).isZero();
    }

    @Test
    void aThirdOfOneActAndAFifthArguableAreNotTooMuch() {
        List<String> habits =
                java.util.Arrays.stream(Habit.values()).map(Habit::id).toList();
        Map<Act, Integer> thirds = Map.of(
                Act.of(Decision.LEAVE_ALONE), 5,
                Act.of(Decision.LEAVE_ALONE.withFeed(0)), 5,
                Act.of(Decision.LEAVE_ALONE.withFeed(0.5)), 5);
        DrillTrial other = course("b", habits, 0, Map.of());
        assertThat(TrialFit.ofCourse(List.of(course("a", habits, 3, thirds), other)))
                .isEmpty();
        assertThat(TrialFit.ofCourse(List.of(course("a", habits, 4, thirds), other)))
                .containsExactly(DrillTrial.Reason.of("trial.course.arguable", 100.0 * 4 / 15, 20.0));
        Act salt = Act.of(Decision.LEAVE_ALONE.withSalt(1));
        Act hold = Act.of(Decision.LEAVE_ALONE.withFeed(0));
        assertThat(TrialFit.ofCourse(List.of(course("a", habits, 0, Map.of(salt, 4, hold, 4)), other)))
                .containsExactly(DrillTrial.Reason.of("trial.course.act", salt, 50.0));
    }
}
