package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Set;
import org.junit.jupiter.api.Test;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.strip.Pad;

/** What is to be tested when, and which reading is read again. */
class DueTestsTest {
    private static final Scenario WEEK = TrialScenario.secondWeek(15);
    private static final Set<Pad> DAILY = Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH);

    /** The pads that are due so many hours after all were read. */
    private static Set<Pad> dueAfter(int hours, Keeping keeper, double ammonia, double nitrite) {
        keeper.hours = hours;
        keeper.comes(Pad.AMMONIA, ammonia, Pad.NITRITE, nitrite, Pad.PH, 8, Pad.ALKALINITY, 120, Pad.CHLORIDE, 200);
        return DueTests.pads(keeper.comes());
    }

    private static Set<Pad> dueAfter(int hours, double ammonia, double nitrite) {
        return dueAfter(hours, new Keeping(WEEK), ammonia, nitrite);
    }

    @Test
    void ammoniaNitriteAndPhAreDueDailyAndTheRestEveryThirdDay() {
        assertThat(dueAfter(19, 0.5, 0)).isEmpty();
        assertThat(dueAfter(20, 0.5, 0)).isEqualTo(DAILY);
        assertThat(dueAfter(67, 0.5, 0)).isEqualTo(DAILY);
        assertThat(dueAfter(68, 0.5, 0))
                .isEqualTo(Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY, Pad.CHLORIDE));
    }

    /** At pH 8 and 26 °C 5.7 % are toxic: 1 mg/L is just under 0.06, 1.1 just over. */
    @Test
    void whileThingsPressTheyAreDueTwiceADay() {
        assertThat(dueAfter(9, 1, 1)).isEmpty();
        assertThat(dueAfter(9, 1.1, 1)).isEqualTo(DAILY);
        assertThat(dueAfter(9, 1, 1.1)).isEqualTo(DAILY);
        assertThat(dueAfter(8, 1.1, 1.1)).isEmpty();
    }

    /** Trout feel less: nitrite holds back their feed from 0.2 mg/L on, where other fish take 1. */
    @Test
    void forTroutItPressesSooner() {
        Scenario trout = Library.shipped().scenario("soft-water").get();
        assertThat(RuleLevels.of(trout).act()).isEqualTo(0.025);
        assertThat(dueAfter(9, new Keeping(trout), 0, 0.2)).isEmpty();
        assertThat(dueAfter(9, new Keeping(trout), 0, 0.3)).isEqualTo(DAILY);
        assertThat(dueAfter(9, new Keeping(trout), 5, 0)).isEqualTo(DAILY);
    }

    @Test
    void whereFishWereFoundDeadEverythingIsDueTwiceADay() {
        Keeping keeper = new Keeping(WEEK);
        keeper.found = 1;
        assertThat(dueAfter(8, keeper, 0, 0)).isEmpty();
        keeper = new Keeping(WEEK);
        keeper.found = 1;
        assertThat(dueAfter(9, keeper, 0, 0))
                .isEqualTo(Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY, Pad.CHLORIDE));
    }

    @Test
    void withoutFishNitrateIsReadAndChlorideIsNot() {
        assertThat(dueAfter(20, new Keeping(TrialScenario.fishless()), 0.5, 0))
                .isEqualTo(Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.NITRATE));
        assertThat(dueAfter(68, new Keeping(TrialScenario.fishless()), 0.5, 0))
                .isEqualTo(Set.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.NITRATE, Pad.ALKALINITY));
    }

    /** Whether the second readings do not fit the first, a day and no decision between. */
    private static boolean odd(Keeping keeper, double[] before, double[] now) {
        keeper.comes(Pad.AMMONIA, before[0], Pad.NITRITE, before[1], Pad.PH, before[2]);
        return DueTests.odd(keeper.comes(Pad.AMMONIA, now[0], Pad.NITRITE, now[1], Pad.PH, now[2]));
    }

    private static boolean fishlessOdd(double[] before, double[] now) {
        return odd(new Keeping(TrialScenario.fishless()), before, now);
    }

    /** Without fish nothing is fed: at most twice the 3 mg/L that were there, and half for the strip's blur. */
    @Test
    void moreNitrogenThanCanBeThereIsOdd() {
        assertThat(fishlessOdd(new double[] {2, 1, 8}, new double[] {3, 3.5, 8}))
                .isFalse();
        assertThat(fishlessOdd(new double[] {2, 1, 8}, new double[] {3, 3.6, 8}))
                .isTrue();
        assertThat(fishlessOdd(new double[] {2, 1, 8}, new double[] {6.6, 0, 8}))
                .isTrue();
    }

    /** A filter may clear 4 mg/L in a day, and three quarters of what was there. */
    @Test
    void aGreaterFallThanAFilterCanClearIsOdd() {
        assertThat(fishlessOdd(new double[] {4, 2, 8}, new double[] {1, 0.4, 8}))
                .isTrue();
        assertThat(fishlessOdd(new double[] {4, 2, 8}, new double[] {1, 0.5, 8}))
                .as("a quarter is left")
                .isFalse();
        assertThat(fishlessOdd(new double[] {3, 1, 8}, new double[] {0, 0, 8}))
                .as("4 in all")
                .isFalse();
        assertThat(fishlessOdd(new double[] {3, 1.1, 8}, new double[] {0, 0, 8}))
                .isTrue();
        assertThat(fishlessOdd(new double[] {3, 1.5, 8}, new double[] {0.5, 0.3, 8}))
                .as("3.7 in all")
                .isFalse();
    }

    @Test
    void aPhThatHasMovedByMoreThanFourFifthsIsOdd() {
        for (double sign : new double[] {-1, 1}) {
            assertThat(fishlessOdd(new double[] {1, 1, 7.5}, new double[] {1, 1, 7.5 + sign * 0.79}))
                    .isFalse();
            assertThat(fishlessOdd(new double[] {1, 1, 7.5}, new double[] {1, 1, 7.5 + sign * 0.81}))
                    .isTrue();
        }
    }

    @Test
    void withoutBooksEverythingFits() {
        Keeping keeper = new Keeping(WEEK);
        assertThat(DueTests.odd(keeper.comes(Pad.AMMONIA, 20, Pad.NITRITE, 20, Pad.PH, 9)))
                .isFalse();
    }

    /**
     * 240 catfish of 13.5 g get 2.896 % a day (3.8 % at 5 g and 2.8 % at 15 g, even in the logarithm between): 93.8 g of a feed
     * with 32 % protein, of which 9.2 % turn up as ammonia, 2.762 g, or 1.151 mg/L a day. Three days of that are believed.
     */
    @Test
    void allThatTheFeedCanHaveMadeFits() {
        double load = 1.151;
        for (int days = 1; days <= 4; days++) {
            double most = 2 * load * Math.min(3, days) + 0.5;
            for (double share : new double[] {0.99, 1.01}) {
                Keeping keeper = new Keeping(WEEK);
                keeper.hours = 24 * days;
                assertThat(odd(keeper, new double[] {0, 0, 8}, new double[] {share * most, 0, 8}))
                        .as(days + " days, " + share + " of the most")
                        .isEqualTo(share > 1);
            }
        }
    }

    @Test
    void whatWasDosedIsInTheBooks() {
        Keeping keeper = new Keeping(TrialScenario.fishless());
        Notebook book = keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0, Pad.PH, 8);
        book.did(Decision.LEAVE_ALONE.withAmmoniumChloride(book.ammoniumFor(2)));
        keeper.comes(Pad.AMMONIA, 2, Pad.NITRITE, 0, Pad.PH, 8);
        assertThat(DueTests.odd(book)).isFalse();
    }
}
