package startwater.course;

import java.util.List;
import java.util.Set;
import startwater.drill.Habit;
import startwater.drill.Skill;

/**
 * A drill or a lesson as the coach sees it.
 *
 * @param source kind and id
 * @param number place in its shelf
 * @param skills what it trains or teaches, the main one first
 * @param needs skills that come first
 * @param exposes habits that a drill shows up
 * @param best what its best play pulls before anything of it is known; {@link Lever#WAIT} for a lesson
 */
public record Item(Source source, int number, List<Skill> skills, Set<Skill> needs, Set<Habit> exposes, Lever best) {
    public Item {
        skills = List.copyOf(skills);
        needs = Set.copyOf(needs);
        exposes = Set.copyOf(exposes);
        if (skills.isEmpty()) {
            throw new IllegalArgumentException("Course: '" + source.id() + "' trains no skill. Name at least one.");
        }
    }

    public boolean drill() {
        return source.kind() == Source.Kind.DRILL;
    }

    public Skill main() {
        return skills.get(0);
    }
}
