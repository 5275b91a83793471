package startwater.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.app.view.Attempts;
import startwater.content.ContentHash;
import startwater.content.Library;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.json.JsonMapper;

/**
 * The open drill on disk: rewritten whole after every decision and put in place in one move, so that closing, killing or
 * losing power costs at most what was not yet decided.
 */
final class AttemptFile implements Attempts {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private final Path file;

    /** @param hash of the scenario's content: an attempt on a changed drill is not taken up */
    record Stored(String scenario, String hash, long variant, DrillLog log) {}

    private AttemptFile(Path file) {
        this.file = file;
    }

    /** In a folder, or in the platform's data folder. */
    static AttemptFile in(@Nullable Path folder) {
        return new AttemptFile((folder == null ? usual() : folder).resolve("open-drill.json"));
    }

    private static Path usual() {
        String home = System.getProperty("user.home", ".");
        String os = System.getProperty("os.name", "").toLowerCase(java.util.Locale.ROOT);
        if (os.contains("win")) {
            String roaming = System.getenv("APPDATA");
            return Path.of(roaming == null ? home : roaming, "Startwater");
        }
        if (os.contains("mac")) {
            return Path.of(home, "Library", "Application Support", "Startwater");
        }
        String data = System.getenv("XDG_DATA_HOME");
        return data == null || data.isEmpty()
                ? Path.of(home, ".local", "share", "startwater")
                : Path.of(data, "startwater");
    }

    @Override
    public boolean save(DrillRun run) {
        Stored stored = new Stored(run.scenario().id(), ContentHash.of(run.scenario()), run.variant(), run.past());
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Path next = file.resolveSibling(file.getFileName() + ".new");
            Files.write(next, JSON.writeValueAsBytes(stored));
            try (FileChannel channel = FileChannel.open(next, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
            return true;
        } catch (IOException | JacksonException failed) {
            return false;
        }
    }

    @Override
    public Optional<DrillRun> open() {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            Stored stored = JSON.readValue(Files.readAllBytes(file), Stored.class);
            Library library = Library.shipped();
            if (!library.ids().contains(stored.scenario())) {
                return Optional.empty();
            }
            Scenario scenario = library.scenario(stored.scenario()).get();
            if (!ContentHash.of(scenario).equals(stored.hash())) {
                return Optional.empty();
            }
            DrillRun run = DrillRun.replay(scenario, stored.variant(), stored.log());
            return run.over() ? Optional.empty() : Optional.of(run);
        } catch (IOException | JacksonException | IllegalArgumentException | IllegalStateException damaged) {
            setAside();
            return Optional.empty();
        }
    }

    /** A damaged file is kept beside, never overwritten. */
    private void setAside() {
        try {
            Files.move(file, file.resolveSibling(file.getFileName() + ".damaged"), StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException ignored) {
            // It stays where it is; the next save replaces it.
        }
    }

    @Override
    public void clear() {
        try {
            Files.deleteIfExists(file);
        } catch (IOException ignored) {
            // An old drill that cannot be deleted is offered again; that loses nothing.
        }
    }
}
