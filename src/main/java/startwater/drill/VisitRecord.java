package startwater.drill;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.strip.Pad;

/**
 * One visit in the log: all that the learner could know then, and what was done.
 *
 * @param visit number among the keeper's visits, from 0; of one between two visits, the number of the one before
 * @param minute minutes since the system was filled
 * @param actor who acted
 * @param seen meters and fish
 * @param written readings, in the order they were written
 * @param decision what was done, or null while it is still open
 * @param prediction what was foreseen, or null
 */
public record VisitRecord(
        int visit,
        int minute,
        Actor actor,
        Seen seen,
        List<Written> written,
        @Nullable Decision decision,
        @Nullable Prediction prediction) {
    public VisitRecord {
        written = List.copyOf(written);
    }

    /** Whether the learner was asked to decide. */
    public boolean asked() {
        return actor == Actor.LEARNER;
    }

    /** The same visit, before anything was decided. */
    public VisitRecord undecided() {
        return new VisitRecord(visit, minute, actor, seen, written, null, null);
    }

    /** Days since the system was filled. */
    public double day() {
        return minute / 1440.0;
    }

    public VisitRecord decided(Decision made, @Nullable Prediction foreseen) {
        return new VisitRecord(visit, minute, actor, seen, written, made, foreseen);
    }

    /** What was last written of a pad, or null. */
    public @Nullable Written lastWritten(Pad pad) {
        Written last = null;
        for (Written reading : written) {
            last = reading.pad() == pad ? reading : last;
        }
        return last;
    }

    /** The same visit without a reading. */
    public VisitRecord without(Written reading) {
        return new VisitRecord(
                visit,
                minute,
                actor,
                seen,
                written.stream().filter(w -> !w.equals(reading)).toList(),
                decision,
                prediction);
    }

    /** The same visit with one more reading. */
    public VisitRecord with(Written reading) {
        return new VisitRecord(
                visit,
                minute,
                actor,
                seen,
                java.util.stream.Stream.concat(written.stream(), java.util.stream.Stream.of(reading))
                        .toList(),
                decision,
                prediction);
    }
}
