package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Meals worked by hand. A hundred Nile tilapia of 20 g in 2,000 L: by the feed table 6.5 % a day at the best temperature,
 * so half a day's ration is 65 g. With 35 % protein a gram of feed holds 56 mg N; of a gram of protein eaten 92 mg N end
 * as ammonia, nine tenths through the gut and one tenth by faeces. Tilapia eat nothing at 17 °C, half at 21, all at 25.
 */
class MealsTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final double HALF_A_DAY = 0.5;

    private static TestTank tilapia(double temperatureC, double excretion) {
        return TestTank.plan()
                .species("nile-tilapia")
                .volume(2000)
                .protein(0.35)
                .excretion(excretion)
                .temperature(temperatureC)
                .stock(1, 20);
    }

    private static void feed(TestTank tank, double fraction, double weighedAtC) {
        tank.event(new TankEvent.Meal(fraction, HALF_A_DAY, weighedAtC));
    }

    /** 52 g hold 18.2 g of protein. */
    @Test
    void whatIsEatenGoesToGutFaecesAndBody() {
        TestTank tank = tilapia(27, 1);
        double body = tank.y[FISH_N];
        feed(tank, 0.8, Double.NaN);
        assertThat(tank.y[FED]).isCloseTo(52 * 56, within(1e-6));
        assertThat(tank.y[GUT_1]).isCloseTo(1506.96, within(1e-6));
        assertThat(tank.y[ORGANIC_N]).isCloseTo(167.44 / 2000, EXACT);
        assertThat(tank.y[FISH_N] - body).isCloseTo(1237.6, within(1e-6));
        assertThat(tank.y[UNEATEN_G]).isCloseTo(0, EXACT);
        assertThat(tank.y[WASTED]).isCloseTo(0, EXACT);
        assertThat(tank.y[GROWTH_LOST]).isCloseTo(HALF_A_DAY * 0.2, EXACT);
    }

    /** At 21 °C the meal is 32.5 g; at 2.5 mg/L of oxygen half of it is eaten. This tank excretes a quarter more. */
    @Test
    void fishShortOfOxygenLeaveTheirFeedInTheWater() {
        TestTank tank = tilapia(21, 1.25);
        tank.y[OXYGEN] = 2.5;
        double body = tank.y[FISH_N];
        feed(tank, 1, Double.NaN);
        assertThat(tank.y[UNEATEN_G]).isCloseTo(16.25, within(1e-8));
        assertThat(tank.y[FED]).isCloseTo(32.5 * 56, within(1e-6));
        assertThat(tank.y[GUT_1]).isCloseTo(588.65625, within(1e-6));
        assertThat(tank.y[ORGANIC_N]).isCloseTo((16.25 * 56 + 65.40625) / 2000, EXACT);
        assertThat(tank.y[FISH_N] - body).isCloseTo(255.9375, within(1e-6));
        assertThat(tank.y[WASTED]).isCloseTo(HALF_A_DAY * 0.5, EXACT);
        assertThat(tank.y[GROWTH_LOST]).isCloseTo(HALF_A_DAY * 0.5, EXACT);
    }

    @Test
    void aRationWeighedForWarmerWaterIsTwiceWhatIsEaten() {
        TestTank tank = tilapia(21, 1);
        feed(tank, 1, 27);
        assertThat(tank.y[UNEATEN_G]).isCloseTo(32.5, within(1e-8));
        assertThat(tank.y[WASTED]).isCloseTo(HALF_A_DAY, EXACT);
        assertThat(tank.y[GROWTH_LOST]).isCloseTo(0, EXACT);
    }

    /** Nobody eats at 16 °C, so no growth is lost; what is thrown in counts as a share of the ration at its best. */
    @Test
    void inWaterTooColdToEatAllIsWasted() {
        TestTank tank = tilapia(16, 1);
        double body = tank.y[FISH_N];
        feed(tank, 0.8, 21);
        assertThat(tank.y[UNEATEN_G]).isCloseTo(26, within(1e-8));
        assertThat(tank.y[WASTED]).isCloseTo(HALF_A_DAY * 0.8 * 0.5, EXACT);
        assertThat(tank.y[ORGANIC_N]).isCloseTo(26.0 * 56 / 2000, EXACT);
        assertThat(tank.y[GROWTH_LOST]).isZero();
        assertThat(tank.y[GUT_1]).isZero();
        assertThat(tank.y[FISH_N]).isEqualTo(body, within(1e-6));
    }

    /** A tank drawn to excrete twice the handbook's share would give off more than it is fed. */
    @Test
    void nobodyGetsThinnerByEating() {
        TestTank tank = tilapia(27, 2);
        double body = tank.y[FISH_N];
        feed(tank, 1, Double.NaN);
        assertThat(tank.y[FISH_N]).isCloseTo(body, within(1e-6));
        assertThat(tank.y[GUT_1]).isCloseTo(0.9 * 65 * 56, within(1e-6));
        assertThat(tank.y[ORGANIC_N]).isCloseTo(0.1 * 65 * 56 / 2000, EXACT);
    }

    @Test
    void aMealOfNothingAndAMealForNobodyChangeNothing() {
        TestTank tank = tilapia(27, 1);
        double[] before = tank.y.clone();
        tank.event(new TankEvent.Meal(1, 0, Double.NaN));
        assertThat(tank.y).isEqualTo(before);
        TestTank empty = TestTank.plan().species("nile-tilapia").fill();
        double[] unfed = empty.y.clone();
        feed(empty, 1, Double.NaN);
        assertThat(empty.y).isEqualTo(unfed);
    }
}
