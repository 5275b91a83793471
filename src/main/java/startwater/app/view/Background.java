package startwater.app.view;

import java.util.concurrent.CompletionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;

/** One worker beside the thread that paints: what takes longer than a blink is worked out here. */
final class Background {
    private static final ExecutorService WORKER = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "look back");
        thread.setDaemon(true);
        return thread;
    });

    private static final Executor BESIDE = Executors.newSingleThreadExecutor(task -> {
        Thread thread = new Thread(task, "class");
        thread.setDaemon(true);
        return thread;
    });

    private Background() {}

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
        Work handle = new Work();
        WORKER.execute(() -> {
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
