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
    private static final String NAME = "class-marks.jsonl";
    private static final int MOST_BYTES = 20_000_000;
    private static final Instant NO_TIME = Instant.EPOCH;

    private final Path file;
    private final MarkMemo kept = MarkMemo.inMemory();
    private boolean read;

    private MarkFile(Path file) {
        this.file = file;
    }

    /** The marks of a teacher's data folder. */
    public static MarkFile in(Path data) {
        return at(data.resolve(NAME));
    }

    /** The marks in a file, read when the first is asked for; none where it is not there or has grown too big. */
    public static MarkFile at(Path file) {
        return new MarkFile(file);
    }

    private synchronized void known() {
        if (read) {
            return;
        }
        read = true;
        if (Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
            try (InputStream in = Files.newInputStream(file)) {
                byte[] bytes = in.readNBytes(MOST_BYTES + 1);
                if (bytes.length > MOST_BYTES) {
                    Files.delete(file);
                } else {
                    new String(bytes, StandardCharsets.UTF_8).lines().forEach(this::read);
                }
            } catch (IOException costsTimeOnly) {
                return;
            }
        }
    }

    @Override
    public synchronized void clear() throws IOException {
        read = true;
        kept.clear();
        Files.deleteIfExists(file);
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
        known();
        return kept.get(named(key));
    }

    @Override
    public synchronized void put(String key, Entry.Marks marks) {
        known();
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
