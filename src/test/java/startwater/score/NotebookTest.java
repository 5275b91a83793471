package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.Written;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** The books of a keeper: what doses and changes make of the last readings. The tank holds 2,400 L. */
class NotebookTest {
    private static final Scenario WEEK = TrialScenario.secondWeek(15);
    private static final Decision NOTHING = Decision.LEAVE_ALONE;

    private static Notebook read(Scenario s) {
        return new Keeping(s)
                .comes(
                        Pad.AMMONIA,
                        2,
                        Pad.NITRITE,
                        1,
                        Pad.NITRATE,
                        41,
                        Pad.PH,
                        7.4,
                        Pad.ALKALINITY,
                        70,
                        Pad.CHLORIDE,
                        95);
    }

    /** The source brings no ammonia, 1 nitrate, 110 alkalinity and 15 chloride. */
    @Test
    void aQuarterChangedTakesAQuarterOffAndBringsWhatTheSourceHas() {
        Notebook book = read(WEEK);
        book.did(NOTHING.withChange(0.25));
        assertThat(book.value(Pad.AMMONIA)).isCloseTo(1.5, within(1e-9));
        assertThat(book.value(Pad.NITRITE)).isCloseTo(0.75, within(1e-9));
        assertThat(book.value(Pad.NITRATE)).isCloseTo(31, within(1e-9));
        assertThat(book.value(Pad.ALKALINITY)).isCloseTo(80, within(1e-9));
        assertThat(book.value(Pad.CHLORIDE)).isCloseTo(75, within(1e-9));
        assertThat(book.value(Pad.PH)).as("no arithmetic for pH").isEqualTo(7.4);
    }

    /**
     * By hand, over 2,400 L: 100 g NaCl carry 60.66 g Cl. 100 g NaHCO3 are 1.1904 eq, as CaCO3 59.57 g; 100 g Na2CO3
     * 1.8870 eq, 94.43 g. 10 g NH4Cl carry 2.6187 g N.
     */
    @Test
    void dosesAddWhatTheyHoldOverTheVolume() {
        Notebook book = read(WEEK);
        book.did(NOTHING.withSalt(100).withBicarbonate(100));
        assertThat(book.value(Pad.CHLORIDE)).isCloseTo(95 + 25.28, within(0.01));
        assertThat(book.value(Pad.ALKALINITY)).isCloseTo(70 + 24.82, within(0.01));
        book.did(NOTHING.withSodaAsh(100).withAmmoniumChloride(10));
        assertThat(book.value(Pad.ALKALINITY)).isCloseTo(70 + 24.82 + 39.35, within(0.01));
        assertThat(book.value(Pad.AMMONIA)).isCloseTo(2 + 1.091, within(0.001));
        assertThat(book.value(Pad.NITRITE)).isEqualTo(1);
    }

    @Test
    void dosesAreWorkedOutTheOtherWayRound() {
        Notebook book = new Notebook(WEEK);
        assertThat(book.saltFor(25.28)).isCloseTo(100, within(0.05));
        assertThat(book.bicarbonateFor(24.82)).isCloseTo(100, within(0.05));
        assertThat(book.ammoniumFor(1.0911)).isCloseTo(10, within(0.001));
    }

    /** Ten times the nitrite ion, which is 46.005 / 14.007 of its nitrogen; never under 100. */
    @Test
    void chlorideIsWantedTenToOneOnTheIonAndAHundredAtLeast() {
        assertThat(Notebook.chlorideWanted(0.1)).isEqualTo(100);
        assertThat(Notebook.chlorideWanted(3.04)).isEqualTo(100);
        assertThat(Notebook.chlorideWanted(5)).isCloseTo(164.22, within(0.01));
    }

