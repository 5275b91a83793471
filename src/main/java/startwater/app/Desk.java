package startwater.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.cli.DataFolder;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;

/** The data folder of this computer as the window uses it: settings, the learners, and the open file of the one who is here. */
public final class Desk implements AutoCloseable {
    private final Path folder;
    private final Learners learners;
    private @Nullable LearnerFile file;

    private Desk(Path folder, Means means) {
        this.folder = folder;
        this.learners = new Learners(folder, means);
    }

    /** The folder given, or the usual one of this computer; nobody has chosen a learner yet. */
    public static Desk in(@Nullable Path folder) {
        return in(folder, Means.USUAL);
    }

    /** The same with a disk and a clock of one's own. */
    public static Desk in(@Nullable Path folder, Means means) {
        return new Desk(DataFolder.at(folder), means);
    }

    /** Opens the file of the only learner here, if that one was here last: then there is nobody to ask. */
    public void openTheOnly() {
        List<Learners.Known> all = learners.list();
        String last = settings().map(Settings::learner).orElse(null);
        if (last != null && all.size() == 1 && all.get(0).key().equals(last)) {
            try {
                take(learners.openKey(all.get(0).key()));
            } catch (IOException refused) {
                // The chooser says why when it is chosen.
            }
        }
    }

    public Path folder() {
        return folder;
    }

    /** Where drills of one's own lie. */
    public Path ownDrills() {
        return folder.resolve("scenarios");
    }

    public Learners learners() {
        return learners;
    }

    public Optional<Settings> settings() {
        return Settings.in(folder);
    }

    /** Keeps settings; where they cannot be kept they hold as long as the window. */
    public void keep(Settings settings) {
        if (file != null && !Files.isDirectory(folder)) {
            // A stick that was taken out is not made anew on this computer.
            return;
        }
        try {
            settings.keepIn(folder);
        } catch (IOException unwritable) {
            // The learner's file says louder that nothing can be written here.
        }
    }

    /** Whether a learner is chosen. */
    public boolean chosen() {
        return file != null;
    }

    /** The file of the learner who is here. @throws NullPointerException while nobody is chosen */
    public LearnerFile learner() {
        return Objects.requireNonNull(file, "no learner is chosen");
    }

    /**
     * Goes on as a learner of this name, and makes a file for one who is new.
     *
     * @param name empty for one without
     * @throws IOException where the file cannot be read; the one before stays
     */
    public void choose(String name) throws IOException {
        // The file at hand is let go first: it may be the very same.
        Optional<Learners.Known> same = learners.find(name);
        if (file != null && same.map(k -> k.key().equals(learner().key())).orElse(false)) {
            return;
        }
        take(learners.open(name));
    }

    /** Goes on as the learner with this key. @throws IOException as above */
    public void chooseKey(String key) throws IOException {
        if (file == null || !key.equals(learner().key())) {
            take(learners.openKey(key));
        }
    }

    private void take(LearnerFile opened) {
        close();
        file = opened;
    }

    /** Deletes all of the learner who is here; nobody is chosen afterwards. @throws IOException where it fails */
    public List<Path> delete() throws IOException {
        String key = learner().key();
        close();
        return learners.delete(key);
    }

    /** Writes what still waits and lets go of the learner's file. */
    @Override
    public void close() {
        if (file != null) {
            file.close();
            file = null;
        }
    }
}
