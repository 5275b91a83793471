package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The lessons that ship, as a course: each skill and each standing rule is taught, and each lesson is built as it should be. */
class ShippedLessonsTest {
    private static final int FEWEST_LESSONS = 14;

    private static List<Lesson> lessons(String language) {
        return Library.shipped().lessons(language);
    }

    private static long count(Lesson lesson, Class<? extends Block> kind) {
        return lesson.blocks().stream().filter(kind::isInstance).count();
    }

    @Test
    void everySkillIsTaughtInBothLanguages() {
        for (String language : List.of("en", "es")) {
            Set<String> taught = new TreeSet<>();
            lessons(language).forEach(lesson -> taught.addAll(lesson.skills()));
            assertThat(lessons(language)).hasSizeGreaterThanOrEqualTo(FEWEST_LESSONS);
            assertThat(taught).containsExactlyInAnyOrderElementsOf(new HashSet<>(ScenarioShape.skillIds()));
        }
    }

    /** A rule is taught where the front block says so and the text names it by its number, but for rules 1 to 4: the steps. */
    @Test
    void everyStandingRuleIsTaughtByItsNumber() {
        for (int rule = 1; rule <= ScenarioShape.STANDING_RULES; rule++) {
            int number = rule;
            List<Lesson> teaching = lessons("en").stream()
                    .filter(lesson -> lesson.rules().contains(number))
                    .toList();
            assertThat(teaching).as("rule %d", rule).isNotEmpty();
            Pattern named = Pattern.compile("(?i)\\brule " + rule + "\\b");
            if (rule > 4) {
                assertThat(teaching).as("rule %d by its number", rule).anyMatch(lesson -> named.matcher(text(lesson))
                        .find());
            }
        }
    }

    private static String text(Lesson lesson) {
        try {
            return Files.readString(Path.of("lessons", lesson.id() + ".md"));
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void everyLessonWorksAnExampleAsksExplainsAndCautions() {
        for (Lesson lesson : lessons("en")) {
            List<Block.Worked> worked = lesson.blocks().stream()
                    .filter(Block.Worked.class::isInstance)
                    .map(Block.Worked.class::cast)
                    .toList();
            assertThat(worked).as(lesson.id()).hasSizeGreaterThanOrEqualTo(2);
            assertThat(worked.get(0).blank()).as(lesson.id()).isZero();
            assertThat(worked.stream().mapToInt(Block.Worked::blank).max().orElse(0))
                    .as(lesson.id())
                    .isPositive();
            assertThat(count(lesson, Block.Choice.class) + count(lesson, Block.NumberQuestion.class))
                    .as(lesson.id())
                    .isGreaterThanOrEqualTo(2);
            assertThat(count(lesson, Block.Caution.class)).as(lesson.id()).isPositive();
            assertThat(lesson.minutes()).as(lesson.id()).isBetween(8, 12);
        }
    }

    /** With three options a guess by place should win a third of the time, not half; the same for the longest one. */
    @Test
    void theRightOptionIsToldNeitherByItsPlaceNorByItsLength() {
        List<Block.Choice> choices = lessons("en").stream()
                .flatMap(lesson -> lesson.blocks().stream())
                .filter(Block.Choice.class::isInstance)
                .map(Block.Choice.class::cast)
                .toList();
        for (int place = 0; place < 3; place++) {
            int at = place;
            long here = choices.stream()
                    .filter(choice -> choice.options().size() > at
                            && choice.options().get(at).right())
                    .count();
            assertThat(2 * here).as("right at place %d", place).isLessThan(choices.size());
        }
        assertThat(2
                        * choices.stream()
                                .filter(ShippedLessonsTest::longestIsRight)
                                .count())
                .isLessThan(choices.size());
    }

    private static boolean longestIsRight(Block.Choice choice) {
        int longest = choice.options().stream()
                .mapToInt(option -> option.says().length())
                .max()
                .orElse(0);
        return choice.options().stream()
                .anyMatch(option -> option.right() && option.says().length() == longest);
    }

    @Test
    void lessonsAreNumberedWithoutGaps() {
        assertThat(lessons("en").stream().map(Lesson::number).toList())
                .isEqualTo(
                        IntStream.rangeClosed(1, lessons("en").size()).boxed().toList());
    }
}
