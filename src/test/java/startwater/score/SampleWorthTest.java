package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.quantity.Stream;

class SampleWorthTest {
    /**
     * The textbook drill-or-sell problem with a survey (0.25 oil worth 800 less 100 for drilling; selling brings 90;
     * P(unfavourable | dry) 0.8, P(favourable | oil) 0.6): perfect information 142.5, the survey 53. From memory of the
     * textbook exercise, recomputed by hand.
     */
    @Test
    void drillOrSellHasTheTextbookWorths() {
        double[][] losses = {{-700, 100}, {-90, -90}};
        double[] weights = {0.25, 0.75};
        double[][] survey = {{0.6, 0.2}, {0.4, 0.8}};
        assertThat(SampleWorth.perfect(losses, weights)).isCloseTo(142.5, within(1e-9));
        assertThat(SampleWorth.of(losses, weights, survey)).isCloseTo(53, within(1e-9));
    }

    @Test
    void aPerfectTestReachesTheWorthOfKnowingAndAUselessOneIsWorthNothing() {
        Stream stream = Stream.of(11);
        for (int n = 0; n < 200; n++) {
            double[][] losses = new double[4][6];
            double[] weights = new double[6];
            double sum = 0;
            for (int s = 0; s < 6; s++) {
                weights[s] = stream.uniform();
                sum += weights[s];
                for (double[] act : losses) {
                    act[s] = 10 * stream.uniform();
                }
            }
            double[][] perfect = new double[6][6];
            double[][] useless = new double[6][6];
            double[][] half = new double[6][6];
            for (int s = 0; s < 6; s++) {
                weights[s] /= sum;
                perfect[s][s] = 1;
                for (int r = 0; r < 6; r++) {
                    useless[r][s] = 1.0 / 6;
                    half[r][s] = 0.5 * perfect[r][s] + 0.5 / 6;
                }
            }
            double most = SampleWorth.perfect(losses, weights);
            assertThat(SampleWorth.of(losses, weights, perfect)).isCloseTo(most, within(1e-9));
            assertThat(SampleWorth.of(losses, weights, useless)).isCloseTo(0, within(1e-9));
            assertThat(SampleWorth.of(losses, weights, half)).isBetween(0.0, most + 1e-12);
        }
    }
}
