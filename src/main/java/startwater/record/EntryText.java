package startwater.record;

import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A line of a learner file to and from its entry. */
public final class EntryText {
    /** The format that is written; this one and older ones are read. */
    public static final int FORMAT = 1;

    static final JsonMapper JSON = JsonMapper.builder().build();

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

    static String kind(Entry entry) {
        return entry.getClass().getSimpleName().toLowerCase(Locale.ROOT);
    }
}
