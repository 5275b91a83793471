package startwater.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;

/**
 * Adds lines to a file, in order. A line that cannot be written waits and is tried again before the next one, so that the
 * file always holds the beginning of what was added, without a gap.
 */
final class Appender {
    private final Storage.Target target;
    private final Path file;
    private final Deque<byte[]> waiting = new ArrayDeque<>();
    private long good;
    private @Nullable String trouble;

    /** @param good bytes of the file that are whole lines; what lies behind them is cut before the next line */
    Appender(Storage.Target target, Path file, long good) {
        this.target = target;
        this.file = file;
        this.good = good;
    }

    void add(String line) {
        waiting.add((line + "\n").getBytes(StandardCharsets.UTF_8));
        flush();
    }

    private void flush() {
        try {
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
            trouble = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
        }
    }

    /** Bytes that are on the disk for certain. */
    long good() {
        return good;
    }

    /** What stands in the way, or null while all is written. */
    @Nullable
    Notice trouble() {
        return trouble == null ? null : Notice.of(Notice.Kind.NOT_KEPT, file.toString(), trouble);
    }

    /** Tries once more, and lets go of the file. */
    void close() {
        flush();
        try {
            target.close();
        } catch (IOException e) {
            trouble = String.valueOf(e.getMessage());
        }
    }
}
