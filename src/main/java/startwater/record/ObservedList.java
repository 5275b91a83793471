package startwater.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/** The observations of a learner: most of them in a file beside the index, read only when asked for. */
final class ObservedList {
    private final Path file;
    private final Supplier<List<Observed>> anew;
    private long kept;
    private final List<Observed> fresh = new ArrayList<>();
    private @Nullable List<Observed> loaded;

    /**
     * @param kept bytes of the file that count
     * @param anew finds all observations once more, where the file turns out to be damaged
     */
    ObservedList(Path file, long kept, Supplier<List<Observed>> anew) {
        this.file = file;
        this.kept = kept;
        this.anew = anew;
    }

    synchronized void add(Observed observed) {
        fresh.add(observed);
    }

    synchronized List<Observed> all() {
        List<Observed> old = loaded;
        if (old == null) {
            old = load();
            loaded = old;
        }
        List<Observed> all = new ArrayList<>(old);
        all.addAll(fresh);
        return ObservedText.cameTrue(all);
    }

    private List<Observed> load() {
        List<Observed> read = new ArrayList<>();
        if (kept == 0) {
            return read;
        }
        try {
            LineScan.from(file, 0, (text, start, end, ended) -> {
                if (end <= kept) {
                    read.add(ObservedText.read(text));
                }
            });
        } catch (IOException | Field.Missing damaged) {
            kept = 0;
            fresh.clear();
            fresh.addAll(anew.get());
            return new ArrayList<>();
        }
        return read;
    }

    /** Writes what is new. @return bytes of the file that count now @throws IOException where it cannot be written */
    synchronized long save() throws IOException {
        StringBuilder lines = new StringBuilder();
        fresh.forEach(o -> lines.append(ObservedText.line(o)).append('\n'));
        byte[] bytes = lines.toString().getBytes(StandardCharsets.UTF_8);
        try (var channel = Files.newByteChannel(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE)) {
            channel.truncate(kept);
            channel.position(kept);
            var left = java.nio.ByteBuffer.wrap(bytes);
            while (left.hasRemaining()) {
                channel.write(left);
            }
        }
        kept += bytes.length;
        if (loaded != null) {
            loaded.addAll(fresh);
        }
        fresh.clear();
        return kept;
    }
}
