package startwater.score;

import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

/**
 * Whether a decision rests on nothing: rule 12 has every pad read by the third day, and a log in which nothing was written
 * for longer says nothing of today's water. Such a decision may be right, but it was a guess.
 */
final class SilentLog {
    /** Hours without a word after which a log is silent: three days, and the hours by which visits differ. */
    private static final int SILENT_HOURS = 76;

    private static final int MINUTES = 60;

    private SilentLog() {}

    /**
     * Never where the air was found off, since air comes before every test; nor where no strip is left.
     *
     * @param log up to and including the visit of the decision
     */
    static boolean is(Scenario s, DrillLog log) {
        int now = log.last().minute();
        boolean spoken = log.visits().stream()
                .anyMatch(v -> !v.written().isEmpty() && now - v.minute() <= SILENT_HOURS * MINUTES);
        return !spoken && log.last().seen().air() && used(log) < s.shelf().strips();
    }

    /** Strips that are gone, as far as the log tells. */
    private static int used(DrillLog log) {
        int used = 0;
        for (VisitRecord visit : log.visits()) {
            for (Written w : visit.written()) {
                used = w.pad() == Pad.CHLORIDE ? used : Math.max(used, w.strip() + 1);
            }
        }
        return used;
    }
}
