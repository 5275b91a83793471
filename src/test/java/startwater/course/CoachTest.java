package startwater.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import startwater.drill.Habit;
import startwater.drill.Skill;

class CoachTest {
    private static final Catalogue ALL = SimulatedCourse.CATALOGUE;
    private static final LocalDate DAY = LocalDate.parse("2024-03-04");

    private final List<Graded> graded = new ArrayList<>();
    private final List<Play> plays = new ArrayList<>();

    private CoachTest answers(Skill skill, double x, int times, int day) {
        Instant at = DAY.plusDays(day).atTime(9, 0).toInstant(ZoneOffset.UTC);
        for (int i = 0; i < times; i++) {
            graded.add(new Graded(at, Source.drill("any"), skill, x, 1, 0, null, null));
        }
        return this;
    }

    private CoachTest played(String drill, Lever best, Habit... habits) {
        plays.add(new Play(Source.drill(drill), best, Set.of(habits)));
        return this;
    }

    private List<Suggestion> rank(int day) {
        return Coach.rank(ALL, Learner.of(graded, ZoneOffset.UTC), plays, DAY.plusDays(day), 1);
    }

    private Suggestion of(String id, int day) {
        return rank(day).stream()
                .filter(s -> s.item().source().id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void ranksEverything() {
        assertThat(rank(0)).hasSameSizeAs(ALL.items());
        assertThat(ALL.skills()).as("every skill has a lesson or a drill").contains(Skill.values());
        for (Skill skill : Skill.values()) {
            assertThat(ALL.lessonsOn(skill)).as("lessons on %s", skill.id()).isNotEmpty();
        }
    }

    @Test
    void whoeverIsNewStartsWithTheFirstDrill() {
        Suggestion first = rank(0).get(0);
        assertThat(first.item().source()).isEqualTo(Source.drill("first-strips"));
        assertThat(first.reason().key()).isEqualTo("coach.start");
    }

    @Test
    void aNewSkillIsMetInItsLessonFirst() {
        answers(Skill.READ_STRIP, 0.5, 3, 0).played("first-strips", Lever.WAIT);
        assertThat(of("night-without-air", 0).open()).isFalse();
        assertThat(rank(0).get(0).item().drill()).isFalse();
        assertThat(of("12-air-first", 0).reason().key()).isEqualTo("coach.lesson");
    }

    @Test
    void whoeverDoesWellSkipsAhead() {
        answers(Skill.READ_STRIP, 1, 6, 0).played("first-strips", Lever.WAIT);
        Suggestion drill = of("night-without-air", 0);
        assertThat(drill.open()).isTrue();
        assertThat(drill.reason().key()).isEqualTo("coach.skipAhead");
        assertThat(of("12-air-first", 0).value())
                .as("its lesson has no more to give")
                .isZero();
    }

    @Test
    void whatIsNeededComesFirst() {
        answers(Skill.NITRITE_CHLORIDE, 1, 4, 0).answers(Skill.WATER_CHANGE, 0, 3, 0);
        played("first-strips", Lever.WAIT);
        assertThat(of("hungry-second-week", 0).open())
                .as("it needs water changes")
                .isFalse();
        answers(Skill.WATER_CHANGE, 1, 5, 0).answers(Skill.UNITS, 1, 3, 0);
        assertThat(of("hungry-second-week", 0).open()).isTrue();
    }

    @Test
    void whatIsDueAgainComesBack() {
        answers(Skill.OXYGEN_AIR, 1, 4, 0).answers(Skill.OXYGEN_AIR, 1, 1, 1);
        answers(Skill.FAILURES, 1, 3, 0).answers(Skill.RATION, 1, 3, 0);
        played("first-strips", Lever.WAIT);
        double before = of("night-without-air", 0).value();
        Suggestion due = of("night-without-air", 3);
        assertThat(due.value() - before).isGreaterThan(Coach.DUE - 0.01);
        assertThat(due.reason().key()).isIn("coach.due", "coach.goodThenDue");
    }

    @Test
    void aHabitBringsTheDrillThatShowsIt() {
        answers(Skill.READ_STRIP, 1, 6, 0).played("hard-water", Lever.CHANGE);
        double before = of("spotless-filter", 0).value();
        plays.clear();
        played("hard-water", Lever.CHANGE, Habit.SCRUBS_FILTER);
        assertThat(of("spotless-filter", 0).value() - before)
                .isCloseTo(Coach.HABIT, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(of("spotless-filter", 0).reason().key()).isEqualTo("coach.habit");
        played("a", Lever.WAIT).played("b", Lever.WAIT).played("c", Lever.WAIT);
        assertThat(of("spotless-filter", 0).reason().key())
                .as("three plays on it is forgotten")
                .isNotEqualTo("coach.habit");
    }

    @Test
    void theSameSkillAndTheSamePlayWait() {
        answers(Skill.READ_STRIP, 1, 6, 0);
        played("night-without-air", Lever.AIR);
        double fresh = of("hungry-second-week", 0).value();
        played("soft-water", Lever.SALT);
        double again = of("hungry-second-week", 0).value();
        assertThat(fresh - again)
                .isCloseTo(Coach.SAME_SKILL + Coach.SAME_PLAY, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void aThirdTimeTheSameBestPlayIsNotOpen() {
        answers(Skill.READ_STRIP, 1, 6, 0).answers(Skill.UNITS, 1, 3, 0).answers(Skill.WATER_CHANGE, 1, 3, 0);
        played("night-without-air", Lever.SALT).played("soft-water", Lever.SALT);
        assertThat(of("hungry-second-week", 0).open()).isFalse();
        plays.add(new Play(Source.lesson("02-read-a-strip"), Lever.WAIT, Set.of()));
        assertThat(of("hungry-second-week", 0).open())
                .as("a lesson between does not count")
                .isFalse();
    }

    @Test
    void tiesFallByTheSeed() {
        answers(Skill.READ_STRIP, 0.5, 2, 0).played("first-strips", Lever.WAIT);
        assertThat(rank(0)).isEqualTo(rank(0));
        Learner learner = Learner.of(graded, ZoneOffset.UTC);
        long kinds = java.util.stream.LongStream.range(0, 20)
                .mapToObj(seed ->
                        Coach.rank(ALL, learner, plays, DAY, seed).get(0).item().source())
                .distinct()
                .count();
        assertThat(kinds).isGreaterThan(1);
    }
}
