package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;

/** A bill holds what a way costs by kind of fish, and a mean of bills each by its chance. */
class BillTest {
    private static Bill filled(double unit) {
        Bill bill = Bill.empty();
        bill.add(Component.WATER, unit);
        bill.add(Component.SHOCK, 8 * unit);
        for (int k = 0; k < Belief.STRATA; k++) {
            bill.deaths()[k][Stressor.values().length - 1] = (k + 1) * unit;
            bill.beside()[k] = 3 * (k + 1) * unit;
        }
        return bill;
    }

    @Test
    void aCostIsAddedForFishOfEverySensitivity() {
        Bill bill = filled(1);
        bill.add(Component.WATER, 0.5);
        assertThat(bill.parts()).hasDimensions(Belief.STRATA, Component.values().length);
        for (double[] part : bill.parts()) {
            assertThat(part[Component.WATER.ordinal()]).isEqualTo(1.5);
            assertThat(part[Component.SHOCK.ordinal()]).isEqualTo(8);
            assertThat(part[Component.DEATHS.ordinal()]).isZero();
        }
    }

    /** Three quarters of one and a quarter of five are two. */
    @Test
    void theMeanOfTwoWaysWeighsEachByItsChance() {
        Bill mean = Bill.empty();
        mean.add(filled(1), 0.75);
        mean.add(filled(5), 0.25);
        Bill two = filled(2);
        assertThat(mean.parts()).isDeepEqualTo(two.parts());
        assertThat(mean.deaths()).isDeepEqualTo(two.deaths());
        assertThat(mean.beside()).containsExactly(two.beside());
        assertThat(mean.beside()[3]).isEqualTo(24);
        assertThat(mean.deaths()[1][Stressor.values().length - 1]).isEqualTo(4);
    }
}
