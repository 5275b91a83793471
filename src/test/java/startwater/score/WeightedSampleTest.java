package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import startwater.quantity.Stream;

class WeightedSampleTest {
    @Test
    void weightsStayFiniteHoweverSmallTheLikelihoods() {
        double[] weights = WeightedSample.normalised(new double[] {-40_000, -40_001, Double.NEGATIVE_INFINITY});
        assertThat(weights[0] / weights[1]).isCloseTo(StrictMath.E, within(1e-12));
        assertThat(weights[2]).isZero();
        assertThat(Arrays.stream(weights).sum()).isCloseTo(1, within(1e-12));
    }

    @Test
    void evidenceThatNothingExplainsLeavesTheWeights() {
        double[] weights = {0.25, 0.75};
        assertThat(WeightedSample.posterior(weights, new double[] {0, 0})).containsExactly(weights);
    }

    @Test
    void effectiveNumberIsTheCountOfEqualsAndOneOfASingle() {
        assertThat(WeightedSample.effective(new double[] {0.25, 0.25, 0.25, 0.25}))
                .isEqualTo(4);
        assertThat(WeightedSample.effective(new double[] {1, 0, 0})).isEqualTo(1);
    }

    @Test
    void systematicResamplingTakesEachAsOftenAsItsWeightSays() {
        for (int trial = 0; trial < 200; trial++) {
            Stream draws = Stream.of(trial);
            double[] logs = new double[30];
            Arrays.setAll(logs, i -> 2 * draws.normal());
            double[] weights = WeightedSample.normalised(logs);
            int[] times = new int[30];
            for (int i : WeightedSample.systematic(weights, 100, draws.uniform())) {
                times[i]++;
            }
            for (int i = 0; i < 30; i++) {
                assertThat((double) times[i])
                        .isBetween(Math.floor(100 * weights[i]) - 1e-9, Math.ceil(100 * weights[i]) + 1e-9);
            }
        }
    }

    @Test
    void quantilesAreValuesOfTheSample() {
        double[] values = {3, 1, 2};
        double[] weights = {0.5, 0.25, 0.25};
        assertThat(WeightedSample.quantile(values, weights, 0.25)).isEqualTo(1);
        assertThat(WeightedSample.quantile(values, weights, 0.26)).isEqualTo(2);
        assertThat(WeightedSample.quantile(values, weights, 0.9)).isEqualTo(3);
    }

    /** A comb of four teeth from 1/8 on stands at 1/8, 3/8, 5/8 and 7/8. */
    @Test
    void theCombTakesTheMemberInWhoseShareEachToothStands() {
        assertThat(WeightedSample.systematic(new double[] {0.25, 0.5, 0.25}, 4, 0.5))
                .containsExactly(0, 1, 1, 2);
        assertThat(WeightedSample.systematic(new double[] {0, 1, 0}, 3, 0.5)).containsExactly(1, 1, 1);
        // What rounding leaves over at the end goes to the last.
        assertThat(WeightedSample.systematic(new double[] {0.5, 0.25}, 2, 0.9)).containsExactly(0, 1);
    }

    @Test
    void evidenceWeighsByItsLikelihood() {
        // A half, a quarter and a quarter, seen four, two and no times as likely: 4 to 1.
        double[] after = WeightedSample.posterior(new double[] {0.5, 0.25, 0.25}, new double[] {0.4, 0.2, 0});
        assertThat(after).containsExactly(new double[] {0.8, 0.2, 0}, within(1e-15));
    }

    @Test
    void theWorstShareTakesAPartOfTheValueAtItsEdge() {
        double[] values = {1, 5, 3};
        double[] weights = {0.5, 0.2, 0.3};
        assertThat(WeightedSample.worstMean(values, weights, 0.2)).isCloseTo(5, within(1e-12));
        // A fifth of 5 and a fifth of 3.
        assertThat(WeightedSample.worstMean(values, weights, 0.4)).isCloseTo(4, within(1e-12));
        assertThat(WeightedSample.worstMean(values, weights, 1)).isCloseTo(2.4, within(1e-12));
    }
}
