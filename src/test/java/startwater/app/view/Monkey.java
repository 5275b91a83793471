package startwater.app.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Predicate;
import javafx.application.Platform;
import javafx.event.ActionEvent;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import startwater.app.Desk;
import startwater.app.model.DrillModel;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.content.Library;
import startwater.content.OwnDrills;
import startwater.drill.Scenario;
import startwater.quantity.Stream;
import startwater.record.Entry;
import startwater.record.LearnerFile;
import startwater.record.Means;
import startwater.record.Notice;
import startwater.record.Replay;
import startwater.text.Language;

/**
 * Does so many things at random to the window of the program, closes it half way and opens it again on the same folder, and
 * looks whether all that was committed is still there. What it does follows from its seed and from what the window shows.
 */
final class Monkey implements AutoCloseable {
    /** Nothing on the thread of the window may take so long, seconds; a machine under load is slow, a dead lock is for ever. */
    private static final int HANG_S = 90;

    private static final int REMEMBERED = 40;
    /** So many things at most between two paintings of the window, which take most of the time. */
    private static final int MOST_AT_ONCE = 20;
    /** Attempts of a larger file are compared byte by byte and not played again, bytes. */
    private static final int REPLAYED = 60_000;

    private final Path folder;
    private final long seed;
    private final Stream chance;
    private final WatchedDisk disk = new WatchedDisk();
    private final Deque<String> last = new ArrayDeque<>();
    private final Map<String, Integer> counts = new TreeMap<>();
    private final List<String> faults;
    private final MonkeyHands hands;
    private final Path handout;
    /** Where the choosers of the system lead to. */
    private final Path picked;

    private final OwnDrills drills;

    @SuppressWarnings("NullAway.Init")
    private Desk desk;

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    private int learners;

    /** @param faults where uncaught faults and what the toolkit complains of are told; none may be */
    Monkey(long seed, Path folder, List<String> faults) throws IOException {
        this.seed = seed;
        this.folder = folder;
        this.faults = faults;
        this.chance = Stream.of(seed, 0x6d6f_6e6bL);
        this.hands = call(() -> new MonkeyHands(chance));
        this.handout = Files.writeString(folder.resolve("monday" + HandoutFile.ENDING), HandoutFile.text(exam()));
        this.picked = Files.createDirectories(folder.resolveSibling("picked"));
        Path own = Files.createDirectories(folder.resolve("scenarios"));
        this.drills = new OwnDrills(own, Library.shipped());
        Files.writeString(own.resolve("broken.yaml"), "id: broken\nvolume: many\n");
        open("Ana");
    }

    private static Handout exam() {
        List<Scenario> drills = Library.shipped().scenarios();
        return new Handout(
                "monday",
                "Monday",
                Entry.Mode.EXAM,
                "",
                false,
                7,
                List.of(new Handout.Drill(drills.get(0), null), new Handout.Drill(drills.get(1), null)),
                List.of(Library.shipped().lessonCards("en").get(0).id()));
    }

    /** Does so many things. @throws AssertionError with the seed and the last things done, at the first fault, hang or loss */
    void run(int events) throws IOException {
        int i = 0;
        while (i < events) {
            List<String> all = step();
            for (String done : all) {
                note(i++, done);
            }
            if (all.isEmpty()) {
                // Something is being worked out, and the page waits for it.
                LockSupport.parkNanos(TimeUnit.MILLISECONDS.toNanos(30));
            }
        }
        reopen();
    }

    private void note(int number, String done) {
        counts.merge(done.split(" ")[0], 1, Integer::sum);
        last.add(number + ": " + done);
        if (last.size() > REMEMBERED) {
            last.removeFirst();
        }
        if (!faults.isEmpty()) {
            throw failed("faults: " + String.join("\n", faults), null);
        }
    }

    /** How often what was done. */
    Map<String, Integer> counts() {
        return counts;
    }

    /** Some things one after another, so that the window is painted between them now and then. */
    private List<String> step() throws IOException {
        int what = hands.pick(1000);
        if (what < 12) {
            return List.of(reopen());
        } else if (what < 20) {
            return List.of(crashed());
        }
        return call(() -> {
            List<String> done = new ArrayList<>();
            for (int n = hands.pick(MOST_AT_ONCE); n >= 0; n--) {
                String did = inWindow(hands.pick(1000));
                if (did.equals(MonkeyHands.NOTHING)) {
                    break;
                }
                done.add(did);
            }
            return done;
        });
    }

