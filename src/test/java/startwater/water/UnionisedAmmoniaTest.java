package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.ReferenceTable;
import startwater.quantity.OutOfRangeException;

@Tag("outside")
class UnionisedAmmoniaTest {
    @Test
    void agreesWithThePrintedFractions() {
        ReferenceTable table = ReferenceTable.read("water/unionised-ammonia-fa16.csv");
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    "pH " + row.text("ph") + " at " + row.text("temperature_c") + " °C",
                    row.number("fraction"),
                    UnionisedAmmonia.fraction(row.number("ph"), row.number("temperature_c")));
        }
    }

    @Test
    void agreesWithTrussell() {
        ReferenceTable table = ReferenceTable.read("water/unionised-ammonia-trussell.csv");
        for (ReferenceTable.Row row : table.rows()) {
            for (int temperatureC : new int[] {10, 15, 20}) {
                table.check(
                        "pH " + row.text("ph") + " at " + temperatureC + " °C",
                        row.number(temperatureC + "C"),
                        100 * UnionisedAmmonia.fraction(row.number("ph"), temperatureC),
                        0.005);
            }
        }
    }

    /** Activities, which PHREEQC counts and Emerson's equation does not, take 3 to 5 % off. */
    @Test
    void liesWithinAFewPercentOfFullSpeciation() {
        ReferenceTable table = ReferenceTable.read("water/unionised-ammonia-phreeqc.csv");
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    "pH " + row.text("ph") + " at " + row.text("temperature_c") + " °C",
                    row.number("fraction"),
                    UnionisedAmmonia.fraction(row.number("ph"), row.number("temperature_c")));
        }
    }

    @Test
    void reproducesWorkedExamples() {
        ReferenceTable table = ReferenceTable.read("water/unionised-ammonia-examples.csv");
        for (ReferenceTable.Row row : table.rows()) {
            table.check(
                    row.text("tan_mg_per_l") + " mg/L at pH " + row.text("ph") + " and " + row.text("temperature_c")
                            + " °C",
                    row.number("toxic_mg_per_l"),
                    row.number("tan_mg_per_l")
                            * UnionisedAmmonia.fraction(row.number("ph"), row.number("temperature_c")));
        }
    }

    @Test
    void isOneHalfWherePhEqualsPka() {
        assertThat(UnionisedAmmonia.fraction(UnionisedAmmonia.pKa(25), 25)).isCloseTo(0.5, within(1e-15));
    }

    @Test
    void matchesTheShareTheCarbonateSystemUses() {
        assertThat(CarbonateSystem.at(28, 0.004).nh3Fraction(StrictMath.pow(10, -8.3)))
                .isCloseTo(UnionisedAmmonia.fraction(8.3, 28), within(1e-14));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 50.01, Double.NaN, Double.POSITIVE_INFINITY})
    void refusesATemperatureOutsideTheEquation(double temperatureC) {
        assertThatThrownBy(() -> UnionisedAmmonia.fraction(7, temperatureC))
                .isInstanceOfSatisfying(OutOfRangeException.class, e -> {
                    assertThat(e.equation()).isEqualTo("Emerson et al. 1975");
                    assertThat(e.quantity()).isEqualTo("temperature in °C");
                    assertThat(Double.valueOf(e.value())).isEqualTo(Double.valueOf(temperatureC));
                    assertThat(e.low()).isZero();
                    assertThat(e.high()).isEqualTo(50);
                })
                .hasMessageContaining("0.0 and 50.0");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 14.1, Double.NaN})
    void refusesAPhThatCannotBe(double ph) {
        assertThatThrownBy(() -> UnionisedAmmonia.fraction(ph, 20)).isInstanceOf(OutOfRangeException.class);
    }
}
