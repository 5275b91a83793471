package startwater.classroom;

/**
 * Something about a file or an attempt that a teacher should know.
 *
 * @param kind what
 * @param detail a name, a file, a number; may be empty
 */
public record Finding(Kind kind, String detail) {
    /** The kinds, and what each makes of the attempt. */
    public enum Kind {
        /** Bigger than any honest file. */
        TOO_BIG(Status.UNREADABLE),
        /** A link, a folder or a device, and so not opened. */
        NOT_A_FILE(Status.UNREADABLE),
        /** Cannot be read from the disk. */
        NO_ACCESS(Status.UNREADABLE),
        /** Without the line that says whose it is, or without an attempt. */
        NOTHING_IN_IT(Status.UNREADABLE),
        /** Written by a newer program. */
        NEWER(Status.UNVERIFIABLE),
        /** Lines that cannot be read were left out; the detail counts them. */
        DAMAGED_LINES(Status.CHANGED),
        /** Played again, the log does not come out; the detail says what differs first. */
        LOG_CHANGED(Status.CHANGED),
        /** A mark does not come out; the detail says which. */
        MARK_CHANGED(Status.CHANGED),
        /** Another hidden tank than the one handed out. */
        OTHER_TANK(Status.CHANGED),
        /** Practice where an exam was handed out. */
        OTHER_MODE(Status.CHANGED),
        /** Belongs to another hand-out. */
        OTHER_HANDOUT(Status.ELSEWHERE),
        /** The very attempt of another learner; the detail names that learner. */
        SAME_ATTEMPT(Status.DUPLICATE),
        /** The same readings and decisions as another learner's; the detail names that learner. */
        SAME_LOG(Status.DUPLICATE),
        /** Decided at the very same moments as another learner; the detail names that learner. */
        SAME_TIMES(Status.DUPLICATE),
        /** Played with another version of the program. */
        OTHER_VERSION(Status.UNVERIFIABLE),
        /** The drill has changed since. */
        DRILL_CHANGED(Status.UNVERIFIABLE),
        /** There is no such drill here. */
        NO_DRILL(Status.UNVERIFIABLE),
        /** Handed in more than once; the detail names the other file. It counts once. */
        TWICE(Status.SOUND),
        /** Not played to the end. */
        OPEN(Status.OPEN),
        /** Times that run backwards, or lie in the future. Clocks of old laptops do this too. */
        ODD_TIMES(Status.SOUND),
        /** Some decisions were not marked yet; the second pass marks them. */
        NOT_MARKED(Status.SOUND);

        private final Status status;

        Kind(Status status) {
            this.status = status;
        }

        public Status status() {
            return status;
        }
    }

    /** What is to be thought of an attempt; the later ones outweigh the earlier. */
    public enum Status {
        SOUND,
        OPEN,
        ELSEWHERE,
        UNVERIFIABLE,
        DUPLICATE,
        CHANGED,
        UNREADABLE;

        /** Whether it goes into tables and statistics. */
        public boolean counts() {
            return this == SOUND || this == OPEN || this == UNVERIFIABLE;
        }
    }

    static Finding of(Kind kind) {
        return new Finding(kind, "");
    }
}
