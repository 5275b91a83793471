package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.score.DrillTrial.Reason;
import startwater.score.DrillTrial.Row;
import startwater.score.PolicyPlay.Step;

/** What a trial makes of its plays. Plays are made up and found in the store, so that none has to be played. */
class TrialSumsTest {
    /** The learner is asked at visits 0 and 2. */
    private static final Scenario DRILL = PolicyPlayerTest.shortened(Setting.young(1, 0.003))
            .change()
            .exposes(List.of("do-nothing", "hold-feed"))
            .made();

    private static final Act FEED = Act.of(Decision.LEAVE_ALONE);
    private static final Act HOLD = Act.of(Decision.LEAVE_ALONE.withFeed(0));
    private static final int POLICIES = 15;

    /** Makes up what a policy plays on a tank. */
    private interface Maker {
        PolicyPlay play(String policy, int seed, String judged);
    }

    /** Has every play made up already, and notes which were asked for. */
    private static class Told implements TrialStore {
        private final Maker maker;
        final Set<String> asked = Collections.synchronizedSet(new TreeSet<>());

        Told(Maker maker) {
            this.maker = maker;
        }

        @Override
        public @Nullable String find(String key) {
            asked.add(key);
            String[] parts = key.split(" ");
            return maker.play(parts[0], Integer.parseInt(parts[1]), parts[2]).written();
        }

        @Override
        public void keep(String key, String play) {
            throw new AssertionError("was played: " + key);
        }
    }

    private static Step step(int visit, double mark, double spread, Act best) {
        return new Step(visit, mark, true, false, false, true, spread, best);
    }

    private static PolicyPlay play(double deaths, Step... steps) {
        return new PolicyPlay(new Outcome(deaths, 10 * deaths, 100 * deaths), List.of(steps));
    }

    private static PolicyPlay marked(double mark) {
        return play(0, step(0, mark, 1, FEED));
    }

    private static TrialPlan plan(int outcomes, int fewest, int most, int pivots) {
        return new TrialPlan(outcomes, fewest, most, 2, false, pivots);
    }

    private static DrillTrial trial(TrialPlan plan, Maker maker) {
        return Trial.of(DRILL, plan, new Told(maker), (done, most) -> {});
    }

    /** Outcomes of 0.1 to 0.4 over four tanks; the search is played on the two that are marked alone. */
    @Test
    void aRowHasTheMeansOfItsPlays() {
        DrillTrial trial = trial(
                plan(4, 2, 2, 0),
                (policy, seed, judged) -> judged.equals("NONE")
                        ? play(seed / 10.0)
                        : play(seed / 100.0, step(0, seed == 1 ? 60 : 90, 1, FEED)));
        assertThat(trial.policies()).extracting(Row::policy).isEqualTo(Policies.ids());
        Row careful = trial.row("careful");
        assertThat(careful.mark()).isCloseTo(75, within(1e-12));
        // Marks of 60 and 90: their standard deviation is 21.2, and 15 over the root of two.
        assertThat(careful.error()).isCloseTo(15, within(1e-12));
        assertThat(careful.marked()).isEqualTo(2);
        assertThat(careful.passed()).isEqualTo(0.5);
        assertThat(careful.outcome().deathsFraction()).isCloseTo(0.25, within(1e-12));
        assertThat(careful.outcome().daysToFilter()).isCloseTo(2.5, within(1e-12));
        assertThat(careful.outcome().waterVolumes()).isCloseTo(25, within(1e-12));
        assertThat(trial.row("optimal").outcome().deathsFraction()).isCloseTo(0.015, within(1e-12));
    }

    @Test
    void onlyCareTheSearchAndTheNamedHabitsAreMarkedUnlessAllAre() {
        Maker maker = (policy, seed, judged) -> marked(80);
        DrillTrial some = trial(plan(1, 2, 2, 0), maker);
        Row never = some.row("never-tests");
        assertThat(never.mark()).isNaN();
        assertThat(never.error()).isInfinite();
        assertThat(never.marked()).isZero();
        assertThat(never.passed()).isNaN();
        assertThat(some.policies())
                .filteredOn(row -> row.marked() > 0)
                .extracting(Row::policy)
                .containsExactlyInAnyOrder("careful", "optimal", "do-nothing", "hold-feed");
        DrillTrial all = trial(new TrialPlan(1, 2, 2, 2, true, 0), maker);
        assertThat(all.policies()).allMatch(row -> row.marked() == 2 && row.mark() == 80);
    }

    @Test
    void oneMarkSaysNothingOfItsErrorAndAPlayWithoutAMarkIsLeftOut() {
        Row one = trial(plan(1, 1, 1, 0), (policy, seed, judged) -> marked(80)).row("careful");
        assertThat(one.mark()).isEqualTo(80);
        assertThat(one.error()).isInfinite();
        Row unscored = trial(plan(1, 3, 3, 0), (policy, seed, judged) -> seed == 2 ? play(0) : marked(20 * seed))
                .row("careful");
        assertThat(unscored.mark()).isCloseTo(40, within(1e-12));
        assertThat(unscored.error()).isCloseTo(20, within(1e-12));
        assertThat(unscored.marked()).isEqualTo(3);
        // Marks of 20 and 60 fail; the one without a mark has nothing to fail in.
        assertThat(unscored.passed()).isCloseTo(1.0 / 3, within(1e-12));
    }

