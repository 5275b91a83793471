package startwater.score;

/** Judges decisions. Pure: the same case gets the same verdict, bit for bit, on any number of threads. */
public final class Judge {
    private Judge() {}

    /** Judges one decision. Takes some tenths of a second: not for the thread that paints. */
    public static Verdict judge(Case c) {
        throw new UnsupportedOperationException("being written: " + c.scenario().id());
    }
}
