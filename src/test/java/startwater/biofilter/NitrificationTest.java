package startwater.biofilter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.water.Anthonisen1976;

@Tag("outside")
class NitrificationTest {
    private static final Map<String, Double> VALUES = Map.ofEntries(
            Map.entry("growth_aob_per_day", Nitrification.GROWTH_PER_DAY),
            Map.entry("growth_nob_per_day", Nitrification.GROWTH_PER_DAY),
            Map.entry("ammonia_half_mg_per_l", Nitrification.AMMONIA_HALF_MG_PER_L),
            Map.entry("nitrite_half_mg_per_l", Nitrification.NITRITE_HALF_MG_PER_L),
            Map.entry("oxygen_half_aob_mg_per_l", Nitrification.OXYGEN_HALF_AOB_MG_PER_L),
            Map.entry("oxygen_half_nob_mg_per_l", Nitrification.OXYGEN_HALF_NOB_MG_PER_L),
            Map.entry("ammonia_inhibition_aob_mg_n_per_l", Nitrification.AMMONIA_INHIBITION_AOB_MG_PER_L),
            Map.entry("ammonia_inhibition_nob_mg_n_per_l", Nitrification.AMMONIA_INHIBITION_NOB_MG_PER_L),
            Map.entry("nitrous_acid_inhibition_nob_mg_n_per_l", Nitrification.NITROUS_ACID_INHIBITION_NOB_MG_PER_L),
            Map.entry("areal_limit_g_per_m2_day", Nitrification.AREAL_LIMIT_MG_PER_M2_DAY / 1000),
            Map.entry("growth_ratio_28_over_20_aob", StrictMath.pow(Nitrification.THETA_AOB, 8)),
            Map.entry("growth_ratio_28_over_20_nob", StrictMath.pow(Nitrification.THETA_NOB, 8)));

    @Test
    void constantsLieInThePublishedRanges() {
        ReferenceTable table = ReferenceTable.read("biofilter/kinetics.csv");
        for (ReferenceTable.Row row : table.rows()) {
            String quantity = row.text("quantity");
            table.checkBetween(
                    quantity, row.number("low"), row.number("high"), VALUES.getOrDefault(quantity, Double.NaN));
        }
    }

    @Test
    void phLimitsOnBothSides() {
        assertThat(Nitrification.phFactor(StrictMath.pow(10, -6.5))).isCloseTo(0.5, within(0.001));
        assertThat(Nitrification.phFactor(StrictMath.pow(10, -9.4))).isCloseTo(0.5, within(0.001));
        assertThat(Nitrification.phFactor(StrictMath.pow(10, -7.6))).isGreaterThan(0.97);
        assertThat(Nitrification.phFactor(StrictMath.pow(10, -5.5))).isLessThan(0.011);
    }

    @Test
    void alkalinityThatIsGoneStopsThem() {
        assertThat(Nitrification.alkalinityFactor(0)).isZero();
        assertThat(Nitrification.alkalinityFactor(-0.1)).isZero();
        assertThat(Nitrification.alkalinityFactor(0.35)).isEqualTo(0.5);
    }

    /** The acid constant is that of the published closed form: HNO2 = NO2-N 47/14 h/(h + Ka), there with 46. */
    @Test
    void nitrousAcidFollowsAnthonisen() {
        double h = StrictMath.pow(10, -7);
        double ka = Nitrification.nitrousAcidConstant(28);
        double published = Anthonisen1976.freeNitrousAcidMgPerL(5, 7, 28) * 14 / 46;
        assertThat(5 * h / (h + ka)).isCloseTo(published, within(0.01 * published));
    }

    @Test
    void capacityHoldsAtTheTemperatureTheLimitWasMeasured() {
        double capacity = Nitrification.capacityMgPerDay(10, Nitrification.THETA_AOB);
        assertThat(capacity * StrictMath.pow(Nitrification.THETA_AOB, 6.5)).isCloseTo(7500, within(1e-9));
    }
}
