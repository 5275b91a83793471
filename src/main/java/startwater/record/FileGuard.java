package startwater.record;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;

/** The right to write to a learner's file: one program has it at a time. */
final class FileGuard implements AutoCloseable {
    /** Held in this program: to close a second channel of a file would let go of the lock of the first on some systems. */
    private static final Set<Path> HERE = ConcurrentHashMap.newKeySet();

    private final Path file;
    private final @Nullable FileChannel channel;

    private FileGuard(Path file, @Nullable FileChannel channel) {
        this.file = file;
        this.channel = channel;
    }

    /** Asks for it. @throws IOException where the place of the file cannot be written */
    static FileGuard take(Path learner) throws IOException {
        Path file = Names.lock(learner).toAbsolutePath().normalize();
        Path folder = file.getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        if (!HERE.add(file)) {
            return new FileGuard(file, null);
        }
        boolean held = false;
        try {
            FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
            held = channel.tryLock() != null;
            if (!held) {
                channel.close();
            }
            return new FileGuard(file, held ? channel : null);
        } finally {
            if (!held) {
                HERE.remove(file);
            }
        }
    }

    boolean held() {
        return channel != null;
    }

    @Override
    public void close() {
        if (channel == null) {
            return;
        }
        try {
            // The lock goes with the channel.
            channel.close();
        } catch (IOException e) {
            // The end of the program lets go of it.
        } finally {
            HERE.remove(file);
        }
    }
}
