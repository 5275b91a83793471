package startwater.app;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import javafx.application.Platform;

/**
 * Watches the thread of the window: how much work is done on it in one go. A heart beats on it through
 * {@link Platform#runLater}; all between two beats is one block. What is measured is CPU time of that thread, since on a
 * machine under load the clock on the wall tells of the others. Each few milliseconds its stack is sampled, so that a block
 * falls in two: our own work (models, building of nodes), and styles, layout and painting of the toolkit.
 */
public final class FxWatch implements AutoCloseable {
    private static final long PAUSE_NS = 3_000_000;
    private static final double MILLION = 1e6;
    private static final int FRAMES = 6;

    private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    private final Thread window = Fx.call(Thread::currentThread);
    private final AtomicInteger beats = new AtomicInteger();
    private final List<Block> blocks = new ArrayList<>();
    private final Supplier<String> screen;
    private final double least;
    private final Thread sampler = new Thread(this::sample, "window watch");
    private volatile boolean ended;

    /**
     * One block.
     *
     * @param screen what was shown at its end
     * @param ownMs our own work
     * @param toolkitMs styles, layout, painting
     * @param where the place of our code that was seen most, innermost first
     */
    public record Block(String screen, double ownMs, double toolkitMs, String where) {}

    /** @param least shortest block that is told, ms @param screen what is shown */
    public FxWatch(double least, Supplier<String> screen) {
        this.least = least;
        this.screen = screen;
        sampler.setDaemon(true);
        sampler.start();
    }

    private void sample() {
        long before = threads.getThreadCpuTime(window.getId());
        int beat = -1;
        double own = 0;
        double toolkit = 0;
        Map<String, Double> places = new HashMap<>();
        while (!ended) {
            if (beat != beats.get()) {
                keep(own, toolkit, places);
                own = 0;
                toolkit = 0;
                places.clear();
                beat = beats.get();
                Platform.runLater(beats::incrementAndGet);
            }
            LockSupport.parkNanos(PAUSE_NS);
            StackTraceElement[] stack = window.getStackTrace();
            long now = threads.getThreadCpuTime(window.getId());
            double spent = (now - before) / MILLION;
            before = now;
            if (Arrays.stream(stack).anyMatch(f -> f.getMethodName().equals("firePulse"))) {
                toolkit += spent;
            } else {
                own += spent;
                places.merge(place(stack), spent, Double::sum);
            }
        }
    }

    private synchronized void keep(double own, double toolkit, Map<String, Double> places) {
        if (own + toolkit >= least) {
            String where = places.entrySet().stream()
                    .max(Comparator.comparingDouble(Map.Entry::getValue))
                    .map(Map.Entry::getKey)
                    .orElse("");
            blocks.add(new Block(screen.get(), own, toolkit, where));
        }
    }

    private static String place(StackTraceElement[] stack) {
        List<String> ours = Arrays.stream(stack)
                .filter(f -> f.getClassName().startsWith("startwater."))
                .filter(f ->
                        !f.getClassName().contains("Test") && !f.getClassName().contains(".Fx"))
                .map(f -> f.getClassName().replaceAll("^.*\\.", "") + "." + f.getMethodName() + ":" + f.getLineNumber())
                .limit(FRAMES)
                .toList();
        return String.join(" < ", ours);
    }

    /** All blocks so far that are long enough. */
    public synchronized List<Block> blocks() {
        return List.copyOf(blocks);
    }

    @Override
    public void close() {
        ended = true;
        try {
            sampler.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
