package startwater.score;

import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;

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

    public Decision choice() {
        return java.util.Objects.requireNonNull(visit().decision());
    }
}
