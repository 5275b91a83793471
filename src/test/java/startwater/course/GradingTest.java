package startwater.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Habit;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.strip.Pad;

class GradingTest {
    private static final List<Skill> SKILLS =
            List.of(Skill.NITRITE_CHLORIDE, Skill.RATION, Skill.READ_STRIP, Skill.CYCLE_SENSE, Skill.ROUTINE);
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Decision HALF_AND_SALT = FEED.withFeed(0.5).withSalt(300);

    private static Map<Skill, Graded> grade(MarkedVisit visit) {
        return Grading.of(Instant.EPOCH, "hungry-second-week", SKILLS, visit).stream()
                .collect(Collectors.toMap(Graded::skill, Function.identity()));
    }

    private static Graded of(Map<Skill, Graded> told, Skill skill) {
        return Objects.requireNonNull(told.get(skill), skill.id());
    }

    @Test
    void eachMarkTellsOfItsOwnSkills() {
        MarkedVisit visit = Visits.with(
                Visits.of(40, FEED, HALF_AND_SALT),
                Visits.sum(Skill.TOXIC_AMMONIA, 100, false),
                Visits.said(Pad.NITRITE, 80));
        Map<Skill, Graded> told = grade(visit);
        assertThat(of(told, Skill.READ_STRIP).x()).isEqualTo(0.5);
        assertThat(of(told, Skill.TOXIC_AMMONIA).x()).isEqualTo(1);
        assertThat(of(told, Skill.CYCLE_SENSE).x())
                .as("foresight, and not the decision")
                .isEqualTo(0.8);
        assertThat(of(told, Skill.NITRITE_CHLORIDE).x()).isEqualTo(0.4);
        assertThat(of(told, Skill.NITRITE_CHLORIDE).best()).isEqualTo(Lever.SALT);
        assertThat(of(told, Skill.RATION).weight())
                .as("the best option holds feed")
                .isEqualTo(1);
        assertThat(of(told, Skill.ROUTINE).weight()).as("nobody pulled at it").isEqualTo(0.5);
        assertThat(of(told, Skill.UNITS).x()).isEqualTo(1);
        assertThat(of(told, Skill.CYCLE_SENSE).sureness()).isEqualTo(Sureness.SURE);
        assertThat(of(told, Skill.RATION).sureness()).isNull();
    }

    @Test
    void aSlipOfUnitIsToldToUnits() {
        MarkedVisit visit = Visits.with(
                Visits.of(90, HALF_AND_SALT, HALF_AND_SALT), Visits.sum(Skill.TOXIC_AMMONIA, 50, true), null);
        assertThat(of(grade(visit), Skill.UNITS).x()).isZero();
        assertThat(of(grade(visit), Skill.UNITS).weight()).isEqualTo(1);
        MarkedVisit wrong = Visits.with(
                Visits.of(90, HALF_AND_SALT, HALF_AND_SALT), Visits.sum(Skill.TOXIC_AMMONIA, 0, false), null);
        assertThat(grade(wrong)).doesNotContainKey(Skill.UNITS);
    }

    @Test
    void whatDoesNotCountTellsNothingOfTheDecision() {
        MarkedVisit v = Visits.of(10, FEED, HALF_AND_SALT);
        MarkedVisit idle =
                new MarkedVisit(false, true, 10, v.word(), v.decisive(), v.own(), v.best(), 6, 6, null, null);
        assertThat(grade(idle)).containsOnlyKeys(Skill.READ_STRIP);
        MarkedVisit odd = new MarkedVisit(true, false, 0, v.word(), v.decisive(), v.own(), v.best(), 6, 6, null, null);
        assertThat(grade(odd)).as("the log is at fault").containsOnlyKeys(Skill.READ_STRIP);
        assertThat(of(grade(odd), Skill.READ_STRIP).x()).isZero();
    }

    @Test
    void everyPadHasASkillThatForetellsIt() {
        for (Pad pad : Pad.values()) {
            assertThat(grade(Visits.with(Visits.of(80, FEED, FEED), null, Visits.said(pad, 60))))
                    .containsKey(Grading.foresees(pad));
        }
    }

    @Test
    void anAnswerTellsOfTheLesson() {
        List<Graded> told =
                Grading.answer(Instant.EPOCH, "05", List.of(Skill.NITRITE_CHLORIDE, Skill.UNITS), 1, 3, null);
        assertThat(told).extracting(Graded::weight).containsExactly(1.0, 0.5);
        assertThat(told).allMatch(g -> g.options() == 3 && g.source().equals(Source.lesson("05")));
    }

    @Test
    void signsOfHabits() {
        assertThat(Visits.of(40, FEED, HALF_AND_SALT).habits())
                .containsExactlyInAnyOrder(Habit.DO_NOTHING, Habit.FEEDS_BECAUSE_THEY_BEG);
        assertThat(Visits.of(95, FEED, HALF_AND_SALT).habits())
                .as("a sound choice is no habit")
                .isEmpty();
        assertThat(Visits.of(40, FEED.withChange(0.5), FEED.withChange(0.1)).habits())
                .containsExactly(Habit.HALF_EVERY_DAY);
        assertThat(Visits.of(40, HALF_AND_SALT.withFeed(0.5), FEED.withFeed(0.5))
                        .habits())
                .containsExactly(Habit.SALTS_EVERY_READING);
        assertThat(Visits.of(40, FEED.withBicarbonate(50), FEED).habits()).containsExactly(Habit.CHASES_PH);
    }

    @Test
    void theMostTellingLeverLeads() {
        assertThat(Lever.main(FEED)).isEqualTo(Lever.WAIT);
        assertThat(Lever.main(HALF_AND_SALT)).isEqualTo(Lever.SALT);
        assertThat(Lever.of(HALF_AND_SALT)).containsExactlyInAnyOrder(Lever.SALT, Lever.RATION);
        assertThat(Lever.main(FEED.withAir(Decision.Air.SPARE).withChange(0.2))).isEqualTo(Lever.AIR);
    }
}
