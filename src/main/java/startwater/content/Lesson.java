package startwater.content;

import java.util.List;

/**
 * A lesson in one language.
 *
 * @param id file name without its endings, for example {@code 01-toxic-ammonia}: the same in every language
 * @param language {@code en} or {@code es}
 * @param number place in the course
 * @param title short name
 * @param minutes how long it takes
 * @param skills ids of the skills it teaches
 * @param rules numbers of the standing rules it teaches
 * @param after ids of lessons that come first
 * @param competencies published units of competency it covers
 * @param sources where its facts come from
 * @param blocks prose and live blocks in order
 */
public record Lesson(
        String id,
        String language,
        int number,
        String title,
        int minutes,
        List<String> skills,
        List<Integer> rules,
        List<String> after,
        List<String> competencies,
        List<String> sources,
        List<Block> blocks) {
    public Lesson {
        skills = List.copyOf(skills);
        rules = List.copyOf(rules);
        after = List.copyOf(after);
        competencies = List.copyOf(competencies);
        sources = List.copyOf(sources);
        blocks = List.copyOf(blocks);
    }
}