    @Test
    void whatWasNeverReadStaysUnknownWhateverIsDone() {
        assertThat(new Notebook(WEEK).expected(Pad.AMMONIA)).isNaN();
        Notebook book = new Keeping(WEEK).comes();
        book.did(NOTHING.withChange(0.5).withSalt(100));
        assertThat(book.value(Pad.CHLORIDE)).isNaN();
        assertThat(book.value(Pad.AMMONIA)).isNaN();
        assertThat(book.value(Pad.AMMONIA, 3)).isEqualTo(3);
        assertThat(read(WEEK).value(Pad.AMMONIA, 3)).isEqualTo(2);
        assertThat(book.hoursSince(Pad.AMMONIA)).isGreaterThan(1e6);
        assertThat(book.hoursSinceBuffer()).isGreaterThan(1e6);
        assertThat(book.hoursSincePreviousVisit()).isGreaterThan(1e6);
    }

    /** 5,000 g of salt, 3,000 of bicarbonate and 200 of ammonium chloride are on the shelf. */
    @Test
    void theShelfRunsDownAndNeverUnderNothing() {
        Notebook book = read(TrialScenario.fishless());
        Decision all = NOTHING.withSalt(4000).withBicarbonate(2900).withAmmoniumChloride(150);
        assertThat(book.fromShelf(all)).isEqualTo(all);
        book.did(all);
        assertThat(book.saltLeftG()).isEqualTo(1000);
        assertThat(book.bicarbonateLeftG()).isEqualTo(100);
        assertThat(book.ammoniumLeftG()).isEqualTo(50);
        assertThat(book.fromShelf(all))
                .isEqualTo(NOTHING.withSalt(1000).withBicarbonate(100).withAmmoniumChloride(50));
        book.did(all);
        assertThat(book.saltLeftG()).isZero();
        assertThat(book.bicarbonateLeftG()).isZero();
        assertThat(book.ammoniumLeftG()).isZero();
        assertThat(book.decisions()).isEqualTo(2);
        assertThat(book.last()).isEqualTo(all);
    }

    @Test
    void hoursAreCountedFromEachReadingDoseAndVisit() {
        Keeping keeper = new Keeping(WEEK);
        keeper.comes(Pad.AMMONIA, 1).did(NOTHING.withBicarbonate(10));
        keeper.hours = 36;
        Notebook book = keeper.comes(Pad.NITRITE, 1);
        assertThat(book.hoursSince(Pad.AMMONIA)).isEqualTo(12);
        assertThat(book.hoursSince(Pad.NITRITE)).isZero();
        assertThat(book.hoursSinceBuffer()).isEqualTo(12);
        assertThat(book.hoursSincePreviousVisit()).isEqualTo(12);
        assertThat(book.hoursToNextVisit()).isEqualTo(36);
        assertThat(book.minute()).isEqualTo(10 * Calendar.DAY + 720);
        book.did(NOTHING);
        assertThat(keeper.comes().hoursSinceBuffer())
                .as("a decision without it")
                .isEqualTo(48);
    }

    @Test
    void whatIsSeenIsKeptWithWhatWasSeenBefore() {
        Keeping keeper = new Keeping(WEEK);
        Notebook book = keeper.comes();
        assertThat(book.cooledC()).as("nothing to compare with").isZero();
        assertThat(book.foundBefore()).isZero();
        keeper.temperatureC = 24.5;
        keeper.found = 3;
        keeper.alive = 237;
        keeper.oxygenMgPerL = 5.5;
        keeper.flowPercent = 80;
        keeper.mood = FishMood.SLOW;
        keeper.air = false;
        keeper.comes();
        assertThat(book.cooledC()).isEqualTo(1.5);
        assertThat(book.found()).isEqualTo(3);
        assertThat(book.alive()).isEqualTo(237);
        assertThat(book.oxygenMgPerL()).isEqualTo(5.5);
        assertThat(book.flowPercent()).isEqualTo(80);
        assertThat(book.mood()).isEqualTo(FishMood.SLOW);
        assertThat(book.airSeenOn()).isFalse();
        assertThat(book.airFailed()).isTrue();
        keeper.temperatureC = 25;
        keeper.air = true;
        keeper.found = 1;
        keeper.comes();
        assertThat(book.cooledC()).as("warmer again").isZero();
        assertThat(book.airSeenOn()).isTrue();
        assertThat(book.airFailed()).as("it is remembered").isTrue();
        assertThat(book.foundBefore()).isEqualTo(3);
        assertThat(new Keeping(WEEK).comes().airFailed()).isFalse();
    }

