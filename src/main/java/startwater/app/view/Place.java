package startwater.app.view;

/** The places of the window, in the order of the list at the left. */
enum Place {
    HOME,
    LESSONS,
    /** One's own system before it is filled. */
    REHEARSAL,
    PROGRESS,
    /** The teacher's desk. */
    CLASS,
    /** Who is learning. */
    LEARNER,
    /** A drill and what follows it take the whole window. */
    DRILL
}
