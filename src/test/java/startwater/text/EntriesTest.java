package startwater.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.content.Library;
import startwater.drill.DrillRun;
import startwater.quantity.Unbroken;
import startwater.strip.Pad;
import startwater.water.Dose;

class EntriesTest {
    private static final VisitFacts FACTS = VisitFacts.of(
            DrillRun.start(Library.shipped().scenario("hungry-second-week").get(), 1, DrillRun.Pace.LEARNER));

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {"0.04|0.04|''", "0,04|0.04|''", "' 20 % '|20|%", "3 GAL|3|gal", ".5|0.5|''", "-0|0|''", "84g|84|g"
            })
    void takesNumbersAsPeopleTypeThem(String typed, double value, String unit) {
        assertThat(NumberEntry.of(typed)).isEqualTo(new NumberEntry(value, unit, null));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "change 25 %, 411 g of salt.|change 25~%, 411~g of salt.",
                "1,7 mg/L a 29 °C en 2400 L|1,7~mg/L a 29~°C en 2400~L",
                "12 goldfish, 4 Lessons, 7 days|12 goldfish, 4 Lessons, 7 days"
            })
    void aNumberStaysWithItsUnitWhereWordsAreWrapped(String said, String kept) {
        assertThat(Unbroken.of(said)).isEqualTo(kept.replace('~', '\u00a0'));
    }

    @ParameterizedTest
    @CsvSource({
        "'',entry.empty",
        "abc,entry.noNumber",
        "1e3,entry.noNumber",
        "NaN,entry.noNumber",
        "'1,200',entry.twoMeanings",
        "-3,entry.negative",
        "1 2,entry.noNumber"
    })
    void refusesWhatIsNoNumberWithAReason(String typed, String reason) {
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() == null) {
            // A number followed by letters has them as its unit, which the amount then refuses.
            assertThat(entry.unit()).isNotEmpty();
        } else {
            assertThat(entry.refusal().key()).isEqualTo(reason);
        }
    }

    @ParameterizedTest
    @CsvSource({"0,0", "0.5,6", "0.5-1,7", "0.5–1,7", "'0,5-1',7", "20,16", "0.71,7"})
    void aReadingGoesToItsStop(String typed, int stop) {
        assertThat(ReadingEntry.of(Pad.NITRITE, typed).stop()).isEqualTo(stop);
    }

    @ParameterizedTest
    @CsvSource({
        "abc,entry.noNumber",
        "40,entry.overScale",
        "0.5-2,entry.noNeighbours",
        "1 mg,entry.noUnitHere",
        "'',entry.empty"
    })
    void aReadingThatIsNoneIsRefused(String typed, String reason) {
        ReadingEntry entry = ReadingEntry.of(Pad.NITRITE, typed);
        assertThat(entry.ok()).isFalse();
        assertThat(entry.refusal()).isNotNull();
        assertThat(java.util.Objects.requireNonNull(entry.refusal()).key()).isEqualTo(reason);
    }

    @Test
    void theSameChangeInAnyUnitIsTheSameShare() {
        double litres = 0.2 * FACTS.volumeL();
        assertThat(Amounts.change("20 %", FACTS).value()).isEqualTo(0.2);
        assertThat(Amounts.change(litres + " L", FACTS).value()).isCloseTo(0.2, within(1e-12));
        // One US gallon is 3.785411784 L exactly (NIST Handbook 44, appendix C).
        assertThat(Amounts.change(litres / 3.785411784 + " gal", FACTS).value()).isCloseTo(0.2, within(1e-12));
    }

    @Test
    void dosesEndAtTheShelf() {
        double left = FACTS.leftG(Dose.SODIUM_CHLORIDE);
        assertThat(left).isPositive();
        assertThat(Amounts.dose(Dose.SODIUM_CHLORIDE, left + " g", FACTS).ok()).isTrue();
        assertThat(Amounts.dose(Dose.SODIUM_CHLORIDE, (left + 1) + " g", FACTS).ok())
                .isFalse();
        assertThat(Amounts.dose(Dose.SODIUM_CHLORIDE, "2 oz", FACTS).value())
                .as("the avoirdupois ounce is 28.349523125 g exactly")
                .isCloseTo(56.69904625, within(1e-9));
    }

    @ParameterizedTest
    @ValueSource(strings = {"96 %", "1e9 L", "3 spoons"})
    void aChangeThatCannotBeIsRefused(String typed) {
        assertThat(Amounts.change(typed, FACTS).ok()).isFalse();
    }

    @Test
    void numbersAreWrittenTheWayOfTheLanguage() {
        Texts english = Texts.drill(Language.EN);
        Texts spanish = Texts.drill(Language.ES);
        assertThat(english.number(2400)).isEqualTo("2,400");
        assertThat(spanish.number(2400)).isEqualTo("2400");
        assertThat(spanish.number(12500)).isEqualTo("12\u00a0500");
        assertThat(english.number(0.0384)).isEqualTo("0.0384");
        assertThat(spanish.number(0.0384)).isEqualTo("0,0384");
        assertThat(english.decimals(-0.04, 1)).isEqualTo("0.0");
        assertThat(english.number(-3)).isEqualTo("−3");
    }
}
