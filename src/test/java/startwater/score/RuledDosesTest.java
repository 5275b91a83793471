package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.strip.Pad;
import startwater.water.UnionisedAmmonia;

/** Grams and litres of rules 5, 7 and 9. The source brings 15 mg/L chloride at 26 °C. */
class RuledDosesTest {
    private static final Scenario WEEK = TrialScenario.secondWeek(15);
    private static final double PH = 8;

    private static Notebook reading(Object... readings) {
        return new Keeping(WEEK).comes(readings);
    }

    @Test
    void chlorideIsTheLastReadingOrWhatTheSourceBrings() {
        assertThat(RuledDoses.chloride(reading(Pad.CHLORIDE, 40))).isEqualTo(40);
        assertThat(RuledDoses.chloride(reading())).isEqualTo(15);
    }

    @Test
    void saltIsDueFromTheFirstBlockOfNitrite() {
        Notebook book = reading(Pad.CHLORIDE, 20);
        assertThat(RuledDoses.salt(book, 0.09, 0)).isZero();
        assertThat(RuledDoses.salt(book, 0.1, 0)).isCloseTo(book.saltFor(80), within(0.5));
    }

    @Test
    void chlorideThatMissesLessThanATenthIsLeft() {
        assertThat(RuledDoses.salt(reading(Pad.CHLORIDE, 91), 1, 0)).isZero();
        assertThat(RuledDoses.salt(reading(Pad.CHLORIDE, 90), 1, 0)).isZero();
        Notebook shortOfIt = reading(Pad.CHLORIDE, 89);
        assertThat(RuledDoses.salt(shortOfIt, 1, 0)).isCloseTo(shortOfIt.saltFor(11), within(0.5));
        // 10 mg/L of nitrite as N want 328.4: a tenth of that may be missing.
        assertThat(RuledDoses.salt(reading(Pad.CHLORIDE, 300), 10, 0)).isZero();
        assertThat(RuledDoses.salt(reading(Pad.CHLORIDE, 290), 10, 0)).isPositive();
    }

    /** A half changed leaves (95 + 15) / 2 = 55 of 95: 45 are missing of the 100 wanted. */
    @Test
    void whatAChangeCarriesOffIsPutBack() {
        Notebook book = reading(Pad.CHLORIDE, 95);
        assertThat(RuledDoses.salt(book, 1, 0)).isZero();
        assertThat(RuledDoses.salt(book, 1, 0.5)).isCloseTo(book.saltFor(45), within(0.5));
    }

    /** 5,000 g are on the shelf, and 20 mg/L of nitrite want 657 mg/L chloride: 2,600 g in 2,400 L. */
    @Test
    void noMoreSaltThanIsLeft() {
        Notebook book = reading(Pad.CHLORIDE, 0);
        assertThat(RuledDoses.salt(book, 20, 0)).isCloseTo(2600, within(10.0));
        book.did(Decision.LEAVE_ALONE.withSalt(4000));
        book.read(Pad.CHLORIDE, 0);
        assertThat(RuledDoses.salt(book, 20, 0)).isEqualTo(1000);
    }

    private static Notebook sour(double alkalinity, double toxic) {
        return reading(Pad.ALKALINITY, alkalinity, Pad.PH, PH, Pad.AMMONIA, toxic / UnionisedAmmonia.fraction(PH, 26));
    }

    @Test
    void bicarbonateLiftsByThirtyUnderEighty() {
        assertThat(RuledDoses.bicarbonate(sour(80, 0), 0, 0.15)).isZero();
        Notebook book = sour(79, 0);
        assertThat(RuledDoses.bicarbonate(book, 0, 0.15)).isCloseTo(book.bicarbonateFor(30), within(0.5));
        assertThat(RuledDoses.bicarbonate(reading(), 0, 0.15)).as("not read").isZero();
    }

    @Test
    void bicarbonateIsGivenOnceIn20Hours() {
        for (int hours : new int[] {19, 20}) {
            Keeping keeper = new Keeping(WEEK);
            keeper.hours = hours;
            keeper.comes(Pad.ALKALINITY, 20).did(Decision.LEAVE_ALONE.withBicarbonate(1));
            Notebook book = keeper.comes(Pad.ALKALINITY, 20);
            assertThat(RuledDoses.bicarbonate(book, 0, 0.15) > 0).isEqualTo(hours == 20);
        }
    }

    /** Aired, 60 lifted to 90 makes half as much again toxic: 0.1 turns to 0.15, and a half changed to 0.075. */
    @Test
    void noneWhereAmmoniaWouldTurnToxic() {
        assertThat(RuledDoses.bicarbonate(sour(60, 0.099), 0, 0.15)).isPositive();
        assertThat(RuledDoses.bicarbonate(sour(60, 0.101), 0, 0.15)).isZero();
        assertThat(RuledDoses.bicarbonate(sour(60, 0.199), 0.5, 0.15)).isPositive();
        assertThat(RuledDoses.bicarbonate(sour(60, 0.201), 0.5, 0.15)).isZero();
    }

    /** Under 10 mg/L the alkalinity counts as 10, or the least of it would forbid every dose: 5 + 30 is 3.5 times 10. */
    @Test
    void alkalinityCountsAsTenAtLeast() {
        assertThat(RuledDoses.bicarbonate(sour(5, 0.15 / 3.5 - 0.001), 0, 0.15)).isPositive();
        assertThat(RuledDoses.bicarbonate(sour(5, 0.15 / 3.5 + 0.001), 0, 0.15)).isZero();
    }

    /** Half of five degrees' difference is 2.5: two fifths may be changed. */
    @Test
    void aChangeIsHalfAtMostAndTwoDegreesAtMost() {
        Keeping keeper = new Keeping(WEEK);
        assertThat(RuledDoses.tempered(keeper.comes(), 0.25)).isEqualTo(0.25);
        assertThat(RuledDoses.tempered(keeper.comes(), 0.75)).isEqualTo(0.5);
        for (double gap : new double[] {-5, 5}) {
            keeper.temperatureC = 26 + gap;
            assertThat(RuledDoses.tempered(keeper.comes(), 0.5)).isCloseTo(0.4, within(1e-9));
            assertThat(RuledDoses.tempered(keeper.comes(), 0.25)).isEqualTo(0.25);
        }
        keeper.temperatureC = 28;
        assertThat(RuledDoses.tempered(keeper.comes(), 0.75)).isEqualTo(0.5);
        keeper.temperatureC = 30;
        assertThat(RuledDoses.tempered(keeper.comes(), 0.5)).isEqualTo(0.5);
    }
}
