package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.DrillTrial.Row;

/** Trials of a drill by policies: what they count, that they can be taken up again, and what makes a drill fit. */
class TrialTest {
    private static final TrialPlan SMALL = new TrialPlan(4, 1, 2, 2, false, 3);
    private static final Scenario DRILL =
            exposing(TrialScenario.secondWeek(15), List.of("do-nothing", "feeds-because-they-beg"));

    private static Scenario exposing(Scenario s, List<String> habits) {
        return s.change().exposes(habits).made();
    }

    /** Keeps plays in memory and counts those that had to be made. */
    private static final class Kept implements TrialStore {
        private final Map<String, String> plays = new ConcurrentHashMap<>();
        private final AtomicInteger made = new AtomicInteger();

        @Override
        public @Nullable String find(String key) {
            return plays.get(key);
        }

        @Override
        public void keep(String key, String play) {
            plays.put(key, play);
            made.incrementAndGet();
        }
    }

    @Test
    void aTrialIsTheSameOnAnyNumberOfThreadsAndTakenUpAgain() throws Exception {
        List<DrillTrial> trials = new ArrayList<>();
        Kept kept = new Kept();
        for (int threads : new int[] {1, 4}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            Belief.forget();
            TrialStore store = threads == 1 ? kept : TrialStore.NONE;
            trials.add(pool.submit(() -> Trial.of(DRILL, SMALL, store, (done, most) -> {}))
                    .get());
            pool.shutdown();
        }
        assertThat(trials.get(1)).isEqualTo(trials.get(0));
        int made = kept.made.get();
        // A trial that was stopped: some plays are there, some are not.
        kept.plays.keySet().removeIf(key -> key.startsWith("do-nothing"));
        assertThat(Trial.of(DRILL, SMALL, kept, (done, most) -> {})).isEqualTo(trials.get(0));
        assertThat(kept.made.get() - made).isBetween(1, SMALL.outcomeSeeds() + SMALL.mostMarked());
    }

    @Test
    void everyPolicyPlaysAndTheOutcomeIsThatOfItsRuns() {
        DrillTrial trial = Trial.of(DRILL, SMALL, TrialStore.NONE, (done, most) -> {});
        assertThat(trial.policies()).extracting(Row::policy).isEqualTo(Policies.ids());
        double deaths = 0;
        for (int seed = 1; seed <= SMALL.outcomeSeeds(); seed++) {
            deaths += Outcome.of(PolicyPlayer.play(DRILL, Policies.byId("do-nothing"), seed, DrillRun.Pace.EVERY_VISIT))
                            .deathsFraction()
                    / SMALL.outcomeSeeds();
        }
        assertThat(trial.row("do-nothing").outcome().deathsFraction()).isEqualTo(deaths);
        assertThat(trial.row("careful").outcome().deathsFraction()).isLessThan(deaths);
        assertThat(trial.row("careful").mark())
                .isGreaterThan(trial.row("do-nothing").mark() + 30);
        assertThat(trial.row("half-every-day").mark()).isNaN();
    }

    @Test
    void everyHabitIsPlayedByAPolicyOfItsName() {
        for (Habit habit : Habit.values()) {
            assertThat(Policies.ids()).contains(habit.id());
        }
    }

    @Test
    void whoNeverWritesReadsButLeavesTheLogEmpty() {
        DrillRun run = PolicyPlayer.play(DRILL, Policies.byId("never-writes"), 2, DrillRun.Pace.EVERY_VISIT);
        assertThat(run.past().visits()).allMatch(v -> v.written().isEmpty());
        assertThat(run.stripsLeft()).isLessThan(DRILL.shelf().strips());
        assertThat(run.past().visits())
                .anyMatch(v -> v.decision() != null && v.decision().saltG() > 0);
    }

    @Test
    void theSearchTakesTheBestOptionWhereTheLearnerIsAskedAndKeepsTheRulesBetween() {
        Policy search = new Optimal(4);
        DrillRun run = PolicyPlayer.play(DRILL, search, 3, DrillRun.Pace.EVERY_VISIT);
        Notebook book = new Notebook(DRILL);
        boolean other = false;
        for (int i = 0; i < run.past().size(); i++) {
            VisitRecord v = run.past().visits().get(i);
            Decision decision = v.decision();
            if (decision == null) {
                continue;
            }
            book = Notebook.of(DRILL, run.calendar(), open(run, i));
            if (DRILL.keeper().decisionVisits().contains(v.visit())) {
                Scored scored = Judge.score(new Case(DRILL, run.past().upTo(i)), 4);
                assertThat(scored.losses().regret(scored.own())).isZero();
                other |= !decision.equals(Policies.CAREFUL.decide(book));
            } else {
                assertThat(decision).isEqualTo(Policies.CAREFUL.decide(book));
            }
        }
        assertThat(other).isTrue();
    }

    /** The log up to a visit, that visit still undecided. */
    private static List<VisitRecord> open(DrillRun run, int at) {
        List<VisitRecord> visits = new ArrayList<>(run.past().visits().subList(0, at + 1));
        VisitRecord last = visits.get(at);
        visits.set(
                at,
                new VisitRecord(last.visit(), last.minute(), last.actor(), last.seen(), last.written(), null, null));
        return visits;
    }

    @Test
    void aPlayIsReadBackAsItWasWritten() {
        PolicyPlay play = new PolicyPlay(
                new Outcome(1.0 / 3, Math.PI, 0),
                List.of(
                        new PolicyPlay.Step(0, 100, true, false, false, true, 0.1 + 0.2, Act.of(Decision.LEAVE_ALONE)),
                        new PolicyPlay.Step(
                                7,
                                2.5,
                                false,
                                true,
                                true,
                                false,
                                1e-9,
                                Act.of(Decision.LEAVE_ALONE
                                        .withFeed(0)
                                        .withChange(0.5)
                                        .withSalt(3)))));
        assertThat(PolicyPlay.read(play.written())).isEqualTo(play);
        assertThat(play.mark()).isEqualTo(100);
        assertThat(play.steps().get(1).best().code()).isEqualTo("hold+change-2+salt");
    }

    private static Row row(String policy, double mark, double deaths) {
        return row(policy, mark, deaths, policy.equals("careful") || policy.equals("optimal") ? 1 : 0);
    }

    private static Row row(String policy, double mark, double deaths, double passed) {
        return new Row(policy, mark, 1, 4, passed, new Outcome(deaths, 0, 0));
    }

    private static List<String> faults(double optimal, double careful, double habit, double deaths, double pivot) {
        Scenario s = exposing(DRILL, List.of("do-nothing"));
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
        assertThat(faults(95, 69, 20, 0.02, 0.6)).containsExactly("trial.why.careful");
        assertThat(faults(87, 90, 60, 0.02, 0.6)).containsExactly("trial.why.optimal");
        assertThat(faults(95, 90, 61, 0.02, 0.6)).containsExactly("trial.why.habit");
        assertThat(faults(95, 90, 60, 0.01, 0.6)).containsExactly("trial.why.deaths");
        assertThat(faults(95, 90, 60, 0.02, 0.61)).containsExactly("trial.why.pivot");
        assertThat(faults(95, Double.NaN, 60, 0.02, 0.6)).contains("trial.why.unscored", "trial.why.habit");
    }

    @Test
    void aDrillIsUnfitWhereCareFailsAPlayOrIdlenessPassesOne() {
        Scenario s = exposing(DRILL, List.of());
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
}
