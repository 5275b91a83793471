package startwater.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.ReferenceTable;
import startwater.quantity.OutOfRangeException;

@Tag("outside")
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

    @Test
    void freeAmmoniaAndNitrousAcidFollowTheClosedForms() {
        ReferenceTable table = ReferenceTable.read("water/anthonisen.csv");
        for (ReferenceTable.Row row : table.rows()) {
            double nitrogen = row.number("mg_n_per_l");
            double ph = row.number("ph");
            double temperatureC = row.number("temperature_c");
            table.check(
                    String.join(" ", row.text("what"), row.text("mg_n_per_l"), "at pH", row.text("ph")),
                    row.number("value"),
                    row.text("what").equals("ammonia")
                            ? Anthonisen1976.freeAmmoniaMgPerL(nitrogen, ph, temperatureC)
                            : Anthonisen1976.freeNitrousAcidMgPerL(nitrogen, ph, temperatureC));
        }
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
