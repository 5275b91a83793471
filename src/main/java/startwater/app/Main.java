package startwater.app;

import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.InstantSource;
import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;
import javafx.application.Application;
import startwater.classroom.HandoutFile;
import startwater.cli.CrashLog;
import startwater.cli.DataFolder;
import startwater.cli.PlayCommand;
import startwater.cli.Startwater;
import startwater.content.Library;
import startwater.content.ScenarioReader;
import startwater.text.Language;
import startwater.text.Texts;

/** Starts the tutor: a command, or the window; without a usable display the drill in the terminal. */
public final class Main {
    /** Kept, since a logger that nobody holds forgets its level. */
    private static final Logger TOOLKIT = Logger.getLogger("javafx");

    /** Endings of the files that a double click may open. */
    private static final List<String> FILES = List.of(HandoutFile.ENDING, ScenarioReader.ENDING);

    private Main() {}

    public static void main(String[] args) {
        if (args.length == 0 || args[0].startsWith("-")) {
            readAhead();
        }
        PrintWriter out = printer(System.out, "stdout");
        PrintWriter err = printer(System.err, "stderr");
        CrashLog log = new CrashLog(DataFolder.asked(args), InstantSource.system());
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, fault) -> err.println(log.say(log.note(fault, thread, "start"), CrashLog.texts(args))));
        System.exit(Startwater.run(withFile(args), out, err, wishes -> window(wishes, out, err)));
    }

    /** A desktop starts a program with the file alone that was clicked. */
    private static String[] withFile(String[] args) {
        boolean clicked = args.length == 1 && FILES.stream().anyMatch(args[0]::endsWith);
        return clicked ? new String[] {"--open", args[0]} : args;
    }

    /** Reads the drills while the toolkit starts: a window needs both, and there is more than one core. */
    private static void readAhead() {
        Thread reader = new Thread(Library::shipped, "drills");
        reader.setDaemon(true);
        reader.start();
    }

    private static int window(Startwater.WindowWishes wishes, PrintWriter out, PrintWriter err) {
        // The class path is how this program is meant to start; the toolkit's remark on it helps nobody.
        TOOLKIT.setLevel(Level.SEVERE);
        String reason = noDisplay();
        PrintStream console = System.err;
        if (reason.isEmpty()) {
            try {
                // The toolkit prints its own remarks on a display that fails; ours is one sentence. Once the window is
                // there, what is said is said again.
                System.setErr(new PrintStream(java.io.OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8));
                Window.prepare(wishes, () -> System.setErr(console));
                Application.launch(Window.class);
                return 0;
            } catch (RuntimeException | LinkageError failed) {
                if (Window.begun()) {
                    // There is a display, and the window failed: no talk in the terminal can stand in for that.
                    Texts texts = Texts.of(language(wishes), CrashLog.WORDS);
                    return Startwater.failed(failed, wishes.data(), "window", err, texts);
                }
                reason = failed.getMessage() == null ? failed.getClass().getSimpleName() : failed.getMessage();
            } finally {
                System.setErr(console);
            }
        }
        Language language = language(wishes);
        PlayCommand.offer(out, language, reason.lines().findFirst().orElse(reason));
        return 0;
    }

    private static Language language(Startwater.WindowWishes wishes) {
        return wishes.language() == null ? Language.ofComputer() : wishes.language();
    }

    /** Why no window can be opened, as far as it can be told before trying; empty where it may work. */
    private static String noDisplay() {
        boolean linux = System.getProperty("os.name", "")
                .toLowerCase(java.util.Locale.ROOT)
                .contains("linux");
        boolean forced = "Monocle".equals(System.getProperty("glass.platform"));
        String display = System.getenv("DISPLAY");
        String wayland = System.getenv("WAYLAND_DISPLAY");
        boolean none = (display == null || display.isEmpty()) && (wayland == null || wayland.isEmpty());
        return linux && !forced && none ? "DISPLAY" : "";
    }

    /** A console gets its own character set; a pipe, and a console that claims to know ASCII only, get UTF-8. */
    private static PrintWriter printer(PrintStream stream, String name) {
        String said = System.getProperty(name + ".encoding", System.getProperty("sun." + name + ".encoding"));
        Charset charset = said != null && Charset.isSupported(said) ? Charset.forName(said) : StandardCharsets.UTF_8;
        return new PrintWriter(
                stream, true, charset.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : charset);
    }
}
