package startwater.app;

import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;

/** Runs test code on the JavaFX thread; starts the toolkit once, without a display. */
public final class Fx {
    private static boolean started;

    private Fx() {}

    /** The result of some work on the JavaFX thread; a failure there fails here. */
    public static synchronized <T> T call(Callable<T> work) {
        CompletableFuture<T> result = new CompletableFuture<>();
        Runnable task = () -> {
            try {
                result.complete(work.call());
            } catch (Throwable failure) {
                result.completeExceptionally(failure);
            }
        };
        start(task);
        try {
            return result.get(60, TimeUnit.SECONDS);
        } catch (Exception failure) {
            throw new AssertionError(failure.getCause() == null ? failure : failure.getCause());
        }
    }

    /** The same without a result. */
    public static void run(Runnable work) {
        call(() -> {
            work.run();
            return true;
        });
    }

    private static void start(Runnable task) {
        if (started) {
            Platform.runLater(task);
            return;
        }
        started = true;
        try {
            Platform.startup(task);
            Platform.setImplicitExit(false);
        } catch (IllegalStateException alreadyRunning) {
            Platform.runLater(task);
        }
    }
}
