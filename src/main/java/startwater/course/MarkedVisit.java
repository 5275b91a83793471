package startwater.course;

import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Habit;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.score.Verdict;
import startwater.strip.Pad;

/**
 * What of one judged visit tells something of the learner: small enough to keep for every visit.
 *
 * @param scored whether the decision counts
 * @param credited false where the log contradicts the world
 * @param mark of the decision, 0 to 100
 * @param word sound, costly or dangerous
 * @param decisive the variable that decided
 * @param own what was done
 * @param best the best option
 * @param read readings written
 * @param readRight those within one block of the colour
 * @param worked the last sum, or null without one
 * @param foreseen the prediction, or null without one
 */
public record MarkedVisit(
        boolean scored,
        boolean credited,
        double mark,
        Verdict.Word word,
        Verdict.Variable decisive,
        Decision own,
        Decision best,
        int read,
        int readRight,
        @Nullable Worked worked,
        @Nullable Foreseen foreseen) {
    /** A sum at the bench. @param mark 0 to 100 @param slip whether a slip of unit explains what is off */
    public record Worked(Skill skill, double mark, boolean slip) {}

    /**
     * A prediction.
     *
     * @param mark 0 to 100
     * @param chance the model's own chance of what was said, 0 to 1
     * @param came whether the next strip showed it, or null where that cannot be told
     */
    public record Foreseen(
            Pad pad,
            Sureness sureness,
            double mark,
            double chance,
            @Nullable Boolean came) {}

    /** Habits that the decision looks like, where it counts and went wrong. */
    public Set<Habit> habits() {
        return scored && word != Verdict.Word.SOUND ? HabitSigns.of(own, best, read > 0) : Set.of();
    }
}
