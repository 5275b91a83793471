package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.course.Calibration.Said;
import startwater.course.Graded;
import startwater.course.Lever;
import startwater.course.Past;
import startwater.course.Play;
import startwater.course.Source;
import startwater.drill.Decision;
import startwater.drill.Habit;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.score.Verdict;
import startwater.strip.Pad;

class CourseHistoryTest {
    private static final Instant AT = Instant.parse("2024-03-04T09:00:00Z");

    private static Observed visit(String attempt, int n, double mark, Decision best, @Nullable Boolean came) {
        Entry.Marks marks = new Entry.Marks(
                4,
                3,
                new Entry.Working("toxic-ammonia", 100, false),
                mark,
                mark < 70 ? Verdict.Word.COSTLY : Verdict.Word.SOUND,
                0.2,
                true,
                false,
                true,
                Verdict.Variable.EFFECTIVE_NITRITE,
                Decision.LEAVE_ALONE,
                best,
                new Entry.Foresight(Pad.NITRITE, Sureness.SURE, 70, 0.3),
                null);
        return new Observed.Visit(
                "hungry-second-week",
                attempt,
                Entry.Mode.PRACTICE,
                List.of("nitrite-chloride", "ration", "of-a-later-build"),
                n,
                marks,
                came,
                AT.plusSeconds(n));
    }

    private static Observed answer(String lesson, int step, double score) {
        return new Observed.Answer(new Entry.Answered(
                lesson, List.of("units"), 4, step, score, 3, Sureness.FAIRLY_SURE, AT.plusSeconds(100 + step)));
    }

    @Test
    void gathersAttemptsAndLessons() {
        Decision salt = Decision.LEAVE_ALONE.withSalt(200);
        Past past = CourseHistory.of(
                List.of(
                        visit("a", 0, 40, salt, true),
                        visit("a", 1, 80, salt, null),
                        visit("a", 2, 90, Decision.LEAVE_ALONE.withChange(0.2), false),
                        answer("03-what-a-number-counts", 0, 0),
                        answer("03-what-a-number-counts", 0, 1),
                        answer("03-what-a-number-counts", 1, 1)),
                List.of());
        assertThat(past.plays())
                .extracting(Play::source)
                .containsExactly(Source.drill("hungry-second-week"), Source.lesson("03-what-a-number-counts"));
        assertThat(past.plays().get(0).best()).isEqualTo(Lever.SALT);
        assertThat(past.plays().get(0).habits()).contains(Habit.DO_NOTHING);
        assertThat(past.marks()).hasSize(1);
        assertThat(past.marks().get(0).mark()).isEqualTo(70);
        assertThat(past.said())
                .as("what came, else the model's own chance")
                .containsExactly(
                        new Said(Sureness.SURE, 1),
                        new Said(Sureness.SURE, 0.3),
                        new Said(Sureness.SURE, 0),
                        new Said(Sureness.FAIRLY_SURE, 0),
                        new Said(Sureness.FAIRLY_SURE, 1));
        assertThat(past.graded().stream().filter(g -> g.options() == 3).map(Graded::x))
                .as("the first answer counts")
                .containsExactly(0.0, 1.0);
        assertThat(past.graded()).extracting(Graded::skill).contains(Skill.TOXIC_AMMONIA, Skill.READ_STRIP);
    }

    @Test
    void nothingDoneIsNothing() {
        assertThat(CourseHistory.of(List.of(), List.of())).isEqualTo(Past.NOTHING);
    }
}
