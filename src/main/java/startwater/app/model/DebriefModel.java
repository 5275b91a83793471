package startwater.app.model;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.ReadingMark;
import startwater.score.Verdict;
import startwater.score.Verdict.Line;
import startwater.score.WorkingMark;
import startwater.strip.Pad;

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
    /** What can be laid beside the hidden tank. */
    public static final List<Pad> KNOWABLE = List.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY, Pad.CHLORIDE);

    private static final double FOOT_OF_A_DAY = 1e-9;

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

    /** What the log allowed for a pad at one visit, and what was written then, or null. */
    public record Known(
            double day, Verdict.Band allowed, @Nullable Written written) {}

    /** The same over all decisions so far. */
    public List<Known> known(Pad pad) {
        List<Known> known = new ArrayList<>();
        for (EndModel.Step step : steps) {
            step.verdict().ranges().stream()
                    .filter(r -> r.pad() == pad)
                    .findFirst()
                    .ifPresent(r -> known.add(new Known(step.visit().day(), r.today(), written(step.visit(), pad))));
        }
        return known;
    }

    private static @Nullable Written written(VisitRecord visit, Pad pad) {
        return visit.written().stream()
                .filter(w -> w.pad() == pad)
                .reduce((a, b) -> b)
                .orElse(null);
    }

    /** A true value at an hour. */
    public record Truth(double day, double value) {}

    /** The hidden tank from the first visit up to the decision; what came after is still to be read. */
    public List<Truth> truth(Pad pad) {
        double until = decided().day() + FOOT_OF_A_DAY;
        double from = steps.get(0).visit().day() - FOOT_OF_A_DAY;
        return run.truth().stream()
                .filter(t -> t.day() >= from && t.day() <= until)
                .map(t -> new Truth(t.day(), value(t, pad)))
                .toList();
    }

    private static double value(TruthPoint truth, Pad pad) {
        return switch (pad) {
            case AMMONIA -> truth.ammoniaMgPerL();
            case NITRITE -> truth.nitriteMgPerL();
            case NITRATE -> truth.nitrateMgPerL() + truth.nitriteMgPerL();
            case PH -> truth.ph();
            case ALKALINITY -> truth.alkalinityMgPerL();
            case CHLORIDE -> truth.chlorideMgPerL();
            case CHLORINE -> Double.NaN;
        };
    }

    /** The pad that the deciding variable is read from. */
    public Pad decisivePad() {
        return switch (verdict().decisive().variable()) {
            case EFFECTIVE_NITRITE -> Pad.NITRITE;
            case TOXIC_AMMONIA, TOTAL_AMMONIA, OXYGEN, CHLORINE -> Pad.AMMONIA;
        };
    }
}
