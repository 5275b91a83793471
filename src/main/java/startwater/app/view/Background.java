package startwater.app.view;

import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** Workers beside the thread that paints: what takes longer than a blink is done here. */
final class Background {
    private static final Executor WORKER = one("look back");
    private static final Executor BESIDE = one("class");
    private static final Executor WRITER = one("files");

    private Background() {}

    private static Executor one(String name) {
        return Executors.newSingleThreadExecutor(task -> {
            Thread thread = new Thread(task, name);
            thread.setDaemon(true);
            return thread;
        });
    }

    /** A worker of its own for what takes minutes, so that nothing short waits behind it. */
    static Executor beside() {
        return BESIDE;
    }

    /** A piece of work that may still be called off. */
    static final class Work {
        private volatile boolean off;

        /** Its result is not wanted any more. */
        void cancel() {
            off = true;
        }

        boolean cancelled() {
            return off;
        }
    }

    /** Works something out and hands it over on the thread that paints, unless it was called off. */
    static <T> Work run(Supplier<T> work, Consumer<T> done) {
        return run(work, done, () -> {});
    }

    /** The same. @param failed what is to be shown where the work itself fails, which is a fault of the program */
    static <T> Work run(Supplier<T> work, Consumer<T> done, Runnable failed) {
        return run(WORKER, work, done, failed);
    }

    /** Writes a file, which {@link #finishWriting} waits for, and hands over what came of it. */
    static <T> void write(Supplier<T> work, Consumer<T> done) {
        run(WRITER, work, done, () -> {});
    }

    /** Returns once every file that was to be written is, so that a window closed at once loses none; or after so long. */
    static void finishWriting(Duration patience) {
        try {
            CompletableFuture.runAsync(() -> {}, WRITER).get(patience.toMillis(), TimeUnit.MILLISECONDS);
        } catch (TimeoutException | ExecutionException slow) {
            // A disk that does not answer must not keep the window open.
        } catch (InterruptedException called) {
            Thread.currentThread().interrupt();
        }
    }

    private static <T> Work run(Executor worker, Supplier<T> work, Consumer<T> done, Runnable failed) {
        Work handle = new Work();
        worker.execute(() -> {
            if (handle.cancelled()) {
                return;
            }
            T result;
            try {
                result = work.get();
            } catch (RuntimeException | Error fault) {
                // Noted here, on the worker's own thread, which the note names.
                report(new CompletionException(fault));
                later(handle, failed);
                return;
            }
            if (result != null) {
                later(handle, () -> done.accept(result));
            }
        });
        return handle;
    }

    private static void later(Work handle, Runnable shown) {
        Platform.runLater(() -> {
            if (!handle.cancelled()) {
                shown.run();
            }
        });
    }

    /** A fault of the program goes where all of them go. */
    static void report(Throwable fault) {
        Thread here = Thread.currentThread();
        here.getUncaughtExceptionHandler().uncaughtException(here, fault);
    }
}
