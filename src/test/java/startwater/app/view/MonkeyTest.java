package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.Fx;

/**
 * Thousands of random things done to the window: no fault, no hang, nothing lost. Another seed or number with
 * {@code -Dmonkey.seed=} and {@code -Dmonkey.events=}.
 */
class MonkeyTest {
    private static final int QUICK = 600;
    private static final int FULL = 100_000;

    @TempDir
    private Path folder;

    private final List<String> faults = new CopyOnWriteArrayList<>();
    private final Thread.UncaughtExceptionHandler before = Thread.getDefaultUncaughtExceptionHandler();
    private final Logger toolkit = Logger.getLogger("");
    private final Handler complaints = new Handler() {
        @Override
        public void publish(LogRecord record) {
            boolean ofToolkit =
                    record.getLoggerName() != null && record.getLoggerName().startsWith("javafx");
            boolean start = String.valueOf(record.getMessage()).contains("Unsupported JavaFX configuration");
            if (ofToolkit && !start && record.getLevel().intValue() >= Level.WARNING.intValue()) {
                faults.add("the toolkit says: " + record.getMessage() + said(record.getThrown()));
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    };

    private static String said(Throwable fault) {
        if (fault == null) {
            return "";
        }
        StringWriter trace = new StringWriter();
        fault.printStackTrace(new PrintWriter(trace));
        return "\n" + trace;
    }

    @BeforeEach
    void listen() {
        Fx.run(() -> {});
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, fault) -> faults.add("uncaught on " + thread.getName() + said(fault)));
        toolkit.addHandler(complaints);
    }

    @AfterEach
    void silence() {
        Thread.setDefaultUncaughtExceptionHandler(before);
        toolkit.removeHandler(complaints);
    }

    @Test
    void someThingsAtRandomDoNoHarm() throws IOException {
        play(2, QUICK);
    }

    @Test
    @Tag("full")
    void aHundredThousandThingsAtRandomDoNoHarm() throws IOException {
        play(Long.getLong("monkey.seed", 1), Integer.getInteger("monkey.events", FULL));
    }

    private void play(long seed, int events) throws IOException {
        long start = System.nanoTime();
        Path data = Files.createDirectories(folder.resolve("data"));
        try (Monkey monkey = new Monkey(seed, data, faults)) {
            monkey.run(events);
            assertThat(monkey.counts().keySet()).contains("press", "click", "key", "robot", "reopen", "drag");
            if (events > QUICK) {
                System.out.printf(
                        "monkey: seed %d, %d events in %d s, no fault, no hang, nothing lost: %s%n",
                        seed, events, (System.nanoTime() - start) / 1_000_000_000, monkey.counts());
            }
        }
    }
}