    private String inWindow(int what) {
        Scene scene = stage.getScene();
        if (what < 200) {
            return hands.press(scene, b -> true);
        } else if (what < 460) {
            return pressOr(scene, onward());
        } else if (what < 600) {
            return hands.click(scene);
        } else if (what < 640) {
            return hands.drag(scene);
        } else if (what < 680) {
            return hands.scroll(scene);
        } else if (what < 780) {
            return hands.key(scene);
        } else if (what < 890) {
            return hands.type(scene);
        } else if (what < 930) {
            return pressOr(scene, within("language", "look"));
        } else if (what < 950) {
            return pressOr(scene, id("home", "lessons", "rehearsal", "progress", "class", "learner"));
        } else if (what < 955) {
            return start();
        } else if (what < 957) {
            shell.open(handout);
            return "hand-out";
        } else if (what < 960) {
            // What popped up over the window goes, or it would be in the way of everything else.
            List.copyOf(Window.getWindows()).stream().filter(w -> w != stage).forEach(Window::hide);
            return "put away";
        }
        return hands.robot(scene);
    }

    /** Presses one of these buttons; where there is none, another, or a key is struck. */
    private String pressOr(Scene scene, Predicate<ButtonBase> which) {
        String did = hands.press(scene, which);
        return !did.equals(MonkeyHands.NOTHING)
                ? did
                : hands.pick(2) == 0 ? hands.key(scene) : hands.press(scene, b -> true);
    }

    private String start() {
        if (!desk.chosen()) {
            return "nobody to start";
        }
        Scenario drill = hands.one(Library.shipped().scenarios());
        shell.start(drill);
        return "start " + drill.id();
    }

    /** What carries a drill on: dip, write, do it, go on, start. */
    private static Predicate<ButtonBase> onward() {
        return id("dip", "dip-chloride", "write", "go", "go-on", "start", "take-back");
    }

    private static Predicate<ButtonBase> id(String... ids) {
        return b -> b.getId() != null && Arrays.asList(ids).contains(b.getId());
    }

    private static Predicate<ButtonBase> within(String... ids) {
        return b -> {
            for (Node at = b; at != null; at = at.getParent()) {
                if (at.getId() != null && Arrays.asList(ids).contains(at.getId())) {
                    return true;
                }
            }
            return false;
        };
    }

    private void open(String learner) {
        Means means =
                new Means(disk, Means.USUAL.clock(), () -> UUID.randomUUID().toString());
        call(() -> {
            desk = Desk.in(folder, means);
            desk.choose(learner);
            shell = new Shell(hands.pick(2) == 0 ? Language.EN : Language.ES, desk);
            shell.pickFilesWith(new MonkeyPicker(picked));
            stage = Stages.show(shell);
            // Whoever deletes means it.
            stage.getScene().addEventFilter(ActionEvent.ACTION, e -> {
                if (e.getTarget() instanceof Node n && "learner-delete-yes".equals(n.getId()) && desk.chosen()) {
                    disk.forget(desk.learner().file());
                }
            });
            return stage;
        });
    }

    /** Closes the window as it is, looks at what is on the disk, and opens it again. */
    private String reopen() throws IOException {
        String name = call(() -> desk.chosen() ? desk.learner().name() : "Ana");
        call(() -> {
            allKept(shell.playing());
            shell.close();
            stage.close();
            return true;
        });
        check(folder, disk.kept());
        // A learner who has done much takes long to compare.
        boolean much = Files.size(folder) > 0 && disk.kept().values().stream().anyMatch(b -> b.length > 4 * REPLAYED);
        String next = much || hands.pick(4) == 0 ? "Ana " + ++learners : name;
        if (much) {
            disk.kept().keySet().forEach(this::putAway);
        }
        open(next);
        return "reopen as " + next;
    }

    private void putAway(Path file) {
        try {
            disk.forget(file);
            Files.deleteIfExists(file);
        } catch (IOException stays) {
            throw new IllegalStateException(stays);
        }
    }

