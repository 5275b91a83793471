package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.drill.Decision.FollowUp;

/** Which loss outweighs which: the kinks and the order, not every figure. */
class LossWeightsTest {
    /** Five days at 0.05 % each, what is beyond at 0.15 %. */
    @Test
    void growthLostCountsThreefoldAfterFiveDays() {
        assertThat(LossWeights.growth(0, 20)).isZero();
        assertThat(LossWeights.growth(2, 20)).isCloseTo(0.10, within(1e-12));
        assertThat(LossWeights.growth(5, 20)).isCloseTo(0.25, within(1e-12));
        assertThat(LossWeights.growth(7, 20)).isCloseTo(0.55, within(1e-12));
    }

    /** Fry must not fast at all: a quarter percent a day from the first. */
    @Test
    void fryUnderAGramLoseMoreFromTheFirstDay() {
        assertThat(LossWeights.growth(1, 0.9)).isCloseTo(0.25, within(1e-12));
        assertThat(LossWeights.growth(7, 0.2)).isCloseTo(1.75, within(1e-12));
        assertThat(LossWeights.growth(1, 1)).isCloseTo(0.05, within(1e-12));
    }

    @Test
    void askingSomebodyHasItsPriceAndAskingNobodyHasNone() {
        assertThat(LossWeights.attention(FollowUp.NONE)).isZero();
        assertThat(LossWeights.attention(FollowUp.LOOK_AGAIN)).isPositive();
        assertThat(LossWeights.attention(FollowUp.CALL)).isGreaterThan(LossWeights.attention(FollowUp.LOOK_AGAIN));
    }
}
