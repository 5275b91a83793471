package startwater.score;

import java.util.List;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;

/** Looks back on a whole run: the standing rules and doing nothing on the very same tank, and luck apart from skill. */
public final class Review {
    private static final double PASS = 70;

    private Review() {}

    /**
     * The summary of a finished run.
     *
     * @param run the run, over
     * @param verdicts of its decisions, in order
     * @throws IllegalStateException while the run is still open
     */
    public static RunSummary of(DrillRun run, List<Verdict> verdicts) {
        if (!run.over()) {
            throw new IllegalStateException("Review: the drill is not over yet.");
        }
        Scenario s = run.scenario();
        DrillRun rules = PolicyPlayer.play(s, Policies.CAREFUL, run.variant(), DrillRun.Pace.EVERY_VISIT);
        DrillRun nothing = PolicyPlayer.play(s, Policies.byId("do-nothing"), run.variant(), DrillRun.Pace.EVERY_VISIT);
        double mark = verdicts.stream()
                .filter(Verdict::scored)
                .mapToDouble(Verdict::mark)
                .average()
                .orElse(Double.NaN);
        boolean dangerous = verdicts.stream().anyMatch(v -> v.scored() && v.word() == Verdict.Word.DANGEROUS);
        double expected = Expectation.deaths(s, run.past());
        int start = s.stockCount();
        return new RunSummary(
                mark,
                !dangerous && !(mark < PASS),
                run.truth(),
                rules.truth(),
                nothing.truth(),
                alive(run),
                alive(rules),
                alive(nothing),
                expected,
                expected - (start - alive(run)));
    }

    /** Fish alive at the end of a run: here, in the nursery and still to come. */
    public static int alive(DrillRun run) {
        Seen last = run.past().last().seen();
        return last.alive() + last.toCome();
    }
}
