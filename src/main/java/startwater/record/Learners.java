package startwater.record;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The learners of one computer. A learner is a name or a number; there is no account. */
public final class Learners {
    private final Path folder;
    private final Means means;

    /** @param data the data folder; the learners lie below it */
    public Learners(Path data, Means means) {
        this.folder = data.resolve("learners");
        this.means = means;
    }

    /**
     * A learner on the list.
     *
     * @param key of the file
     * @param name a name or a number, or empty for one who goes on without
     * @param finished attempts that came to an end
     * @param open attempts that can go on
     */
    public record Known(String key, String name, int finished, int open) {}

    /** All learners, by name; a file that cannot be read stands there under its key. */
    public List<Known> list() {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Known> all = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(Names::isLearner).forEach(file -> all.add(known(file)));
        } catch (IOException | UncheckedIOException unreadable) {
            return List.of();
        }
        all.sort(Comparator.comparing((Known k) -> k.name().toLowerCase(Locale.ROOT))
                .thenComparing(Known::key));
        return all;
    }

    private static Known known(Path file) {
        String key = Names.keyOf(file);
        try {
            History history = HistoryScan.of(file).history();
            Entry.Learner learner = history.learner();
            return new Known(
                    key,
                    learner == null ? key : learner.name(),
                    history.finished(),
                    history.open().size());
        } catch (IOException unreadable) {
            return new Known(key, key, 0, 0);
        }
    }

    /** The learner of this name, small and large letters alike, or of this key. */
    public Optional<Known> find(String nameOrKey) {
        String wanted = nameOrKey.strip();
        List<Known> all = list();
        return all.stream()
                .filter(k -> k.name().equalsIgnoreCase(wanted))
                .findFirst()
                .or(() -> all.stream().filter(k -> k.key().equals(wanted)).findFirst());
    }

    /**
     * Opens the file of a learner, and makes one where there is none of this name. Where it cannot be written it is open all
     * the same, see {@link LearnerFile#trouble()}.
     *
     * @param name a name or a number; empty for one who goes on without
     * @throws RefusedException where the file comes from a newer program
     * @throws IOException where the file cannot be read
     */
    public LearnerFile open(String name) throws IOException {
        Optional<Known> known = list().stream()
                .filter(k -> k.name().equalsIgnoreCase(name.strip()))
                .findFirst();
        LearnerFile file =
                LearnerFile.open(Names.file(folder, known.map(Known::key).orElseGet(() -> freeKey(name))), means);
        if (file.history().learner() == null && !file.lookedAtOnly()) {
            file.name(name);
        }
        return file;
    }

    private String freeKey(String name) {
        String key = Names.key(name);
        String free = key;
        for (int n = 2; Files.exists(Names.file(folder, free)); n++) {
            free = key + "-" + n;
        }
        return free;
    }

    /** Opens the file with a key. @throws IOException as above, or where there is none */
    public LearnerFile openKey(String key) throws IOException {
        Path file = existing(key);
        return LearnerFile.open(file, means);
    }

    /** Looks at a file without writing. @throws IOException as above */
    public LearnerFile look(String key) throws IOException {
        return LearnerFile.look(existing(key), means);
    }

    private Path existing(String key) throws IOException {
        Path file = Names.file(folder, key);
        if (!Files.exists(file)) {
            throw new java.nio.file.NoSuchFileException(file.toString());
        }
        return file;
    }

    /** The file of a learner. */
    public Path file(String key) {
        return Names.file(folder, key);
    }

    /** Copies one learner's file. @throws FileAlreadyExistsException where something lies there @throws IOException where it fails */
    public void export(String key, Path to) throws IOException {
        Files.copy(existing(key), to);
    }

    /** What deleting a learner takes away, in order. @throws IOException where the folder cannot be read */
    public List<Path> belongings(String key) throws IOException {
        Path file = Names.file(folder, key);
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> Names.belongs(file, f)).sorted().toList();
        } catch (UncheckedIOException unreadable) {
            throw unreadable.getCause();
        }
    }

    /**
     * Deletes a learner: file, index and what was set aside.
     *
     * @return what was deleted
     * @throws RefusedException where another program writes to it
     * @throws IOException where it fails; what was deleted before stays deleted
     */
    public List<Path> delete(String key) throws IOException {
        existing(key);
        Path file = Names.file(folder, key);
        List<Path> gone = new ArrayList<>();
        try (FileGuard guard = FileGuard.take(file)) {
            if (!guard.held()) {
                throw new RefusedException(Notice.of(Notice.Kind.ELSEWHERE, key));
            }
            for (Path part : belongings(key)) {
                Files.delete(part);
                gone.add(part);
            }
        }
        Files.deleteIfExists(Names.lock(file));
        return gone;
    }
}
