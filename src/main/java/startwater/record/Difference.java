package startwater.record;

import java.util.List;

/**
 * What differs first between a learner's file and the same steps played again.
 *
 * @param what the thing
 * @param visit number among the keeper's visits, from 0, at which it differs
 * @param kept what the file says
 * @param now what comes of it now
 */
public record Difference(What what, int visit, Object kept, Object now) {
    /** The things that are compared, in the order of a visit. */
    public enum What {
        /** A line is missing, or stands where it cannot be. */
        LINES,
        /** Number of a strip, or there is none left. */
        STRIP,
        /** A reading that is on no scale, or is not there to be taken back. */
        READING,
        /** A visit at which the learner is asked. */
        VISIT,
        TEMPERATURE,
        OXYGEN,
        PH,
        ALIVE,
        FOUND,
        DAY,
        /** Something else in the log. */
        LOG,
        /** The hidden tank. */
        TANK,
        SUM,
        READING_MARK,
        DECISION_MARK,
        WORD,
        REGRET,
        SCORED,
        ARGUABLE,
        CREDITED,
        DECISIVE,
        OWN,
        BEST,
        FORESIGHT,
        CAME,
        /** Fish alive at the end. */
        END_ALIVE,
        FILTER_DAY,
        MARK,
        PASSED,
        LUCK
    }

    /** Thrown where a replay meets it. */
    static final class Found extends RuntimeException {
        private static final long serialVersionUID = 1L;

        private final transient Difference difference;

        Found(Difference difference) {
            super(difference.toString(), null, false, false);
            this.difference = difference;
        }

        Difference difference() {
            return difference;
        }
    }

    /** Goes on where both are the same, to the last bit. */
    static void check(What what, int visit, Object kept, Object now) {
        if (!kept.equals(now)) {
            throw new Found(new Difference(what, visit, kept, now));
        }
    }

    /** A value that may be missing, for {@link #check}. */
    static Object there(@org.jspecify.annotations.Nullable Object value) {
        return value == null ? List.of() : value;
    }
}
