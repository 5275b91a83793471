package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static startwater.Refusals.refused;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/** Every equation of the fish refuses what lies outside its range, and says which, where and from what source. */
class FishValidityTest {
    private static final SurvivalCurve CURVE = SurvivalCurve.plain(5, 1.7, 0.8);
    private static final Species TILAPIA = Species.byId("nile-tilapia");

    @Test
    void parametersOfTheSurvivalCurve() {
        refused(SurvivalCurve.KILL_RATE_PER_DAY, v -> new SurvivalCurve(v, 1, 1, 1, 1));
        refused(SurvivalCurve.THRESHOLD, v -> new SurvivalCurve(1, v, 1, 1, 1));
        refused(SurvivalCurve.SLOPE_PER_DAY, v -> new SurvivalCurve(1, 1, v, 1, 1));
        refused(SurvivalCurve.THRESHOLD, v -> new SurvivalCurve(1, 1, 1, v, 1));
        refused(SurvivalCurve.SLOPE_PER_DAY, v -> new SurvivalCurve(1, 1, 1, 1, v));
    }

    @Test
    void exposureAndDaysOfTheSurvivalCurve() {
        refused(SurvivalCurve.EXPOSURE, v -> CURVE.cumulativeHazard(v, 4));
        refused(SurvivalCurve.DAYS, v -> CURVE.cumulativeHazard(2, v));
    }

    @Test
    void aConcentrationThatKillsHalfNeedsDaysAndASlope() {
        assertThatThrownBy(() -> CURVE.lc50(0)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> CURVE.lc50(Double.NaN)).isInstanceOf(OutOfRangeException.class);
        assertThatThrownBy(() -> SurvivalCurve.plain(5, 1.7, 0).lc50(4)).isInstanceOf(OutOfRangeException.class);
    }

    @Test
    void aSlopeIsOnlySolvedWhereTheDamagePassesTheThreshold() {
        assertThatThrownBy(() -> SurvivalCurve.slopeForLc50(5, 2, 0, 0, 2, 4))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("threshold");
        assertThatThrownBy(() -> SurvivalCurve.slopeForLc50(5, 1, 0, 10, 2, 4))
                .isInstanceOf(OutOfRangeException.class)
                .hasMessageContaining("second slope");
    }

    @Test
    void oxygenUptake() {
        Species.Respiration r = TILAPIA.respiration();
        refused(Species.Respiration.MASS_G, v -> r.mgPerKgHour(v, 25));
        refused(Species.Respiration.TEMPERATURE_C, v -> r.mgPerKgHour(20, v));
        refused(Species.Respiration.UPTAKE, v -> new Species.Respiration(v, 0.2, 1.07));
        refused(Species.Respiration.EXPONENT, v -> new Species.Respiration(500, v, 1.07));
        refused(Species.Respiration.THETA, v -> new Species.Respiration(500, 0.2, v));
    }

    @Test
    void feedTable() {
        refused(FeedTable.ANY_MASS_G, TILAPIA.feed()::fractionAtBest);
        refused(FeedTable.PERCENT_PER_DAY, v -> new FeedTable(new double[] {1, 10}, new double[] {v, 5}));
        assertThatThrownBy(() -> new FeedTable(new double[] {0, 10}, new double[] {8, 5}))
                .isInstanceOf(OutOfRangeException.class);
        Validity range = new FeedTable(new double[] {1, 10}, new double[] {8, 5}).massRangeG();
        assertThat(List.of(range.low(), range.high())).containsExactly(1.0, 10.0);
    }

    @Test
    void appetite() {
        Appetite.Line line = new Appetite.Line(0, 1);
        refused(Appetite.AMMONIA_START, v -> new Appetite(v, 1, line, line, 20, 37, 4));
        refused(Appetite.AMMONIA_SPAN, v -> new Appetite(0.06, v, line, line, 20, 37, 4));
        refused(Appetite.TEMPERATURE_C, v -> new Appetite(0.06, 1, line, line, v, 37, 4));
        refused(Appetite.TEMPERATURE_C, v -> new Appetite(0.06, 1, line, line, 20, v, 4));
        refused(Appetite.HEAT_SPAN_C, v -> new Appetite(0.06, 1, line, line, 20, 37, v));
    }

    @Test
    void sizeOnTheAmmoniaThresholds() {
        refused(Species.Respiration.MASS_G, TILAPIA::ammoniaThresholdFactor);
    }

    @Test
    void valuesOfASpecies() {
        refused(Species.CHLORIDE_HALF_MG_PER_L, v -> species(v, 3, 10, 30, 1, 0));
        refused(Species.METHAEMOGLOBIN_HALF_MG_PER_L, v -> species(25, v, 10, 30, 1, 0));
        refused(Species.LIMIT_C, v -> species(25, 3, v, 30, 1, 0));
        refused(Species.LIMIT_C, v -> species(25, 3, 10, v, 1, 0));
        refused(Species.CRITICAL_OXYGEN_MG_PER_L, v -> species(25, 3, 10, 30, v, 0));
        refused(Species.SIZE_EXPONENT, v -> species(25, 3, 10, 30, 1, v));
    }

    private static void species(
            double chloride, double blood, double cold, double warm, double oxygen, double exponent) {
        new Species(
                "test",
                Species.Shape.CARP,
                new ArrayList<>(TILAPIA.curves()),
                chloride,
                blood,
                cold,
                warm,
                TILAPIA.appetite(),
                TILAPIA.feed(),
                TILAPIA.guidance(),
                exponent,
                oxygen,
                TILAPIA.respiration());
    }
}
