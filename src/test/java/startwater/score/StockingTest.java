package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.Scenario;

/** What a keeper's book knows of fish to come and of what the filter has proved for them. */
class StockingTest {
    private static final int DAY = Calendar.DAY;
    private static final Scenario BAG = TrialScenario.fishless()
            .change()
            .shelf(new Scenario.Shelf(0, 0, 0, 200, 0, 40, 10, false, false, 0.3, 0))
            .made();
    private static final Scenario NURSERY =
            BentDrill.beside("beside").setIn("shelf", "ripeMediaShare", 0).made();

    private static final Decision DOSE = Decision.LEAVE_ALONE.withAmmoniumChloride(20);

    private static Stocking fresh() {
        return new Stocking(TrialScenario.fishless());
    }

    /** A book after so many doses to 2 mg/L, each gone a day later. */
    private static Stocking proved(int doses) {
        Stocking book = fresh();
        for (int i = 0; i < doses; i++) {
            book.did(DOSE, i * DAY, 2);
            book.tested((i + 1) * DAY, 0.1, 0.2, false);
        }
        return book;
    }

    @Test
    void aFullDoseThatIsGoneADayLaterIsAProof() {
        Stocking book = proved(2);
        assertThat(book.passes()).isEqualTo(2);
        assertThat(book.provedMgPerLPerDay()).isEqualTo(2);
    }

    @Test
    void aDoseThatTookTwoDaysProvesHalfAsMuchADayAndAQuickTestNoMoreThanADay() {
        Stocking slow = fresh();
        slow.did(DOSE, 0, 3);
        slow.tested(2 * DAY, 0.25, 0.25, false);
        assertThat(slow.provedMgPerLPerDay()).isEqualTo(1.5);
        Stocking quick = fresh();
        quick.did(DOSE, 0, 3);
        quick.tested(DAY / 2, 0, 0, false);
        assertThat(quick.provedMgPerLPerDay()).isEqualTo(3);
        assertThat(quick.passes()).isEqualTo(1);
    }

    @Test
    void oneDoseIsProvedOnceHoweverOftenItIsTested() {
        Stocking book = proved(1);
        book.tested(2 * DAY, 0, 0, false);
        assertThat(book.passes()).isEqualTo(1);
    }

    @Test
    void ammoniaOrNitriteThatStandsBreaksTheRow() {
        for (double[] left : new double[][] {{0.3, 0}, {0, 0.3}}) {
            Stocking book = proved(2);
            book.did(DOSE, 2 * DAY, 2);
            book.tested(3 * DAY, left[0], left[1], false);
            assertThat(book.passes()).isZero();
            // The same dose may still prove itself.
            book.tested(4 * DAY, 0, 0, false);
            assertThat(book.passes()).isEqualTo(1);
            assertThat(book.provedMgPerLPerDay()).isEqualTo(1);
        }
    }

    @Test
    void aTestWithinHalfADayOfTheDoseSaysNothing() {
        Stocking book = proved(1);
        book.did(DOSE, 2 * DAY, 2);
        book.tested(2 * DAY + DAY / 2 - 1, 2, 0, false);
        assertThat(book.passes()).isEqualTo(1);
        book.tested(2 * DAY + DAY / 2, 2, 0, false);
        assertThat(book.passes()).isZero();
    }

    @Test
    void aSmallDoseProvesNothing() {
        Stocking book = fresh();
        book.did(DOSE, 0, 1.4);
        book.tested(DAY, 0, 0, false);
        assertThat(book.passes()).isZero();
        book.did(DOSE, DAY, 1.5);
        book.tested(2 * DAY, 0, 0, false);
        assertThat(book.passes()).isEqualTo(1);
        // A decision without ammonia leaves the dose that stands.
        book.did(DOSE, 2 * DAY, 2);
        book.did(Decision.LEAVE_ALONE, 2 * DAY, 2);
        book.tested(3 * DAY, 0, 0, false);
        assertThat(book.passes()).isEqualTo(2);
    }

    @Test
    void whatIsForgottenIsNoProof() {
        Stocking book = proved(2);
        book.did(DOSE, 2 * DAY, 2);
        book.did(Decision.LEAVE_ALONE.withStock(0.1), 2 * DAY, 2);
        book.tested(3 * DAY, 0.1, 0.1, true);
        assertThat(book.calm()).isEqualTo(1);
        book.forget();
        book.tested(3 * DAY, 0, 0, false);
        assertThat(book.passes()).isZero();
        assertThat(book.calm()).isZero();
    }

    @Test
    void calmTestsCountADayApartAndHighOnesBeginAnew() {
        Stocking book = fresh();
        book.did(Decision.LEAVE_ALONE.withStock(0.2), 0, 0);
        book.tested(20 * 60 - 1, 0, 0, true);
        assertThat(book.calm()).isZero();
        book.tested(20 * 60, 0.9, 0.9, true);
        assertThat(book.calm()).isEqualTo(1);
        book.tested(20 * 60 + 600, 0.9, 0.9, true);
        assertThat(book.calm()).isEqualTo(1);
        book.tested(40 * 60, 0.9, 0.9, true);
        assertThat(book.calm()).isEqualTo(2);
        for (double[] high : new double[][] {{1, 0}, {0, 1}}) {
            Stocking copy = book.copy();
            copy.tested(60 * 60, high[0], high[1], true);
            assertThat(copy.calm()).isZero();
        }
        // More fish are a new question.
        book.did(Decision.LEAVE_ALONE.withStock(0.2), 60 * 60, 0);
        assertThat(book.calm()).isZero();
        book.tested(79 * 60, 0, 0, true);
        assertThat(book.calm()).isZero();
    }