    /** As if the power had gone: the folder as it is now, opened elsewhere. The window goes on. */
    private String crashed() throws IOException {
        Path image = folder.resolveSibling(folder.getFileName() + "-image");
        Files.createDirectories(image.resolve("learners"));
        Map<Path, byte[]> until = call(() -> {
            allKept(shell.playing());
            Map<Path, byte[]> kept = disk.kept();
            try (var files = Files.list(folder.resolve("learners"))) {
                for (Path file :
                        files.filter(f -> !f.toString().endsWith(".lock")).toList()) {
                    Files.copy(file, image.resolve("learners").resolve(file.getFileName()));
                }
            }
            return kept;
        });
        check(image, until);
        try (var all = Files.walk(image)) {
            for (Path path : all.sorted((a, b) -> b.compareTo(a)).toList()) {
                Files.delete(path);
            }
        }
        return "crash";
    }

    /**
     * All that was committed is there, reads without a remark, and plays again as it was.
     *
     * @param committed what the files must begin with: a mark may come in while they are copied, and is no loss
     */
    private void check(Path where, Map<Path, byte[]> committed) throws IOException {
        for (Map.Entry<Path, byte[]> kept : committed.entrySet()) {
            Path file = where.resolve("learners").resolve(kept.getKey().getFileName());
            int length = kept.getValue().length;
            if (!Files.exists(file)
                    || !Arrays.equals(Arrays.copyOf(Files.readAllBytes(file), length), kept.getValue())) {
                throw failed("what was committed is not in " + file, null);
            }
            if (length <= REPLAYED) {
                new Replay(id -> drills.find(id).orElse(null), true).all(file, report -> {
                    // What the form of one's own drill says now is another drill, with which nothing can be compared.
                    boolean rewritten = report.outcome() == Replay.Outcome.DRILL_CHANGED
                            && Library.shipped()
                                    .drill(report.begun().scenario())
                                    .isEmpty();
                    if (report.outcome() != Replay.Outcome.SAME && !rewritten) {
                        throw failed("played again it differs: " + report, null);
                    }
                });
            }
        }
        opens(where);
    }

    private void opens(Path where) throws IOException {
        try (Desk again = Desk.in(where)) {
            for (var known : again.learners().list()) {
                again.chooseKey(known.key());
                LearnerFile file = again.learner();
                List<Notice> notices = file.notices();
                if (!notices.isEmpty() || file.trouble().isPresent()) {
                    throw failed("opened again it complains: " + notices + file.trouble(), null);
                }
            }
        }
    }

    /** What the window says it plays is what the file says was decided. */
    private void allKept(@Nullable DrillModel model) {
        if (model == null) {
            return;
        }
        List<Entry> lines =
                Entries.ofLast(desk.learner().file(), model.run().scenario().id());
        long decided = model.run().past().visits().stream()
                .filter(v -> v.asked() && v.decision() != null)
                .count();
        boolean same = !model.steps().kept() || Entries.count(lines, Entry.Decided.class) == decided;
        if (!same) {
            throw failed("the window stands at " + decided + " decisions, its file says " + lines, null);
        }
    }

    /** Runs on the thread of the window; one that does not come back is a hang. */
    private <T> T call(Callable<T> work) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Platform.runLater(() -> {
            try {
                result.complete(work.call());
            } catch (Throwable fault) {
                result.completeExceptionally(fault);
            }
        });
        try {
            return result.get(HANG_S, TimeUnit.SECONDS);
        } catch (TimeoutException hang) {
            throw failed("the window hangs:\n" + windowThread(), null);
        } catch (ExecutionException fault) {
            throw failed("thrown", fault.getCause());
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String windowThread() {
        return Thread.getAllStackTraces().entrySet().stream()
                .filter(t -> t.getKey().getName().equals("JavaFX Application Thread"))
                .map(t -> Arrays.toString(t.getValue()).replace(", ", "\n"))
                .findFirst()
                .orElse("gone");
    }

    private AssertionError failed(String why, @Nullable Throwable cause) {
        List<String> lines = new ArrayList<>(last);
        return new AssertionError(
                why + "\nseed " + seed + " on " + (shell == null ? "" : shell.screen()) + ", the last things done:\n"
                        + String.join("\n", lines),
                cause);
    }

    @Override
    public void close() {
        // Waited for: what it still writes would be in the way of whoever clears the folder.
        call(() -> {
            Objects.requireNonNull(shell).close();
            stage.close();
            return true;
        });
    }
}
