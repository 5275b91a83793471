package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.KnownOverTime.Moment;
import startwater.score.KnownOverTime.Quantity;
import startwater.score.KnownOverTime.Span;
import startwater.strip.Pad;
import startwater.tank.TankLayout;

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

    /** Each quantity by its place among the truths of an hour: 1 to 14 in their order, the day first. */
    @Test
    void everyQuantityTakesItsOwnTruth() {
        TruthPoint truth = new TruthPoint(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14);
        Map<Quantity, Double> places = new EnumMap<>(Quantity.class);
        places.put(Quantity.TOTAL_AMMONIA, 2.0);
        places.put(Quantity.NITRITE, 3.0);
        places.put(Quantity.PH, 5.0);
        places.put(Quantity.ALKALINITY, 6.0);
        places.put(Quantity.OXYGEN, 7.0);
        places.put(Quantity.CHLORIDE, 8.0);
        places.put(Quantity.TOXIC_AMMONIA, 9.0);
        places.put(Quantity.EFFECTIVE_NITRITE, 10.0);
        places.put(Quantity.AOB_SHARE, 11.0);
        places.put(Quantity.NOB_SHARE, 12.0);
        for (Quantity q : Quantity.values()) {
            assertThat(q.of(truth)).as(q.name()).isEqualTo(places.get(q));
        }
    }

    /** The same by two ways: from the state of a plausible tank and from the hour's truth of the hidden one. */
    @Test
    void aStateShowsWhatTheTruthOfItsHourShows() {
        DrillRun run = DrillRun.start(SCENARIO, 4, DrillRun.Pace.LEARNER);
        run.decide(Decision.LEAVE_ALONE, null);
        TruthPoint truth = run.truth().get(run.truth().size() - 1);
        for (Quantity q : Quantity.values()) {
            double state = q.of(run.hidden().state(), run.hidden().draw().parameters());
            assertThat(state).as(q.name()).isPositive().isCloseTo(q.of(truth), within(1e-9 * state));
        }
    }

    @Test
    void sharesAreShownInPercentAndNothingElseIs() {
        for (Quantity q : Quantity.values()) {
            assertThat(q.shownTimes()).as(q.name()).isEqualTo(q.name().endsWith("_SHARE") ? 100 : 1);
        }
    }

    @Test
    void aSpanHoldsItsEndsAndNothingBeyond() {
        Span span = new Span(1, 2, 4);
        for (double inside : new double[] {1, 3, 4}) {
            assertThat(span.holds(inside)).isTrue();
        }
        assertThat(span.holds(0.9)).isFalse();
        assertThat(span.holds(4.1)).isFalse();
    }

    /** Truth is noted before a decision and after it: at its moment the first of the two is what could be seen. */
    @Test
    void theTruthOfAMomentIsThatBeforeTheDecision() {
        DrillRun run = DrillRun.start(SCENARIO, 4, DrillRun.Pace.LEARNER);
        TruthPoint seen = run.truth().get(run.truth().size() - 1);
        run.decide(Decision.LEAVE_ALONE.withChange(0.5), null);
        TruthPoint last = run.truth().get(run.truth().size() - 1);
        KnownOverTime known = new KnownOverTime(List.of(
                new Moment(seen.day(), true, List.of()),
                new Moment(last.day(), true, List.of()),
                new Moment(last.day() + 5, true, List.of())));
        assertThat(known.truth(run)).containsExactly(seen, last, last);
        assertThat(run.truth().stream().filter(t -> t.day() == seen.day()).toList())
                .as("both are there")
                .hasSizeGreaterThan(1);
    }

    /** Five, fifty and ninety-five in a hundred, counted out over the waters by hand. */
    @Test
    void aSpanIsCountedOutOverTheWaters() {
        VisitRecord open = DrillRun.start(SCENARIO, 4, DrillRun.Pace.LEARNER).now();
        DrillLog log = new DrillLog(List.of(open));
        Belief belief = Belief.of(SCENARIO, log);
        double[] weights = belief.waterWeights();
        Moment moment = first(open);
        assertThat(moment.day()).isEqualTo(open.day());
        assertThat(moment.asked()).isTrue();
        Span nitrite = moment.span(Quantity.NITRITE);
        assertThat(share(belief, weights, nitrite.low())).isBetween(0.05 - 1e-9, 0.05 + 2.0 / 64);
        assertThat(share(belief, weights, nitrite.middle())).isBetween(0.5 - 1e-9, 0.5 + 2.0 / 64);
        assertThat(share(belief, weights, nitrite.high())).isBetween(0.95 - 1e-9, 0.95 + 2.0 / 64);
    }

    /** How much of the belief has this nitrite or less. */
    private static double share(Belief belief, double[] weights, double nitrite) {
        double sum = 0;
        for (int w = 0; w < weights.length; w++) {
            sum += belief.water(w).sim().state()[TankLayout.NITRITE] <= nitrite ? weights[w] : 0;
        }
        return sum;
    }
}
