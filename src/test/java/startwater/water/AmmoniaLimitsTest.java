package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.ReferenceTable;
import startwater.quantity.OutOfRangeException;

class AmmoniaLimitsTest {
    @Test
    void criteriaAgreeWithThePublishedTablesToTwoFigures() {
        ReferenceTable table = ReferenceTable.read("water/ammonia-criteria-epa2013.csv");
        MathContext twoFigures = new MathContext(2, RoundingMode.HALF_UP);
        for (ReferenceTable.Row row : table.rows()) {
            double computed = criterion(row.text("criterion"), row.number("ph"), row.number("temperature_c"));
            table.check(
                    row.text("criterion") + ", " + row.text("temperature_c") + " °C, pH " + row.text("ph"),
                    row.number("tan_mg_per_l"),
                    new BigDecimal(computed).round(twoFigures).doubleValue());
        }
    }

    private static double criterion(String name, double ph, double temperatureC) {
        return switch (name) {
            case "CMC_salmonids" -> AmmoniaCriteria2013.acuteWithSalmonids(ph, temperatureC);
            case "CMC_no_salmonids" -> AmmoniaCriteria2013.acuteWithoutSalmonids(ph, temperatureC);
            default -> AmmoniaCriteria2013.chronic(ph, temperatureC);
        };
    }

    @ParameterizedTest
    @CsvSource({"6.4, 20", "9.1, 20", "7, -1", "7, 31", "NaN, 20"})
    void criteriaRefuseWhatTheTablesDoNotCover(double ph, double temperatureC) {
        assertThatThrownBy(() -> AmmoniaCriteria2013.chronic(ph, temperatureC)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AmmoniaCriteria2013.acuteWithSalmonids(ph, temperatureC))
                .isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> AmmoniaCriteria2013.acuteWithoutSalmonids(ph, temperatureC))
                .isInstanceOf(OutOfRangeException.class);
    }

    /** Worked by hand from the closed forms of Anthonisen et al. 1976. */
    @ParameterizedTest
    @CsvSource({"5, 8, 28, 0.399", "3, 7.5, 28, 0.0792", "10, 7, 25, 0.0686", "20, 8, 30, 1.814"})
    void freeAmmoniaFollowsTheClosedForm(double tan, double ph, double temperatureC, double expected) {
        assertThat(Anthonisen1976.freeAmmoniaMgPerL(tan, ph, temperatureC))
                .isCloseTo(expected, within(0.002 * expected));
    }

    @ParameterizedTest
    @CsvSource({"5, 7, 28, 0.00342", "10, 6.5, 28, 0.0216", "5, 6, 25, 0.0369", "50, 7, 30, 0.0325"})
    void freeNitrousAcidFollowsTheClosedForm(double nitrite, double ph, double temperatureC, double expected) {
        assertThat(Anthonisen1976.freeNitrousAcidMgPerL(nitrite, ph, temperatureC))
                .isCloseTo(expected, within(0.002 * expected));
    }

    /** The two published forms of the ammonia balance differ by a few percent only, once both are mg NH3/L. */
    @Test
    void freeAmmoniaAgreesWithEmerson() {
        double byEmerson = 17.0 / 14 * 5 * UnionisedAmmonia.fraction(8, 28);
        assertThat(Anthonisen1976.freeAmmoniaMgPerL(5, 8, 28)).isCloseTo(byEmerson, within(0.03 * byEmerson));
    }

    @Test
    void theClosedFormsRefuseImpossibleWater() {
        assertThatThrownBy(() -> Anthonisen1976.freeAmmoniaMgPerL(1, 15, 20)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> Anthonisen1976.freeNitrousAcidMgPerL(1, 7, 51))
                .isInstanceOf(OutOfRangeException.class);
    }
}
