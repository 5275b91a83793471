package startwater.app.view;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import startwater.record.LooseDisk;
import startwater.record.Storage;

/** A disk that waits for nothing and remembers for itself what it was told to keep. */
final class WatchedDisk implements Storage {
    private final Storage disk = new LooseDisk();
    private final Map<Path, byte[]> kept = new TreeMap<>();

    /** What every file must hold now. */
    synchronized Map<Path, byte[]> kept() {
        return new TreeMap<>(kept);
    }

    /** A file that somebody deleted on purpose. */
    synchronized void forget(Path file) {
        kept.remove(file);
    }

    private synchronized void append(Path file, byte[] bytes) {
        ByteArrayOutputStream all = new ByteArrayOutputStream();
        all.writeBytes(kept.getOrDefault(file, new byte[0]));
        all.writeBytes(bytes);
        kept.put(file, all.toByteArray());
    }

    private synchronized void cut(Path file, int size) {
        kept.computeIfPresent(file, (f, bytes) -> Arrays.copyOf(bytes, size));
    }

    @Override
    public Target open(Path file) throws IOException {
        Target target = disk.open(file);
        synchronized (this) {
            if (!kept.containsKey(file)) {
                kept.put(file, Files.readAllBytes(file));
            }
        }
        return new Target() {
            @Override
            public long size() throws IOException {
                return target.size();
            }

            @Override
            public void append(byte[] bytes) throws IOException {
                target.append(bytes);
                WatchedDisk.this.append(file, bytes);
            }

            @Override
            public void truncate(long size) throws IOException {
                target.truncate(size);
                cut(file, (int) size);
            }

            @Override
            public void close() throws IOException {
                target.close();
            }
        };
    }
}
