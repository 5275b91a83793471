package startwater.record;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The right to write to a learner's file: one program has it at a time. */
final class FileGuard implements AutoCloseable {
    private final FileChannel channel;
    private final boolean held;

    private FileGuard(FileChannel channel, boolean held) {
        this.channel = channel;
        this.held = held;
    }

    /** Asks for it. @throws IOException where the place of the file cannot be written */
    @SuppressWarnings("resource")
    static FileGuard take(Path file) throws IOException {
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        FileChannel channel = FileChannel.open(Names.lock(file), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            // Held until the channel is closed.
            return new FileGuard(channel, channel.tryLock() != null);
        } catch (OverlappingFileLockException elsewhereInThisProgram) {
            return new FileGuard(channel, false);
        }
    }

    boolean held() {
        return held;
    }

    @Override
    public void close() {
        try {
            channel.close();
        } catch (IOException e) {
            // The end of the program lets go of it.
        }
    }
}
