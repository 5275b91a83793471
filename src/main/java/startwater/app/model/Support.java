package startwater.app.model;

/** How much of a sum is laid out for the learner: a whole example first, then the last step open, then more. */
public enum Support {
    /** The whole sum, with its answer. */
    WORKED,
    /** Both factors; the product is the learner's. */
    LAST_STEP,
    /** The total and a table of shares. */
    WITH_TABLE,
    /** Nothing but the question; the table can be opened. */
    ALONE;

    /** What is left of it after so many examples seen and sums worked right. */
    public static Support after(int practised) {
        return values()[Math.max(0, Math.min(practised, values().length - 1))];
    }
}