    @Test
    void fishAreInWhileOneIsAlive() {
        Keeping keeper = new Keeping(WEEK);
        keeper.alive = 1;
        assertThat(keeper.comes().fishIn()).isTrue();
        keeper.alive = 0;
        assertThat(keeper.comes().fishIn()).isFalse();
    }

    /** The books of the morning are what the strip is then held against. */
    @Test
    void whatIsExpectedAreTheBooksBeforeTheStripIsRead() {
        Keeping keeper = new Keeping(WEEK);
        Notebook book = keeper.comes(Pad.AMMONIA, 2);
        assertThat(book.expected(Pad.AMMONIA)).isNaN();
        book.did(NOTHING.withChange(0.5));
        keeper.comes(Pad.AMMONIA, 3);
        assertThat(book.expected(Pad.AMMONIA)).isCloseTo(1, within(1e-9));
        assertThat(book.value(Pad.AMMONIA)).isEqualTo(3);
        assertThat(book.expected(Pad.NITRITE)).isNaN();
    }

    /** Emerson et al. 1975 by hand: at 25 °C pKa is 9.246; a tenth over it 55.9 % are toxic, at pH 10 85.0 %. */
    @Test
    void toxicAmmoniaNeedsBothReadingsAndIsCappedAtTen() {
        Keeping keeper = new Keeping(WEEK);
        keeper.temperatureC = 25;
        Notebook book = keeper.comes(Pad.AMMONIA, 2);
        assertThat(book.toxicAmmonia()).isNaN();
        book.read(Pad.PH, 9.3464);
        assertThat(book.toxicAmmonia()).isCloseTo(2 * 0.5573, within(0.001));
        book.read(Pad.PH, 12);
        assertThat(book.toxicAmmonia()).isCloseTo(2 * 0.8502, within(0.001));
        assertThat(new Keeping(WEEK).comes(Pad.PH, 7).toxicAmmonia()).isNaN();
    }

