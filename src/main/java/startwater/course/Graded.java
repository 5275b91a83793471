package startwater.course;

import java.time.Instant;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;

/**
 * One observation of one skill.
 *
 * @param at when
 * @param source the drill or lesson
 * @param skill what it tells of
 * @param x how right it was, 0 to 1
 * @param weight how much it bears on the skill, over 0 to 1
 * @param options how many options there were to pick from, 0 where none were given
 * @param sureness how sure the learner was of it, or null where nobody asked
 * @param best what the best choice pulled, or null where there was none to make
 */
public record Graded(
        Instant at,
        Source source,
        Skill skill,
        double x,
        double weight,
        int options,
        @Nullable Sureness sureness,
        @Nullable Lever best) {
    public Graded {
        if (!(x >= 0 && x <= 1)) {
            throw new IllegalArgumentException("Graded: " + skill.id() + " is right from 0 to 1, not " + x + ".");
        }
        if (!(weight > 0 && weight <= 1)) {
            throw new IllegalArgumentException(
                    "Graded: the weight on " + skill.id() + " lies over 0 and up to 1, not at " + weight + ".");
        }
    }
}
