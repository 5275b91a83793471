package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Prediction;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.drill.Written;
import startwater.fish.Stressor;
import startwater.strip.Pad;

/** How a mark follows from losses; on eight waters, so that a case takes some hundredths of a second. */
class JudgeMarkTest {
    private static final int WATERS = 8;
    private static final Decision FEED = Decision.LEAVE_ALONE;
    private static final Decision HOLD = FEED.withFeed(0);
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);

    private static Case nitrite(double read, Decision d) {
        return JudgeTest.firstVisit(SCENARIO, 1, read, 7.6, 100, d);
    }

    private static Scored scored(Case c) {
        return Scored.of(c, Belief.of(c.scenario(), c.log(), WATERS), 1);
    }

    private static Verdict judge(Case c) {
        return Judge.judge(c, WATERS);
    }

    /** Half a percent over what can be told halves the mark, a percent and a half leaves a quarter. */
    @Test
    void theMarkFallsWithTheRegretOverWhatCanBeTold() {
        for (Decision d : List.of(FEED, HOLD.withChange(0.25), FEED.withFeed(0.5))) {
            Verdict v = judge(nitrite(2, d));
            Scored s = scored(nitrite(2, d));
            double over = v.regret() - Math.max(0.05, 2 * v.standardError());
            assertThat(over).isPositive();
            assertThat(v.mark()).isCloseTo(100 * 0.5 / (0.5 + over), within(1e-9));
            assertThat(v.regret()).isCloseTo(s.losses().regret(s.own()), within(1e-12));
            assertThat(v.standardError())
                    .isCloseTo(s.losses().standardError(s.own(), s.losses().best()), within(1e-12));
            assertThat(v.scored()).isTrue();
            assertThat(v.arguable()).isFalse();
        }
    }

    @Test
    void moreThanAPercentOfDeathsIsDangerousLessIsCostlyAndTheBestIsSound() {
        Verdict fed = judge(nitrite(2, FEED));
        assertThat(fed.chosen().part(Component.DEATHS) - fed.best().part(Component.DEATHS))
                .isGreaterThan(1);
        assertThat(fed.word()).isEqualTo(Verdict.Word.DANGEROUS);
        Verdict held = judge(nitrite(2, HOLD.withChange(0.25)));
        assertThat(held.chosen().part(Component.DEATHS) - held.best().part(Component.DEATHS))
                .isLessThan(1);
        assertThat(held.word()).isEqualTo(Verdict.Word.COSTLY);
        Verdict best = judge(nitrite(2, fed.best().decision()));
        assertThat(best.word()).isEqualTo(Verdict.Word.SOUND);
        assertThat(best.mark()).isEqualTo(100);
        assertThat(best.regret()).isZero();
    }

    @Test
    void theWordNeedsARegretThatCanBeTold() {
        assertThat(Judge.word(1.5, 0.01)).isEqualTo(Verdict.Word.DANGEROUS);
        assertThat(Judge.word(1.5, 0)).isEqualTo(Verdict.Word.SOUND);
        assertThat(Judge.word(1, 0.5)).isEqualTo(Verdict.Word.COSTLY);
        assertThat(Judge.word(0.5, 0.15)).isEqualTo(Verdict.Word.COSTLY);
        assertThat(Judge.word(0.5, 0.14)).isEqualTo(Verdict.Word.SOUND);
    }

    /** A filter scrubbed and salted before any fish are there harms none: wasteful, but half the mark stays. */
    @Test
    void whatIsWastefulAndNotDeadlyKeepsHalfTheMark() {
        Decision waste =
                FEED.withFilter(Decision.FilterCare.SCRUB).withChange(0.75).withSalt(20_000);
        Verdict v = judge(unread(TrialScenario.fishless(), waste, JudgeTest.written(Pad.AMMONIA, 1)));
        assertThat(v.chosen().deaths()).isZero();
        assertThat(v.regret() - Math.max(0.05, 2 * v.standardError())).isGreaterThan(0.5);
        assertThat(v.mark()).isEqualTo(50);
        assertThat(v.word()).isEqualTo(Verdict.Word.COSTLY);
    }

    /** Where a second strip is worth more than its price, reading it first would have been better still. */
    @Test
    void aStripThatIsWorthItsPriceIsPartOfTheRegret() {
        Verdict v = judge(nitrite(0.2, HOLD));
        Verdict.Information i = v.information();
        assertThat(i.strip()).isGreaterThan(0.05);
        double losses = v.chosen().loss() - v.best().loss();
        assertThat(v.regret()).isCloseTo(losses + i.strip() - 0.05, within(1e-9));
    }

    @Test
    void whatAnotherViewAcceptsIsSoundAndFullyMarked() {
        Verdict v = judge(nitrite(5, HOLD.withChange(0.75).withSalt(3000)));
        assertThat(v.regret()).isGreaterThan(Math.max(0.05, 2 * v.standardError()));
        assertThat(v.arguable()).isTrue();
        assertThat(v.word()).isEqualTo(Verdict.Word.SOUND);
        assertThat(v.mark()).isEqualTo(100);
    }

    private static Case unread(Scenario s, Decision d, Written... readings) {
        return new Case(s, new DrillLog(List.of(SmallBelief.visit(s, readings).decided(d, null))));
    }

    @Test
    void aGoodGuessOnASilentLogGetsHalfTheMark() {
        Decision best = judge(unread(SCENARIO, FEED)).best().decision();
        Verdict guessed = judge(unread(SCENARIO, best));
        assertThat(guessed.mark()).isEqualTo(50);
        assertThat(guessed.word()).isEqualTo(Verdict.Word.SOUND);
    }

    @Test
    void aLogThatTheWorldContradictsEarnsNothing() {
        Written[] odd = {
            new Written(Pad.AMMONIA, 16, 10, 0),
            new Written(Pad.AMMONIA, 16, 10, 1),
            new Written(Pad.AMMONIA, 16, 10, 2)
        };
        Verdict v =
                judge(unread(SCENARIO, judge(unread(SCENARIO, FEED, odd)).best().decision(), odd));
        assertThat(v.credited()).isFalse();
        assertThat(v.mark()).isZero();
        assertThat(v.surprise()).isEqualTo(3);
        assertThat(judge(nitrite(2, FEED)).credited()).isTrue();
    }

    /** A visit counts where the worst of the options loses 0.4 % more than the best. */
    @Test
    void aVisitCountsWhereItsOptionsDiffer() {
        Scored s = scored(nitrite(2, FEED));
        double worst = 0;
        for (int o = 0; o < s.losses().options(); o++) {
            worst = Math.max(worst, s.losses().regret(o));
        }
        assertThat(worst).isGreaterThan(0.4);
        assertThat(judge(nitrite(2, judge(nitrite(2, FEED)).best().decision())).scored())
                .isTrue();
        Scenario ripe = SCENARIO.change()
                .unknowns(Map.of(Unknown.AOB_SEED, new Prior.Known(0.9), Unknown.NOB_SEED, new Prior.Known(0.9)))
                .made();
        assertThat(judge(unread(ripe, FEED)).scored()).isFalse();
    }

    @Test
    void theOptionsAreToldInFishTheBestFirst() {
        Verdict v = judge(nitrite(2, FEED));
        Scored s = scored(nitrite(2, FEED));
        Decision rules = Policies.CAREFUL.decide(s.book());
        assertThat(v.stock()).isEqualTo(240);
        assertThat(v.days()).isEqualTo(7);
        assertThat(v.options()).extracting(Verdict.Option::loss).isSorted();
        assertThat(v.options()).filteredOn(Verdict.Option::own).singleElement().isEqualTo(v.chosen());
        assertThat(v.chosen().decision()).isEqualTo(FEED);
        assertThat(v.options())
                .filteredOn(Verdict.Option::rules)
                .singleElement()
                .satisfies(o -> assertThat(o.decision()).isEqualTo(rules));
        for (Verdict.Option o : v.options()) {
            int at = s.options().indexOf(o.decision());
            // A percent of 240 fish is 2.4.
            assertThat(o.deaths()).isCloseTo(2.4 * s.losses().mean(at, Component.DEATHS), within(1e-9));
            assertThat(o.deathsLow()).isCloseTo(2.4 * s.losses().deathsQuantile(at, 0.1), within(1e-9));
            assertThat(o.deathsHigh()).isCloseTo(2.4 * s.losses().deathsQuantile(at, 0.9), within(1e-9));
            assertThat(o.deathsBy(Stressor.NITRITE))
                    .isCloseTo(2.4 * s.losses().meanDeaths(at, Stressor.NITRITE), within(1e-9));
            assertThat(o.part(Component.WATER)).isCloseTo(s.losses().mean(at, Component.WATER), within(1e-12));
            assertThat(o.loss()).isCloseTo(s.losses().mean(at), within(1e-12));
            assertThat(o.deathsBeside()).isZero();
        }
    }

    @Test
    void aPredictionIsMarkedAndTheLinesAreThere() {
        Case c = nitrite(2, FEED);
        Prediction said = new Prediction(Pad.AMMONIA, 4, Prediction.Sureness.FAIRLY_SURE);
        Case foreseen = new Case(SCENARIO, new DrillLog(List.of(c.visit().decided(FEED, said))));
        assertThat(judge(foreseen).foresight()).isNotNull();
        assertThat(judge(c).foresight()).isNull();
        assertThat(judge(c).lines()).isNotEmpty();
        assertThat(judge(c).decisive().hours()).isNotEmpty();
        assertThat(judge(c).ranges()).hasSize(Pad.values().length);
    }
}
