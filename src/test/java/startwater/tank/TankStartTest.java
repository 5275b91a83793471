package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import java.util.Set;
import java.util.TreeSet;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;

/** The first state of a system, and counts that set it right. */
class TankStartTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private final TankParameters p = TestTank.cubicMetre(0.8, 1.2);

    private double[] filled() {
        return TankStart.filled(p, new SourceWater(24, 0.3, 0.1, 5, 2, 2.05, 8, 30, 0.2, 0.1), 0.5, 0.25);
    }

    /** A hundred fish of 10 g, of which 80 and 40 in a hundred of each half live. */
    private double[] halfDead() {
        double[] y = filled();
        TankStart.stock(y, p, 100, 10);
        y[survivors(0)] = 0.8;
        y[survivors(1)] = 0.4;
        y[FISH_N] *= 0.6;
        y[GUT_1] = 600;
        y[GUT_2] = 300;
        y[hazard(0, Stressor.NITRITE)] = -StrictMath.log(0.8);
        y[hazard(1, Stressor.NITRITE)] = -StrictMath.log(0.4);
        return y;
    }

    /** 750 mg N a square metre and day is the most at 26.5 °C; activity is told for 20 °C. */
    @Test
    void aFilledSystemHasItsWaterAndItsShareOfBacteria() {
        double[] y = filled();
        double[] water = {
            y[TEMPERATURE],
            y[TAN],
            y[NITRITE],
            y[NITRATE],
            y[ALKALINITY],
            y[DIC],
            y[OXYGEN],
            y[CHLORIDE],
            y[FREE_CHLORINE],
            y[COMBINED_CHLORINE],
            y[ACCLIMATED_C]
        };
        assertThat(water).containsExactly(24, 0.3, 0.1, 5, 2, 2.05, 8, 30, 0.2, 0.1, 24);
        assertThat(y[AOB]).isCloseTo(0.5 * 7500 / StrictMath.pow(1.09, 6.5), within(1e-6));
        assertThat(y[NOB]).isCloseTo(0.25 * 7500 / StrictMath.pow(1.06, 6.5), within(1e-6));
        assertThat(y[survivors(0)] + y[survivors(1)]).isEqualTo(2);
        double alkalinity = TankReadings.carbonate(y).alkalinity(y[H_ION], y[DIC], y[TAN]);
        assertThat(alkalinity).as("pH is settled").isCloseTo(2, within(1e-6));
    }

    /** A hundred fish of 10 g hold 25.6 mg N a gram, and the ledger says so each time. */
    @Test
    void fishThatArriveAreBooked() {
        double[] y = filled();
        TankStart.stock(y, p, 100, 10);
        TankStart.stock(y, p, 50, 10);
        assertThat(y[BROUGHT_IN]).isCloseTo(38_400, within(1e-6));
        assertThat(y[FISH_N]).isCloseTo(38_400, within(1e-6));
        assertThat(y[STOCKED]).isEqualTo(150);
    }

    /** Every number has a place of its own. */
    @Test
    void noPlaceOfTheStateIsTakenTwice() {
        Set<Integer> places = new TreeSet<>();
        for (int i = 0; i < STRATA; i++) {
            places.add(i);
        }
        for (int s = 0; s < 3; s++) {
            places.add(survivors(s));
            for (Stressor cause : Stressor.values()) {
                places.add(hazard(s, cause));
            }
        }
        assertThat(places).hasSize(STRATA + 3 * 7).hasSize(TankLayout.length(3));
        assertThat(places).allMatch(at -> at >= 0 && at < TankLayout.length(3));
    }

    @Test
    void fishNeedASpecies() {
        TestTank bare = TestTank.plan().fill();
        assertThatThrownBy(() -> TankStart.stock(bare.y, bare.parameters, 12, 5))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no species")
                .hasMessageContaining("12");
    }

    @Test
    void harmThatCountsFromHereLeavesTheLivingAsTheStock() {
        double[] y = halfDead();
        double mass = TankReadings.massG(y, 2);
        TankStart.fromHere(y, p);
        assertThat(y[STOCKED]).isCloseTo(60, EXACT);
        assertThat(TankReadings.fishAlive(y, 2)).isCloseTo(60, EXACT);
        assertThat(TankReadings.massG(y, 2)).isCloseTo(mass, EXACT);
        assertThat(y[survivors(0)] / y[survivors(1)]).isCloseTo(2, EXACT);
        assertThat(TankReadings.deadBy(y, 0, Stressor.NITRITE)).isZero();
        assertThat(TankReadings.survivalOf(y, 1)).isEqualTo(1);
    }

    @Test
    void withoutFishHarmBeginsWithAll() {
        double[] y = filled();
        y[survivors(0)] = 0.3;
        TankStart.fromHere(y, p);
        assertThat(y[survivors(0)]).isEqualTo(1);
        assertThat(y[STOCKED]).isZero();
    }

    /** Sixty were expected: a count of 45 takes a quarter of their nitrogen out. */
    @Test
    void fewerCountedThanExpectedGoIntoTheLedgerOfWhatWentOut() {
        double[] y = halfDead();
        double nitrogen = 60 * 10 * 25.6 + 900;
        double in = y[BROUGHT_IN];
        TankStart.counted(y, p, 45);
        assertThat(TankReadings.fishAlive(y, 2)).isCloseTo(45, EXACT);
        assertThat(TankReadings.massG(y, 2)).isCloseTo(10, EXACT);
        assertThat(y[GUT_1]).isCloseTo(450, EXACT);
        assertThat(y[GUT_2]).isCloseTo(225, EXACT);
        assertThat(y[REMOVED]).isCloseTo(nitrogen / 4, within(1e-6));
        assertThat(y[BROUGHT_IN]).isEqualTo(in);
    }

    @Test
    void moreCountedThanExpectedGoIntoTheLedgerOfWhatCameIn() {
        double[] y = halfDead();
        double nitrogen = 60 * 10 * 25.6 + 900;
        double in = y[BROUGHT_IN];
        TankStart.counted(y, p, 75);
        assertThat(TankReadings.fishAlive(y, 2)).isCloseTo(75, EXACT);
        assertThat(y[BROUGHT_IN] - in).isCloseTo(nitrogen / 4, within(1e-6));
        assertThat(y[REMOVED]).isZero();
    }

    @Test
    void aCountInATankWithoutFishLeavesNone() {
        double[] y = filled();
        TankStart.counted(y, p, 3);
        assertThat(TankReadings.fishAlive(y, 2)).isZero();
        assertThat(y[FISH_N]).isZero();
        assertThat(y[survivors(0)]).isZero();
    }
}
