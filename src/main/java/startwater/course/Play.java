package startwater.course;

import java.util.Set;
import startwater.drill.Habit;

/**
 * One drill played or lesson read, as the coach remembers it.
 *
 * @param source which
 * @param best what the best choices pulled most; {@link Lever#WAIT} for a lesson
 * @param habits what its decisions looked like where they went wrong
 */
public record Play(Source source, Lever best, Set<Habit> habits) {
    public Play {
        habits = Set.copyOf(habits);
    }

    public boolean drill() {
        return source.kind() == Source.Kind.DRILL;
    }
}
