package startwater.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk with room for so many bytes; what does not fit is written in part and refused, as real ones do. */
final class SmallDisk implements Storage {
    private long room;

    SmallDisk(long room) {
        this.room = room;
    }

    void grow(long more) {
        room += more;
    }

    @Override
    public Target open(Path file) throws IOException {
        Target real = DISK.open(file);
        return new Target() {
            @Override
            public long size() throws IOException {
                return real.size();
            }

            @Override
            public void append(byte[] bytes) throws IOException {
                int fits = (int) Math.min(bytes.length, room);
                room -= fits;
                real.append(Arrays.copyOf(bytes, fits));
                if (fits < bytes.length) {
                    throw new IOException("No space left on device");
                }
            }

            @Override
            public void truncate(long size) throws IOException {
                room += real.size() - size;
                real.truncate(size);
            }

            @Override
            public void close() throws IOException {
                real.close();
            }
        };
    }
}
