package startwater.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A hand-out as a small JSON file. What it holds is only ever read as words, numbers and one of our own drill files: nothing
 * in it is run, and no path in it is followed.
 */
public final class HandoutFile {
    public static final String ENDING = ".startwater-class.json";

    /** Largest file that is read, bytes. */
    public static final int MOST_BYTES = 200_000;

    static final int FORMAT = 1;
    private static final int MOST_DEPTH = 8;
    private static final JsonMapper JSON = JsonMapper.builder(JsonFactory.builder()
                    .streamReadConstraints(StreamReadConstraints.builder()
                            .maxNestingDepth(MOST_DEPTH)
                            .maxDocumentLength(MOST_BYTES)
                            .maxStringLength(MOST_BYTES)
                            .build())
                    .build())
            .build();

    private HandoutFile() {}

    /** Why a file is no hand-out. */
    public enum Trouble {
        TOO_BIG,
        NOT_JSON,
        /** A field is missing or not what it must be; the detail names it. */
        BAD_FIELD,
        /** Made by a newer program. */
        NEWER,
        /** A drill is named that neither ships nor travels along; the detail names it. */
        NO_DRILL,
        /** A drill that ships has changed since; the detail names it. */
        OTHER_DRILL,
        /** A drill that travels along has faults; the detail has them. */
        BAD_DRILL
    }

    /** A hand-out, or why it is none. @param detail a field, a drill or its faults; may be empty */
    public record Read(@Nullable Handout handout, @Nullable Trouble trouble, String detail) {
        static Read of(Handout handout) {
            return new Read(handout, null, "");
        }

        static Read no(Trouble trouble, String detail) {
            return new Read(null, trouble, detail);
        }

        public Optional<Handout> found() {
            return Optional.ofNullable(handout);
        }
    }

    /** The text of the file. */
    public static String text(Handout h) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("format", FORMAT);
        node.put("id", h.id());
        node.put("title", h.title());
        node.put("mode", h.mode().name().toLowerCase(Locale.ROOT));
        node.put("deadline", h.deadline());
        node.put("tanks", h.sameTank() ? "same" : "each");
        node.put("seed", h.seed());
        var drills = node.putArray("drills");
        for (Handout.Drill drill : h.drills()) {
            ObjectNode one = drills.addObject().put("id", drill.scenario().id()).put("content", drill.content());
            if (drill.source() != null) {
                one.put("file", drill.source());
            }
        }
        var lessons = node.putArray("lessons");
        h.lessons().forEach(lessons::add);
        return JSON.writerWithDefaultPrettyPrinter().writeValueAsString(node) + "\n";
    }

    /** The drill file as it travels: without the author's note at its head, which is for teachers. */
    public static String travelling(String yaml) {
        return yaml.lines()
                .dropWhile(line -> line.startsWith("#") || line.isBlank())
                .collect(Collectors.joining("\n", "", "\n"));
    }

    /** Reads a file, no more of it than a hand-out may hold. @throws IOException where it cannot be read */
    public static Read read(Path file, String language) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return read(in.readNBytes(MOST_BYTES + 1), language);
        }
    }

    /** Reads a file; never throws for what stands in it. @param language of the faults of a drill, {@code en} or {@code es} */
    public static Read read(byte[] bytes, String language) {
        if (bytes.length > MOST_BYTES) {
            return Read.no(Trouble.TOO_BIG, "");
        }
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            JsonNode node = JSON.readTree(text);
            return node != null && node.isObject()
                    ? Read.of(HandoutReader.handout(node, language))
                    : Read.no(Trouble.NOT_JSON, "");
        } catch (CharacterCodingException | JacksonException e) {
            return Read.no(Trouble.NOT_JSON, "");
        } catch (HandoutReader.Bad bad) {
            return bad.read();
        }
    }
}
