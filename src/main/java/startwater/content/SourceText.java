package startwater.content;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** Gets the text of a file, whatever the file turns out to be. Lines end in a single line feed afterwards. */
final class SourceText {
    /** Largest file that is read, bytes. */
    static final int MOST_BYTES = 1_000_000;

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private SourceText() {}

    /** The text of a file, or null with the fault noted. */
    static @Nullable String read(Path path, Faults faults) {
        if (!Files.exists(path)) {
            faults.add(0, Complaint.UNREADABLE);
            return null;
        }
        if (!Files.isRegularFile(path)) {
            faults.add(0, Complaint.NOT_A_FILE);
            return null;
        }
        try (InputStream in = Files.newInputStream(path)) {
            return decode(in.readNBytes(MOST_BYTES + 1), faults);
        } catch (IOException e) {
            faults.add(0, Complaint.UNREADABLE);
            return null;
        }
    }

    /** The text that these bytes spell in UTF-8, or null with the fault noted. */
    static @Nullable String decode(byte[] bytes, Faults faults) {
        if (bytes.length > MOST_BYTES) {
            faults.add(0, Complaint.TOO_BIG, "limit", MOST_BYTES / 1000);
            return null;
        }
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        if (result.isError()) {
            faults.add(lineAt(bytes, in.position()), Complaint.NOT_UTF8);
            return null;
        }
        return plain(out.flip().toString(), faults);
    }

    private static @Nullable String plain(String decoded, Faults faults) {
        String marked = !decoded.isEmpty() && decoded.charAt(0) == BYTE_ORDER_MARK ? decoded.substring(1) : decoded;
        String text = marked.replace("\r\n", "\n").replace('\r', '\n');
        int line = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
            } else if (c != '\t' && (Character.isISOControl(c) || c >= '\uFFFE' || c == BYTE_ORDER_MARK)) {
                faults.add(line, Complaint.NOT_TEXT, "code", String.format("U+%04X", (int) c));
                return null;
            }
        }
        if (text.isBlank()) {
            faults.add(0, Complaint.EMPTY_FILE);
            return null;
        }
        return text;
    }

    private static int lineAt(byte[] bytes, int position) {
        int line = 1;
        for (int i = 0; i < position; i++) {
            boolean lone = bytes[i] == '\r' && (i + 1 == bytes.length || bytes[i + 1] != '\n');
            if (bytes[i] == '\n' || lone) {
                line++;
            }
        }
        return line;
    }
}
