package startwater.score;

import startwater.drill.DrillLog;
import startwater.drill.Scenario;
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
        return !spoken && log.last().seen().air() && StripsUsed.left(s, log, Pad.AMMONIA) > 0;
    }
}
