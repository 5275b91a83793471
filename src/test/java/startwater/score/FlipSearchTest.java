package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.Written;
import startwater.score.Verdict.Line.Severity;
import startwater.strip.Pad;

/** One case for each kind of change that flips what is best, on sixteen waters; each is scored anew. */
class FlipSearchTest {
    private static final int WATERS = 16;
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    /** Gone for three days from the afternoon on. */
    private static final Scenario AWAY = TrialScenario.awayAfter(20);

    private static Case read(Scenario s, Decision d, Written... readings) {
        return new Case(s, new DrillLog(List.of(SmallBelief.visit(s, readings).decided(d, null))));
    }

    /** The case with what is best in it chosen. */
    private static Case best(Case c) {
        Scored scored = Judge.score(c, WATERS);
        return c.choosing(scored.options().get(scored.losses().best()));
    }

    private static Flip flip(Case c) {
        return FlipSearch.search(c, WATERS).orElseThrow();
    }

    /** What was best before is worse in the changed case, by more than can be told, than what the flip names. */
    private static void holds(Case c, Flip flip) {
        Scored again = Judge.score(flip.changed(), WATERS);
        assertThat(flip.changed().choice()).isEqualTo(best(c).choice());
        assertThat(again.worse(again.own())).isTrue();
        assertThat(again.options().get(again.losses().best())).isEqualTo(flip.best());
        assertThat(FlipSearch.unlike(flip.best(), flip.changed().choice())).isTrue();
        assertThat(flip.line().severity()).isEqualTo(Severity.FACT);
        assertThat(flip.line().parameters().get(flip.line().parameters().size() - 1))
                .isEqualTo(again.losses().regret(again.own()));
    }

    /** Fed in full at 2 mg/L of nitrite: with the salt of the best option it would have done, so nothing farther is named. */
    @Test
    void theLeastAmendmentOfAWorseChoiceIsNamed() {
        Case c = JudgeTest.firstVisit(HERE, 1, 2, 7.6, 100, FEED);
        Flip flip = flip(c);
        double salt = best(c).choice().saltG();
        assertThat(salt).isPositive();
        assertThat(flip.kind()).isEqualTo(Flip.Kind.CHOICE);
        assertThat(flip.best()).isEqualTo(FEED.withSalt(salt));
        assertThat(flip.changed()).isEqualTo(c.choosing(FEED.withSalt(salt)));
        assertThat(flip.pad()).isNull();
        assertThat(flip.line().key()).isEqualTo("flip.choice");
        assertThat(flip.distance()).isEqualTo(1);
        Scored again = Judge.score(flip.changed(), WATERS);
        assertThat(again.worse(again.own())).isFalse();
    }

    /** Salted rightly but fed half as much again as is eaten: half of that is the least that mends it. */
    @Test
    void ofFeedHalfIsTriedFirst() {
        Case c = JudgeTest.firstVisit(HERE, 1, 5, 7.6, 100, FEED);
        Flip flip = flip(c.choosing(best(c).choice().withFeed(1.5)));
        assertThat(flip.kind()).isEqualTo(Flip.Kind.CHOICE);
        assertThat(flip.best()).isEqualTo(best(c).choice().withFeed(0.75));
    }

    /** Only nitrite was read, 2 mg/L. One stop higher, another way is best. */
    @Test
    void theNearestOtherReadingIsNamed() {
        Written two = JudgeTest.written(Pad.NITRITE, 2);
        Case c = best(read(AWAY, FEED, two));
        Flip flip = flip(c);
        assertThat(flip.kind()).isEqualTo(Flip.Kind.READING);
        assertThat(flip.pad()).isEqualTo(Pad.NITRITE);
        assertThat(flip.distance()).isEqualTo(0.5);
        Written other = flip.changed().visit().lastWritten(Pad.NITRITE);
        assertThat(other).isEqualTo(new Written(Pad.NITRITE, two.stop() + 1, 1, 0));
        assertThat(flip.line().parameters().subList(0, 3))
                .containsExactly(Pad.NITRITE, Pad.NITRITE.scale().stopValue(two.stop() + 1), 2.0);
        assertThat(flip.line().key()).isEqualTo("flip.reading");
        holds(c, flip);
    }

    /** The likelier the reading, the nearer it counts: six blocks less its chance. */
    @Test
    void aPadThatWasNotReadIsNamedWithItsLikeliestTellingReading() {
        Case c = best(JudgeTest.firstVisit(AWAY, 0.5, 0.5, 7.6, 100, FEED));
        Flip flip = flip(c);
        assertThat(flip.kind()).isEqualTo(Flip.Kind.UNREAD);
        assertThat(flip.line().key()).isEqualTo("flip.unread");
        assertThat(c.visit().written()).noneMatch(w -> w.pad() == flip.pad());
        assertThat(flip.changed().visit().written())
                .startsWith(c.visit().written().toArray(new Written[0]));
        Written more = flip.changed().visit().written().get(4);
        assertThat(more.pad()).isEqualTo(flip.pad());
        assertThat(more.stop() % 2).isZero();
        assertThat(more.strip()).isZero();
        Belief belief = Judge.score(c, WATERS).belief();
        double chance = 0;
        for (int w = 0; w < WATERS; w++) {
            chance += belief.waterWeights()[w]
                    * Observation.likelihood(
                            more,
                            belief.water(w).sim().state(),
                            belief.water(w).sim().draw());
        }
        assertThat(flip.distance()).isCloseTo(6 - chance, within(1e-9));
        assertThat(chance).isGreaterThan(0.03);
        holds(c, flip);
    }

    @Test
    void comingBackSoonerIsNamedWhereTheNextVisitIsFarOff() {
        Case c = best(JudgeTest.firstVisit(AWAY, 0.5, 1, 7.6, 100, FEED));
        Flip flip = flip(c);
        assertThat(flip.kind()).isEqualTo(Flip.Kind.SOONER);
        assertThat(flip.line().key()).isEqualTo("flip.sooner");
        assertThat(flip.pad()).isNull();
        assertThat(flip.distance()).isEqualTo(0.4);
        // Gone from noon on, back next morning at seven.
        assertThat(startwater.drill.Calendar.of(flip.changed().scenario())
                        .nextVisitAfter(c.visit().minute()))
                .isEqualTo(9 * 1440 + 7 * 60);
        assertThat(flip.changed().log())
                .isEqualTo(c.choosing(flip.changed().choice()).log());
    }

    @Test
    void whereNothingNearChangesTheAnswerNothingIsNamed() {
        Case c = best(JudgeTest.firstVisit(HERE, 1, 5, 7.6, 100, FEED));
        assertThat(FlipSearch.search(c, WATERS)).isEqualTo(Optional.empty());
    }
}
