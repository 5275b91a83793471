package startwater.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import startwater.content.ContentHash;
import startwater.drill.Scenario;
import startwater.record.EngineVersion;
import startwater.score.TrialStore;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * Plays of a trial in a file of JSON lines, each written as soon as it is done, so that a trial which was stopped goes on
 * from there. Lines of another build, or cut short by a stop, count as not there.
 */
final class TrialCache implements AutoCloseable {
    private final JsonMapper mapper = JsonMapper.builder().build();
    private final Map<String, String> plays = new ConcurrentHashMap<>();
    private final String build;
    private final Path file;
    private final Writer out;

    private TrialCache(Path file, String build) throws IOException {
        this.file = file;
        this.build = build;
        Path folder = file.toAbsolutePath().getParent();
        if (folder != null) {
            Files.createDirectories(folder);
        }
        boolean cut = false;
        if (Files.exists(file)) {
            String text = Files.readString(file);
            text.lines().forEach(this::take);
            cut = !text.isEmpty() && !text.endsWith("\n");
        }
        out = Files.newBufferedWriter(
                file, StandardCharsets.UTF_8, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        if (cut) {
            out.write('\n');
        }
    }

    /** @throws IOException where the file cannot be read or written */
    static TrialCache in(Path file) throws IOException {
        return new TrialCache(file, EngineVersion.here());
    }

    private void take(String line) {
        try {
            JsonNode node = mapper.readTree(line);
            if (node.path("build").asString("").equals(build)) {
                plays.put(
                        node.path("drill").asString("") + " " + node.path("key").asString(""),
                        node.path("play").asString(""));
            }
        } catch (JacksonException cutShort) {
            // Played anew.
        }
    }

    Path file() {
        return file;
    }

    /** How many plays are kept. */
    int size() {
        return plays.size();
    }

    /** The part of it that belongs to one drill as it stands now. */
    TrialStore of(Scenario scenario) {
        String drill = ContentHash.ofPlay(scenario);
        return new TrialStore() {
            @Override
            public @Nullable String find(String key) {
                return plays.get(drill + " " + key);
            }

            @Override
            public void keep(String key, String play) {
                plays.put(drill + " " + key, play);
                append(drill, key, play);
            }
        };
    }

    private synchronized void append(String drill, String key, String play) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("build", build);
        node.put("drill", drill);
        node.put("key", key);
        node.put("play", play);
        try {
            out.write(mapper.writeValueAsString(node));
            out.write('\n');
            out.flush();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public synchronized void close() throws IOException {
        out.close();
    }
}
