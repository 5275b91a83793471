package startwater.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

/** The normal distribution against Commons Math 3.6.1. */
class NormalTest {
    private static final NormalDistribution REFEREE = new NormalDistribution(0, 1);

    @Test
    void distributionFunctionMeetsTheReferee() {
        for (double z = -8; z <= 8; z += 0.01) {
            assertThat(Normal.cdf(z)).isCloseTo(REFEREE.cumulativeProbability(z), within(1e-12));
        }
    }

    @Test
    void lowerTailKeepsItsRelativeAccuracy() {
        for (double z = -20; z <= -3; z += 0.25) {
            double published = REFEREE.cumulativeProbability(z);
            assertThat(Normal.cdf(z)).isCloseTo(published, within(1e-9 * published));
        }
    }

    @Test
    void quantileMeetsTheReferee() {
        for (double p = 0.0005; p < 1; p += 0.0005) {
            assertThat(Normal.quantile(p)).isCloseTo(REFEREE.inverseCumulativeProbability(p), within(1e-9));
        }
    }

    @Test
    void quantileUndoesTheDistributionFunctionFarOut() {
        for (double z = -8; z <= 5; z += 0.37) {
            assertThat(Normal.quantile(Normal.cdf(z))).isCloseTo(z, within(1e-9));
        }
    }

    @Test
    void refusesAChanceOutsideZeroToOne() {
        assertThatThrownBy(() -> Normal.quantile(0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> Normal.quantile(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    }
}
