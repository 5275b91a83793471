package startwater.app;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import startwater.cli.DataFolder;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;

/**
 * The data folder: the open attempt, the results so far and the settings, each a small file of JSON lines. Nothing here ever
 * stops the tutor: what cannot be read counts as not there, what cannot be written is said once.
 */
public final class AttemptFile {
    private static final String ATTEMPT = "open-attempt.jsonl";
    private static final String RESULTS = "results.jsonl";
    private static final String NOTES = "notes.jsonl";
    private static final String SETTINGS = "settings.json";
    private static final int LAST_WRITES_S = 5;

    private final Path folder;
    private final ExecutorService writer = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "data folder");
        thread.setDaemon(true);
        return thread;
    });
    private volatile boolean failed;

    private AttemptFile(Path folder) {
        this.folder = folder;
    }

    /** The folder given, or the usual one of this computer. */
    public static AttemptFile in(@Nullable Path folder) {
        return new AttemptFile(DataFolder.at(folder));
    }

    public Path folder() {
        return folder;
    }

    /** Where drills of one's own lie. */
    public Path ownDrills() {
        return folder.resolve("scenarios");
    }

    /** Whether something could not be written. */
    public boolean failed() {
        return failed;
    }

    /** Keeps the attempt as it stands, soon. Call on the thread that owns the run. */
    public void save(DrillRun run) {
        String text = AttemptText.of(run);
        writer.execute(() -> replace(ATTEMPT, text));
    }

    /** Forgets the open attempt. */
    public void drop() {
        writer.execute(() -> {
            try {
                Files.deleteIfExists(folder.resolve(ATTEMPT));
            } catch (IOException e) {
                failed = true;
            }
        });
    }

    /** Id of the drill whose attempt is open. */
    public Optional<String> openDrill() {
        return AttemptText.scenarioId(read(ATTEMPT));
    }

    /** The open attempt, played again up to where it was left; empty where the drill has changed since. */
    public Optional<DrillRun> resume(Scenario scenario) {
        return AttemptText.replay(read(ATTEMPT), scenario);
    }

    /** One finished drill. @param mark 0..100, NaN when nothing was scored */
    public record Result(String scenario, long variant, double mark, boolean passed) {}

    public void finished(Result result) {
        String line = ResultText.line(result);
        writer.execute(() -> append(RESULTS, line));
        drop();
    }

    /** Results in the order they came. */
    public List<Result> results() {
        List<Result> all = new ArrayList<>();
        read(RESULTS).forEach(line -> ResultText.result(line).ifPresent(all::add));
        return all;
    }

    /** What a learner resolved at the end of a drill. @param skills what the drill trains, by id */
    public record Note(List<String> skills, String text) {
        public Note {
            skills = List.copyOf(skills);
        }
    }

    public void keep(Note note) {
        String line = ResultText.line(note);
        writer.execute(() -> append(NOTES, line));
    }

    /** The last resolution that bears on one of these skills. */
    public Optional<String> noteOn(List<String> skills) {
        return read(NOTES).stream()
                .flatMap(line -> ResultText.note(line).stream())
                .filter(n -> n.skills().stream().anyMatch(skills::contains))
                .reduce((a, b) -> b)
                .map(Note::text);
    }

    /** Best mark by drill. */
    public Map<String, Result> best() {
        Map<String, Result> best = new HashMap<>();
        for (Result r : results()) {
            best.merge(r.scenario(), r, (a, b) -> b.mark() > a.mark() || Double.isNaN(a.mark()) ? b : a);
        }
        return best;
    }

    /** Which hidden tank comes next: another one each time a drill is played. */
    public long nextVariant(String scenario) {
        return 1 + results().stream().filter(r -> r.scenario().equals(scenario)).count();
    }

    public void keep(Settings settings) {
        String text = ResultText.line(settings);
        writer.execute(() -> replace(SETTINGS, text));
    }

    public Optional<Settings> settings() {
        return read(SETTINGS).stream().findFirst().flatMap(ResultText::settings);
    }

    /** @param language code @param theme name of the look @param textPercent 100 to 200 */
    public record Settings(String language, String theme, int textPercent) {}

    /** Waits until all is written; call when the window closes. */
    public void close() {
        writer.shutdown();
        try {
            if (!writer.awaitTermination(LAST_WRITES_S, TimeUnit.SECONDS)) {
                failed = true;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private List<String> read(String name) {
        try {
            return Files.readAllLines(folder.resolve(name), StandardCharsets.UTF_8);
        } catch (IOException e) {
            return List.of();
        }
    }

    /** Writes beside and moves over, so that a crash leaves the old file or the new one whole. */
    private void replace(String name, String text) {
        try {
            Files.createDirectories(folder);
            Path fresh = folder.resolve(name + ".new");
            Files.writeString(fresh, text);
            try (FileChannel channel = FileChannel.open(fresh, StandardOpenOption.WRITE)) {
                channel.force(true);
            }
            Files.move(
                    fresh, folder.resolve(name), StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            failed = true;
        }
    }

    private void append(String name, String line) {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve(name), line, StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            failed = true;
        }
    }
}
