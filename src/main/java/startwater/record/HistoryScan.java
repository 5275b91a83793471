package startwater.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Makes the history of a learner from the index as far as it reaches, and from the learner's file for the rest. */
final class HistoryScan {
    private final Path file;
    private final HistoryIndex index;
    private History history;
    private ObservedList observed;
    private long covered;
    private int lines;
    private boolean ended = true;
    private long size;
    private boolean fresh;
    private final List<Integer> suspects = new ArrayList<>();
    private @Nullable RefusedException newer;

    private HistoryScan(Path file, boolean trustIndex) {
        this.file = file;
        this.index = new HistoryIndex(file);
        HistoryIndex.@Nullable Kept kept = trustIndex ? index.load() : null;
        HistoryIndex.Kept start = kept == null ? index.none() : kept;
        this.fresh = kept == null;
        this.history = start.history();
        this.observed = start.observed();
        this.covered = start.covered();
        this.lines = start.lines();
        this.size = covered;
    }

    /** @throws RefusedException where the file comes from a newer program @throws IOException where it cannot be read */
    static HistoryScan of(Path file) throws IOException {
        return new HistoryScan(file, true).scanned();
    }

    /** All over again from the learner's file alone; what cannot be read counts as not there. */
    static History whole(Path file) {
        HistoryScan scan = new HistoryScan(file, false);
        try {
            scan.scanned();
        } catch (IOException unreadable) {
            // As far as it was read.
        }
        return scan.history;
    }

    private HistoryScan scanned() throws IOException {
        int[] number = {lines};
        LineScan.from(file, covered, (text, start, end, finished) -> {
            number[0]++;
            size = end;
            EntryText.Line line = EntryText.skim(text);
            if (line.sort() == EntryText.Sort.DAMAGED) {
                suspects.add(number[0]);
                return;
            }
            fresh = true;
            suspects.forEach(history::damagedLine);
            suspects.clear();
            covered = end;
            lines = number[0];
            ended = finished;
            if (line.entry() != null) {
                take(line.entry(), start);
            }
        });
        if (newer != null) {
            throw newer;
        }
        return this;
    }

    private void take(Entry entry, long offset) {
        if (entry instanceof Entry.Learner l && l.format() > EntryText.FORMAT) {
            newer = new RefusedException(Notice.of(Notice.Kind.NEWER, file.toString(), l.format(), EntryText.FORMAT));
        }
        history.take(entry, offset);
    }

    History history() {
        return history;
    }

    /** Offset behind the last line that can be read. */
    long covered() {
        return covered;
    }

    /** Whether a line feed ends that line. */
    boolean ended() {
        return ended;
    }

    /** Whether something that cannot be read lies behind that line. */
    boolean damagedEnd() {
        return !suspects.isEmpty();
    }

    long size() {
        return size;
    }

    /** Whether the index on disk knows less. */
    boolean fresh() {
        return fresh;
    }

    int lines() {
        return lines;
    }

    /** Keeps the index; what cannot be kept is made again at the next start. */
    void save(long nowCovered, int nowLines) {
        try {
            index.save(history, observed, nowCovered, nowLines);
        } catch (IOException unwritable) {
            // It costs time at the next start, nothing else.
        }
    }
}
