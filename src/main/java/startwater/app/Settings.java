package startwater.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.content.WholeFile;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * How the window looks on this computer, and who learned here last.
 *
 * @param language code
 * @param theme name of the look
 * @param textPercent 100 to 200
 * @param learner key of the learner who was here last, or null
 */
public record Settings(
        String language,
        String theme,
        int textPercent,
        @Nullable String learner) {
    private static final String NAME = "settings.json";
    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** The same with another learner. */
    public Settings of(String key) {
        return new Settings(language, theme, textPercent, key);
    }

    /** What is kept in a folder; empty where nothing is, or it cannot be read. */
    static Optional<Settings> in(Path folder) {
        try {
            JsonNode n = JSON.readTree(Files.readAllBytes(folder.resolve(NAME)));
            return Optional.ofNullable(n)
                    .filter(JsonNode::isObject)
                    .map(s -> new Settings(
                            s.path("language").asString("en"),
                            s.path("theme").asString("LIGHT"),
                            Math.max(100, Math.min(200, s.path("text_percent").asInt(100))),
                            s.path("learner").isString() ? s.path("learner").asString() : null));
        } catch (IOException | JacksonException none) {
            return Optional.empty();
        }
    }

    /** Keeps them; a crash leaves the old or the new ones whole. */
    void keepIn(Path folder) throws IOException {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("language", language).put("theme", theme).put("text_percent", textPercent);
        if (learner != null) {
            node.put("learner", learner);
        }
        Files.createDirectories(folder);
        WholeFile.replace(folder.resolve(NAME), JSON.writeValueAsString(node) + "\n");
    }
}
