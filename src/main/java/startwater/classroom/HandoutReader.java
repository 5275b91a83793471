package startwater.classroom;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import startwater.classroom.HandoutFile.Read;
import startwater.classroom.HandoutFile.Trouble;
import startwater.content.ContentHash;
import startwater.content.Fault;
import startwater.content.Library;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;
import startwater.record.Entry;
import tools.jackson.databind.JsonNode;

/** Reads the fields of a hand-out one by one, and stops at the first that is not what it must be. */
final class HandoutReader {
    private static final int MOST_DRILLS = 12;
    private static final int LONGEST_WORDS = 200;

    private HandoutReader() {}

    /** Something in the file is not what it must be. */
    static final class Bad extends Exception {
        private static final long serialVersionUID = 1;
        private final transient Read read;

        private Bad(Trouble trouble, String detail) {
            super(detail);
            this.read = Read.no(trouble, detail);
        }

        Read read() {
            return read;
        }
    }

    static Handout handout(JsonNode node, String language) throws Bad {
        if (number(node, "format") > HandoutFile.FORMAT) {
            throw new Bad(Trouble.NEWER, "");
        }
        String id = words(node, "id");
        if (!id.matches("[A-Za-z0-9-]{1,64}")) {
            throw new Bad(Trouble.BAD_FIELD, "id");
        }
        List<Handout.Drill> drills = new ArrayList<>();
        JsonNode listed = node.path("drills");
        if (!listed.isArray() || listed.size() > MOST_DRILLS) {
            throw new Bad(Trouble.BAD_FIELD, "drills");
        }
        for (JsonNode one : listed) {
            drills.add(drill(one, language));
        }
        List<String> lessons = new ArrayList<>();
        for (JsonNode one : node.path("lessons")) {
            if (!one.isString() || !one.asString().matches("[a-z0-9-]{1,80}")) {
                throw new Bad(Trouble.BAD_FIELD, "lessons");
            }
            lessons.add(one.asString());
        }
        return new Handout(
                id,
                words(node, "title"),
                choice(node, "mode", "practice", "exam") ? Entry.Mode.PRACTICE : Entry.Mode.EXAM,
                words(node, "deadline"),
                choice(node, "tanks", "same", "each"),
                number(node, "seed"),
                drills,
                lessons);
    }

    private static Handout.Drill drill(JsonNode node, String language) throws Bad {
        String id = words(node, "id");
        if (!id.matches("[a-z0-9-]{1,60}")) {
            throw new Bad(Trouble.BAD_FIELD, "drills.id");
        }
        String content = words(node, "content");
        String file = node.path("file").isString() ? node.path("file").asString() : null;
        Scenario scenario = file == null ? shipped(id) : travelled(id, file, language);
        if (!ContentHash.ofPlay(scenario).equals(content)) {
            throw new Bad(Trouble.OTHER_DRILL, id);
        }
        return new Handout.Drill(scenario, file);
    }

    private static Scenario shipped(String id) throws Bad {
        return Library.shipped().drill(id).orElseThrow(() -> new Bad(Trouble.NO_DRILL, id));
    }

    private static Scenario travelled(String id, String file, String language) throws Bad {
        Parsed<Scenario> parsed =
                ScenarioReader.read(id + ScenarioReader.ENDING, file.getBytes(StandardCharsets.UTF_8));
        if (!parsed.ok()) {
            throw new Bad(
                    Trouble.BAD_DRILL,
                    parsed.faults().stream()
                            .limit(5)
                            .map((Fault f) -> f.line(language))
                            .collect(Collectors.joining("\n")));
        }
        return Objects.requireNonNull(parsed.value());
    }

    private static String words(JsonNode node, String field) throws Bad {
        JsonNode value = node.path(field);
        if (!value.isString() || value.asString().length() > LONGEST_WORDS) {
            throw new Bad(Trouble.BAD_FIELD, field);
        }
        return PlainName.of(value.asString());
    }

    private static long number(JsonNode node, String field) throws Bad {
        JsonNode value = node.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToLong() || value.asLong() < 0) {
            throw new Bad(Trouble.BAD_FIELD, field);
        }
        return value.asLong();
    }

    /** Whether the field says the first of two words. */
    private static boolean choice(JsonNode node, String field, String first, String second) throws Bad {
        String word = words(node, field);
        if (!word.equals(first) && !word.equals(second)) {
            throw new Bad(Trouble.BAD_FIELD, field);
        }
        return word.equals(first);
    }
}
