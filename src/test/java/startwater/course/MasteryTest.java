package startwater.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.course.SkillState.Standing;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;

class MasteryTest {
    private static final LocalDate FIRST = LocalDate.parse("2024-03-04");
    private static final Skill SKILL = Skill.UNITS;

    private final List<Graded> all = new ArrayList<>();

    private MasteryTest right(int... days) {
        return answer(1, null, days);
    }

    private MasteryTest answer(double x, @Nullable Sureness sureness, int... days) {
        for (int day : days) {
            Instant at =
                    FIRST.plusDays(day).atTime(9, 0).toInstant(ZoneOffset.UTC).plusSeconds(all.size());
            all.add(new Graded(at, Source.drill("any"), SKILL, x, 1, 0, sureness, null));
        }
        return this;
    }

    private SkillState state() {
        return Learner.of(all, ZoneOffset.UTC).state(SKILL);
    }

    private static LocalDate day(int day) {
        return FIRST.plusDays(day);
    }

    @Test
    void manyRightAnswersOfOneDayAreNotYetMastery() {
        right(0, 0, 0, 0);
        assertThat(state().known()).isGreaterThan(Mastery.KNOWN);
        assertThat(state().mastered()).isFalse();
        assertThat(state().due())
                .as("what lacks only another day is due on the next")
                .isEqualTo(day(1));
        assertThat(state().standing(day(1))).isEqualTo(Standing.LEARNING);
        right(1);
        assertThat(state().mastered()).isTrue();
        assertThat(state().standing(day(1))).isEqualTo(Standing.KNOWN);
    }

    @Test
    void twoAnswersAreTooFew() {
        Tracer sure = new Tracer(ZoneOffset.UTC, new Bkt(0.9, 0.3, 0.05, 0.1));
        right(0, 1);
        all.forEach(sure::add);
        assertThat(sure.learner().known(SKILL)).isGreaterThan(Mastery.KNOWN);
        assertThat(sure.learner().state(SKILL).mastered()).isFalse();
    }

    @Test
    void returnsAfterOneDayFiveDaysThreeWeeks() {
        right(0, 0, 0, 1);
        assertThat(state().due()).isEqualTo(day(2));
        right(2);
        assertThat(state().due()).isEqualTo(day(7));
        right(4);
        assertThat(state().due()).as("before it is due nothing changes").isEqualTo(day(7));
        right(7);
        assertThat(state().due()).isEqualTo(day(28));
        right(30);
        assertThat(state().due()).isEqualTo(day(51));
        assertThat(state().standing(day(50))).isEqualTo(Standing.KNOWN);
        assertThat(state().standing(day(51))).isEqualTo(Standing.FADING);
    }

    @Test
    void aFailedReturnBeginsAnew() {
        right(0, 0, 0, 1, 2, 7);
        assertThat(state().due()).isEqualTo(day(28));
        answer(0, null, 28);
        assertThat(state().returns()).isZero();
        assertThat(state().due()).isEqualTo(day(29));
    }

    @Test
    void aSkillThatIsLostFadesUntilItIsKnownAgain() {
        right(0, 0, 0, 1);
        answer(0, null, 2, 2);
        assertThat(state().mastered()).isFalse();
        assertThat(state().standing(day(2))).isEqualTo(Standing.FADING);
        right(3, 3, 3);
        assertThat(state().standing(day(3))).isEqualTo(Standing.KNOWN);
        assertThat(state().due()).isEqualTo(day(4));
    }

    @Test
    void surelyWrongComesBackTheNextDay() {
        right(0, 0, 0, 0, 1, 2);
        answer(0.4, Sureness.FAIRLY_SURE, 3);
        right(3, 3);
        assertThat(state().due()).isEqualTo(day(7));
        answer(0.4, Sureness.SURE, 4);
        right(4, 4);
        assertThat(state().mastered()).isTrue();
        assertThat(state().due()).isEqualTo(day(5));
    }

    @Test
    void daysAreThoseOfThePlace() {
        Instant late = Instant.parse("2024-03-04T23:30:00Z");
        for (int i = 0; i < 5; i++) {
            all.add(new Graded(late.plusSeconds(600L * i), Source.drill("any"), SKILL, 1, 1, 0, null, null));
        }
        assertThat(Learner.of(all, ZoneOffset.UTC).state(SKILL).mastered()).isTrue();
        assertThat(Learner.of(all, ZoneId.of("Asia/Tokyo")).state(SKILL).mastered())
                .isFalse();
    }

    @Test
    void theOrderOfTheListDoesNotMatter() {
        right(0, 0);
        answer(0.3, null, 1);
        right(2, 3);
        SkillState before = state();
        Collections.reverse(all);
        assertThat(state()).isEqualTo(before);
    }

    @Test
    void otherSkillsStartWhereTheLearnerStands() {
        right(0, 0, 0, 0);
        // (2 + 4) / (4 + 4) = 0.75; (0.75 - 0.25) / 0.65 by hand.
        assertThat(Learner.of(all, ZoneOffset.UTC).known(Skill.RATION))
                .isCloseTo(0.769, org.assertj.core.api.Assertions.within(0.001));
        assertThat(Learner.of(all, ZoneOffset.UTC).state(Skill.RATION).standing(day(0)))
                .isEqualTo(Standing.NOT_MET);
    }
}
