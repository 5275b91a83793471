package startwater.course;

import java.time.Instant;
import java.util.List;

/**
 * All that a learner did, as far as it tells what they can do.
 *
 * @param graded observations of skills, oldest first
 * @param plays drills played and lessons read, oldest first
 * @param said what was said with a sureness
 * @param marks marks of drills, oldest first
 * @param resolved if-then sentences in the learner's own words, the latest first
 */
public record Past(
        List<Graded> graded, List<Play> plays, List<Calibration.Said> said, List<Mark> marks, List<Resolved> resolved) {
    public static final Past NOTHING = new Past(List.of(), List.of(), List.of(), List.of(), List.of());

    public Past {
        graded = List.copyOf(graded);
        plays = List.copyOf(plays);
        said = List.copyOf(said);
        marks = List.copyOf(marks);
        resolved = List.copyOf(resolved);
    }

    /** One drill's mark. @param drill its id @param mark mean of the scored visits so far, 0 to 100 */
    public record Mark(Instant at, String drill, double mark) {}

    /** A sentence, and when it was written. */
    public record Resolved(String text, Instant at) {}

    /** Whether nothing was done yet. */
    public boolean empty() {
        return plays.isEmpty() && graded.isEmpty();
    }
}
