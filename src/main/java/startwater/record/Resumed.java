package startwater.record;

import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.score.Verdict;
import startwater.score.WorkingMark;

/**
 * An attempt to be played on: a new one, or one taken up where it was left.
 *
 * @param run the run, at its open visit or over
 * @param steps where its steps are told
 * @param verdicts of its decisions so far, in order
 * @param wet strips that lie there wet, in the order they were dipped
 * @param sum the last sum of the open visit, or null
 * @param notice why an attempt that was left could not be taken up, or null
 */
public record Resumed(
        DrillRun run,
        Steps steps,
        List<Verdict> verdicts,
        List<DippedStrip> wet,
        @Nullable WorkingMark sum,
        @Nullable Notice notice) {
    public Resumed {
        verdicts = List.copyOf(verdicts);
        wet = List.copyOf(wet);
    }

    /** A run whose steps nobody keeps. */
    public static Resumed unkept(DrillRun run) {
        return new Resumed(run, Steps.NONE, List.of(), List.of(), null, null);
    }
}
