package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Scenario;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** Rules 13 and 14: what proves a filter, how many fish follow from it, and when it is rinsed. */
class StartRulesTest {
    private static final Scenario BOUGHT = BentDrill.fishless("start-rules").made();
    private static final Scenario BESIDE =
            BentDrill.beside("start-rules-beside").made();

    private int day;

    private Decision day(Notebook book, double ammonia, double nitrite, int alive, int toCome) {
        return day(book, ammonia, nitrite, alive, toCome, 100);
    }

    /** A morning: comes, reads, and does what the rules say. */
    private Decision day(Notebook book, double ammonia, double nitrite, int alive, int toCome, int flow) {
        int minute = ++day * Calendar.DAY + 480;
        book.arrive(
                minute,
                minute + Calendar.DAY,
                new Notebook.Sight(26, 7, alive > 0 ? FishMood.CALM : null, true, flow, 0, alive, toCome));
        book.read(Pad.AMMONIA, ammonia);
        book.read(Pad.NITRITE, nitrite);
        book.read(Pad.NITRATE, 10);
        book.read(Pad.PH, 7.5);
        book.read(Pad.ALKALINITY, 150);
        book.read(Pad.CHLORIDE, 200);
        Decision d = Policies.CAREFUL.decide(book);
        book.did(d);
        return d;
    }

    @Test
    void twoFullDosesGoneInADayBringInWhatTheyProveAndAtMostHalf() {
        Notebook book = new Notebook(BOUGHT);
        assertThat(day(book, 0, 0, 0, 40).ammoniumChlorideG()).isPositive();
        assertThat(day(book, 0, 0, 0, 40).stock()).as("once is not yet proof").isZero();
        assertThat(book.stocking().provedMgPerLPerDay()).isCloseTo(2, within(0.05));
        Decision ready = day(book, 0, 0, 0, 40);
        assertThat(ready.stock()).isEqualTo(Math.min(0.5, book.stocking().provedShare()));
        assertThat(ready.ammoniumChlorideG()).as("never with fish in it").isZero();
    }

    @Test
    void ammoniaGoneAndNitriteNotIsNoProof() {
        Notebook book = new Notebook(BOUGHT);
        for (int i = 0; i < 6; i++) {
            assertThat(day(book, 0, 4, 0, 40).stock()).isZero();
        }
        assertThat(book.stocking().passes()).isZero();
    }

    @Test
    void theRestComesInStepsWhileTheWaterStaysCalm() {
        Notebook book = new Notebook(BOUGHT);
        day(book, 0, 0, 0, 40);
        day(book, 0, 0, 0, 40);
        int in = (int) Math.rint(40 * day(book, 0, 0, 0, 40).stock());
        assertThat(day(book, 0.1, 0.1, in, 40 - in).stock()).isZero();
        assertThat(day(book, 0.1, 2, in, 40 - in).stock()).as("nitrite over 1").isZero();
        assertThat(day(book, 0.1, 0.1, in, 40 - in).stock()).isZero();
        assertThat(day(book, 0.1, 0.1, in, 40 - in).stock()).isGreaterThanOrEqualTo(0.2);
    }

    @Test
    void whereFishDieInTheNurseryOneProofMustDo() {
        Notebook book = new Notebook(BESIDE);
        day(book, 0, 0, 0, 600);
        assertThat(day(book, 0, 0, 0, 600).stock()).isZero();
        day = 0;
        Notebook pressed = new Notebook(BESIDE);
        day(pressed, 0, 0, 0, 600);
        assertThat(day(pressed, 0, 0, 0, 590).stock()).isGreaterThanOrEqualTo(0.2);
        assertThat(pressed.stocking().lostBeside()).isEqualTo(10);
    }

    @Test
    void aFilterThatPassesLessWaterIsRinsedAndNoOther() {
        Notebook book = new Notebook(BOUGHT);
        assertThat(day(book, 1, 1, 0, 40, 100).filter()).isEqualTo(FilterCare.LEAVE);
        assertThat(day(book, 1, 1, 0, 40, 80).filter()).isEqualTo(FilterCare.RINSE);
        assertThat(new StandingRules().ruling(book).rules()).contains(13);
    }

