package startwater.record;

import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** The disk as far as a learner file needs it. Another one shows in a test what a full disk does. */
public interface Storage {
    /** Opens a file for adding to its end; makes it where it is not there. */
    Target open(Path file) throws IOException;

    /** An open file. */
    interface Target extends Closeable {
        long size() throws IOException;

        /** Adds bytes and returns once they are on the disk itself. A failure may leave some of them there. */
        void append(byte[] bytes) throws IOException;

        /** Cuts the file to so many bytes. */
        void truncate(long size) throws IOException;
    }

    /** The disk itself. */
    Storage DISK = Storage::onDisk;

    private static Target onDisk(Path file) throws IOException {
        boolean fresh = !Files.exists(file);
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (fresh) {
            forceFolder(file);
        }
        return new Target() {
            @Override
            public long size() throws IOException {
                return channel.size();
            }

            @Override
            public void append(byte[] bytes) throws IOException {
                ByteBuffer left = ByteBuffer.wrap(bytes);
                channel.position(channel.size());
                while (left.hasRemaining()) {
                    channel.write(left);
                }
                channel.force(false);
                if (!Files.exists(file)) {
                    // Its folder was taken away: what is still open here nobody will find again.
                    throw new NoSuchFileException(file.toString());
                }
            }

            @Override
            public void truncate(long size) throws IOException {
                channel.truncate(size);
                channel.force(true);
            }

            @Override
            public void close() throws IOException {
                channel.close();
            }
        };
    }

    /** The name of a new file lies in its folder, which is forced too where the system allows. */
    private static void forceFolder(Path file) {
        Path folder = file.toAbsolutePath().getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException notHere) {
            // Windows does not open folders; it keeps names by itself.
        }
    }
}
