package startwater.record;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * What a learner file says in sum: best marks, what is open, the last resolutions, and all that tells what the learner can
 * do. It follows from the file alone. Safe for several threads.
 */
public final class History {
    private Entry.@Nullable Learner learner;
    private final Map<String, Drill> drills = new LinkedHashMap<>();
    private final Map<String, Open> open = new LinkedHashMap<>();
    private final Map<String, Note> notes = new LinkedHashMap<>();
    private final List<Integer> damaged = new ArrayList<>();
    private final ObservedList observed;
    private int finished;

    History(ObservedList observed) {
        this.observed = observed;
    }

    /**
     * One drill of the learner.
     *
     * @param best best mark of a finished attempt, 0 to 100, or null where none was marked
     * @param passed whether an attempt passed
     * @param finished attempts that came to an end
     * @param begun attempts begun on tanks of the learner's own
     */
    public record Drill(@Nullable Double best, boolean passed, int finished, int begun) {
        static final Drill NEW = new Drill(null, false, 0, 0);

        Drill begunAgain() {
            return new Drill(best, passed, finished, begun + 1);
        }

        Drill finished(Entry.Finished e) {
            Double mark = e.mark();
            Double higher = mark == null ? best : best == null ? mark : (Double) Math.max(best, mark);
            return new Drill(higher, passed || (e.passed() && mark != null), finished + 1, begun);
        }
    }

    /** An attempt that can go on. @param offset of its first line in the file, bytes */
    public record Open(Entry.Begun begun, long offset) {}

    /** What was resolved. */
    public record Note(String text, Instant at) {}

    synchronized void take(Entry entry, long offset) {
        if (entry instanceof Entry.Learner e) {
            learner = e;
        } else if (entry instanceof Entry.Begun e) {
            // The same drill anew: what was open of it can no longer go on.
            open.values().removeIf(o -> o.begun().scenario().equals(e.scenario()));
            open.put(e.attempt(), new Open(e, offset));
            if (e.handout() == null) {
                drills.put(e.scenario(), drill(e.scenario()).begunAgain());
            }
        } else if (entry instanceof Entry.Marked e) {
            Open of = open.get(e.attempt());
            if (of != null) {
                observed.add(new Observed.Visit(
                        of.begun().scenario(),
                        e.attempt(),
                        of.begun().mode(),
                        of.begun().skills(),
                        e.visit(),
                        e.marks(),
                        null,
                        e.at()));
            }
        } else if (entry instanceof Entry.Finished e) {
            Open of = open.remove(e.attempt());
            if (of != null) {
                String scenario = of.begun().scenario();
                drills.put(scenario, drill(scenario).finished(e));
                finished++;
            }
        } else if (entry instanceof Entry.Abandoned e) {
            open.remove(e.attempt());
        } else if (entry instanceof Entry.Resolved e) {
            e.skills().forEach(skill -> notes.put(skill, new Note(e.text(), e.at())));
        } else if (entry instanceof Entry.Answered e) {
            observed.add(new Observed.Answer(e));
        }
    }

    synchronized void damagedLine(int number) {
        damaged.add(number);
    }

    /** Puts back what an index kept. */
    synchronized void restore(
            Entry.@Nullable Learner whose,
            Map<String, Drill> kept,
            Collection<Open> stillOpen,
            Map<String, Note> resolved,
            List<Integer> unreadable,
            int ended) {
        learner = whose;
        drills.putAll(kept);
        stillOpen.forEach(o -> open.put(o.begun().attempt(), o));
        notes.putAll(resolved);
        damaged.addAll(unreadable);
        finished = ended;
    }

    /** Whose file it is, or null where no line says so. */
    public synchronized Entry.@Nullable Learner learner() {
        return learner;
    }

    /** A drill; one that was never begun has nothing in it. */
    public synchronized Drill drill(String scenario) {
        return drills.getOrDefault(scenario, Drill.NEW);
    }

    /** All drills that were begun, by id. */
    public synchronized Map<String, Drill> drills() {
        return new LinkedHashMap<>(drills);
    }

    /** Which hidden tank comes next: another one each time. */
    public long nextVariant(String scenario) {
        return 1L + drill(scenario).begun();
    }

    /** The open attempt of a drill. */
    public synchronized Optional<Open> open(String scenario) {
        return open.values().stream()
                .filter(o -> o.begun().scenario().equals(scenario))
                .findFirst();
    }

    /** All open attempts, the one begun last at the end. */
    public synchronized List<Open> open() {
        return List.copyOf(open.values());
    }

    /** The last resolution that bears on one of these skills. */
    public synchronized Optional<String> noteOn(List<String> skills) {
        return skills.stream()
                .filter(notes::containsKey)
                .map(skill -> java.util.Objects.requireNonNull(notes.get(skill)))
                .reduce((a, b) -> b.at().isAfter(a.at()) ? b : a)
                .map(Note::text);
    }

    /** The last resolution by skill. */
    public synchronized Map<String, Note> notes() {
        return new LinkedHashMap<>(notes);
    }

    /** Attempts that came to an end. */
    public synchronized int finished() {
        return finished;
    }

    /** Numbers, from 1, of the lines that cannot be read. */
    public synchronized List<Integer> damagedLines() {
        return List.copyOf(damaged);
    }

    /** All that tells what the learner can do, oldest first. Read when first asked for. */
    public List<Observed> observed() {
        return observed.all();
    }
}
