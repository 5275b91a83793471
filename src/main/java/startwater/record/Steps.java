package startwater.record;

import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.Prediction;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Care;
import startwater.score.RunSummary;
import startwater.score.Verdict;
import startwater.score.WorkingMark;

/**
 * What happens in an attempt, told step by step after the run has done it; each returns once the step is kept. All that a
 * drill is played with, window or terminal, tells it to one of these.
 */
public interface Steps {
    /** @param chloride whether it is a chloride strip */
    default void dipped(DippedStrip strip, boolean chloride) {}

    default void wrote(Written reading) {}

    default void erased(Written reading) {}

    /** @param skill id of the skill that the sum belongs to */
    default void worked(String skill, WorkingMark sum) {}

    /** @param asked as it was asked for; the run may have given less */
    default void decided(Decision asked, @Nullable Prediction prediction) {}

    /** @param visit as it stands in the log of the run */
    default void marked(VisitRecord visit, Verdict verdict) {}

    default void finished(RunSummary summary) {}

    /** What the learner resolves on after it. */
    default void resolved(String text) {}

    /** Whether it is an exam: nothing is told of a decision before the end. */
    default boolean exam() {
        return false;
    }

    /** How its decisions are judged. */
    default Care care() {
        return exam() ? Care.EXAM : Care.LIVE;
    }

    /** Whether all of it is on the disk. */
    default boolean kept() {
        return false;
    }

    /** Keeps nothing. */
    Steps NONE = new Steps() {};
}