    /** Of 240: a fifth are 48, half are 120, and then 72 are left. */
    @Test
    void sharesAreOfThePlannedFishAndNoMoreComeThanThereAre() {
        Stocking book = fresh();
        assertThat(book.planned()).isEqualTo(240);
        assertThat(book.toCome()).isEqualTo(240);
        assertThat(book.arriving(0.2)).isEqualTo(48);
        book.did(Decision.LEAVE_ALONE.withStock(0.2), 0, 0);
        assertThat(book.wentIn()).isEqualTo(48);
        book.did(Decision.LEAVE_ALONE.withStock(0.5), DAY, 0);
        assertThat(book.moved()).isEqualTo(168);
        assertThat(book.toCome()).isEqualTo(72);
        assertThat(book.arriving(0.5)).isEqualTo(72);
        book.did(Decision.LEAVE_ALONE, 2 * DAY, 0);
        assertThat(book.wentIn()).isZero();
        assertThat(book.steps()).isEqualTo(2);
        book.seen(50);
        assertThat(book.arriving(1)).isEqualTo(50);
    }

    /**
     * 240 catfish of 13.5 g eat a share f of their mass; 32 % protein at 0.092 of ammonia nitrogen in 2400 L: Timmons and
     * Ebeling's feed rule.
     */
    @Test
    void aProofIsMeasuredByTheLoadOfThePlannedFish() {
        Scenario s = TrialScenario.fishless();
        Scenario.Fish fish = java.util.Objects.requireNonNull(s.plannedFish());
        double share = startwater.fish.Species.byId("channel-catfish").feed().fractionAtBest(13.5);
        double load = 1000 * 240 * 13.5 * share * 0.092 * 0.32 / 2400;
        assertThat(Stocking.loadMgPerLPerDay(s, fish)).isCloseTo(load, within(1e-9));
        assertThat(proved(1).provedShare()).isCloseTo(2 / load, within(1e-9));
        assertThat(fresh().provedShare()).isZero();
        Stocking none = new Stocking(TrialScenario.secondWeek(15));
        none.did(DOSE, 0, 2);
        none.tested(DAY, 0, 0, false);
        assertThat(none.provedShare()).isZero();
        assertThat(none.planned()).isZero();
    }

    @Test
    void aBagIsUsedUpAndANurserysFilterIsNot() {
        Stocking bag = new Stocking(BAG);
        assertThat(bag.mediaLeft()).isEqualTo(1);
        bag.did(Decision.LEAVE_ALONE.withRipeMedia(0.25), 0, 0);
        assertThat(bag.mediaLeft()).isEqualTo(0.75);
        bag.did(Decision.LEAVE_ALONE.withRipeMedia(1), 0, 0);
        assertThat(bag.mediaLeft()).isZero();
        assertThat(bag.mediaOfNursery()).isFalse();
        Stocking nursery = new Stocking(NURSERY);
        nursery.did(Decision.LEAVE_ALONE.withRipeMedia(0.5), 0, 0);
        assertThat(nursery.mediaLeft()).isEqualTo(1);
        assertThat(nursery.mediaOfNursery()).isTrue();
        assertThat(fresh().mediaLeft()).isZero();
    }

    /** Of 600 a fifth went over; 470 are left where 480 should be. */
    @Test
    void whoIsMissingInTheNurseryHasDiedThere() {
        Stocking nursery = new Stocking(NURSERY);
        assertThat(nursery.beside()).isTrue();
        assertThat(nursery.lostBeside()).isZero();
        nursery.did(Decision.LEAVE_ALONE.withStock(0.2), 0, 0);
        nursery.seen(470);
        assertThat(nursery.lostBeside()).isEqualTo(10);
        nursery.seen(480);
        assertThat(nursery.lostBeside()).isZero();
        Stocking bought = fresh();
        bought.seen(230);
        assertThat(bought.beside()).isFalse();
        assertThat(bought.lostBeside()).isZero();
    }

    @Test
    void aCopyKnowsTheSameAndGoesItsOwnWay() {
        Stocking book = proved(2);
        book.did(Decision.LEAVE_ALONE.withStock(0.2), 2 * DAY, 0);
        book.tested(3 * DAY, 0, 0, true);
        Stocking copy = book.copy();
        for (Stocking same : new Stocking[] {book, copy}) {
            assertThat(same.planned()).isEqualTo(240);
            assertThat(same.toCome()).isEqualTo(192);
            assertThat(same.moved()).isEqualTo(48);
            assertThat(same.wentIn()).isEqualTo(48);
            assertThat(same.steps()).isEqualTo(1);
            assertThat(same.calm()).isEqualTo(1);
            assertThat(same.passes()).isEqualTo(2);
            assertThat(same.provedMgPerLPerDay()).isEqualTo(2);
            assertThat(same.provedShare()).isPositive();
        }
        copy.did(Decision.LEAVE_ALONE.withStock(0.5), 3 * DAY, 0);
        assertThat(book.moved()).isEqualTo(48);
        assertThat(book.steps()).isEqualTo(1);
        assertThat(book.calm()).isEqualTo(1);
    }
}
