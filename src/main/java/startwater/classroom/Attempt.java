package startwater.classroom;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.UUID;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.score.Verdict;

/**
 * One learner's way through one drill.
 *
 * @param id of the attempt, the same in every copy of the file
 * @param learner pseudonym
 * @param handout id of the hand-out it belongs to, or empty
 * @param scenario the drill
 * @param variant which hidden tank
 * @param mode how it was played
 * @param language code of the language it was played in
 * @param version of the program that it was played with
 * @param begun when the first visit was opened
 * @param finished when the drill ended, or null while it is open
 * @param steps its decisions, in order
 */
public record Attempt(
        UUID id,
        String learner,
        String handout,
        Scenario scenario,
        long variant,
        Entry.Mode mode,
        String language,
        String version,
        Instant begun,
        @Nullable Instant finished,
        List<Step> steps) {
    /** Mean mark from which a drill counts as passed when no decision was dangerous. */
    public static final double PASS = 70;

    public Attempt {
        steps = List.copyOf(steps);
    }

    /** The marks of the decisions that count, in order. */
    public List<Entry.Marks> scored() {
        return steps.stream()
                .map(Step::marks)
                .filter(Objects::nonNull)
                .map(Objects::requireNonNull)
                .filter(Entry.Marks::scored)
                .toList();
    }

    /** Mean mark of the decisions that count, 0..100; NaN where none counts. */
    public double mark() {
        return scored().stream().mapToDouble(Entry.Marks::decision).average().orElse(Double.NaN);
    }

    /** Whether the mark reaches the pass and no decision that counts was dangerous. False where none counts. */
    public boolean passed() {
        return mark() >= PASS && scored().stream().noneMatch(m -> m.word() == Verdict.Word.DANGEROUS);
    }

    public boolean exam() {
        return mode == Entry.Mode.EXAM;
    }

    /** Whether it was played to the end. */
    public boolean whole() {
        return finished != null;
    }

    /** The same with other steps. */
    public Attempt with(List<Step> other) {
        return new Attempt(id, learner, handout, scenario, variant, mode, language, version, begun, finished, other);
    }
}
