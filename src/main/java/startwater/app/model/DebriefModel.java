package startwater.app.model;

import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.VisitRecord;
import startwater.score.Case;
import startwater.score.KnownOverTime.Quantity;
import startwater.score.ReadingMark;
import startwater.score.Verdict;
import startwater.score.Verdict.Line;
import startwater.score.WorkingMark;

/**
 * One decision looked back on: its verdict, and what of the run may be shown by now.
 *
 * @param run which has gone on to the next visit already
 * @param steps the decisions so far with their verdicts, this one last
 * @param working the last sum of the visit, or null where none was worked
 * @param fishIn whether there were fish to decide for
 */
public record DebriefModel(
        DrillRun run, List<EndModel.Step> steps, @Nullable WorkingMark working, boolean fishIn) {
    public DebriefModel {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("Debrief: there is no decision to look back on.");
        }
    }

    private EndModel.Step last() {
        return steps.get(steps.size() - 1);
    }

    public Verdict verdict() {
        return last().verdict();
    }

    /** The visit at which it was decided. */
    public VisitRecord decided() {
        return last().visit();
    }

    public ReadingMark readings() {
        return ReadingMark.of(run, decided());
    }

    /** The three sentences that weigh most: what the numbers said, what the choice does, what it costs. */
    public List<Line> leading() {
        return verdict().leading();
    }

    /** Whatever else there is to say, the rules last. */
    public List<Line> rest() {
        List<Line> leading = leading();
        return verdict().lines().stream()
                .filter(l -> !leading.contains(l))
                .sorted(Comparator.comparing((Line l) -> l.severity() == Line.Severity.RULE))
                .toList();
    }

    /** Fish found dead since the decision, up to the visit that is open now. */
    public int diedSince() {
        int then = decided().seen().alive();
        int now = run.log().last().seen().alive();
        return Math.max(0, then - now);
    }

    /** When the run stands now, minutes. */
    public int nowMinute() {
        return run.log().last().minute();
    }

    /** The log up to the decision, which stands at its end. */
    public DrillLog log() {
        DrillLog past = run.past();
        return past.upTo(past.visits().indexOf(decided()));
    }

    /** The decision as it was judged. */
    public Case judged() {
        return new Case(run.scenario(), log());
    }

    /** The quantity that the deciding variable is. */
    public Quantity decisive() {
        return switch (verdict().decisive().variable()) {
            case EFFECTIVE_NITRITE -> Quantity.NITRITE;
            case TOXIC_AMMONIA, TOTAL_AMMONIA, CHLORINE -> Quantity.TOTAL_AMMONIA;
            case OXYGEN -> Quantity.OXYGEN;
        };
    }
}
