package startwater.record;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.drill.Prediction.Sureness;

/**
 * The open file of one learner: its history, and the end to which lines are added. Nothing here ever stops the tutor: where
 * nothing can be written, {@link #trouble()} says why and the drill goes on. Safe for several threads of one program;
 * against other programs a lock is held.
 */
public final class LearnerFile implements AutoCloseable {
    /** Clocks of two computers may differ so much. */
    private static final Duration CLOCKS_DIFFER = Duration.ofDays(1);

    private final Path file;
    private final Means means;
    private final List<Notice> notices = new ArrayList<>();
    private final HistoryScan scan;
    private final Map<String, Object> writers = new HashMap<>();
    private @Nullable FileGuard guard;
    private @Nullable Appender end;
    private @Nullable Notice shut;
    private int lines;

    private LearnerFile(Path file, Means means, boolean write) throws IOException {
        this.file = file;
        this.means = means;
        if (write) {
            lock();
        } else {
            shut = Notice.of(Notice.Kind.ELSEWHERE, Names.keyOf(file));
        }
        boolean done = false;
        try {
            scan = HistoryScan.of(file);
            lines = scan.lines();
            for (int line : scan.history().damagedLines()) {
                notices.add(Notice.of(Notice.Kind.DAMAGED_LINE, file.toString(), line));
            }
            compareClock();
            if (shut == null) {
                openEnd();
            } else if (scan.damagedEnd()) {
                notices.add(Notice.of(Notice.Kind.UNREADABLE_END, file.toString()));
            }
            done = true;
        } finally {
            if (!done) {
                unlock();
            }
        }
    }

    /**
     * Opens a learner's file for writing, and makes it where it is not there. Where that is not possible it is open all the
     * same, and {@link #trouble()} says why nothing is kept.
     *
     * @throws RefusedException where it comes from a newer program
     * @throws IOException where it is there and cannot be read
     */
    static LearnerFile open(Path file, Means means) throws IOException {
        return new LearnerFile(file, means, true);
    }

    /** Looks at a learner's file: nothing is written, and nobody is kept from writing. @throws IOException as when opening */
    static LearnerFile look(Path file, Means means) throws IOException {
        return new LearnerFile(file, means, false);
    }

    private void lock() {
        try {
            guard = FileGuard.take(file);
            if (!guard.held()) {
                shut = Notice.of(Notice.Kind.ELSEWHERE, Names.keyOf(file));
                unlock();
            }
        } catch (IOException e) {
            shut = Notice.notKept(file, e);
        }
    }

    private void unlock() {
        if (guard != null) {
            guard.close();
            guard = null;
        }
    }

    /** Sets an unreadable end aside and goes to the end of what can be read. */
    private void openEnd() {
        try {
            if (scan.damagedEnd()) {
                setAside();
            }
            Storage.Target target = means.storage().open(file);
            long good = scan.covered();
            if (!scan.ended()) {
                target.append(new byte[] {'\n'});
                good++;
            }
            end = new Appender(target, file, good, this::reopened);
            if (scan.fresh() && good > 0) {
                scan.save(good, lines);
            }
        } catch (IOException e) {
            shut = Notice.notKept(file, e);
        }
    }

    /** The file that was away. The right to write to it is asked for anew: it lay in a file beside it. */
    private Storage.Target reopened() throws IOException {
        unlock();
        guard = FileGuard.take(file);
        if (!guard.held()) {
            throw new IOException(Names.keyOf(file));
        }
        return means.storage().open(file);
    }

    /** Times that lie ahead of the clock by more than a day. */
    private void compareClock() throws IOException {
        Instant last = LastTime.in(file, scan.covered());
        Instant now = means.clock().instant();
        if (last != null && last.isAfter(now.plus(CLOCKS_DIFFER))) {
            ZoneId zone = ZoneId.systemDefault();
            notices.add(Notice.of(
                    Notice.Kind.CLOCK_BACK,
                    LocalDate.ofInstant(now, zone).toString(),
                    LocalDate.ofInstant(last, zone).toString()));
        }
    }