    /** A full dose, given and gone by the next day; proof needs both readings, in whatever order they are written. */
    @Test
    void aProofIsTakenOnceBothPadsAreRead() {
        for (boolean ammoniaFirst : new boolean[] {true, false}) {
            Keeping keeper = new Keeping(TrialScenario.fishless());
            keeper.hours = 24;
            Notebook book = keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0);
            book.did(NOTHING.withAmmoniumChloride(book.ammoniumFor(2)));
            keeper.comes();
            book.read(ammoniaFirst ? Pad.AMMONIA : Pad.NITRITE, 0);
            assertThat(book.stocking().passes()).isZero();
            book.read(ammoniaFirst ? Pad.NITRITE : Pad.AMMONIA, 0.1);
            assertThat(book.stocking().passes()).isEqualTo(1);
            assertThat(book.stocking().provedMgPerLPerDay()).isCloseTo(2, within(1e-9));
        }
    }

    @Test
    void whoForgetsLosesReadingsDosesAndProofsButNotWhenItWas() {
        Keeping keeper = new Keeping(TrialScenario.fishless());
        keeper.hours = 24;
        Notebook book = keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0);
        book.did(NOTHING.withAmmoniumChloride(book.ammoniumFor(2)).withBicarbonate(100));
        keeper.comes(Pad.AMMONIA, 0, Pad.NITRITE, 0);
        assertThat(book.stocking().passes()).isEqualTo(1);
        book.forget();
        assertThat(book.value(Pad.AMMONIA)).isNaN();
        assertThat(book.expected(Pad.AMMONIA)).isNaN();
        assertThat(book.hoursSinceBuffer()).isGreaterThan(1e6);
        assertThat(book.last()).isEqualTo(NOTHING);
        assertThat(book.stocking().passes()).isZero();
        assertThat(book.hoursSince(Pad.AMMONIA)).isZero();
        assertThat(book.bicarbonateLeftG()).as("the shelf does not forget").isEqualTo(2900);
    }

    @Test
    void aCopySaysTheSameAndGoesItsOwnWay() {
        Keeping keeper = new Keeping(WEEK);
        Decision d = NOTHING.withSalt(100).withBicarbonate(50).withAmmoniumChloride(0);
        keeper.comes(Pad.AMMONIA, 2, Pad.NITRITE, 1, Pad.PH, 7.4).did(d);
        keeper.temperatureC = 24;
        keeper.oxygenMgPerL = 5;
        keeper.mood = FishMood.SLOW;
        keeper.air = false;
        keeper.flowPercent = 80;
        keeper.found = 4;
        keeper.alive = 236;
        Notebook book = keeper.comes(Pad.AMMONIA, 3);
        Notebook copy = book.copy();
        assertThat(copy.value(Pad.PH)).isEqualTo(7.4);
        assertThat(copy.expected(Pad.AMMONIA)).isEqualTo(2);
        assertThat(copy.hoursSince(Pad.NITRITE)).isEqualTo(12);
        assertThat(copy.hoursSinceBuffer()).isEqualTo(12);
        assertThat(copy.hoursSincePreviousVisit()).isEqualTo(12);
        assertThat(copy.hoursToNextVisit()).isEqualTo(12);
        assertThat(copy.temperatureC()).isEqualTo(24);
        assertThat(copy.cooledC()).isEqualTo(2);
        assertThat(copy.oxygenMgPerL()).isEqualTo(5);
        assertThat(copy.mood()).isEqualTo(FishMood.SLOW);
        assertThat(copy.airSeenOn()).isFalse();
        assertThat(copy.airFailed()).isTrue();
        assertThat(copy.flowPercent()).isEqualTo(80);
        assertThat(copy.found()).isEqualTo(4);
        assertThat(copy.foundBefore()).isZero();
        assertThat(copy.alive()).isEqualTo(236);
        assertThat(copy.saltLeftG()).isEqualTo(4900);
        assertThat(copy.bicarbonateLeftG()).isEqualTo(2950);
        assertThat(copy.decisions()).isEqualTo(1);
        keeper.comes(Pad.AMMONIA, 5).did(NOTHING);
        assertThat(copy.value(Pad.AMMONIA)).isEqualTo(3);
        assertThat(copy.hoursSince(Pad.AMMONIA)).isZero();
        assertThat(copy.last()).isEqualTo(d);
    }

    @Test
    void aLogGivesTheBooksOfWhoeverKeptIt() {
        DrillRun run = DrillRun.start(WEEK, 5, DrillRun.Pace.EVERY_VISIT);
        run.write(JudgeTest.written(Pad.AMMONIA, 1));
        run.write(new Written(Pad.CHLORIDE, 6, 1, 0));
        run.decide(NOTHING.withChange(0.5).withSalt(100), null);
        Notebook book = Notebook.of(WEEK, run.calendar(), run.log().visits());
        assertThat(book.expected(Pad.AMMONIA)).isCloseTo(0.5, within(1e-9));
        assertThat(book.value(Pad.CHLORIDE)).isCloseTo((50 + 15) / 2.0 + 25.28, within(0.01));
        assertThat(book.decisions()).isEqualTo(1);
        assertThat(book.minute()).isEqualTo(run.now().minute());
        assertThat(book.hoursSincePreviousVisit()).isEqualTo(10);
        assertThat(book.hoursToNextVisit()).isEqualTo(14);
        assertThat(book.alive()).isEqualTo(run.now().seen().alive());
        assertThat(book.oxygenMgPerL()).isEqualTo(run.now().seen().oxygenMgPerL());
    }
}
