package startwater.cli;

import java.io.PrintWriter;

/** A bar on the error stream where somebody looks at a terminal; nothing elsewhere. */
final class ClassProgress {
    private static final int CELLS = 24;
    private static final int PERCENT = 100;

    private final PrintWriter err;
    private final boolean bar;
    private int shown = -1;

    ClassProgress(PrintWriter err, boolean bar) {
        this.err = err;
        this.bar = bar;
    }

    /** So much of all is done. Called from many threads. */
    synchronized void at(int done, int all) {
        int percent = all == 0 ? PERCENT : PERCENT * done / all;
        if (bar && percent > shown) {
            shown = percent;
            int full = CELLS * percent / PERCENT;
            err.print("\r[" + "#".repeat(full) + "-".repeat(CELLS - full) + "] " + done + " / " + all + " ");
            err.flush();
        }
    }

    synchronized void end() {
        if (bar) {
            err.print("\r" + " ".repeat(CELLS * 2) + "\r");
            err.flush();
        }
        shown = -1;
    }
}