    private void setAside() throws IOException {
        Path part = Names.damaged(file);
        try (FileChannel from = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            long broken = from.size() - scan.covered();
            try (FileChannel to = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                long moved = 0;
                while (moved < broken) {
                    moved += from.transferTo(scan.covered() + moved, broken - moved, to);
                }
                to.force(true);
            }
            from.truncate(scan.covered());
            from.force(true);
            notices.add(Notice.of(Notice.Kind.SET_ASIDE, file.toString(), part.toString(), broken));
        }
    }

    /** Now, to the millisecond. */
    Instant now() {
        return means.clock().instant().truncatedTo(ChronoUnit.MILLIS);
    }

    /** From now on this one writes the lines of an attempt; one that wrote them before is heard no more. */
    synchronized void writes(String attempt, Object writer) {
        writers.put(attempt, writer);
    }

    synchronized boolean isWritten(String attempt, Object writer) {
        return writers.get(attempt) == writer;
    }

    /** Adds a line and returns once it is on the disk, or {@link #trouble()} says why it is not. */
    synchronized void add(Entry entry) {
        Appender to = end;
        long offset = to == null ? 0 : to.good();
        if (to != null) {
            to.add(EntryText.line(entry));
            lines++;
        }
        scan.history().take(entry, offset);
        if (entry instanceof Entry.Abandoned gone) {
            writers.remove(gone.attempt());
        }
        boolean pause = entry instanceof Entry.Finished || entry instanceof Entry.Abandoned;
        if (pause) {
            saveIndex();
        }
    }

    private void saveIndex() {
        if (end != null && end.trouble() == null) {
            scan.save(end.good(), lines);
        }
    }

    /** Gives the learner a name, at first or anew. */
    public synchronized void name(String name) {
        Entry.Learner before = history().learner();
        String id = before == null ? means.ids().get() : before.id();
        add(new Entry.Learner(EntryText.FORMAT, id, name.strip(), now()));
    }

    /** Keeps what the learner resolved. @param attempt id of the attempt it comes from, or null */
    public void resolve(@Nullable String attempt, List<String> skills, String text) {
        add(new Entry.Resolved(attempt, skills, text, now()));
    }

    /** Keeps an answer in a lesson. Parameters as in {@link Entry.Answered}. */
    public void answer(
            String lesson,
            List<String> skills,
            int block,
            int step,
            double score,
            int options,
            @Nullable Sureness sureness) {
        add(new Entry.Answered(lesson, skills, block, step, score, options, sureness, now()));
    }

    /** Why nothing is kept just now, or empty while all is on the disk. */
    public synchronized Optional<Notice> trouble() {
        return Optional.ofNullable(shut).or(() -> Optional.ofNullable(end).map(Appender::trouble));
    }

    /** Tries once more to write what waits. @return lines that wait all the same, in order */
    synchronized List<String> settle() {
        Appender to = end;
        if (to == null) {
            return List.of();
        }
        to.flush();
        return to.waiting();
    }

    /** Whether the file lies on a disk that was taken out: what is in it cannot be read just now. */
    public synchronized boolean away() {
        settle();
        return trouble().map(n -> n.kind() == Notice.Kind.GONE).orElse(false);
    }

    /** Whether another program writes to this file, or it was opened to be looked at only. */
    public boolean lookedAtOnly() {
        return shut != null && shut.kind() == Notice.Kind.ELSEWHERE;
    }

    /** What was found on opening: told once. */
    public List<Notice> notices() {
        return List.copyOf(notices);
    }

    public History history() {
        return scan.history();
    }

    /** The key of the learner. */
    public String key() {
        return Names.keyOf(file);
    }

    /** Name of the learner; empty for one who goes on without. */
    public String name() {
        Entry.Learner learner = history().learner();
        return learner == null ? key() : learner.name();
    }

    public Path file() {
        return file;
    }

    Means means() {
        return means;
    }

    /** Writes what still waits, keeps the index and lets go of the file. */
    @Override
    public synchronized void close() {
        if (end != null) {
            end.close();
            saveIndex();
            shut = end.trouble() != null ? end.trouble() : Notice.of(Notice.Kind.ELSEWHERE, key());
            end = null;
        }
        unlock();
    }
}
