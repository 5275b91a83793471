package startwater.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Adds lines to a file, in order. A line that cannot be written waits and is tried again before the next one, so that the
 * file always holds the beginning of what was added, without a gap.
 */
final class Appender {
    private final Path file;
    private final Reopening reopening;
    private final Deque<byte[]> waiting = new ArrayDeque<>();
    private Storage.Target target;
    private long good;
    private @Nullable Notice trouble;

    /** Opens the file once more, after the disk it lies on was away. */
    @FunctionalInterface
    interface Reopening {
        /** @throws IOException where it is not there, or another program has it now */
        Storage.Target open() throws IOException;
    }

    /** @param good bytes of the file that are whole lines; what lies behind them is cut before the next line */
    Appender(Storage.Target target, Path file, long good, Reopening reopening) {
        this.target = target;
        this.file = file;
        this.good = good;
        this.reopening = reopening;
    }

    void add(String line) {
        waiting.add((line + "\n").getBytes(StandardCharsets.UTF_8));
        flush();
    }

    /** Lines that are not on the disk yet, in order. */
    List<String> waiting() {
        return waiting.stream()
                .map(line -> new String(line, StandardCharsets.UTF_8).stripTrailing())
                .toList();
    }

    /** Tries to write what waits. */
    void flush() {
        try {
            if (trouble != null) {
                again();
            }
            while (!waiting.isEmpty()) {
                if (target.size() != good) {
                    // The last try left part of a line behind.
                    target.truncate(good);
                }
                byte[] next = waiting.getFirst();
                target.append(next);
                good += next.length;
                waiting.removeFirst();
            }
            trouble = null;
        } catch (IOException e) {
            trouble = trouble(e);
        }
    }

    /** What was open before a failure may be dead, though the same file is there again: a stick that was put back. */
    private void again() throws IOException {
        if (Files.size(file) < good) {
            // Shorter than what was on the disk for certain: another one.
            throw new NoSuchFileException(file.toString());
        }
        Storage.Target fresh = reopening.open();
        try {
            target.close();
        } catch (IOException dead) {
            // Nothing waits in it.
        }
        target = fresh;
    }

    private Notice trouble(IOException e) {
        return e instanceof NoSuchFileException || !Files.exists(file)
                ? Notice.of(Notice.Kind.GONE, file.toString())
                : Notice.notKept(file, e);
    }

    /** Bytes that are on the disk for certain. */
    long good() {
        return good;
    }

    /** What stands in the way, or null while all is written. */
    @Nullable
    Notice trouble() {
        return trouble;
    }

    /** Tries once more, and lets go of the file. */
    void close() {
        flush();
        try {
            target.close();
        } catch (IOException e) {
            trouble = trouble == null ? trouble(e) : trouble;
        }
    }
}