    /**
     * Two to seven plays, two at a time, until the standard error is 3: marks of 0 and 6 have it at once; 0, 10, 5, 5 have 2.04
     * after four; 0 and 100 in turn never. Care is marked to the end.
     */
    @Test
    void moreIsMarkedOnlyWhereAMarkIsNotYetKnownWellEnough() {
        double[] slow = {0, 10, 5, 5};
        DrillTrial trial = trial(
                plan(1, 2, 7, 0),
                (policy, seed, judged) -> marked(
                        switch (policy) {
                            case "do-nothing" -> 6 * (seed - 1);
                            case "hold-feed" -> slow[seed - 1];
                            case "optimal" -> 100 * (seed % 2);
                            default -> 90;
                        }));
        assertThat(trial.row("do-nothing").error()).isCloseTo(3, within(1e-12));
        assertThat(trial.row("do-nothing").marked()).isEqualTo(2);
        assertThat(trial.row("hold-feed").error()).isCloseTo(2.041, within(0.001));
        assertThat(trial.row("hold-feed").marked()).isEqualTo(4);
        assertThat(trial.row("optimal").marked()).isEqualTo(7);
        assertThat(trial.row("careful").marked()).isEqualTo(7);
    }

    /** A play without a mark tells nothing of the error: 90 and 90 beside it are known well enough. */
    @Test
    void aPlayWithoutAMarkKeepsNoPolicyOpen() {
        DrillTrial trial = trial(
                plan(1, 3, 5, 0),
                (policy, seed, judged) -> policy.equals("do-nothing") && seed == 1 ? play(0) : marked(90));
        assertThat(trial.row("do-nothing").marked()).isEqualTo(3);
    }

    @Test
    void aStoreThatKeepsNothingFindsNothing() {
        TrialStore.NONE.keep("careful 1 NONE", marked(80).written());
        assertThat(TrialStore.NONE.find("careful 1 NONE")).isNull();
    }

    @Test
    void whatWasMarkedOnFewerWatersIsNotTakenForMore() {
        Maker maker = (policy, seed, judged) -> marked(80);
        Told two = new Told(maker);
        Trial.of(DRILL, new TrialPlan(2, 1, 1, 2, false, 1), two, (done, most) -> {});
        Told three = new Told(maker);
        Trial.of(DRILL, new TrialPlan(2, 1, 1, 3, false, 1), three, (done, most) -> {});
        Set<String> both = new TreeSet<>(two.asked);
        both.retainAll(three.asked);
        assertThat(both).hasSize(2 * (POLICIES - 1)).allMatch(key -> key.endsWith("NONE"));
        assertThat(two.asked).hasSize(both.size() + 4 + 1).contains("careful 2 NONE", "optimal 1 ALL 2");
        assertThat(two.asked).doesNotContain("optimal 1 NONE", "careful 2 ALL 2");
    }

    /** 14 policies on 4 tanks, four marked twice and 3 tanks for the pivot, of at most 15 times 2 marked. */
    @Test
    void everyPlayIsToldOfOnce() {
        Map<Integer, Integer> told = new TreeMap<>();
        Told store = new Told((policy, seed, judged) -> marked(80));
        Trial.of(DRILL, plan(4, 2, 2, 3), store, told::put);
        assertThat(told.keySet())
                .containsExactlyElementsOf(
                        IntStream.rangeClosed(1, 14 * 4 + 4 * 2 + 3).boxed().toList());
        assertThat(told.values()).containsOnly(14 * 4 + 15 * 2 + 3);
    }

    /** Spreads add up over the plays: 3 at visit 0, 4 at visit 2; the 9 of visit 1 were not asked for by plan. */
    @Test
    void thePivotIsTheVisitAtWhichMostIsAtStake() {
        Told store = new Told((policy, seed, judged) -> judged.equals("PIVOT")
                ? play(0, step(2, 80, 1, seed <= 2 ? HOLD : FEED))
                : play(0, step(0, 80, 3 * (seed % 2), FEED), step(1, 80, 9, FEED), step(2, 80, 2, FEED)));
        DrillTrial trial = Trial.of(DRILL, plan(1, 2, 2, 3), store, (done, most) -> {});
        assertThat(trial.pivot()).isEqualTo(new DrillTrial.Pivot(2, HOLD, 2.0 / 3));
        assertThat(store.asked)
                .filteredOn(key -> key.contains("PIVOT"))
                .containsExactly("careful 1 PIVOT 2 2", "careful 2 PIVOT 2 2", "careful 3 PIVOT 2 2");
    }

    @Test
    void ofTwoVisitsWithAsMuchAtStakeTheLaterCountsAndOfTwoActsTheFirstByName() {
        DrillTrial trial = trial(
                plan(1, 2, 2, 2),
                (policy, seed, judged) -> judged.equals("PIVOT")
                        ? play(0, step(2, 80, 1, seed == 1 ? HOLD : FEED))
                        : play(0, step(0, 80, 2, FEED), step(2, 80, 2, FEED)));
        assertThat(trial.pivot()).isEqualTo(new DrillTrial.Pivot(2, FEED, 0.5));
    }

