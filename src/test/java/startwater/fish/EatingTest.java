package startwater.fish;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Appetite and ration. */
@Tag("outside")
class EatingTest {
    private static final Species TILAPIA = Species.byId("nile-tilapia");
    private static final double WARM_C = 28;

    /** Abdalla and McNabb 1998: growth of Nile tilapia falls from 0.06 mg NH3-N/L on and ends at 1.46. */
    @ParameterizedTest
    @CsvSource({"0, 1", "0.06, 1", "0.76, 0.5", "1.46, 0", "3, 0"})
    void appetiteFallsWithAmmoniaAsPublished(double ammonia, double appetite) {
        assertThat(TILAPIA.appetite().of(ammonia, 8, 0, WARM_C)).isCloseTo(appetite, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0", "1, 0", "2.5, 0.5", "4, 1", "9, 1"})
    void appetiteNeedsOxygen(double oxygen, double appetite) {
        assertThat(TILAPIA.appetite().of(0, oxygen, 0, WARM_C)).isCloseTo(appetite, within(1e-9));
    }

    @ParameterizedTest
    @CsvSource({"0, 1", "0.2, 1", "0.5, 0.5", "0.8, 0", "1, 0"})
    void boundBloodTakesAppetite(double share, double appetite) {
        assertThat(TILAPIA.appetite().of(0, 8, share, WARM_C)).isCloseTo(appetite, within(1e-9));
    }

    @Test
    void troublesMultiplyAndHeatEndsAllOfIt() {
        Appetite a = TILAPIA.appetite();
        assertThat(a.of(0.76, 2.5, 0.5, WARM_C)).isCloseTo(0.125, within(1e-9));
        assertThat(a.of(0, 8, 0, 22)).isEqualTo(a.temperature(22)).isBetween(0.1, 0.9);
        assertThat(a.temperature(a.heatEndC())).isZero();
        assertThat(a.temperature(a.heatEndC() - a.heatSpanC() / 2)).isCloseTo(0.5, within(1e-9));
        assertThat(a.temperature(a.heatEndC() - 2 * a.heatSpanC())).isEqualTo(1);
    }

    @Test
    void theSecondBranchOfTheWarmingLineBeginsAtItsBend() {
        Appetite a = new Appetite(0, 1, new Appetite.Line(0, 0.01), new Appetite.Line(0.5, 0), 20, 40, 5);
        assertThat(a.temperature(19.9)).isCloseTo(0.199, within(1e-12));
        assertThat(a.temperature(20)).isEqualTo(0.5);
    }

    @Test
    void aRationIsReadOffItsRowsAndBetweenThemByTheLogarithmOfMass() {
        FeedTable table = new FeedTable(new double[] {1, 10, 1000}, new double[] {10, 4, 1});
        assertThat(table.fractionAtBest(1)).isCloseTo(0.10, within(1e-9));
        assertThat(table.fractionAtBest(10)).isCloseTo(0.04, within(1e-9));
        assertThat(table.fractionAtBest(1000)).isCloseTo(0.01, within(1e-9));
        assertThat(table.fractionAtBest(StrictMath.sqrt(10))).isCloseTo(0.07, within(1e-9));
        assertThat(table.fractionAtBest(100)).isCloseTo(0.025, within(1e-9));
        assertThat(table.fractionAtBest(0.2)).isEqualTo(0.10);
        assertThat(table.fractionAtBest(5000)).isEqualTo(0.01);
    }

    @Test
    void aTableThatIsNoneIsRefused() {
        assertThatThrownBy(() -> new FeedTable(new double[] {1}, new double[] {5}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("1 and 1");
        assertThatThrownBy(() -> new FeedTable(new double[] {1, 2, 3}, new double[] {5, 4}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("3 and 2");
        assertThatThrownBy(() -> new FeedTable(new double[] {1, 1}, new double[] {5, 4}))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("must rise");
    }

    @Test
    void theTableIsForTheBestTemperature() {
        for (double mass : new double[] {0.5, 20, 300}) {
            double best = TILAPIA.feed().fractionAtBest(mass);
            assertThat(TILAPIA.tableRationFraction(mass, WARM_C)).isEqualTo(best);
            assertThat(TILAPIA.tableRationFraction(mass, 17)).isZero();
            assertThat(TILAPIA.tableRationFraction(mass, 22))
                    .isCloseTo(best * TILAPIA.appetite().temperature(22), within(1e-12))
                    .isBetween(0.01 * best, 0.99 * best);
        }
    }
}
