package startwater.drill;

import java.util.Set;
import startwater.strip.Pad;

/** How somebody keeps the tank who comes between the learner's visits. Pure: the log is all that counts. */
public interface Attendant {
    /**
     * The pads to read.
     *
     * @param log visits so far; the last is the open one, with what is seen there
     */
    Set<Pad> tests(Scenario scenario, Calendar calendar, DrillLog log);

    /** What is done, after what was read is written in the last visit of the log. */
    Decision decide(Scenario scenario, Calendar calendar, DrillLog log);
}
