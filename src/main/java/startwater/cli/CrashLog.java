package startwater.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import startwater.content.WholeFile;
import startwater.text.Texts;

/**
 * Notes faults of the program in one small file of the data folder, for whoever mends them. Nothing of a person is in it:
 * of a fault only the names of classes and methods are taken, never its message, which may hold a name, a path or an
 * answer. The oldest entries give way, so that the file stays small. Safe for several threads; never throws.
 */
public final class CrashLog {
    /** The words of {@link #say}. */
    public static final String WORDS = "/startwater/cli/crash";

    /** Largest size of the file, characters; all of them are ASCII. */
    static final int MOST = 64_000;

    private static final String HEAD = "== ";
    private static final int MOST_CAUSES = 6;
    private static final int MOST_FRAMES = 60;

    private final Path folder;
    private final Path file;
    private final InstantSource clock;
    private final Set<String> noted = new HashSet<>();

    /** @param data the data folder */
    public CrashLog(Path data, InstantSource clock) {
        this.folder = data;
        this.file = data.resolve("crash-log.txt");
        this.clock = clock;
    }

    /** Where it lies. */
    public Path file() {
        return file;
    }

    /**
     * Notes a fault. The same fault comes in once, however often it happens before the program ends.
     *
     * @param at what was shown or run, in words of ours
     * @return whether it is in the file
     */
    public synchronized boolean note(Throwable fault, Thread thread, String at) {
        String trace = trace(fault);
        if (noted.contains(trace)) {
            return true;
        }
        String entry = HEAD + clock.instant().truncatedTo(ChronoUnit.SECONDS) + "\nprogram " + Startwater.version()
                + ", Java " + property("java.version") + ", " + property("os.name") + " " + property("os.version") + " "
                + property("os.arch") + "\nthread " + thread.getName() + "\nat " + at + "\n" + trace + "\n";
        try {
            Files.createDirectories(folder);
            WholeFile.replace(file, fitting(before() + ascii(entry)));
            noted.add(trace);
            return true;
        } catch (IOException | RuntimeException unwritable) {
            return false;
        }
    }

    /** What is said to whoever was at work. @param noted whether the fault is in the file */
    public String say(boolean noted, Texts texts) {
        return noted ? texts.text("crash.noted", file) : texts.text("crash.notNoted", file);
    }

    /** The words of {@link #say} in the language that a command line asks for. */
    public static Texts texts(String... args) {
        return Texts.of(CliTexts.asked(args), WORDS);
    }

    private String before() throws IOException {
        return Files.exists(file) ? new String(Files.readAllBytes(file), StandardCharsets.US_ASCII) : "";
    }

    private static String fitting(String text) {
        String kept = text;
        while (kept.length() > MOST) {
            int next = kept.indexOf("\n" + HEAD);
            kept = next < 0 ? kept.substring(0, MOST) : kept.substring(next + 1);
        }
        return kept;
    }

    private static String property(String name) {
        return System.getProperty(name, "?");
    }

    private static String ascii(String text) {
        return text.replaceAll("[^\\n\\x20-\\x7e]", "?");
    }

    private static String trace(Throwable fault) {
        StringBuilder trace = new StringBuilder();
        @Nullable Throwable at = fault;
        for (int n = 0; at != null && n < MOST_CAUSES; n++) {
            trace.append(n == 0 ? "" : "caused by ")
                    .append(at.getClass().getName())
                    .append('\n');
            StackTraceElement[] frames = at.getStackTrace();
            for (int i = 0; i < Math.min(frames.length, MOST_FRAMES); i++) {
                trace.append("  ")
                        .append(frames[i].getClassName())
                        .append('.')
                        .append(frames[i].getMethodName())
                        .append(':')
                        .append(frames[i].getLineNumber())
                        .append('\n');
            }
            at = at.getCause();
        }
        return trace.toString();
    }
}
