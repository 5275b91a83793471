package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.DrillLog;
import startwater.drill.Habit;
import startwater.drill.Scenario;
import startwater.strip.FishMood;
import startwater.strip.Pad;
import startwater.water.UnionisedAmmonia;

/** What each of the named policies does, habit by habit. */
class PoliciesTest {
    private static final Scenario WEEK = TrialScenario.secondWeek(15);
    private static final Decision NOTHING = Decision.LEAVE_ALONE;
    private static final double PH = 8;

    private Keeping keeper = new Keeping(WEEK);

    private Decision does(Habit habit, Object... readings) {
        return Policies.byId(habit.id()).decide(keeper.comes(readings));
    }

    private static Object[] toxic(double toxic, double nitrite) {
        return new Object[] {Pad.AMMONIA, toxic / UnionisedAmmonia.fraction(PH, 26), Pad.NITRITE, nitrite, Pad.PH, PH};
    }

    @Test
    void everyHabitHasItsPolicyAndAnUnknownOneIsNamed() {
        assertThat(Policies.ids()).startsWith("careful", "optimal").hasSize(Habit.values().length + 2);
        for (Habit habit : Habit.values()) {
            assertThat(Policies.byId(habit.id()).id()).isEqualTo(habit.id());
        }
        assertThatThrownBy(() -> Policies.byId("lucky"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'lucky' is not known")
                .hasMessageContaining("hold-feed");
    }

    @Test
    void aHabitReadsDailyOrNeverAndKeepsToItsFirstStrip() {
        keeper.hours = 19;
        Notebook book = keeper.comes();
        Policy daily = Policies.byId(Habit.HOLD_FEED_ONLY.id());
        Policy never = Policies.byId(Habit.NEVER_TESTS.id());
        assertThat(daily.tests(book)).isEqualTo(Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH));
        assertThat(never.tests(book)).isEmpty();
        book.read(Pad.AMMONIA, 1);
        assertThat(daily.tests(keeper.comes())).isEmpty();
        book.read(Pad.AMMONIA, 1);
        keeper.minute += 60;
        assertThat(daily.tests(keeper.comes())).hasSize(3);
        assertThat(daily.testsAgain(book)).isFalse();
        assertThat(daily.writes()).isTrue();
        assertThat(daily.decide(book, DrillLog.EMPTY, true)).isEqualTo(daily.decide(book));
    }

    @Test
    void whoHoldsTheFeedDoesNothingElse() {
        assertThat(does(Habit.HOLD_FEED_ONLY, toxic(0.029, 0.4))).isEqualTo(NOTHING);
        assertThat(does(Habit.HOLD_FEED_ONLY, toxic(0.031, 0))).isEqualTo(NOTHING.withFeed(0.5));
        assertThat(does(Habit.HOLD_FEED_ONLY, toxic(0, 0.5))).isEqualTo(NOTHING.withFeed(0.5));
        assertThat(does(Habit.HOLD_FEED_ONLY, toxic(0.061, 0))).isEqualTo(NOTHING.withFeed(0));
        assertThat(does(Habit.HOLD_FEED_ONLY, toxic(0, 1))).isEqualTo(NOTHING.withFeed(0));
    }

    @Test
    void whoFeedsBecauseTheyBegGoesByTheFish() {
        assertThat(moody(FishMood.BEGGING)).isEqualTo(NOTHING);
        assertThat(moody(FishMood.CALM)).isEqualTo(NOTHING);
        assertThat(moody(FishMood.OFF_FEED)).isEqualTo(NOTHING.withFeed(0.5));
        assertThat(moody(FishMood.SLOW)).isEqualTo(NOTHING.withFeed(0).withChange(0.25));
        assertThat(moody(FishMood.GASPING)).isEqualTo(NOTHING.withFeed(0).withChange(0.25));
        keeper = new Keeping(TrialScenario.fishless());
        assertThat(does(Habit.FEEDS_BECAUSE_THEY_BEG)).isEqualTo(NOTHING);
    }

    private Decision moody(FishMood mood) {
        keeper.mood = mood;
        return does(Habit.FEEDS_BECAUSE_THEY_BEG);
    }

    @Test
    void halfOrATenthIsChangedOnceADay() {
        keeper.hours = 11;
        assertThat(does(Habit.HALF_EVERY_DAY)).isEqualTo(NOTHING.withChange(0.5));
        assertThat(does(Habit.HALF_EVERY_DAY)).isEqualTo(NOTHING);
        keeper.minute += 60;
        assertThat(does(Habit.HALF_EVERY_DAY)).isEqualTo(NOTHING.withChange(0.5));
        keeper = new Keeping(WEEK);
        assertThat(does(Habit.NEVER_TESTS)).isEqualTo(NOTHING.withChange(0.1));
        assertThat(does(Habit.DO_NOTHING)).isEqualTo(NOTHING);
        assertThat(does(Habit.AWAY_ALL_WEEK)).isEqualTo(NOTHING);
    }

    @Test
    void whoFeedsAndNeverChangesSaltsByTheRules() {
        Object[] high = toxic(0.2, 1);
        Decision d = does(Habit.FEEDS_NEVER_CHANGES, high);
        Decision rules = Policies.CAREFUL.decide(keeper.book);
        assertThat(rules.feed()).isZero();
        assertThat(rules.change()).isEqualTo(0.5);
        assertThat(d).isEqualTo(rules.withFeed(1).withChange(0));
        assertThat(d.saltG()).isPositive();
    }

    /** 0.03 g a litre are 72 g in 2,400 L, as far as there is any. */
    @Test
    void whoChasesThePhGivesSodaAshUnder76() {
        keeper = new Keeping(withSodaAsh(1000));
        assertThat(does(Habit.CHASES_PH, Pad.PH, 7.6)).isEqualTo(NOTHING);
        assertThat(does(Habit.CHASES_PH, Pad.PH, 7.5).sodaAshG()).isCloseTo(72, within(1e-9));
        keeper = new Keeping(withSodaAsh(20));
        assertThat(does(Habit.CHASES_PH, Pad.PH, 7.5).sodaAshG()).isEqualTo(20);
    }

    private static Scenario withSodaAsh(double grams) {
        return WEEK.change()
                .shelf(new Scenario.Shelf(5000, 3000, grams, 0, 100, 40, 10, true, false))
                .made();
    }

    @Test
    void whoDosesAndHopesGivesAPinchOfEachOrFourMoreOfAmmonia() {
        Notebook book = keeper.book;
        Decision d = does(Habit.DOSES_AND_HOPES);
        assertThat(d).isEqualTo(NOTHING.withSalt(book.saltFor(10)).withBicarbonate(book.bicarbonateFor(10)));
        keeper = new Keeping(TrialScenario.fishless());
        assertThat(does(Habit.DOSES_AND_HOPES)).isEqualTo(NOTHING.withAmmoniumChloride(keeper.book.ammoniumFor(4)));
        keeper.book.did(NOTHING.withAmmoniumChloride(195));
        assertThat(does(Habit.DOSES_AND_HOPES)).isEqualTo(NOTHING.withAmmoniumChloride(5));
    }

    /** As if no chloride were there: 100 mg/L for a little nitrite. */
    @Test
    void whoSaltsEveryReadingGivesTheFullDoseAnewEachDay() {
        for (int day = 0; day < 2; day++) {
            Decision d = does(Habit.SALTS_EVERY_READING, Pad.NITRITE, 1, Pad.CHLORIDE, 500);
            assertThat(d).isEqualTo(NOTHING.withSalt(keeper.book.saltFor(100)));
        }
        keeper.hours = 10;
        does(Habit.SALTS_EVERY_READING);
        assertThat(does(Habit.SALTS_EVERY_READING, Pad.NITRITE, 1)).isEqualTo(NOTHING);
        assertThat(new Keeping(WEEK).comes(Pad.NITRITE, 0).value(Pad.NITRITE)).isZero();
        keeper = new Keeping(WEEK);
        assertThat(does(Habit.SALTS_EVERY_READING, Pad.NITRITE, 0)).isEqualTo(NOTHING);
        keeper.book.did(NOTHING.withSalt(4990));
        assertThat(does(Habit.SALTS_EVERY_READING, Pad.NITRITE, 1).saltG()).isEqualTo(10);
    }

    @Test
    void whoScrubsKeepsTheRulesBesides() {
        Decision d = does(Habit.SCRUBS_FILTER, toxic(0.2, 1));
        assertThat(d).isEqualTo(Policies.CAREFUL.decide(keeper.book).withFilter(FilterCare.SCRUB));
        keeper.minute -= 60;
        assertThat(does(Habit.SCRUBS_FILTER, toxic(0.2, 1)).filter()).isEqualTo(FilterCare.LEAVE);
    }

    @Test
    void whoStocksAtOnceTakesAmmoniaGoneForReady() {
        keeper = new Keeping(TrialScenario.fishless());
        Decision first = does(Habit.STOCKS_AT_ONCE, Pad.AMMONIA, 0, Pad.NITRITE, 9);
        assertThat(first.stock()).as("nothing was dosed yet").isZero();
        assertThat(first.ammoniumChlorideG()).as("by the rules").isPositive();
        keeper.book.did(first);
        assertThat(does(Habit.STOCKS_AT_ONCE, Pad.AMMONIA, 0.75, Pad.NITRITE, 9).stock())
                .isZero();
        assertThat(does(Habit.STOCKS_AT_ONCE, Pad.AMMONIA, 0.7, Pad.NITRITE, 9)).isEqualTo(NOTHING.withStock(1));
        keeper.alive = 240;
        assertThat(does(Habit.STOCKS_AT_ONCE, Pad.AMMONIA, 9, Pad.NITRITE, 9)).isEqualTo(NOTHING);
        keeper = new Keeping(WEEK);
        keeper.alive = 0;
        assertThat(does(Habit.STOCKS_AT_ONCE, Pad.AMMONIA, 0))
                .as("none are to come")
                .isEqualTo(NOTHING);
    }

    @Test
    void whoNeverWritesReadsDailyAndActsOnTodaysStripAlone() {
        keeper = new Keeping(TrialScenario.fishless());
        NeverWrites policy = new NeverWrites();
        assertThat(policy.id()).isEqualTo("never-writes");
        assertThat(policy.writes()).isFalse();
        keeper.hours = 19;
        assertThat(policy.tests(keeper.comes())).isEqualTo(Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH));
        assertThat(policy.decide(keeper.book)).as("not read").isEqualTo(NOTHING);
        keeper.book.read(Pad.AMMONIA, 1);
        assertThat(policy.tests(keeper.comes())).isEmpty();
        keeper.book.read(Pad.AMMONIA, 1);
        keeper.minute += 60;
        assertThat(policy.tests(keeper.comes())).hasSize(3);
    }

    /** Nothing is 0.25 without fish and 1 with them. */
    @Test
    void whoNeverWritesStocksHalfWhenTodaysStripShowsNoneOfEither() {
        Decision half = NOTHING.withStock(0.5);
        keeper = new Keeping(TrialScenario.fishless());
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 0.25, Pad.NITRITE, 0.25))
                .isEqualTo(half);
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 0.3, Pad.NITRITE, 0)).isNotEqualTo(half);
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 0, Pad.NITRITE, 0.3)).isNotEqualTo(half);
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 0.5, Pad.NITRITE, 0).ammoniumChlorideG())
                .as("then by the rules")
                .isPositive();
        keeper.alive = 100;
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 1, Pad.NITRITE, 1)).isEqualTo(half);
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 1.1, Pad.NITRITE, 1)).isNotEqualTo(half);
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 1, Pad.NITRITE, 1.1)).isNotEqualTo(half);
        keeper.toCome = 0;
        assertThat(does(Habit.NEVER_WRITES, Pad.AMMONIA, 0, Pad.NITRITE, 0)).isEqualTo(NOTHING.withFeed(0.5));
    }
}
