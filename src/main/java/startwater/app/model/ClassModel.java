package startwater.app.model;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import startwater.classroom.Collector;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.classroom.Roster;
import startwater.classroom.SecondPass;

/** The teacher's desk: a folder is collected and marked again in the background; both can be stopped and gone on with. */
public final class ClassModel {
    private final Executor background;
    private final Executor window;
    private final InstantSource clock;
    private final SecondPass second;
    private final int threads;
    private final ObjectProperty<List<HandedIn>> handedIn = new SimpleObjectProperty<>(List.of());
    private final ObjectProperty<@Nullable Handout> handout = new SimpleObjectProperty<>();
    private final ObjectProperty<Roster> roster = new SimpleObjectProperty<>(Roster.NONE);
    private final ObjectProperty<Pace> pace = new SimpleObjectProperty<>(Pace.NONE);
    private final BooleanProperty running = new SimpleBooleanProperty();
    private final ObjectProperty<@Nullable Path> failed = new SimpleObjectProperty<>();
    private @Nullable Path folder;
    private volatile boolean stopped;
    private volatile Instant begun = Instant.EPOCH;
    private volatile Duration told = Duration.ZERO;

    /** The window hears of a pass this often, and at its end. */
    private static final Duration OFTEN = Duration.ofMillis(100);

    /**
     * How far a pass has come.
     *
     * @param judging whether marks are worked out, not attempts collected
     * @param done attempts or decisions
     * @param all of these
     * @param perMinute how many a minute, or NaN while none is done
     */
    public record Pace(boolean judging, int done, int all, double perMinute) {
        static final Pace NONE = new Pace(false, 0, 0, Double.NaN);

        /** 0 to 1. */
        public double share() {
            return all == 0 ? 0 : (double) done / all;
        }

        /** Minutes to go at this pace, or NaN while nobody knows. */
        public double minutesLeft() {
            return (all - done) / perMinute;
        }
    }

    /**
     * A desk with nothing on it.
     *
     * @param background where the work is done
     * @param window where what is shown may be changed
     */
    public ClassModel(Executor background, Executor window, InstantSource clock, SecondPass second, int threads) {
        this.background = background;
        this.window = window;
        this.clock = clock;
        this.second = second;
        this.threads = threads;
    }

    /** What came back, after the pass that ended last. */
    public ObjectProperty<List<HandedIn>> handedInProperty() {
        return handedIn;
    }

    /** What was handed out, or null for any drill that ships. */
    public ObjectProperty<@Nullable Handout> handoutProperty() {
        return handout;
    }

    /** Who is behind the pseudonyms, for this desk and as long as the window is open. */
    public ObjectProperty<Roster> rosterProperty() {
        return roster;
    }

    /** How far the pass has come. */
    public ObjectProperty<Pace> paceProperty() {
        return pace;
    }

    public BooleanProperty runningProperty() {
        return running;
    }

    /** The folder, or the file of marks in the data folder, that could not be read or deleted; or null. */
    public ObjectProperty<@Nullable Path> failedProperty() {
        return failed;
    }

    /** Says what was handed out; what was collected already is looked at again. */
    public void handedOut(@Nullable Handout given) {
        if (running.get()) {
            return;
        }
        handout.set(given);
        if (folder != null) {
            collect(folder);
        }
    }

    /** Takes in a folder. */
    public void collect(Path from) {
        if (running.get()) {
            return;
        }
        folder = from;
        failed.set(null);
        Handout given = handout.get();
        work(false, before -> {
            try {
                return new Collector(given, clock.instant(), threads).collect(from, this::at, () -> stopped);
            } catch (IOException e) {
                window.execute(() -> failed.set(from));
                return before;
            }
        });
    }

    /** Works marks out again: of exams, of what looks odd, and of so many others. */
    public void markAgain(int sample) {
        work(true, before -> second.judge(before, SecondPass.chosen(before, sample, 1), this::at, () -> stopped));
    }

    /** Ends the pass that runs; what is done by then stands. */
    public void stop() {
        stopped = true;
    }

    /**
     * Takes everything off the desk: attempts, names, marks that were worked out. The folder stays as it is.
     *
     * @throws IOException where the marks in the data folder cannot be deleted
     */
    public void clear() throws IOException {
        if (running.get()) {
            return;
        }
        folder = null;
        failed.set(null);
        handout.set(null);
        roster.set(Roster.NONE);
        handedIn.set(List.of());
        second.clear();
    }

    private void work(boolean judging, Function<List<HandedIn>, List<HandedIn>> pass) {
        if (running.get()) {
            return;
        }
        stopped = false;
        begun = clock.instant();
        told = OFTEN.negated();
        pace.set(new Pace(judging, 0, 0, Double.NaN));
        running.set(true);
        List<HandedIn> before = handedIn.get();
        background.execute(() -> {
            List<HandedIn> after = before;
            try {
                after = pass.apply(before);
            } finally {
                List<HandedIn> shown = Objects.requireNonNull(after);
                window.execute(() -> {
                    handedIn.set(shown);
                    running.set(false);
                });
            }
        });
    }

    /** Told from many threads; the window hears of it now and then. */
    private void at(int done, int all) {
        Duration took = Duration.between(begun, clock.instant());
        if (done == all || took.minus(told).compareTo(OFTEN) >= 0) {
            told = took;
            double minutes = took.toMillis() / 60_000.0;
            double perMinute = done == 0 || minutes <= 0 ? Double.NaN : done / minutes;
            window.execute(() -> {
                Pace shown = pace.get();
                if (done >= shown.done()) {
                    pace.set(new Pace(shown.judging(), done, all, perMinute));
                }
            });
        }
    }
}
