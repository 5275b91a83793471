package startwater.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SumTextTest {
    private static final Set<SumKind> PLAIN_ARITHMETIC = Set.of(
            SumKind.WATER_CHANGE,
            SumKind.SALT,
            SumKind.BUFFER,
            SumKind.AMMONIA_DOSE,
            SumKind.DECHLORINATE,
            SumKind.RATION,
            SumKind.LOAD,
            SumKind.OXYGEN,
            SumKind.AFTER_CHANGE,
            SumKind.SETTLE,
            SumKind.AIR_OFF,
            SumKind.WASTE,
            SumKind.AS_NITROGEN,
            SumKind.DILUTION);

    /** Whoever keys the line into a calculator must find the printed answer, in either system of units. */
    @Test
    void theWorkingReworksToTheAnswer() {
        int tried = 0;
        for (UnitSystem system : UnitSystem.values()) {
            SumText text = new SumText(Words.of("en"), system);
            for (Sum sum : SumSamples.all()) {
                if (PLAIN_ARITHMETIC.contains(sum.kind()) && sum.answer().value() > 0) {
                    String line = text.working(sum).split(";")[0];
                    assertThat(rework(line)).as(line).isCloseTo(sum.answer().value(), within(tolerance(sum)));
                    tried++;
                }
            }
        }
        assertThat(tried).isEqualTo(30);
    }

    private static double tolerance(Sum sum) {
        return 2e-5 * sum.answer().value();
    }

    /** Takes the units off a line and works what stands before the first "=" that is not in brackets. */
    private static double rework(String line) {
        String plain = line.replaceAll("\\([^()]* = ([^()]*)\\)", "$1");
        List<String> symbols = Arrays.stream(Unit.values())
                .map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty() && !symbol.startsWith("%"))
                .sorted(Comparator.comparing(String::length).reversed())
                .toList();
        for (String symbol : symbols) {
            plain = plain.replace(" " + symbol, "");
        }
        plain = plain.replaceAll(" (at|for) [0-9.]+", "").replace(" %/day", " %");
        double percent = plain.contains("%") && !plain.contains("÷ 100") ? 100 : 1;
        String left = plain.split("=")[0].replace("%", "").replaceAll("\\s+", "");
        double value = new Calculator(left.replace('×', '*').replace('÷', '/').replace('−', '-')).value();
        boolean share = line.trim().endsWith("%");
        return share ? 100 * value : value / percent;
    }

    /** Four operations and brackets. */
    private static final class Calculator {
        private final String text;
        private int at;

        Calculator(String text) {
            this.text = text;
        }

        double value() {
            double value = sum();
            assertThat(at).as("read all of %s", text).isEqualTo(text.length());
            return value;
        }

        private double sum() {
            double value = product();
            while (at < text.length() && "+-".indexOf(text.charAt(at)) >= 0) {
                value += text.charAt(at++) == '+' ? product() : -product();
            }
            return value;
        }

        private double product() {
            double value = factor();
            while (at < text.length() && "*/".indexOf(text.charAt(at)) >= 0) {
                value = text.charAt(at++) == '*' ? value * factor() : value / factor();
            }
            return value;
        }

        private double factor() {
            if (text.charAt(at) == '(') {
                at++;
                double value = sum();
                at++;
                return value;
            }
            int start = at;
            while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
                at++;
            }
            return Double.parseDouble(text.substring(start, at));
        }
    }

    @Test
    void numbersKeepFourFiguresAndAllOfTheirWholePart() {
        Words english = Words.of("en");
        assertThat(english.number(0.0502486, 4)).isEqualTo("0.05025");
        assertThat(english.number(12345.6, 4)).isEqualTo("12346");
        assertThat(english.number(100, 4)).isEqualTo("100");
        assertThat(english.number(0, 4)).isEqualTo("0");
        assertThat(english.number(-0.25, 4)).isEqualTo("-0.25");
        assertThat(Words.of("es").number(0.0502486, 4)).isEqualTo("0,05025");
    }

    @Test
    void poundsAreNamedBesideManyOunces() {
        SumText text = new SumText(Words.of("en"), UnitSystem.US);
        Sum sum = DoseSums.buffer(10_000, 50, 81.1);
        double ounces = sum.answer().in(UnitSystem.US).value();
        assertThat(ounces).isBetween(16.0, 32.0);
        assertThat(text.answers(sum).get(0)).contains("oz (1 lb ").doesNotContain(" g");
    }

    @Test
    void aNameThatEndsInItsUnitChangesWithIt() {
        Measure feed = new Measure("feed_g", 28.349523125, Unit.GRAM_PER_DAY);
        assertThat(feed.in(UnitSystem.US)).isEqualTo(new Measure("feed_oz", 1, Unit.OUNCE_PER_DAY));
        assertThat(new Measure("fish_kg", 0.45359237, Unit.KILOGRAM).in(UnitSystem.US))
                .isEqualTo(new Measure("fish_lb", 1, Unit.POUND));
        assertThat(new Measure("per_ion", 0, Unit.GRAM).in(UnitSystem.US).name())
                .isEqualTo("per_ion");
        assertThat(feed.in(UnitSystem.METRIC)).isEqualTo(feed);
    }

    @Test
    void usUnitsCarryTheirOwnSymbols() {
        assertThat(Arrays.stream(Unit.values())
                        .filter(unit -> unit.in(UnitSystem.US) != unit)
                        .map(unit ->
                                unit.symbol() + "=" + unit.in(UnitSystem.US).symbol()))
                .containsExactlyInAnyOrder("L=gal", "g=oz", "g/day=oz/day", "kg=lb", "°C=°F", "m=ft");
    }

    @Test
    void everyUnitComesBackFromTheOtherSystem() {
        for (Unit unit : Unit.values()) {
            for (UnitSystem system : UnitSystem.values()) {
                assertThat(unit.from(system, unit.to(system, 12.5)))
                        .as("%s", unit)
                        .isCloseTo(12.5, within(1e-12));
            }
        }
    }
}
