package startwater.classroom;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import startwater.record.Entry;

/** Takes in what learners handed in: all files of a folder, each attempt played again, on all cores. */
public final class Collector {
    /** More files than any class hands in. */
    private static final int MOST_FILES = 2_000;

    private static final int NAME_LENGTH = 60;
    private static final int SHORT_ID = 8;

    private final @Nullable Handout handout;
    private final Instant now;
    private final int threads;

    /** Hears how far it has come. Called from many threads. */
    @FunctionalInterface
    public interface Progress {
        void at(int done, int all);
    }

    /**
     * A collector.
     *
     * @param handout what was handed out, or null where anything may come back
     * @param now what time it is
     * @param threads on how many threads to play
     */
    public Collector(@Nullable Handout handout, Instant now, int threads) {
        this.handout = handout;
        this.now = now;
        this.threads = threads;
    }

    /** One attempt to look at. */
    private record Task(String file, String learner, String learnerId, String id, List<Entry.OfAttempt> lines) {}

    /**
     * The first pass over a folder. Files in folders below it are not looked at, links are not followed.
     *
     * @param stop asked before every attempt; when it says so the rest is left out
     * @return attempts and unreadable files, by learner and time
     * @throws IOException where the folder cannot be read
     */
    public List<HandedIn> collect(Path folder, Progress progress, BooleanSupplier stop) throws IOException {
        List<HandedIn> unreadable = new ArrayList<>();
        List<AttemptsFile.Read> files = new ArrayList<>();
        for (Path file : files(folder)) {
            AttemptsFile.Read read = AttemptsFile.read(file);
            boolean useless = read.learner() == null
                    || read.attempts().isEmpty()
                    || read.findings().stream().anyMatch(f -> f.kind() == Finding.Kind.NEWER);
            if (useless) {
                unreadable.add(new HandedIn(read.name(), read.name(), null, null, read.findings(), false));
            } else {
                files.add(read);
            }
        }
        Map<String, String> names = names(files);
        Map<String, List<Finding>> ofFile = new HashMap<>();
        List<Task> tasks = new ArrayList<>();
        for (AttemptsFile.Read read : files) {
            Entry.Learner learner = java.util.Objects.requireNonNull(read.learner());
            ofFile.put(read.name(), read.findings());
            String name = java.util.Objects.requireNonNull(names.get(learner.id()));
            read.attempts().forEach((id, lines) -> tasks.add(new Task(read.name(), name, learner.id(), id, lines)));
        }
        List<HandedIn> looked = look(tasks, progress, stop);
        List<HandedIn> all = new ArrayList<>(Duplicates.flagged(Duplicates.once(looked.stream()
                .map(h -> h.with(ofFile.getOrDefault(h.file(), List.of())))
                .toList())));
        all.addAll(unreadable);
        all.sort(Comparator.comparing(HandedIn::learner)
                .thenComparing(
                        h -> h.attempt() == null ? Instant.MAX : h.attempt().begun())
                .thenComparing(HandedIn::file));
        return List.copyOf(all);
    }

    private static List<Path> files(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, "*" + AttemptsFile.ENDING)) {
            for (Path entry : entries) {
                if (files.size() < MOST_FILES) {
                    files.add(entry);
                }
            }
        } catch (DirectoryIteratorException unplugged) {
            throw java.util.Objects.requireNonNull(unplugged.getCause());
        }
        files.sort(Comparator.comparing(Path::toString));
        return files;
    }

    /** The name to show for every learner's id: two of one name are told apart by the beginning of their ids. */
    private static Map<String, String> names(List<AttemptsFile.Read> files) {
        Map<String, String> names = new HashMap<>();
        Map<String, Integer> used = new HashMap<>();
        for (AttemptsFile.Read read : files) {
            Entry.Learner learner = java.util.Objects.requireNonNull(read.learner());
            if (names.putIfAbsent(learner.id(), bare(learner)) == null) {
                used.merge(bare(learner), 1, Integer::sum);
            }
        }
        names.replaceAll((id, name) -> used.getOrDefault(name, 0) > 1 ? name + " " + shortId(id) : name);
        return names;
    }

    private static String bare(Entry.Learner learner) {
        String name = PlainName.of(learner.name());
        return name.isEmpty()
                ? "p-" + shortId(learner.id())
                : name.substring(0, Math.min(name.length(), NAME_LENGTH)).strip();
    }

    private static String shortId(String id) {
        String plain = id.replaceAll("[^A-Za-z0-9]", "");
        return plain.substring(0, Math.min(plain.length(), SHORT_ID));
    }

    private List<HandedIn> look(List<Task> tasks, Progress progress, BooleanSupplier stop) {
        FirstPass pass = new FirstPass(handout, now);
        AtomicInteger done = new AtomicInteger();
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            return pool.submit(() -> tasks.parallelStream()
                            .filter(t -> !stop.getAsBoolean())
                            .map(t -> {
                                HandedIn h = pass.look(t.file(), t.learner(), t.learnerId(), t.id(), t.lines());
                                progress.at(done.incrementAndGet(), tasks.size());
                                return h;
                            })
                            .toList())
                    .get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new CancellationException("collect");
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    /** The attempts of a collection that go into tables and statistics. */
    public static List<Attempt> counting(List<HandedIn> all) {
        return all.stream()
                .filter(h -> h.status().counts())
                .map(HandedIn::attempt)
                .filter(java.util.Objects::nonNull)
                .map(java.util.Objects::requireNonNull)
                .toList();
    }
}
