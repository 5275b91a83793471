package startwater.score;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What takes longer than the mark to work out, and is told a moment later: what would have changed the answer, and what the
 * choice comes to as a habit.
 *
 * @param flip the nearest single change that makes another option best, or null where none was found
 * @param changes the sentence on it, also where none was found
 * @param habit the choice done anew for three days
 */
public record SecondLook(@Nullable Flip flip, Verdict.Line changes, Habitual habit) {
    /** Takes some tenths of a second: not for the thread that paints. */
    static SecondLook at(Case c, Care care) {
        Flip flip = FlipSearch.search(c, care).orElse(null);
        Verdict.Line none = new Verdict.Line("flip.none", Verdict.Line.Severity.FACT, List.of());
        return new SecondLook(flip, flip == null ? none : flip.line(), Habitual.of(c, care));
    }

    /** The sentences, in the order in which they are read. */
    public List<Verdict.Line> lines() {
        return List.of(changes, habit.line());
    }
}
