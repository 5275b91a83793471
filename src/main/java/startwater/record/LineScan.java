package startwater.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** Walks over the lines of a file without holding it whole. */
final class LineScan {
    private static final int BUFFER = 1 << 16;
    /** A longer line is no line of ours. */
    private static final int LONGEST = 1 << 20;

    private LineScan() {}

    /** Takes one line. */
    interface Visitor {
        /**
         * @param text of the line, without its end; cut where it is far too long
         * @param start offset of its first byte
         * @param end offset behind its end
         * @param ended whether a line feed ends it; only the last line may lack it
         */
        void line(String text, long start, long end, boolean ended);
    }

    /** Visits every line from an offset on; a file that is not there has none. @throws IOException where it cannot be read */
    static void from(Path file, long offset, Visitor visitor) throws IOException {
        if (!Files.exists(file)) {
            // A learner of whom nothing is written yet.
            return;
        }
        try (SeekableByteChannel in = Files.newByteChannel(file)) {
            in.position(offset);
            walk(in, offset, visitor);
        }
    }

    private static void walk(SeekableByteChannel in, long offset, Visitor visitor) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(BUFFER);
        byte[] line = new byte[BUFFER];
        int length = 0;
        long start = offset;
        long at = offset;
        while (in.read(buffer.clear()) >= 0) {
            byte[] read = buffer.array();
            int limit = buffer.position();
            int from = 0;
            for (int i = 0; i < limit; i++) {
                if (read[i] == '\n') {
                    line = grown(line, length, i - from);
                    length = copy(read, from, i, line, length);
                    visitor.line(text(line, length), start, at + i + 1, true);
                    length = 0;
                    from = i + 1;
                    start = at + from;
                }
            }
            line = grown(line, length, limit - from);
            length = copy(read, from, limit, line, length);
            at += limit;
        }
        if (at > start) {
            visitor.line(text(line, length), start, at, false);
        }
    }

    private static byte[] grown(byte[] line, int length, int more) {
        int needed = Math.min(LONGEST, length + more);
        return needed <= line.length ? line : Arrays.copyOf(line, Math.max(needed, 2 * line.length));
    }

    private static int copy(byte[] read, int from, int to, byte[] line, int length) {
        int fits = Math.min(to - from, LONGEST - length);
        System.arraycopy(read, from, line, length, fits);
        return length + fits;
    }

    private static String text(byte[] line, int length) {
        return new String(line, 0, length, StandardCharsets.UTF_8);
    }
}
