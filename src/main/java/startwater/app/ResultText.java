package startwater.app;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import startwater.app.AttemptFile.Note;
import startwater.app.AttemptFile.Result;
import startwater.app.AttemptFile.Settings;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/** Results and settings as lines of JSON. A line that is none is passed over. */
final class ResultText {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private ResultText() {}

    static String line(Result r) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("scenario", r.scenario());
        node.put("variant", r.variant());
        if (!Double.isNaN(r.mark())) {
            node.put("mark", r.mark());
        }
        node.put("passed", r.passed());
        return JSON.writeValueAsString(node) + "\n";
    }

    static Optional<Result> result(String line) {
        return read(line)
                .filter(n -> n.path("scenario").isString())
                .map(n -> new Result(
                        n.path("scenario").asString(),
                        n.path("variant").asLong(1),
                        n.path("mark").asDouble(Double.NaN),
                        n.path("passed").asBoolean(false)));
    }

    static String line(Settings s) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("language", s.language());
        node.put("theme", s.theme());
        node.put("text_percent", s.textPercent());
        return JSON.writeValueAsString(node) + "\n";
    }

    static Optional<Settings> settings(String line) {
        return read(line)
                .map(n -> new Settings(
                        n.path("language").asString("en"),
                        n.path("theme").asString("LIGHT"),
                        Math.max(100, Math.min(200, n.path("text_percent").asInt(100)))));
    }

    static String line(Note n) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        var skills = node.putArray("skills");
        n.skills().forEach(skills::add);
        node.put("text", n.text());
        return JSON.writeValueAsString(node) + "\n";
    }

    static Optional<Note> note(String line) {
        return read(line).filter(n -> n.path("text").isString()).map(n -> {
            List<String> skills = new ArrayList<>();
            n.path("skills").forEach(s -> skills.add(s.asString("")));
            return new Note(skills, n.path("text").asString());
        });
    }

    private static Optional<JsonNode> read(String line) {
        try {
            return Optional.ofNullable(JSON.readTree(line)).filter(JsonNode::isObject);
        } catch (JacksonException e) {
            return Optional.empty();
        }
    }
}
