package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;

/** The look back on a whole run, on two days of a second week. */
class ReviewTest {
    private static final Scenario SHORT = PolicyPlayerTest.shortened(TrialScenario.secondWeek(15));
    private static final DrillRun RUN = PolicyPlayer.play(SHORT, Policies.byId("hold-feed"), 3, DrillRun.Pace.LEARNER);

    private static RunSummary of(Verdict... verdicts) {
        return Review.of(RUN, List.of(verdicts));
    }

    private static Verdict sound(double mark) {
        return Verdicts.marked(mark, Verdict.Word.SOUND);
    }

    /** One that does not count. */
    private static Verdict idle(double mark, Verdict.Word word) {
        return Verdicts.on(0, Verdicts.costing(Decision.LEAVE_ALONE, Component.WASTE, 0.1))
                .mark(mark, word)
                .unscored()
                .made();
    }

    @Test
    void anOpenRunIsNotLookedBackOn() {
        DrillRun open = DrillRun.start(SHORT, 3, DrillRun.Pace.LEARNER);
        assertThatThrownBy(() -> Review.of(open, List.of())).hasMessageContaining("not over yet");
    }

    @Test
    void theMarkIsTheMeanOfTheVisitsThatCount() {
        RunSummary summary = of(sound(90), sound(60), idle(0, Verdict.Word.COSTLY));
        assertThat(summary.mark()).isCloseTo(75, within(1e-12));
        assertThat(summary.passed()).isTrue();
        assertThat(of(sound(70)).passed()).isTrue();
        assertThat(of(sound(69.9)).passed()).isFalse();
        assertThat(of().mark()).isNaN();
        assertThat(of().passed()).as("nothing to fail in").isTrue();
    }

    @Test
    void oneDangerousVisitThatCountsFailsTheRun() {
        Verdict dangerous = Verdicts.marked(100, Verdict.Word.DANGEROUS);
        assertThat(of(sound(100), dangerous).passed()).isFalse();
        assertThat(of(sound(100), idle(0, Verdict.Word.DANGEROUS)).passed()).isTrue();
        assertThat(of(sound(100), Verdicts.marked(100, Verdict.Word.COSTLY)).passed())
                .isTrue();
    }

    @Test
    void theSameTankIsShownUnderTheRulesAndLeftAlone() {
        RunSummary summary = of(sound(90));
        DrillRun rules = PolicyPlayer.play(SHORT, Policies.CAREFUL, 3, DrillRun.Pace.EVERY_VISIT);
        DrillRun nothing = PolicyPlayer.play(SHORT, Policies.byId("do-nothing"), 3, DrillRun.Pace.EVERY_VISIT);
        assertThat(summary.own()).isEqualTo(RUN.truth());
        assertThat(summary.rules()).isEqualTo(rules.truth());
        assertThat(summary.nothing()).isEqualTo(nothing.truth());
        assertThat(summary.rulesAlive()).isEqualTo(Review.alive(rules));
        assertThat(summary.nothingAlive()).isEqualTo(Review.alive(nothing));
    }

    @Test
    void luckIsWhatWasToBeExpectedLessWhatCame() {
        RunSummary summary = of(sound(90));
        int alive = RUN.past().last().seen().alive();
        assertThat(summary.ownAlive()).isEqualTo(alive);
        assertThat(summary.expectedDeaths()).isEqualTo(Expectation.deaths(SHORT, RUN.past()));
        assertThat(summary.luck()).isCloseTo(summary.expectedDeaths() - (240 - alive), within(1e-9));
    }

    @Test
    void fishStillToComeAreAlive() {
        Scenario waiting = PolicyPlayerTest.shortened(TrialScenario.fishless());
        DrillRun run = PolicyPlayer.play(waiting, Policies.byId("do-nothing"), 3, DrillRun.Pace.EVERY_VISIT);
        Seen last = run.past().last().seen();
        assertThat(last.alive()).isZero();
        assertThat(Review.alive(run)).isEqualTo(240);
    }
}