    @Test
    void thePivotIsLeftOutWhereItIsNotAskedForOrNothingCounts() {
        assertThat(trial(plan(1, 2, 2, 0), (policy, seed, judged) -> marked(80)).pivot())
                .isNull();
        assertThat(trial(plan(1, 2, 2, 2), (policy, seed, judged) -> play(0)).pivot())
                .isNull();
    }

    /** Steps of care that count, over two plays: three, of them one arguable. */
    @Test
    void theStepsOfCareAreCountedByWhatWasBest() {
        Step arguable = new Step(2, 100, true, true, false, true, 1, HOLD);
        Step idle = new Step(1, 0, false, true, false, true, 9, HOLD);
        DrillTrial trial = trial(plan(1, 2, 2, 0), (policy, seed, judged) -> switch (policy) {
            case "careful" -> play(0, step(0, 90, 1, FEED), seed == 1 ? arguable : idle);
            case "optimal" -> marked(95);
            default -> play(0.2, step(0, 10, 1, FEED));
        });
        assertThat(trial.scenario()).isEqualTo(DRILL.id());
        assertThat(trial.steps()).isEqualTo(3);
        assertThat(trial.arguable()).isEqualTo(1);
        assertThat(trial.best()).isEqualTo(Map.of(FEED, 2, HOLD, 1));
        assertThat(trial.fit()).isTrue();
        assertThat(trial.why()).containsExactly(Reason.of("trial.why.fit"));
        assertThat(trial.exposed()).containsExactly("do-nothing", "hold-feed");
    }

    @Test
    void anUnfitDrillSaysWhy() {
        DrillTrial trial = trial(plan(1, 2, 2, 0), (policy, seed, judged) -> switch (policy) {
            case "careful", "optimal" -> marked(90);
            case "do-nothing" -> play(0.2, step(0, 10, 1, FEED));
            default -> play(0.2, step(0, 70, 1, FEED));
        });
        assertThat(trial.fit()).isFalse();
        assertThat(trial.why()).containsExactly(Reason.of("trial.why.habit", "hold-feed", 70.0, 90.0, 30.0));
        assertThat(trial.exposed()).containsExactly("do-nothing");
    }

    /** Has all plays but a few, which have to be played. */
    private static final class Partly extends Told {
        private final Set<String> missing;
        private final Map<String, PolicyPlay> kept = Collections.synchronizedMap(new TreeMap<>());

        Partly(String... missing) {
            super((policy, seed, judged) -> play(0, step(0, 80, 1, FEED)));
            this.missing = Set.of(missing);
        }

        @Override
        public @Nullable String find(String key) {
            return missing.contains(key) ? null : super.find(key);
        }

        @Override
        public void keep(String key, String play) {
            kept.put(key, PolicyPlay.read(play));
        }
    }

    private static Step judged(DrillRun run, int place) {
        Case c = new Case(DRILL, run.past().upTo(place));
        return Step.of(c.visit().visit(), Judge.judge(c, 1));
    }

    @Test
    void whatIsMissingIsPlayedAndKept() {
        Partly store = new Partly("careful 1 NONE", "do-nothing 1 ALL 1", "optimal 1 ALL 1", "careful 1 PIVOT 1 0");
        DrillTrial trial = Trial.of(DRILL, new TrialPlan(1, 1, 1, 1, false, 1), store, (done, most) -> {});
        assertThat(store.kept.keySet()).isEqualTo(store.missing);

        DrillRun often = PolicyPlayer.play(DRILL, Policies.CAREFUL, 1, DrillRun.Pace.EVERY_VISIT);
        assertThat(store.kept.get("careful 1 NONE")).isEqualTo(new PolicyPlay(Outcome.of(often), List.of()));
        assertThat(trial.row("careful").outcome()).isEqualTo(Outcome.of(often));

        DrillRun idle = PolicyPlayer.play(DRILL, Policies.byId("do-nothing"), 1, DrillRun.Pace.LEARNER);
        assertThat(store.kept.get("do-nothing 1 ALL 1"))
                .isEqualTo(new PolicyPlay(Outcome.of(idle), List.of(judged(idle, 0), judged(idle, 2))));

        DrillRun asked = PolicyPlayer.play(DRILL, Policies.CAREFUL, 1, DrillRun.Pace.LEARNER);
        assertThat(store.kept.get("careful 1 PIVOT 1 0"))
                .isEqualTo(new PolicyPlay(Outcome.of(asked), List.of(judged(asked, 0))));

        DrillRun search = PolicyPlayer.play(DRILL, new Optimal(1), 1, DrillRun.Pace.EVERY_VISIT);
        assertThat(store.kept.get("optimal 1 ALL 1"))
                .isEqualTo(new PolicyPlay(Outcome.of(search), List.of(judged(search, 0), judged(search, 2))));
    }
}
