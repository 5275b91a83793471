package startwater.app.model;

import java.io.IOException;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.Executor;
import java.util.function.Function;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.jspecify.annotations.Nullable;
import startwater.classroom.Collector;
import startwater.classroom.HandedIn;
import startwater.classroom.Handout;
import startwater.classroom.SecondPass;

/** The teacher's desk: a folder is collected and marked again in the background; both can be stopped. */
public final class ClassModel {
    private final Executor background;
    private final Executor window;
    private final InstantSource clock;
    private final SecondPass second;
    private final int threads;
    private final ObjectProperty<List<HandedIn>> handedIn = new SimpleObjectProperty<>(List.of());
    private final DoubleProperty progress = new SimpleDoubleProperty();
    private final BooleanProperty running = new SimpleBooleanProperty();
    private final ObjectProperty<@Nullable Path> failed = new SimpleObjectProperty<>();
    private volatile boolean stopped;
    private volatile int percent;

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

    /** How far the pass has come, 0 to 1. */
    public DoubleProperty progressProperty() {
        return progress;
    }

    public BooleanProperty runningProperty() {
        return running;
    }

    /** The folder that could not be read, or null. */
    public ObjectProperty<@Nullable Path> failedProperty() {
        return failed;
    }

    /** Takes in a folder. @param handout what was handed out, or null for any drill that ships */
    public void collect(Path folder, @Nullable Handout handout) {
        failed.set(null);
        work(before -> {
            try {
                return new Collector(handout, clock.instant(), threads).collect(folder, this::at, () -> stopped);
            } catch (IOException e) {
                window.execute(() -> failed.set(folder));
                return before;
            }
        });
    }

    /** Works marks out again: of exams, of what looks odd, and of so many others. */
    public void markAgain(int sample) {
        work(before -> second.judge(before, SecondPass.chosen(before, sample, 1), this::at, () -> stopped));
    }

    /** Ends the pass that runs; what is done by then stands. */
    public void stop() {
        stopped = true;
    }

    private void work(Function<List<HandedIn>, List<HandedIn>> pass) {
        if (running.get()) {
            return;
        }
        stopped = false;
        percent = -1;
        progress.set(0);
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

    /** Told from many threads; the window hears of whole per cents only. */
    private void at(int done, int all) {
        int now = all == 0 ? 100 : 100 * done / all;
        if (now > percent) {
            percent = now;
            window.execute(() -> progress.set(Math.max(progress.get(), now / 100.0)));
        }
    }
}
