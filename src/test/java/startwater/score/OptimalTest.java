package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.strip.Pad;

/** Where the drill asks, the best option is taken; between, and in what is tested, the standing rules are kept. */
class OptimalTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);
    private static final Optimal OPTIMAL = new Optimal(2);

    private static DrillLog open() {
        return new DrillLog(List.of(
                SmallBelief.visit(SCENARIO, JudgeTest.written(Pad.AMMONIA, 2), JudgeTest.written(Pad.NITRITE, 5))));
    }

    private static Notebook book(DrillLog log) {
        return Notebook.of(SCENARIO, startwater.drill.Calendar.of(SCENARIO), log.visits());
    }

    private static Decision best(DrillLog decided) {
        Scored scored = Judge.score(new Case(SCENARIO, decided), 2);
        return scored.options().get(scored.losses().best());
    }

    @Test
    void whereTheDrillAsksTheBestOptionIsTaken() {
        DrillLog log = open();
        DrillLog decided = new DrillLog(List.of(log.last().decided(Decision.LEAVE_ALONE, null)));
        assertThat(OPTIMAL.decide(book(log), log, true))
                .isEqualTo(best(decided))
                .isNotEqualTo(Decision.LEAVE_ALONE);
    }

    @Test
    void whatWasDecidedBeforeCounts() {
        DrillRun run = DrillRun.start(SCENARIO, 5, DrillRun.Pace.EVERY_VISIT);
        run.decide(Decision.LEAVE_ALONE.withSalt(2000), null);
        VisitRecord now = run.now().with(JudgeTest.written(Pad.NITRITE, 5));
        DrillLog log = run.past().plus(now);
        DrillLog decided = run.past().plus(now.decided(Decision.LEAVE_ALONE, null));
        assertThat(OPTIMAL.decide(book(log), log, true)).isEqualTo(best(decided));
    }

    @Test
    void betweenTheRulesAreKept() {
        DrillLog log = open();
        Notebook book = book(log);
        assertThat(OPTIMAL.decide(book, log, false)).isEqualTo(Policies.CAREFUL.decide(book));
        assertThat(OPTIMAL.decide(book)).isEqualTo(Policies.CAREFUL.decide(book));
        Notebook unread = new Notebook(SCENARIO);
        assertThat(OPTIMAL.tests(unread))
                .isEqualTo(Policies.CAREFUL.tests(unread))
                .isNotEmpty();
        assertThat(OPTIMAL.id()).isEqualTo("optimal");
        assertThat(Policies.byId("optimal")).isEqualTo(new Optimal(16));
    }
}
