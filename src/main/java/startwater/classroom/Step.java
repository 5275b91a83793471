package startwater.classroom;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Prediction;
import startwater.record.Entry;

/**
 * One decision of an attempt.
 *
 * @param number among the attempt's decisions, from 1
 * @param visit number among the keeper's visits, from 0
 * @param at when it was decided
 * @param took from the opening of the visit to the decision
 * @param readings of the visit
 * @param retests when a second strip, or a later one, was dipped at this visit
 * @param decision what was done
 * @param prediction what was foreseen, or null
 * @param marks what it earned, or null where nobody has marked it
 */
public record Step(
        int number,
        int visit,
        Instant at,
        Duration took,
        List<Reading> readings,
        List<Instant> retests,
        Decision decision,
        @Nullable Prediction prediction,
        Entry.@Nullable Marks marks) {
    public Step {
        readings = List.copyOf(readings);
        retests = List.copyOf(retests);
    }

    /** Its marks where it counts, else null. */
    Entry.@Nullable Marks counted() {
        return marks != null && marks.scored() ? marks : null;
    }

    /** The same decision with another mark. */
    public Step marked(Entry.Marks other) {
        return new Step(number, visit, at, took, readings, retests, decision, prediction, other);
    }
}
