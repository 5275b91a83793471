package startwater.score;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;

/**
 * One decision to be judged, and all that bears on it: the scenario and the log up to and including the visit, whose
 * decision is the one in question. The hidden tank is not in it, so two tanks with the same log get the same mark.
 */
public record Case(Scenario scenario, DrillLog log) {
    public Case {
        if (log.size() == 0 || log.last().decision() == null) {
            throw new IllegalArgumentException("Case: the log must end in a visit with a decision.");
        }
    }

    public VisitRecord visit() {
        return log.last();
    }

    /** The same case with another choice. */
    public Case choosing(Decision other) {
        return withVisit(visit().decided(other, visit().prediction()));
    }

    /** The same case with one reading in place of another, or one more. @param old written at this visit, or null */
    Case rereading(@Nullable Written old, Written other) {
        List<Written> written = new ArrayList<>(visit().written());
        if (old == null) {
            written.add(other);
        } else {
            written.replaceAll(w -> w.equals(old) ? other : w);
        }
        VisitRecord v = visit();
        return withVisit(
                new VisitRecord(v.visit(), v.minute(), v.actor(), v.seen(), written, v.decision(), v.prediction()));
    }

    private Case withVisit(VisitRecord last) {
        List<VisitRecord> visits = new ArrayList<>(log.visits());
        visits.set(visits.size() - 1, last);
        return new Case(scenario, new DrillLog(visits));
    }

    public Decision choice() {
        return java.util.Objects.requireNonNull(visit().decision());
    }
}
