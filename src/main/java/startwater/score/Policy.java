package startwater.score;

import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.strip.Pad;

/** A way of keeping fish, as small published code that a real person might follow. It plays from its notebook alone. */
public interface Policy {
    /** Its name on the command line. */
    String id();

    /** Which pads it reads at this visit; may be none. */
    Set<Pad> tests(Notebook book);

    /** Whether what it has just read is so odd that it dips a second strip and goes by that. */
    default boolean testsAgain(Notebook book) {
        return false;
    }

    /** What it does at this visit, after reading. */
    Decision decide(Notebook book);

    /**
     * What it does at this visit, with the whole log at hand, the open visit at its end.
     *
     * @param planned whether the drill asks its learner at this visit
     */
    default Decision decide(Notebook book, DrillLog log, boolean planned) {
        return decide(book);
    }

    /** Whether it writes its readings down. One that does not has forgotten them by the next visit. */
    default boolean writes() {
        return true;
    }
}
