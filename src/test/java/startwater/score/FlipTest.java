package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Stream;
import startwater.strip.Pad;

/** The sentence that would have changed the answer is true when the changed case is scored anew. */
@Tag("slow")
class FlipTest {
    private static final List<Scenario> SCENARIOS =
            List.of(TrialScenario.secondWeek(15), TrialScenario.secondWeek(60), TrialScenario.awayAfter(20));

    private static Case random(Stream stream) {
        Scenario s = SCENARIOS.get(stream.below(SCENARIOS.size()));
        DrillRun run = DrillRun.start(s, stream.below(1000), DrillRun.Pace.LEARNER);
        VisitRecord v = run.now();
        for (Pad pad : List.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY)) {
            if (stream.uniform() < 0.85) {
                double truth =
                        startwater.drill.Observation.padValue(pad, run.hidden().state());
                double at = pad.scale().position(truth) + 0.7 * stream.normal();
                v = v.with(new Written(pad, pad.scale().nearestStop(at), 1, 0));
            }
        }
        Decision d = Decision.LEAVE_ALONE.withFeed(stream.below(3) / 2.0).withChange(stream.below(3) / 4.0);
        d = stream.uniform() < 0.3 ? d.withSalt(300) : d;
        return new Case(s, new DrillLog(List.of(v.decided(d, null))));
    }

    private static int flipped(int cases, long seed) {
        int found = 0;
        for (int i = 0; i < cases; i++) {
            Case c = random(Stream.of(seed, i));
            Optional<Flip> flip = FlipSearch.search(c, Care.LIVE);
            if (flip.isPresent()) {
                found++;
                holds(c, flip.get());
            }
        }
        return found;
    }

    private static void holds(Case c, Flip flip) {
        Belief.forget();
        Scored again = Judge.score(flip.changed());
        String said = WhyText.in(Locale.ENGLISH).format(flip.line());
        if (flip.kind() == Flip.Kind.CHOICE) {
            assertThat(Judge.score(c).worse(Judge.score(c).own())).as(said).isTrue();
            assertThat(again.worse(again.own())).as(said).isFalse();
            return;
        }
        Scored before = Judge.score(c.choosing(flip.changed().choice()));
        assertThat(before.worse(before.own())).as("best before: " + said).isFalse();
        assertThat(again.worse(again.own())).as("no longer best: " + said).isTrue();
        assertThat(again.options().get(again.losses().best())).as(said).isEqualTo(flip.best());
    }

    @Test
    void theSentenceIsTrueWhenTheChangedCaseIsScoredAnew() {
        assertThat(flipped(25, 2026)).isGreaterThan(6);
    }

    @Test
    @Tag("full")
    void theSentenceIsTrueInFiveHundredCases() {
        assertThat(flipped(500, 2027)).isGreaterThan(125);
    }

    @Test
    void theSameCaseFlipsTheSameWay() {
        Case c = random(Stream.of(2026, 1));
        Optional<Flip> first = FlipSearch.search(c, Care.LIVE);
        Belief.forget();
        assertThat(FlipSearch.search(c, Care.LIVE)).isEqualTo(first);
    }
}