    /** A morning without fish, 40 to come. @return what the rules say, and do */
    private static Decision fishless(Keeping keeper, double ammonia, double nitrite, Object... more) {
        Notebook book = keeper.comes(more);
        book.read(Pad.AMMONIA, ammonia);
        book.read(Pad.NITRITE, nitrite);
        Decision d = Policies.CAREFUL.decide(book);
        book.did(d);
        return d;
    }

    private static Keeping morning(Scenario s) {
        Keeping keeper = new Keeping(s);
        keeper.hours = 24;
        return keeper;
    }

    @Test
    void ammoniaIsToppedUpToTwoWhereItReadsUnderOne() {
        Keeping keeper = morning(BOUGHT);
        assertThat(fishless(keeper, 1, 3).ammoniumChlorideG()).isZero();
        assertThat(fishless(keeper, 0.9, 3).ammoniumChlorideG()).isCloseTo(keeper.book.ammoniumFor(1.1), within(0.051));
        keeper.book.did(Decision.LEAVE_ALONE.withAmmoniumChloride(keeper.book.ammoniumLeftG() - 0.5));
        assertThat(fishless(keeper, 0, 3).ammoniumChlorideG())
                .as("all that is left")
                .isEqualTo(0.5);
    }

    @Test
    void nitriteOverFifteenIsDilutedByHalf() {
        assertThat(fishless(morning(BOUGHT), 2, 15).change()).isZero();
        assertThat(fishless(morning(BOUGHT), 2, 15.1).change()).isEqualTo(0.5);
    }

    @Test
    void alkalinityUnderAHundredIsLiftedToAHundredAndFifty() {
        Keeping keeper = morning(BOUGHT);
        assertThat(fishless(keeper, 2, 1, Pad.ALKALINITY, 100).bicarbonateG()).isZero();
        assertThat(fishless(keeper, 2, 1, Pad.ALKALINITY, 99).bicarbonateG())
                .isCloseTo(keeper.book.bicarbonateFor(51), within(0.51));
    }

    @Test
    void aBagOfRipeMediaIsHungInAtOnceAndOnlyOnce() {
        Keeping keeper = morning(BESIDE);
        assertThat(fishless(keeper, 2, 1).ripeMedia()).isEqualTo(1);
        assertThat(fishless(keeper, 2, 1).ripeMedia()).isZero();
        assertThat(fishless(morning(BOUGHT), 2, 1).ripeMedia()).as("no bag").isZero();
        assertThat(fishless(morning(WITHOUT_BAG), 2, 1).ripeMedia())
                .as("the nursery's fish live by its media")
                .isZero();
    }

    private static final Scenario WITHOUT_BAG =
            BentDrill.beside("start-rules-no-bag").set("ripeMediaShare", 0).made();

    /** Two full doses gone, at whatever strip these readings come last. */
    private static Keeping proved(Scenario s) {
        Keeping keeper = morning(s);
        fishless(keeper, 0, 0);
        fishless(keeper, 0, 0);
        return keeper;
    }

    @Test
    void nitrateOverFiftyIsFlushedBeforeFishGoIn() {
        Decision clear = fishless(proved(BOUGHT), 0, 0, Pad.NITRATE, 50);
        assertThat(clear.stock()).isPositive();
        assertThat(clear.change()).isZero();
        assertThat(clear.feed()).isEqualTo(0.5);
        Decision flushed = fishless(proved(BOUGHT), 0, 0, Pad.NITRATE, 51);
        assertThat(flushed.stock()).isPositive();
        assertThat(flushed.change()).isEqualTo(0.5);
    }

