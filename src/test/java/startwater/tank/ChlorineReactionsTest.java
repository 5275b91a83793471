package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/** Residual and ammonia, by weight: one nitrogen (14.007) for one Cl2 (70.90). */
class ChlorineReactionsTest {
    private static final double N_PER_CL2 = 14.007 / 70.90;
    private static final Offset<Double> EXACT = within(1e-12);

    private static double[] water(double free, double combined, double tan) {
        double[] y = new double[TankLayout.length(1)];
        y[FREE_CHLORINE] = free;
        y[COMBINED_CHLORINE] = combined;
        y[TAN] = tan;
        return y;
    }

    private static void has(double[] y, double free, double combined, double tan) {
        assertThat(y[FREE_CHLORINE]).as("free").isCloseTo(free, EXACT);
        assertThat(y[COMBINED_CHLORINE]).as("combined").isCloseTo(combined, EXACT);
        assertThat(y[TAN]).as("ammonia").isCloseTo(tan, EXACT);
    }

    @Test
    void allFreeChlorineBindsToAmmoniaWhereThereIsEnough() {
        double[] y = water(0.5, 0.2, 1);
        ChlorineReactions.combine(y);
        has(y, 0, 0.7, 1 - 0.5 * N_PER_CL2);
    }

    @Test
    void whereAmmoniaRunsOutTheRestStaysFree() {
        double bound = 0.1 / N_PER_CL2;
        double[] y = water(2, 0.2, 0.1);
        ChlorineReactions.combine(y);
        has(y, 2 - bound, 0.2 + bound, 0);
    }

    @Test
    void withoutFreeChlorineNothingCombines() {
        double[] y = water(0, 0.2, 1);
        ChlorineReactions.combine(y);
        has(y, 0, 0.2, 1);
    }

    /** Thiosulfate takes free chlorine first; chloramine that it takes apart leaves its ammonia. */
    @Test
    void thiosulfateTakesFreeChlorineFirst() {
        double[] little = water(0.5, 0.4, 1);
        ChlorineReactions.neutralise(little, 0.3);
        has(little, 0.2, 0.4, 1);
        double[] more = water(0.5, 0.4, 1);
        ChlorineReactions.neutralise(more, 0.6);
        has(more, 0, 0.3, 1 + 0.1 * N_PER_CL2);
        double[] plenty = water(0.5, 0.4, 1);
        ChlorineReactions.neutralise(plenty, 5);
        has(plenty, 0, 0, 1 + 0.4 * N_PER_CL2);
    }

    /** The same done in a barrel, before the water is let in. */
    @Test
    void sourceWaterIsNeutralisedTheSameWay() {
        SourceWater tap = SourceWater.read(20, 7.6, 100, 0.2, 3, 15, 0.5, 0.4);
        for (double stated : new double[] {0, 0.3, 0.6, 5}) {
            double[] y = water(0.5, 0.4, 0.2);
            ChlorineReactions.neutralise(y, stated);
            SourceWater treated = tap.neutralised(stated);
            has(y, treated.freeChlorineMgPerL(), treated.combinedChlorineMgPerL(), treated.tanMgPerL());
            assertThat(treated.nitrogenMgPerL()).isCloseTo(tap.nitrogenMgPerL(), EXACT);
        }
    }

    @Test
    void theNitrogenOfChloramineCountsAmongWhatAWaterBrings() {
        SourceWater tap = new SourceWater(20, 0.2, 0.1, 3, 2, 2, 9, 15, 0.5, 0.4);
        assertThat(tap.nitrogenMgPerL()).isCloseTo(3.3 + 0.4 * N_PER_CL2, EXACT);
    }
}
