package startwater.content;

import java.util.List;

/**
 * What a list says of a lesson; read without its prose, so that a list of all lessons is there at once.
 *
 * @param id file name without its endings: the same in every language
 * @param language {@code en} or {@code es}
 * @param number place in the course
 * @param title short name
 * @param minutes how long it takes
 * @param skills ids of the skills it teaches
 * @param after ids of lessons that come first
 */
public record LessonCard(
        String id, String language, int number, String title, int minutes, List<String> skills, List<String> after) {
    public LessonCard {
        skills = List.copyOf(skills);
        after = List.copyOf(after);
    }
}
