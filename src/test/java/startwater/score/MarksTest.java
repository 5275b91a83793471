package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.content.Library;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Written;
import startwater.strip.Pad;

class MarksTest {
    @ParameterizedTest
    @EnumSource(UnitSlip.Quantity.class)
    void everyUnitSlipIsNamedWhereItCanHappen(UnitSlip.Quantity quantity) {
        for (UnitSlip slip : quantity.possible()) {
            for (double exact : new double[] {0.038, 26.4, 120}) {
                WorkingMark mark = WorkingMark.of(slip.wrong(exact), exact, quantity);
                assertThat(mark.right()).as(slip + " of " + exact).isFalse();
                assertThat(mark.slip()).as(slip + " of " + exact).isEqualTo(slip);
            }
        }
    }

    /** Factors of conversion as tables print them; the German degree, 10 mg/L as CaO, from memory. */
    @Test
    void slipsHaveTheFactorsOfTheTables() {
        assertThat(WorkingMark.of(3.28, 1, UnitSlip.Quantity.NITRITE).slip()).isEqualTo(UnitSlip.AS_NITRITE_ION);
        assertThat(WorkingMark.of(4.43, 1, UnitSlip.Quantity.NITRATE).slip()).isEqualTo(UnitSlip.AS_NITRATE_ION);
        assertThat(WorkingMark.of(1.216, 1, UnitSlip.Quantity.AMMONIA).slip()).isEqualTo(UnitSlip.AS_AMMONIA);
        assertThat(WorkingMark.of(500, 1893, UnitSlip.Quantity.VOLUME).slip()).isEqualTo(UnitSlip.GALLONS_FOR_LITRES);
        assertThat(WorkingMark.of(6, 107.1, UnitSlip.Quantity.ALKALINITY).slip())
                .isEqualTo(UnitSlip.DEGREES_FOR_CACO3);
        assertThat(WorkingMark.of(2, 100.1, UnitSlip.Quantity.ALKALINITY).slip())
                .isEqualTo(UnitSlip.MEQ_FOR_CACO3);
        assertThat(WorkingMark.of(80.6, 27, UnitSlip.Quantity.TEMPERATURE).slip())
                .isEqualTo(UnitSlip.FAHRENHEIT_FOR_CELSIUS);
        assertThat(WorkingMark.of(16.5, 10, UnitSlip.Quantity.CHLORIDE).slip()).isEqualTo(UnitSlip.SALT_FOR_CHLORIDE);
        assertThat(WorkingMark.of(0.5, 500, UnitSlip.Quantity.DOSE).slip()).isEqualTo(UnitSlip.THOUSANDTH);
    }

    @ParameterizedTest
    @EnumSource(UnitSlip.class)
    void everySlipHasWordsInBothLanguages(UnitSlip slip) {
        for (String language : new String[] {"en", "es"}) {
            assertThat(WhyText.in(Locale.forLanguageTag(language)).slip(slip, "0.04 mg/L"))
                    .contains("0.04 mg/L")
                    .doesNotContain("{", "'");
        }
    }

    @Test
    void roundingIsNoSlip() {
        WorkingMark mark = WorkingMark.of(0.04, 0.038);
        assertThat(mark.right()).isTrue();
        assertThat(mark.slip()).isNull();
    }

    @Test
    void anOddErrorIsNoSlip() {
        WorkingMark mark = WorkingMark.of(0.06, 0.038);
        assertThat(mark.right()).isFalse();
        assertThat(mark.slip()).isNull();
    }

    @Test
    void eightPercentIsRoundingUpwardsAndDownwards() {
        for (double exact : new double[] {0.038, 120}) {
            assertThat(WorkingMark.of(1.07 * exact, exact).right()).isTrue();
            assertThat(WorkingMark.of(0.93 * exact, exact).right()).isTrue();
            assertThat(WorkingMark.of(1.09 * exact, exact).right()).isFalse();
            assertThat(WorkingMark.of(0.91 * exact, exact).right()).isFalse();
        }
        assertThat(WorkingMark.of(60, 40).relativeError()).isCloseTo(0.5, within(1e-12));
    }

