package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.drill.Actor;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;

@Tag("slow")
class JudgeTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    /** A first visit with these values written, then a decision. */
    static Case firstVisit(Scenario s, double ammonia, double nitrite, double ph, double alkalinity, Decision d) {
        DrillRun run = DrillRun.start(s, 5, DrillRun.Pace.LEARNER);
        VisitRecord v = run.now();
        v = v.with(written(Pad.AMMONIA, ammonia)).with(written(Pad.NITRITE, nitrite));
        v = v.with(written(Pad.PH, ph)).with(written(Pad.ALKALINITY, alkalinity));
        return new Case(s, new DrillLog(List.of(v.decided(d, null))));
    }

    static Written written(Pad pad, double value) {
        return new Written(pad, pad.scale().nearestStop(pad.scale().position(value)), 1, 0);
    }

    @Test
    void fullFeedWithNitriteUncoveredIsDangerousAndSaltIsSound() {
        Case fed = firstVisit(SCENARIO, 2, 5, 7.8, 100, Decision.LEAVE_ALONE);
        Verdict bad = Judge.judge(fed);
        assertThat(bad.word()).isEqualTo(Verdict.Word.DANGEROUS);
        assertThat(bad.mark()).isLessThan(50);
        assertThat(bad.scored()).isTrue();
        Decision salted = bad.best().decision();
        assertThat(salted.saltG()).isGreaterThan(0);
        Verdict good = Judge.judge(firstVisit(SCENARIO, 2, 5, 7.8, 100, salted));
        assertThat(good.word()).isEqualTo(Verdict.Word.SOUND);
        assertThat(good.mark()).isEqualTo(100);
    }

    @Test
    void leastRegretIsNoneAndNoneIsNegative() {
        Scored scored = Judge.score(firstVisit(SCENARIO, 1, 0.5, 7.8, 100, Decision.LEAVE_ALONE));
        Losses losses = scored.losses();
        assertThat(losses.regret(losses.best())).isZero();
        for (int o = 0; o < losses.options(); o++) {
            assertThat(losses.regret(o)).isGreaterThanOrEqualTo(0);
        }
        assertThat(losses.options()).isLessThanOrEqualTo(12);
        assertThat(losses.tanks()).isEqualTo(256);
    }

    @Test
    void deathsByCauseAddUpToDeaths() {
        Verdict v = Judge.judge(firstVisit(SCENARIO, 2, 2, 8.2, 100, Decision.LEAVE_ALONE));
        for (Verdict.Option o : v.options()) {
            double sum = o.byCause().stream().mapToDouble(d -> d).sum();
            assertThat(sum).isCloseTo(o.deaths(), within(1e-9 * Math.max(1, o.deaths())));
        }
    }

    @Test
    void twoHiddenTanksWithTheSameLogGetTheSameVerdict() {
        List<Verdict> verdicts = new ArrayList<>();
        for (long variant : new long[] {11, 12}) {
            // The hidden tanks differ; what is seen and written is set to be the same.
            DrillRun hidden = DrillRun.start(SCENARIO, variant, DrillRun.Pace.LEARNER);
            VisitRecord seenElsewhere =
                    DrillRun.start(SCENARIO, 99, DrillRun.Pace.LEARNER).now();
            VisitRecord v = new VisitRecord(
                            hidden.now().visit(),
                            hidden.now().minute(),
                            Actor.LEARNER,
                            seenElsewhere.seen(),
                            List.of(written(Pad.NITRITE, 1), written(Pad.AMMONIA, 1)),
                            null,
                            null)
                    .decided(Decision.LEAVE_ALONE.withChange(0.2), null);
            Belief.forget();
            verdicts.add(Judge.judge(new Case(SCENARIO, new DrillLog(List.of(v)))));
        }
        assertThat(verdicts.get(0)).isEqualTo(verdicts.get(1));
    }

    @Test
    void aReplayedLogGetsTheSameMarksOnAnyNumberOfThreads() throws Exception {
        DrillRun run = PolicyPlayer.play(SCENARIO, Policies.CAREFUL, 4, DrillRun.Pace.LEARNER);
        DrillRun again = DrillRun.replay(SCENARIO, 4, run.past(), StandIn.BY_THE_RULES);
        assertThat(again.past()).isEqualTo(run.past());
        Case third = new Case(SCENARIO, run.past().upTo(asked(run.past(), 2)));
        List<Verdict> verdicts = new ArrayList<>();
        for (int threads : new int[] {1, 2, 8}) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            Belief.forget();
            verdicts.add(pool.submit(() -> Judge.judge(third)).get());
            pool.shutdown();
        }
        assertThat(verdicts.get(1)).isEqualTo(verdicts.get(0));
        assertThat(verdicts.get(2)).isEqualTo(verdicts.get(0));
    }

    private static int asked(DrillLog log, int number) {
        int seen = 0;
        for (int i = 0; i < log.size(); i++) {
            if (log.visits().get(i).asked() && seen++ == number) {
                return i;
            }
        }
        throw new IllegalArgumentException("no decision " + number);
    }

    @Test
    void anImpossibleReadingLeavesTheWeightsFiniteAndTheLogWithoutCredit() {
        Decision d = Decision.LEAVE_ALONE;
        DrillRun run = DrillRun.start(SCENARIO, 5, DrillRun.Pace.LEARNER);
        VisitRecord v = run.now();
        for (int strip = 0; strip < 3; strip++) {
            v = v.with(new Written(Pad.AMMONIA, 16, 10, strip)).with(new Written(Pad.PH, 0, 1, strip));
        }
        Case c = new Case(SCENARIO, new DrillLog(List.of(v.decided(d, null))));
        Belief belief = Belief.of(SCENARIO, c.log());
        for (double w : belief.tankWeights()) {
            assertThat(w).isFinite();
        }
        Verdict verdict = Judge.judge(c);
        assertThat(verdict.credited()).isFalse();
        assertThat(verdict.mark()).isZero();
        assertThat(verdict.lines().get(0).key()).isEqualTo("credit.none");
    }

    @Test
    void everyLineHasWordsInBothLanguages() {
        for (double nitrite : new double[] {0, 0.5, 5}) {
            for (double ammonia : new double[] {0.2, 5}) {
                Verdict v = Judge.judge(firstVisit(SCENARIO, ammonia, nitrite, 8.2, 50, Decision.LEAVE_ALONE));
                for (Locale locale : new Locale[] {Locale.ENGLISH, Locale.forLanguageTag("es")}) {
                    WhyText words = WhyText.in(locale);
                    for (Verdict.Line line : v.lines()) {
                        assertThat(words.format(line)).isNotBlank().doesNotContain("{", "?", "NaN");
                    }
                }
            }
        }
    }
}
