package startwater.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import startwater.drill.Scenario;

/** The drills of one's own in a folder. What a learner did is kept by the id of a drill, so none may take that of a shipped one. */
public final class OwnDrills {
    private final Path folder;
    private final Library library;

    /** @param folder need not be there @param library the drills that come with the program */
    public OwnDrills(Path folder, Library library) {
        this.folder = folder;
        this.library = library;
    }

    /** Where they lie. */
    public Path folder() {
        return folder;
    }

    /** The files, by name; none where the folder cannot be read. */
    public List<Path> files() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.toString().endsWith(ScenarioReader.ENDING))
                    .sorted()
                    .toList();
        } catch (IOException | UncheckedIOException unreadable) {
            return List.of();
        }
    }

    /** Reads one of the files. */
    public Parsed<Scenario> read(Path file) {
        Parsed<Scenario> parsed = ScenarioReader.read(file);
        if (!parsed.ok() || library.drill(parsed.get().id()).isEmpty()) {
            return parsed;
        }
        Faults faults = Faults.of(file.toString());
        faults.add(0, Complaint.ID_TAKEN, "id", parsed.get().id());
        return Parsed.failed(faults);
    }

    /** A drill that comes with the program, or else a sound one of one's own. */
    public Optional<Scenario> find(String id) {
        return library.drill(id).or(() -> files().stream()
                .map(this::read)
                .filter(Parsed::ok)
                .map(Parsed::get)
                .filter(s -> s.id().equals(id))
                .findFirst());
    }
}