    /** Ammonium in place of its nitrogen is 1.288 times too much, ammonia 1.216 times: 1.252 lies half-way. */
    @Test
    void aSlipIsNamedWithinFivePercentAndTheNearestOfTwo() {
        assertThat(WorkingMark.of(1.288 * 1.04, 1).slip()).isEqualTo(UnitSlip.AS_AMMONIUM);
        assertThat(WorkingMark.of(1.288 * 1.06, 1).slip()).isNull();
        assertThat(WorkingMark.of(1.216 * 0.94, 1).slip()).isNull();
        assertThat(WorkingMark.of(1.245, 1).slip()).isEqualTo(UnitSlip.AS_AMMONIA);
        assertThat(WorkingMark.of(1.258, 1).slip()).isEqualTo(UnitSlip.AS_AMMONIUM);
    }

    @Test
    void aRightSumIsWorthAHundredASlipHalfAndAnyOtherNothing() {
        assertThat(WorkingMark.of(0.04, 0.038).mark()).isEqualTo(100);
        assertThat(WorkingMark.of(1.216, 1).mark()).isEqualTo(50);
        assertThat(WorkingMark.of(0.06, 0.038).mark()).isZero();
    }

    @Test
    void anExactValueOfNothingIsRefused() {
        assertThatThrownBy(() -> WorkingMark.of(1, 0)).hasMessageContaining("over 0, not 0.0");
        assertThatThrownBy(() -> WorkingMark.of(1, Double.NaN)).hasMessageContaining("not NaN");
    }

    @Test
    void oneBlockOffIsHumanTwoAreNamed() {
        DrillRun run =
                DrillRun.start(Library.shipped().scenario("hungry-second-week").get(), 1, DrillRun.Pace.LEARNER);
        DippedStrip strip = run.dip(1);
        int seen = Pad.AMMONIA.scale().nearestStop(strip.position(Pad.AMMONIA));
        run.write(new Written(Pad.AMMONIA, Math.max(0, seen - 1), 1, strip.number()));
        int nitrite = Pad.NITRITE.scale().nearestStop(strip.position(Pad.NITRITE));
        run.write(new Written(Pad.NITRITE, nitrite >= 6 ? nitrite - 6 : nitrite + 6, 1, strip.number()));
        ReadingMark mark = ReadingMark.of(run, run.now());
        assertThat(mark.total()).isEqualTo(2);
        assertThat(mark.right()).isEqualTo(1);
        assertThat(Objects.requireNonNull(mark.worst()).pad()).isEqualTo(Pad.NITRITE);
    }

    @Test
    void theWorstReadingIsTheFarthestOffUpwardsOrDownwards() {
        DrillRun run =
                DrillRun.start(Library.shipped().scenario("hungry-second-week").get(), 1, DrillRun.Pace.LEARNER);
        DippedStrip strip = run.dip(1);
        double alkalinity = strip.position(Pad.ALKALINITY);
        double ph = strip.position(Pad.PH);
        assertThat(7 - ph).as("both are off").isBetween(1.5, alkalinity);
        Written low = new Written(Pad.ALKALINITY, 0, 1, strip.number());
        Written high = new Written(Pad.PH, 14, 1, strip.number());
        for (Written first : new Written[] {low, high}) {
            run.erase(low);
            run.erase(high);
            run.write(first);
            run.write(first.equals(low) ? high : low);
            assertThat(ReadingMark.of(run, run.now()))
                    .isEqualTo(new ReadingMark(2, 0, new ReadingMark.Off(Pad.ALKALINITY, -alkalinity)));
        }
        run.erase(low);
        assertThat(ReadingMark.of(run, run.now()).worst()).isEqualTo(new ReadingMark.Off(Pad.PH, 7 - ph));
    }

    /** The ammonia pad has nine blocks. */
    @Test
    void aReadingOfAStripThatNobodyDippedIsOffByTheWholeScale() {
        DrillRun run =
                DrillRun.start(Library.shipped().scenario("hungry-second-week").get(), 1, DrillRun.Pace.LEARNER);
        run.write(new Written(Pad.AMMONIA, 4, 1, 3));
        assertThat(ReadingMark.of(run, run.now()))
                .isEqualTo(new ReadingMark(1, 0, new ReadingMark.Off(Pad.AMMONIA, 9)));
    }
}
