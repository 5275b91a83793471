package startwater.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** A disk that waits for nothing, for tests that write much. */
public final class LooseDisk implements Storage {
    @Override
    public Target open(Path file) throws IOException {
        FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        return new Target() {
            @Override
            public long size() throws IOException {
                return channel.size();
            }

            @Override
            public void append(byte[] bytes) throws IOException {
                channel.write(ByteBuffer.wrap(bytes));
            }

            @Override
            public void truncate(long size) throws IOException {
                channel.truncate(size);
            }

            @Override
            public void close() throws IOException {
                channel.close();
            }
        };
    }
}
