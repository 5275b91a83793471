package startwater.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.Scenario;
import startwater.record.Difference.What;

/** Plays every attempt of a learner's file again and says whether the same comes of it, to the last bit. */
public final class Replay {
    private final Function<String, @Nullable Scenario> drills;
    private final boolean fast;

    /** What came of one attempt. */
    public enum Outcome {
        SAME,
        DIFFERENT,
        /** Made by another build; whether it comes out the same all the same is said beside. */
        OTHER_VERSION,
        DRILL_CHANGED,
        DRILL_UNKNOWN
    }

    /**
     * One attempt.
     *
     * @param begun its first line
     * @param state how it stands in the file
     * @param outcome what came of playing it again
     * @param difference what differs first, or null where nothing does or it was not played
     */
    public record Report(
            Entry.Begun begun,
            State state,
            Outcome outcome,
            @Nullable Difference difference) {}

    /** How an attempt stands. */
    public enum State {
        OPEN,
        FINISHED,
        ABANDONED
    }

    /**
     * @param drills the drill of an id, or null where there is none
     * @param fast whether to leave out the marks: the hidden tank and the log alone
     */
    public Replay(Function<String, @Nullable Scenario> drills, boolean fast) {
        this.drills = drills;
        this.fast = fast;
    }

    /**
     * Plays all attempts of a file, in the order they were begun.
     *
     * @param each told of each attempt as soon as it is done
     * @return notices of lines that cannot be read
     * @throws IOException where the file cannot be read, a {@link RefusedException} where it comes from a newer program
     */
    public List<Notice> all(Path file, Consumer<Report> each) throws IOException {
        if (!Files.exists(file)) {
            throw new NoSuchFileException(file.toString());
        }
        List<Notice> notices = new ArrayList<>();
        Map<String, List<Entry.OfAttempt>> attempts = new LinkedHashMap<>();
        int[] number = {0};
        int[] format = {EntryText.FORMAT};
        LineScan.from(file, 0, (text, start, end, ended) -> {
            number[0]++;
            EntryText.Line line = EntryText.read(text);
            if (line.sort() == EntryText.Sort.DAMAGED) {
                notices.add(Notice.of(Notice.Kind.DAMAGED_LINE, file.toString(), number[0]));
            } else if (line.entry() instanceof Entry.Learner l) {
                format[0] = Math.max(format[0], l.format());
            } else if (line.entry() instanceof Entry.OfAttempt e) {
                attempts.computeIfAbsent(e.attempt(), id -> new ArrayList<>()).add(e);
            }
        });
        if (format[0] > EntryText.FORMAT) {
            throw new RefusedException(Notice.of(Notice.Kind.NEWER, file.toString(), format[0], EntryText.FORMAT));
        }
        for (List<Entry.OfAttempt> lines : attempts.values()) {
            if (lines.get(0) instanceof Entry.Begun begun) {
                each.accept(report(begun, lines));
            }
        }
        return notices;
    }

    private Report report(Entry.Begun begun, List<Entry.OfAttempt> lines) {
        Entry.OfAttempt last = lines.get(lines.size() - 1);
        State state = last instanceof Entry.Abandoned
                ? State.ABANDONED
                : lines.stream().anyMatch(Entry.Finished.class::isInstance) ? State.FINISHED : State.OPEN;
        Scenario scenario = drills.apply(begun.scenario());
        if (scenario == null) {
            return new Report(begun, state, Outcome.DRILL_UNKNOWN, null);
        }
        if (!ContentHash.ofPlay(scenario).equals(begun.content())) {
            return new Report(begun, state, Outcome.DRILL_CHANGED, null);
        }
        Difference difference = difference(scenario, begun, lines);
        Outcome outcome = !begun.engine().equals(EngineVersion.here())
                ? Outcome.OTHER_VERSION
                : difference == null ? Outcome.SAME : Outcome.DIFFERENT;
        return new Report(begun, state, outcome, difference);
    }

    private @Nullable Difference difference(Scenario scenario, Entry.Begun begun, List<Entry.OfAttempt> lines) {
        Rerun rerun = new Rerun(scenario, begun);
        try {
            lines.stream().skip(1).forEach(rerun::take);
            rerun.checkEnd();
            if (!fast) {
                MarkCheck.check(rerun);
            }
            return null;
        } catch (Difference.Found found) {
            return found.difference();
        } catch (IllegalArgumentException | IllegalStateException impossible) {
            return new Difference(What.LINES, rerun.run().past().size(), "?", String.valueOf(impossible.getMessage()));
        }
    }
}
