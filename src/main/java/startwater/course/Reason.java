package startwater.course;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Habit;
import startwater.drill.Skill;

/**
 * Why something comes next: a text key and what fills it, so that every language says it its own way.
 *
 * @param key beginning with {@code coach.}
 * @param skill what it is about, or null
 * @param other a second skill, or null
 * @param habit a habit, or null
 * @param percent chance that {@code skill} is known, %
 */
public record Reason(
        String key,
        @Nullable Skill skill,
        @Nullable Skill other,
        @Nullable Habit habit,
        double percent) {
    static Reason start(Skill skill) {
        return new Reason("coach.start", skill, null, null, 0);
    }

    static Reason of(String key, SkillState state) {
        return new Reason(key, state.skill(), null, null, 100 * state.known());
    }

    static Reason between(String key, Skill well, SkillState due) {
        return new Reason(key, due.skill(), well, null, 100 * due.known());
    }

    static Reason habit(Habit habit, SkillState state) {
        return new Reason("coach.habit", state.skill(), null, habit, 100 * state.known());
    }

    /** Everything that is not null, in the order skill, other, habit, percent: the places of the sentence. */
    public List<Object> arguments() {
        java.util.ArrayList<Object> all = new java.util.ArrayList<>();
        for (Object o : new @Nullable Object[] {skill, other, habit}) {
            if (o != null) {
                all.add(o);
            }
        }
        all.add(percent);
        return List.copyOf(all);
    }
}