    @Test
    void nobodyStocksOnYesterdaysStrip() {
        Keeping keeper = proved(BOUGHT);
        keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0);
        assertThat(Policies.CAREFUL.decide(keeper.book).stock()).isPositive();
        keeper.comes(Pad.AMMONIA, 0);
        assertThat(Policies.CAREFUL.decide(keeper.book).stock()).isZero();
        keeper.comes(Pad.NITRITE, 0);
        assertThat(Policies.CAREFUL.decide(keeper.book).stock()).isZero();
        keeper.toCome = 0;
        assertThat(fishless(keeper, 0, 0).stock()).as("none are to come").isZero();
    }

    /** Three of 600 are half a percent. */
    @Test
    void threeOfSixHundredDeadInTheNurseryPress() {
        for (int dead = 2; dead <= 3; dead++) {
            Keeping keeper = morning(BESIDE);
            fishless(keeper, 0, 0);
            keeper.toCome = 600 - dead;
            assertThat(fishless(keeper, 0, 0).stock() > 0).isEqualTo(dead == 3);
        }
    }

    /** A filter that has proved less than a tenth of the ration gets no fish, one of a tenth gets a fifth of them. */
    @Test
    void theFirstFishAreAFifthAtLeastWhereATenthIsProved() {
        for (int count : new int[] {400, 2000, 4000, 8000}) {
            Scenario s = BOUGHT.change()
                    .fish(null, new Scenario.Fish("nile-tilapia", count, 5, 36, java.util.List.of(8.0)))
                    .made();
            Keeping keeper = proved(s);
            double stocked = fishless(keeper, 0, 0).stock();
            double share = keeper.book.stocking().provedShare();
            assertThat(stocked)
                    .as(count + " fish, proved " + share)
                    .isEqualTo(share < 0.1 ? 0 : Math.min(0.5, Math.max(0.2, share)));
        }
        // What 2 mg/L a day proves falls as one over the number of fish, so the list has some of each.
    }

    /** Fish in it, all read and calm, twice a day apart. */
    private static Keeping ramping(Scenario s, int alive, int toCome) {
        Keeping keeper = proved(s);
        fishless(keeper, 0, 0);
        keeper.alive = alive;
        keeper.toCome = toCome;
        keeper.mood = FishMood.CALM;
        calm(keeper);
        return keeper;
    }

    private static Decision calm(Keeping keeper) {
        Notebook book = keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0, Pad.PH, 7.5, Pad.ALKALINITY, 150);
        return Policies.CAREFUL.decide(book);
    }

    @Test
    void untilTwoTestsWereCalmTheFirstFishGetHalfTheRation() {
        Keeping keeper = ramping(BOUGHT, 16, 24);
        assertThat(keeper.book.stocking().steps()).isEqualTo(1);
        assertThat(Policies.CAREFUL.decide(keeper.book).feed()).isEqualTo(0.5);
        Decision second = calm(keeper);
        assertThat(second.feed()).isEqualTo(1);
        keeper = ramping(BOUGHT, 16, 0);
        assertThat(calm(keeper)).as("all are in").isEqualTo(Decision.LEAVE_ALONE);
    }

    @Test
    void asManyAgainComeInAsAreThereAndAFifthAtLeast() {
        assertThat(calm(ramping(BOUGHT, 16, 24)).stock()).isEqualTo(16.0 / 40);
        assertThat(calm(ramping(BOUGHT, 4, 24)).stock()).isEqualTo(0.2);
    }

    @Test
    void nobodyStocksBeforeAnAbsence() {
        Keeping keeper = ramping(BOUGHT, 16, 24);
        keeper.hours = 26;
        assertThat(calm(keeper).stock()).isZero();
        keeper.hours = 25;
        assertThat(calm(keeper).stock()).isPositive();
    }

    @Test
    void norOnAStripThatWasNotReadToday() {
        Keeping keeper = ramping(BOUGHT, 16, 24);
        assertThat(calm(keeper).stock()).isPositive();
        keeper.comes(Pad.AMMONIA, 0);
        assertThat(Policies.CAREFUL.decide(keeper.book).stock()).isZero();
    }

    /** 180 of 600 are in and 420 to come: as many again are 180 of 420, and as much of the media goes along. */
    @Test
    void mediaGoAlongWithTheFishThatLivedByThem() {
        Decision first = fishless(proved(WITHOUT_BAG), 0, 0);
        assertThat(first.ripeMedia()).isEqualTo(first.stock(), within(0.001));
        Decision more = calm(ramping(WITHOUT_BAG, 180, 420));
        assertThat(more.stock()).isEqualTo(0.3);
        assertThat(more.ripeMedia()).isEqualTo(180.0 / 420, within(1e-9));
        assertThat(calm(ramping(BESIDE, 180, 420)).ripeMedia())
                .as("a bag of its own")
                .isZero();
    }
}
