package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.fish.Stressor;

/** What is kept of one play of a policy. */
class PolicyPlayTest {
    private static final Outcome OUTCOME = new Outcome(0, 0, 0);

    private static PolicyPlay.Step step(double mark, boolean scored, boolean dangerous) {
        return new PolicyPlay.Step(0, mark, scored, false, dangerous, true, 1, Act.of(Decision.LEAVE_ALONE));
    }

    private static PolicyPlay of(PolicyPlay.Step... steps) {
        return new PolicyPlay(OUTCOME, List.of(steps));
    }

    @Test
    void theMarkIsTheMeanOverWhatCounts() {
        assertThat(of(step(100, true, false), step(40, true, false), step(0, false, false))
                        .mark())
                .isCloseTo(70, within(1e-12));
        assertThat(of(step(0, false, false)).mark()).isNaN();
        assertThat(of().mark()).isNaN();
    }

    @Test
    void aPlayPassesWithSeventyAndNothingDangerousThatCounts() {
        assertThat(of(step(70, true, false)).passed()).isTrue();
        assertThat(of(step(69.9, true, false)).passed()).isFalse();
        assertThat(of(step(100, true, false), step(100, true, true)).passed()).isFalse();
        assertThat(of(step(100, true, false), step(0, false, true)).passed())
                .as("what does not count endangers nothing")
                .isTrue();
        assertThat(of().passed()).as("nothing to fail in").isTrue();
    }

    @Test
    void aStepKeepsWhatTheVerdictSays() {
        Decision hold = Decision.LEAVE_ALONE.withFeed(0);
        Verdicts v = Verdicts.on(
                        1,
                        Verdicts.costing(hold, Component.GROWTH, 0.5),
                        Verdicts.option(Decision.LEAVE_ALONE, Map.of(), Map.of(Stressor.AMMONIA, 3.0), 0),
                        Verdicts.costing(Decision.LEAVE_ALONE.withChange(0.5), Component.WATER, 2))
                .mark(12, Verdict.Word.DANGEROUS);
        PolicyPlay.Step step = PolicyPlay.Step.of(6, v.made());
        assertThat(step).isEqualTo(new PolicyPlay.Step(6, 12, true, false, true, true, 2.5, Act.of(hold)));
        assertThat(PolicyPlay.Step.of(6, Verdicts.marked(80, Verdict.Word.COSTLY))
                        .dangerous())
                .isFalse();
        PolicyPlay.Step idle = PolicyPlay.Step.of(6, v.unscored().uncredited().made());
        assertThat(idle.scored()).isFalse();
        assertThat(idle.credited()).isFalse();
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
        assertThat(PolicyPlay.read(of().written())).isEqualTo(of());
    }
}
