package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.KnownOverTime.Moment;
import startwater.score.KnownOverTime.Quantity;
import startwater.score.KnownOverTime.Span;
import startwater.strip.Pad;

class KnownOverTimeTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    private static DrillRun played() {
        DrillRun run = DrillRun.start(SCENARIO, 4, DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES);
        Notebook book = new Notebook(SCENARIO);
        for (int visit = 0; visit < 3; visit++) {
            PolicyPlayer.visit(run, Policies.CAREFUL, book);
        }
        return run;
    }

    @Test
    void everyVisitHasItsRangeInOrderAndMostTruthsLieWithin() {
        DrillRun run = played();
        KnownOverTime known = KnownOverTime.of(SCENARIO, run.log());
        assertThat(known.moments()).hasSameSizeAs(run.log().visits());
        var truth = known.truth(run);
        int inside = 0;
        int all = 0;
        for (int i = 0; i < known.moments().size(); i++) {
            Moment moment = known.moments().get(i);
            assertThat(truth.get(i).day()).isEqualTo(run.log().visits().get(i).day());
            for (Quantity q : Quantity.values()) {
                Span span = moment.span(q);
                assertThat(span.low()).isLessThanOrEqualTo(span.middle());
                assertThat(span.middle()).isLessThanOrEqualTo(span.high());
                double real = q.of(truth.get(i));
                inside += real >= span.low() && real <= span.high() ? 1 : 0;
                all++;
            }
        }
        assertThat((double) inside / all).isGreaterThan(0.6);
    }

    @Test
    void aReadingNarrowsWhatItReads() {
        VisitRecord open = DrillRun.start(SCENARIO, 4, DrillRun.Pace.LEARNER).now();
        Moment unread = first(open);
        Moment read = first(open.with(JudgeTest.written(Pad.NITRITE, 2)).with(JudgeTest.written(Pad.AMMONIA, 1)));
        for (Quantity q : List.of(Quantity.NITRITE, Quantity.EFFECTIVE_NITRITE, Quantity.TOTAL_AMMONIA)) {
            assertThat(width(read.span(q))).as(q.name()).isLessThan(0.8 * width(unread.span(q)));
        }
    }

    private static double width(Span span) {
        return span.high() - span.low();
    }

    private static Moment first(VisitRecord visit) {
        return KnownOverTime.of(SCENARIO, new DrillLog(List.of(visit)))
                .moments()
                .get(0);
    }
}
