package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.VisitRecord;

/** How many fish a visit left here and beside: the count from which the next visit's deaths are told. */
class CountedTest {
    private static final Scenario HERE = TrialScenario.secondWeek(15);
    private static final Scenario PLANNED = TrialScenario.fishless();

    /** The first visit of a drill with other counts. */
    private static VisitRecord counted(Scenario s, int alive, int toCome) {
        VisitRecord v = DrillRun.start(s, 5, DrillRun.Pace.LEARNER).now();
        Seen seen = v.seen();
        Seen other = new Seen(
                seen.temperatureC(),
                seen.oxygenMgPerL(),
                seen.ph(),
                seen.mood(),
                0,
                alive,
                seen.uneatenG(),
                seen.haze(),
                seen.brownGills(),
                true,
                true,
                true,
                true,
                100,
                toCome,
                seen.toComeMassG(),
                List.of());
        return new VisitRecord(v.visit(), v.minute(), v.actor(), other, List.of(), null, null);
    }

    private static Counted after(Scenario s, VisitRecord v) {
        VisitRecord next = counted(s, 0, 0);
        return Counted.before(s, new DrillLog(List.of(v, next)), 1);
    }

    @Test
    void beforeTheFirstVisitTheSheetSaysHowMany() {
        assertThat(Counted.before(HERE, DrillLog.EMPTY, 0)).isEqualTo(new Counted(240, 0));
        assertThat(Counted.before(PLANNED, DrillLog.EMPTY, 0)).isEqualTo(new Counted(0, 240));
    }

    @Test
    void thoseThatWereBroughtInAreHereAndNoLongerBeside() {
        VisitRecord v = counted(PLANNED, 40, 200);
        assertThat(after(PLANNED, v)).isEqualTo(new Counted(40, 200));
        // A quarter of 240 are 60.
        VisitRecord quarter = v.decided(Decision.LEAVE_ALONE.withStock(0.25), null);
        assertThat(after(PLANNED, quarter)).isEqualTo(new Counted(100, 140));
    }

    @Test
    void noMoreComeInThanThereAre() {
        VisitRecord all = counted(PLANNED, 40, 150).decided(Decision.LEAVE_ALONE.withStock(1), null);
        assertThat(after(PLANNED, all)).isEqualTo(new Counted(190, 0));
        VisitRecord none = counted(HERE, 238, 0).decided(Decision.LEAVE_ALONE.withStock(1), null);
        assertThat(after(HERE, none)).isEqualTo(new Counted(238, 0));
    }
}
