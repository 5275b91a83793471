package startwater.record;

import java.util.Locale;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A line of a learner file to and from its entry. */
public final class EntryText {
    /** The format that is written; this one and older ones are read. */
    public static final int FORMAT = 1;

    static final JsonMapper JSON = JsonMapper.builder().build();

    private static final Pattern PASSED_OVER = Pattern.compile("\\{\"kind\":\"(dipped|wrote|erased|worked|decided)\"");

    private EntryText() {}

    /** What is on one line. */
    public enum Sort {
        /** An entry. */
        KNOWN,
        /** A whole line of a kind that this program does not know: left as it is. */
        UNKNOWN,
        /** No line at all, or one that lacks what its kind needs. */
        DAMAGED
    }

    /** @param entry what it says; null unless {@link Sort#KNOWN} */
    public record Line(Sort sort, @Nullable Entry entry) {
        static final Line UNKNOWN = new Line(Sort.UNKNOWN, null);
        static final Line DAMAGED = new Line(Sort.DAMAGED, null);
    }

    /** The line of an entry, without its end. */
    public static String line(Entry entry) {
        return JSON.writeValueAsString(EntryWriter.node(entry));
    }

    /** Reads one line; never throws. */
    public static Line read(String line) {
        try {
            JsonNode node = JSON.readTree(line);
            if (node == null || !node.isObject()) {
                return Line.DAMAGED;
            }
            Entry entry = EntryReader.entry(Field.text(node, "kind"), node);
            return entry == null ? Line.UNKNOWN : new Line(Sort.KNOWN, entry);
        } catch (JacksonException | Field.Missing | IllegalArgumentException damaged) {
            return Line.DAMAGED;
        }
    }

    /**
     * Reads one line as far as a summary needs it: of kinds that it passes over, only that they are whole JSON. They are most
     * of a file, and this takes a third of the time.
     */
    static Line skim(String line) {
        return PASSED_OVER.matcher(line).lookingAt() ? (whole(line) ? Line.UNKNOWN : Line.DAMAGED) : read(line);
    }

    private static boolean whole(String line) {
        try (JsonParser parser = JSON.createParser(line)) {
            parser.nextToken();
            parser.skipChildren();
            return parser.nextToken() == null;
        } catch (JacksonException damaged) {
            return false;
        }
    }

    static String kind(Entry entry) {
        return entry.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
}
