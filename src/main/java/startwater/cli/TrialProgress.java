package startwater.cli;

import java.io.Console;
import java.io.PrintWriter;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;
import startwater.score.DrillTrial;
import startwater.text.Texts;

/** Says on the error stream how far a trial has come: a bar at a terminal, a line a drill elsewhere. */
final class TrialProgress {
    private static final int CELLS = 24;
    private static final int PERCENT = 100;

    private final PrintWriter err;
    private final Texts texts;
    private final boolean bar;
    private final List<Scenario> drills;
    private int shown = -1;

    /** @param bar whether lines can be overwritten */
    TrialProgress(PrintWriter err, Texts texts, boolean bar, List<Scenario> drills) {
        this.err = err;
        this.texts = texts;
        this.bar = bar;
        this.drills = drills;
    }

    /** Whether somebody looks at a terminal, as far as Java can tell. */
    @SuppressWarnings("SystemConsoleNull") // Newer Javas always have a console; those are asked what it is.
    static boolean atTerminal() {
        Console console = System.console();
        if (console == null) {
            return false;
        }
        try {
            return Boolean.TRUE.equals(Console.class.getMethod("isTerminal").invoke(console));
        } catch (ReflectiveOperationException beforeJava22) {
            return true;
        }
    }

    /** One drill is on its way. Called from many threads, one at a time. */
    void at(int drill, int done, int most) {
        int percent = PERCENT * drill / drills.size() + PERCENT * done / most / drills.size();
        if (bar && percent != shown) {
            shown = percent;
            int full = CELLS * percent / PERCENT;
            err.print("\r[" + "#".repeat(full) + "-".repeat(CELLS - full) + "] " + percent + " % "
                    + drills.get(drill).id() + " ");
            err.flush();
        }
    }

    void done(int drill, DrillTrial result) {
        if (bar) {
            return;
        }
        err.println(texts.text(
                result.fit() ? "trial.done.fit" : "trial.done.unfit", drill + 1, drills.size(), result.scenario()));
        err.flush();
    }

    void end() {
        wipe();
    }

    /** The trial was stopped from outside. @param kept the file in which what is done lies, or null */
    void stopped(@Nullable Object kept) {
        wipe();
        err.println(kept == null ? texts.text("trial.stopped") : texts.text("trial.stoppedKept", kept.toString()));
        err.flush();
    }

    private void wipe() {
        if (bar) {
            err.print("\r" + " ".repeat(CELLS + PERCENT / 2) + "\r");
            err.flush();
        }
    }
}
