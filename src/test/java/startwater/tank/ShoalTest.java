package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;

/** Fish that go from one tank to another, by hand: what they take, what stays, and how both mix. */
class ShoalTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final int HURT = DAMAGE + Stressor.NITRITE.ordinal();

    private static TestTank tank(double count, double temperatureC) {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .volume(2000)
                .temperature(temperatureC)
                .fill();
        if (count > 0) {
            tank.event(new TankEvent.Stock(count, 10));
        }
        return tank;
    }

    private static double move(TestTank from, TestTank to, double count) {
        return Transfer.fish(from.y, from.parameters, to.y, to.parameters, count);
    }

    /** A quarter of 400 fish of 10 g: 25.6 mg N a gram, and a quarter of both stages of the gut. */
    @Test
    void theLedgersOfBothTanksTellWhatWentWithTheFish() {
        TestTank from = tank(400, 27);
        TestTank to = tank(0, 27);
        from.y[GUT_1] = 300;
        from.y[GUT_2] = 200;
        assertThat(move(from, to, 100)).isEqualTo(100);
        double moved = 100 * 10 * 25.6 + 125;
        assertThat(from.y[REMOVED]).isCloseTo(moved, within(1e-6));
        assertThat(to.y[BROUGHT_IN]).isCloseTo(moved, within(1e-6));
        assertThat(to.y[GUT_1]).isCloseTo(75, EXACT);
        assertThat(to.y[GUT_2]).isCloseTo(50, EXACT);
        assertThat(from.y[GUT_2]).isCloseTo(150, EXACT);
    }

    @Test
    void thoseThatStayKeepTheirHarmAndAnEmptiedTankHasNone() {
        TestTank from = tank(400, 27);
        TestTank to = tank(0, 27);
        from.y[HURT] = 3;
        move(from, to, 100);
        assertThat(from.y[HURT]).isEqualTo(3);
        move(from, to, 1000);
        assertThat(from.y[HURT]).isZero();
        assertThat(to.y[HURT]).isCloseTo(3, EXACT);
    }

    /** A hundred fish with a harm of 4, used to 27 °C, come to three hundred with one of 2 that are used to 23 °C. */
    @Test
    void harmAndWarmthMixByTheLiving() {
        TestTank from = tank(100, 27);
        TestTank to = tank(300, 23);
        from.y[HURT] = 4;
        to.y[HURT] = 2;
        move(from, to, 100);
        assertThat(to.y[HURT]).isCloseTo(2.5, EXACT);
        assertThat(to.y[ACCLIMATED_C]).isCloseTo(24, EXACT);
    }

    /** Of a hundred fish twenty have died, of three hundred none: five in a hundred of four hundred. */
    @Test
    void deathsAddUp() {
        TestTank from = tank(100, 27);
        TestTank to = tank(300, 27);
        from.y[survivors(0)] = 0.8;
        from.y[hazard(0, Stressor.AMMONIA)] = -StrictMath.log(0.8) * 0.75;
        from.y[hazard(0, Stressor.CHLORINE)] = -StrictMath.log(0.8) * 0.25;
        assertThat(move(from, to, 1000)).isCloseTo(80, EXACT);
        assertThat(to.y[survivors(0)]).isCloseTo(0.95, EXACT);
        assertThat(TankReadings.fishAlive(to.y, 1)).isCloseTo(380, EXACT);
        assertThat(TankReadings.deadBy(to.y, 0, Stressor.AMMONIA)).isCloseTo(15, EXACT);
        assertThat(TankReadings.deadBy(to.y, 0, Stressor.CHLORINE)).isCloseTo(5, EXACT);
    }

    /** Half of those that swim there afterwards have made the jump of 7 °C, of which 3 are borne without a death. */
    @Test
    void thoseThatWereThereFeelNoJump() {
        TestTank from = tank(100, 27);
        TestTank to = tank(100, 20);
        move(from, to, 100);
        assertThat(to.y[hazard(0, Stressor.TEMPERATURE)]).isCloseTo(0.5 * 0.01 * 4, EXACT);
    }

    @Test
    void nothingMovesWhereThereAreNoFish() {
        TestTank tank = tank(0, 27);
        double[] before = tank.y.clone();
        tank.event(new TankEvent.Stock(0, 10));
        assertThat(tank.y).isEqualTo(before);
        assertThat(move(tank, tank(100, 27), 10)).isZero();
    }

    @Test
    void mediaTakeBothGroupsWithThem() {
        TestTank from = TestTank.plan().seeds(0.6, 0.4).fill();
        TestTank to = TestTank.plan().seeds(0.1, 0.2).fill();
        double aob = from.y[AOB];
        double nob = from.y[NOB];
        Transfer.media(from.y, to.y, 0.25);
        assertThat(from.y[AOB]).isCloseTo(0.75 * aob, EXACT);
        assertThat(from.y[NOB]).isCloseTo(0.75 * nob, EXACT);
        assertThat(to.y[AOB]).isCloseTo((0.1 / 0.6 + 0.25) * aob, within(1e-6));
        assertThat(to.y[NOB]).isCloseTo((0.2 / 0.4 + 0.25) * nob, within(1e-6));
    }
}
