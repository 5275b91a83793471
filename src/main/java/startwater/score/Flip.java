package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.strip.Pad;

/**
 * The nearest single change that makes another option the best one, found on the belief and confirmed by scoring the
 * changed case anew.
 *
 * @param kind what is changed
 * @param distance how far the change is, in blocks of a scale for a reading
 * @param changed the changed case; its choice is the option that was best before, or the amended choice
 * @param best what is best in the changed case
 * @param pad the pad that is read otherwise, or null where it is no reading that changes
 * @param line the sentence
 */
public record Flip(
        Kind kind,
        double distance,
        Case changed,
        Decision best,
        @Nullable Pad pad,
        Verdict.Line line) {
    /** What may be changed. */
    public enum Kind {
        /** One part of the choice: the amended choice is as good as the best. */
        CHOICE,
        /** One reading: another option is best. */
        READING,
        /** A pad that was not read: with this reading another option is best. */
        UNREAD,
        /** The next visit a day from now: another option is best. */
        SOONER
    }
}
