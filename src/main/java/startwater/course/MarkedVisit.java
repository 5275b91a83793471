package startwater.course;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Habit;
import startwater.drill.Prediction;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Skill;
import startwater.drill.VisitRecord;
import startwater.score.ReadingMark;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.strip.Pad;

/**
 * What of one judged visit tells something of the learner: small enough to keep for every visit.
 *
 * @param scored whether the decision counts
 * @param credited false where the log contradicts the world
 * @param mark of the decision, 0 to 100
 * @param own what the learner pulled
 * @param best what the best option pulled, its main lever first in {@link #bestMain}
 * @param bestMain what tells most of the best option
 * @param decisive the variable that decided
 * @param read readings written
 * @param readRight those within one block
 * @param worked the skill of the sum that was worked, or null without one
 * @param workedMark its mark, 0 to 100; 0 without a sum
 * @param slip whether a slip of unit explains it
 * @param foreseen the pad of the prediction, or null without one
 * @param sureness how sure, or null without one
 * @param foresightMark 0 to 100; 0 without a prediction
 * @param chance the model's own chance of what was said, 0 to 1; 0 without a prediction
 * @param came whether the next strip showed it, or null where none was read
 * @param habits what the decision looks like where it went wrong
 */
public record MarkedVisit(
        boolean scored,
        boolean credited,
        double mark,
        Set<Lever> own,
        Set<Lever> best,
        Lever bestMain,
        Verdict.Variable decisive,
        int read,
        int readRight,
        @Nullable Skill worked,
        double workedMark,
        boolean slip,
        @Nullable Pad foreseen,
        @Nullable Sureness sureness,
        double foresightMark,
        double chance,
        @Nullable Boolean came,
        Set<Habit> habits) {
    public MarkedVisit {
        own = own.isEmpty() ? Set.of() : Set.copyOf(own);
        best = best.isEmpty() ? Set.of() : Set.copyOf(best);
        habits = Set.copyOf(habits);
    }

    /** A sum at the bench and its mark. */
    public record Worked(Skill skill, WorkingMark mark) {}

    /**
     * What one verdict tells.
     *
     * @param visit the visit as decided
     * @param working the last sum of the visit, or null
     * @param came whether the next strip showed what was foretold, or null where none was read
     * @throws IllegalArgumentException for a visit without a decision
     */
    public static MarkedVisit of(
            VisitRecord visit, Verdict verdict, ReadingMark reading, @Nullable Worked working, @Nullable Boolean came) {
        Decision own = visit.decision();
        if (own == null) {
            throw new IllegalArgumentException("Marked visit: there is no decision at minute " + visit.minute() + ".");
        }
        Decision best = verdict.best().decision();
        Prediction said = visit.prediction();
        Verdict.Foresight foresight = said == null ? null : verdict.foresight();
        Set<Habit> habits = verdict.scored() && verdict.word() != Verdict.Word.SOUND
                ? HabitSigns.of(own, best, !visit.written().isEmpty())
                : EnumSet.noneOf(Habit.class);
        return new MarkedVisit(
                verdict.scored(),
                verdict.credited(),
                verdict.mark(),
                Lever.of(own),
                Lever.of(best),
                Lever.main(best),
                verdict.decisive().variable(),
                reading.total(),
                reading.right(),
                working == null ? null : working.skill(),
                working == null ? 0 : working.mark().mark(),
                working != null && working.mark().slip() != null,
                said == null || foresight == null ? null : said.pad(),
                said == null || foresight == null ? null : said.sureness(),
                foresight == null ? 0 : foresight.mark(),
                foresight == null ? 0 : foresight.chance(),
                foresight == null ? null : came,
                habits);
    }
}
