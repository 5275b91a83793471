package startwater.app;

import java.time.InstantSource;
import javafx.application.Platform;
import startwater.app.view.Shell;
import startwater.cli.CrashLog;

/** While a window is open, faults of any thread come here: into the log, and as a sentence above the page. */
public final class CrashWatch implements Thread.UncaughtExceptionHandler {
    private final Shell shell;
    private final CrashLog log;
    private boolean telling;

    private CrashWatch(Shell shell, CrashLog log) {
        this.shell = shell;
        this.log = log;
    }

    /** From now on faults are noted in the data folder of the desk and told in this window. */
    public static void over(Shell shell, Desk desk) {
        Thread.setDefaultUncaughtExceptionHandler(
                new CrashWatch(shell, new CrashLog(desk.folder(), InstantSource.system())));
    }

    @Override
    public void uncaughtException(Thread thread, Throwable fault) {
        boolean noted = log.note(fault, thread, shell.screen());
        Platform.runLater(() -> tell(noted));
    }

    /** A fault of the telling itself is noted and not told again. */
    private void tell(boolean noted) {
        if (!telling) {
            telling = true;
            try {
                shell.failed(log, noted);
            } catch (RuntimeException untellable) {
                log.note(untellable, Thread.currentThread(), shell.screen());
            } finally {
                telling = false;
            }
        }
    }
}
