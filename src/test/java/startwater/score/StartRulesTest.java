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
}
