package startwater.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Optional;
import startwater.record.EngineVersion;
import startwater.record.Entry;
import startwater.record.EntryText;

/**
 * Marks that outlive the program, as lines of a file on the teacher's own computer. It may be deleted at any time, and what
 * cannot be read or written costs time and nothing else.
 */
public final class MarkFile implements MarkMemo {
    private static final int MOST_BYTES = 20_000_000;
    private static final Instant NO_TIME = Instant.EPOCH;

    private final Path file;
    private final MarkMemo kept = MarkMemo.inMemory();

    private MarkFile(Path file) {
        this.file = file;
    }

    /** The marks in a file; none where it is not there or has grown too big. */
    public static MarkFile at(Path file) {
        MarkFile marks = new MarkFile(file);
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(MOST_BYTES + 1);
                if (bytes.length > MOST_BYTES) {
                    Files.delete(file);
                } else {
                    new String(bytes, StandardCharsets.UTF_8).lines().forEach(marks::read);
                }
            } catch (IOException unreadable) {
                return marks;
            }
        }
        return marks;
    }

    private void read(String line) {
        if (EntryText.read(line).entry() instanceof Entry.Marked marked) {
            kept.put(marked.attempt(), marked.marks());
        }
    }

    private static String named(String key) {
        return EngineVersion.here() + "-" + key;
    }

    @Override
    public Optional<Entry.Marks> get(String key) {
        return kept.get(named(key));
    }

    @Override
    public synchronized void put(String key, Entry.Marks marks) {
        kept.put(named(key), marks);
        String line = EntryText.line(new Entry.Marked(named(key), 0, 0, marks, NO_TIME)) + "\n";
        try {
            Path parent = file.toAbsolutePath().getParent();
            if (parent != null) {
                Files.createDirectories(parent);
            }
            Files.writeString(file, line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException costsTimeOnly) {
            return;
        }
    }
}
