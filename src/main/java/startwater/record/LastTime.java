package startwater.record;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The latest time among the last lines of a learner's file. */
final class LastTime {
    private static final Pattern AT = Pattern.compile("\"at\":\"([^\"]{10,40})\"}\\s*$");
    /** Some dozens of lines: those of one sitting. */
    private static final int TAIL = 1 << 14;

    private LastTime() {}

    /** @param covered bytes of the file that can be read @return null where no line tells a time @throws IOException where it cannot be read */
    static @Nullable Instant in(Path file, long covered) throws IOException {
        Instant[] latest = {Instant.MIN};
        LineScan.from(file, Math.max(0, covered - TAIL), (text, start, end, ended) -> {
            Matcher m = AT.matcher(text);
            if (m.find()) {
                latest[0] = later(latest[0], Objects.requireNonNull(m.group(1)));
            }
        });
        return latest[0].equals(Instant.MIN) ? null : latest[0];
    }

    private static Instant later(Instant one, String other) {
        try {
            Instant at = Instant.parse(other);
            return at.isAfter(one) ? at : one;
        } catch (DateTimeException noTime) {
            return one;
        }
    }
}
