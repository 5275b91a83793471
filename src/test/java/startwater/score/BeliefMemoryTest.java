package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;

/** What was worked out is not worked out again, until it is forgotten or too much has come since. */
class BeliefMemoryTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);
    private static final Belief ONE = Belief.of(SCENARIO, log(), 2);
    private static final Belief OTHER = Belief.of(SCENARIO, log(), 3);

    private final BeliefMemory memory = new BeliefMemory();
    private int made;

    private static DrillLog log() {
        return new DrillLog(
                List.of(DrillRun.start(SCENARIO, 5, DrillRun.Pace.LEARNER).now()));
    }

    private Belief asked(int waters) {
        return memory.belief(SCENARIO, log(), waters, (s, log, n) -> {
            made++;
            return n == 2 ? ONE : OTHER;
        });
    }

    private Plausible[] drawn(Scenario s) {
        return memory.drawn(s, drill -> {
            made++;
            return new Plausible[] {ONE.water(0)};
        });
    }

    @Test
    void aBeliefIsMadeOnceForEveryNumberOfWaters() {
        assertThat(asked(2)).isSameAs(ONE);
        assertThat(asked(3)).isSameAs(OTHER);
        assertThat(asked(2)).isSameAs(ONE);
        assertThat(made).isEqualTo(2);
    }

    @Test
    void tanksAreDrawnOnceForADrill() {
        Plausible[] first = drawn(SCENARIO);
        assertThat(first).hasSize(1);
        assertThat(drawn(TrialScenario.secondWeek(15))).isSameAs(first);
        assertThat(made).isEqualTo(1);
    }

    @Test
    void whatIsForgottenIsMadeAnew() {
        asked(2);
        drawn(SCENARIO);
        memory.clear();
        asked(2);
        drawn(SCENARIO);
        assertThat(made).isEqualTo(4);
    }

    /** Drills that are played no longer do not fill the memory: of four, the one longest ago is drawn anew. */
    @Test
    void theDrillLongestAgoIsLetGo() {
        for (double chloride : new double[] {15, 20, 25}) {
            drawn(TrialScenario.secondWeek(chloride));
        }
        drawn(TrialScenario.secondWeek(15));
        assertThat(made).isEqualTo(3);
        drawn(TrialScenario.secondWeek(30));
        drawn(TrialScenario.secondWeek(15));
        assertThat(made).isEqualTo(4);
        drawn(TrialScenario.secondWeek(20));
        assertThat(made).isEqualTo(5);
    }

    @Test
    void theDecisionOfTheLastVisitPlaysNoPart() {
        VisitRecord open = log().last();
        Belief before = Belief.of(SCENARIO, new DrillLog(List.of(open)), 2);
        VisitRecord decided = open.decided(Decision.LEAVE_ALONE.withFeed(0), null);
        assertThat(Belief.of(SCENARIO, new DrillLog(List.of(decided)), 2)).isSameAs(before);
        assertThat(before.log().last().decision()).isNull();
    }
}
