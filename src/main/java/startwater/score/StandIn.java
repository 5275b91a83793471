package startwater.score;

import java.util.Set;
import startwater.drill.Attendant;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.strip.Pad;

/** Whoever comes in the learner's place reads the log and keeps the standing rules. */
public final class StandIn implements Attendant {
    public static final Attendant BY_THE_RULES = new StandIn();

    private StandIn() {}

    @Override
    public Set<Pad> tests(Scenario scenario, Calendar calendar, DrillLog log) {
        return Policies.CAREFUL.tests(Notebook.of(scenario, calendar, log.visits()));
    }

    @Override
    public Decision decide(Scenario scenario, Calendar calendar, DrillLog log) {
        return Policies.CAREFUL.decide(Notebook.of(scenario, calendar, log.visits()));
    }
}
