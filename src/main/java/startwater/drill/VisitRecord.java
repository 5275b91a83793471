package startwater.drill;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * One visit in the log: all that the learner could know then, and what was done.
 *
 * @param visit number among the keeper's visits, from 0
 * @param day days since the system was filled
 * @param seen meters and fish
 * @param written readings, in the order they were written
 * @param decision what was done, or null while it is still open
 * @param prediction what was foreseen, or null
 */
public record VisitRecord(
        int visit,
        double day,
        Seen seen,
        List<Written> written,
        @Nullable Decision decision,
        @Nullable Prediction prediction) {
    public VisitRecord {
        written = List.copyOf(written);
    }

    public VisitRecord decided(Decision made, @Nullable Prediction foreseen) {
        return new VisitRecord(visit, day, seen, written, made, foreseen);
    }

    /** The same visit with one more reading. */
    public VisitRecord with(Written reading) {
        return new VisitRecord(
                visit,
                day,
                seen,
                java.util.stream.Stream.concat(written.stream(), java.util.stream.Stream.of(reading))
                        .toList(),
                decision,
                prediction);
    }
}
