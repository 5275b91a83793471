package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.DrillTrial.Row;

/** Trials of a drill by policies: what they count, that they can be taken up again, and what makes a drill fit. */
@Tag("slow")
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
}
