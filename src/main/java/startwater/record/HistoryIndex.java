package startwater.record;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import startwater.content.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** The history of a learner on disk, and how far into the learner's file it reaches. */
final class HistoryIndex {
    private static final int FORMAT = 1;
    private static final int TAIL = 4096;

    private final Path file;
    private final Path index;
    private final Path graded;

    /** @param file the learner's file */
    HistoryIndex(Path file) {
        this.file = file;
        this.index = Names.index(file);
        this.graded = Names.graded(file);
    }

    /** What an index says. @param covered bytes of the file it knows @param lines so many lines */
    record Kept(History history, ObservedList observed, long covered, int lines) {}

    /** Nothing known yet. */
    Kept none() {
        ObservedList observed = observed(0);
        return new Kept(new History(observed), observed, 0, 0);
    }

    private ObservedList observed(long kept) {
        return new ObservedList(graded, kept, () -> HistoryScan.whole(file).observed());
    }

    /** What is kept, or null where that does not belong to the file as it is now. */
    @Nullable
    Kept load() {
        try {
            JsonNode node = EntryText.JSON.readTree(Files.readAllBytes(index));
            long covered = Field.big(node, "covered");
            long gradedBytes = Field.big(node, "graded_bytes");
            long size = Files.size(file);
            boolean touched = size == covered && modified() != Field.big(node, "file_modified");
            if (Field.whole(node, "format") != FORMAT
                    || covered > size
                    || touched
                    || tail(covered) != Field.big(node, "tail")
                    || (gradedBytes > 0 && Files.size(graded) < gradedBytes)) {
                return null;
            }
            ObservedList observed = observed(gradedBytes);
            History history = new History(observed);
            restore(history, node);
            return new Kept(history, observed, covered, Field.whole(node, "lines"));
        } catch (IOException | JacksonException | Field.Missing | IllegalArgumentException damaged) {
            return null;
        }
    }

    private long modified() throws IOException {
        return Files.getLastModifiedTime(file).toMillis();
    }

    /** Checksum of the last bytes before an offset: another file of the same length is found out. */
    private long tail(long covered) throws IOException {
        CRC32 crc = new CRC32();
        try (var in = Files.newByteChannel(file)) {
            in.position(Math.max(0, covered - TAIL));
            ByteBuffer bytes = ByteBuffer.allocate((int) Math.min(TAIL, covered));
            while (bytes.hasRemaining() && in.read(bytes) >= 0) {
                // Read on.
            }
            crc.update(bytes.flip());
        }
        return crc.getValue();
    }

    private static void restore(History history, JsonNode node) {
        Map<String, History.Drill> drills = new LinkedHashMap<>();
        for (JsonNode d : node.path("drills")) {
            drills.put(
                    Field.text(d, "scenario"),
                    new History.Drill(
                            Field.numberOrNull(d, "best"),
                            Field.flag(d, "passed"),
                            Field.whole(d, "finished"),
                            Field.whole(d, "begun")));
        }
        List<History.Open> open = new ArrayList<>();
        for (JsonNode o : node.path("open")) {
            if (EntryReader.entry("begun", Field.object(o, "begun")) instanceof Entry.Begun begun) {
                open.add(new History.Open(begun, Field.big(o, "offset")));
            }
        }
        Map<String, History.Note> notes = new LinkedHashMap<>();
        for (JsonNode n : node.path("notes")) {
            notes.put(Field.text(n, "skill"), new History.Note(Field.text(n, "text"), Field.at(n)));
        }
        List<Integer> damaged = new ArrayList<>();
        node.path("damaged_lines").forEach(line -> damaged.add(line.asInt(0)));
        JsonNode whose = Field.objectOrNull(node, "learner");
        Entry.Learner learner =
                whose != null && EntryReader.entry("learner", whose) instanceof Entry.Learner l ? l : null;
        history.restore(learner, drills, open, notes, damaged, Field.whole(node, "finished"));
    }

    /** Keeps it: written beside and moved over. @throws IOException where it cannot be written; nothing is lost by that */
    void save(History history, ObservedList observed, long covered, int lines) throws IOException {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("format", FORMAT).put("covered", covered).put("lines", lines);
        node.put("graded_bytes", observed.save());
        node.put("tail", tail(covered)).put("file_modified", modified());
        Entry.Learner learner = history.learner();
        if (learner != null) {
            node.set("learner", EntryWriter.node(learner));
        }
        node.put("finished", history.finished());
        var drills = node.putArray("drills");
        history.drills().forEach((scenario, d) -> {
            ObjectNode drill = drills.addObject().put("scenario", scenario);
            if (d.best() != null) {
                drill.put("best", d.best());
            }
            drill.put("passed", d.passed()).put("finished", d.finished()).put("begun", d.begun());
        });
        var open = node.putArray("open");
        history.open()
                .forEach(o -> open.addObject().put("offset", o.offset()).set("begun", EntryWriter.node(o.begun())));
        var notes = node.putArray("notes");
        history.notes().forEach((skill, n) -> notes.addObject()
                .put("skill", skill)
                .put("text", n.text())
                .put("at", n.at().toString()));
        var damaged = node.putArray("damaged_lines");
        history.damagedLines().forEach(damaged::add);
        WholeFile.replace(index, EntryText.JSON.writeValueAsString(node) + "\n");
    }
}
