package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import startwater.drill.Skill;

/** Skills against published units of competency; codes and titles as published, named at the head of the data file. */
class SkillMapTest {
    @Test
    void everySkillCoversAUnitAndEveryRowASkill() {
        Set<String> skills =
                java.util.Arrays.stream(Skill.values()).map(Skill::id).collect(Collectors.toSet());
        assertThat(SkillMap.all().stream().map(SkillMap.Row::skill).collect(Collectors.toSet()))
                .isEqualTo(skills);
        assertThat(SkillMap.all()).allSatisfy(row -> {
            assertThat(row.part("en")).isNotBlank();
            assertThat(row.part("es")).isNotBlank().isNotEqualTo(row.part("en"));
        });
    }

    @Test
    void lessonsNameUnitsAsTheyArePublishedAndOneThatTheirSkillsCover() {
        Set<String> units = SkillMap.all().stream().map(SkillMap.Row::unit).collect(Collectors.toSet());
        for (Lesson lesson : Library.shipped().lessons("en")) {
            List<String> covered = lesson.skills().stream()
                    .flatMap(skill -> SkillMap.of(skill).stream())
                    .map(SkillMap.Row::unit)
                    .toList();
            assertThat(units).as(lesson.id()).containsAll(lesson.competencies());
            if (!lesson.competencies().isEmpty()) {
                assertThat(covered).as(lesson.id()).containsAnyElementsOf(lesson.competencies());
            }
        }
    }

    @Test
    void everySkillHasALessonAndADrill() {
        Set<String> taught = Library.shipped().lessons("en").stream()
                .flatMap(lesson -> lesson.skills().stream())
                .collect(Collectors.toSet());
        Set<String> drilled = Library.shipped().scenarios().stream()
                .flatMap(drill -> drill.skills().stream())
                .collect(Collectors.toSet());
        for (Skill skill : Skill.values()) {
            assertThat(taught).as("lessons").contains(skill.id());
            // What comes before the water cannot be played in it.
            if (skill != Skill.BEFORE_WATER) {
                assertThat(drilled).as("drills").contains(skill.id());
            }
        }
    }

    @Test
    void theNoteAtTheHeadOfADrillIsReadByPart() {
        assertThat(DesignNote.of("buffer-trap"))
                .containsOnlyKeys("Goal", "Out of scope", "Exposes", "Reference play", "Story")
                .hasEntrySatisfying("Story", story -> assertThat(story).contains("soda ash", "three days"));
        assertThat(DesignNote.parts("schema: 1\n")).isEmpty();
    }
}
