package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.biofilter.FilterMedia;
import startwater.fish.Stressor;

/** Fish and media go from a nursery to a main system; nothing is lost on the way. */
class TransferBehaviourTest {
    private static TestTank nursery() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .media(FilterMedia.SPONGE)
                .volume(800)
                .seeds(0.6, 0.6)
                .water(7.6, 140, 0, 60)
                .stock(4, 8)
                .fed(0.6);
        tank.y[TankLayout.NITRITE] = 14;
        tank.y[TankLayout.NOB] = 0;
        return tank.run(3);
    }

    private static TestTank main(double temperatureC) {
        return TestTank.plan()
                .species("nile-tilapia")
                .media(FilterMedia.SPONGE)
                .volume(4000)
                .temperature(temperatureC)
                .water(7.9, 140, 0, 60)
                .fill()
                .run(2);
    }

    private static double unledgered(TestTank a, TestTank b) {
        return a.unledgeredNitrogen() + b.unledgeredNitrogen();
    }

    private static double fish(TestTank tank) {
        return TankReadings.fishAlive(tank.y, 1);
    }

    @Test
    void nitrogenClosesOverTheSite() {
        TestTank from = nursery();
        TestTank to = main(27);
        double before = unledgered(from, to);
        double inFish = from.y[TankLayout.FISH_N] + from.y[TankLayout.GUT_1] + from.y[TankLayout.GUT_2];
        for (int batch = 0; batch < 4; batch++) {
            Transfer.fish(from.y, from.parameters, to.y, to.parameters, 100);
            Transfer.media(from.y, to.y, 0.3);
            from.run(2);
            to.fed(0.5).run(2);
        }
        double scale = inFish + from.y[TankLayout.FED] + to.y[TankLayout.FED];
        assertThat(StrictMath.abs(unledgered(from, to) - before)).isLessThan(1e-9 * scale);
        assertThat(from.y[TankLayout.REMOVED]).isGreaterThan(0.5 * inFish);
    }

    @Test
    void fishKeepTheirNumberTheirMassAndTheirGut() {
        TestTank from = nursery();
        TestTank to = main(27);
        double alive = fish(from);
        double mass = TankReadings.massG(from.y, 1);
        double gut = from.y[TankLayout.GUT_1] + from.y[TankLayout.GUT_2];
        double moved = Transfer.fish(from.y, from.parameters, to.y, to.parameters, 150);
        assertThat(moved).isEqualTo(150);
        assertThat(fish(to)).isCloseTo(150, within(1e-9));
        assertThat(fish(from)).isCloseTo(alive - 150, within(1e-9));
        assertThat(TankReadings.massG(to.y, 1)).isCloseTo(mass, within(1e-9));
        assertThat(TankReadings.massG(from.y, 1)).isCloseTo(mass, within(1e-9));
        assertThat(to.y[TankLayout.GUT_1] + to.y[TankLayout.GUT_2]).isCloseTo(gut * 150 / alive, within(1e-9));
    }

    @Test
    void fishCarryTheHarmTheyHaveHad() {
        TestTank from = nursery();
        TestTank to = main(27);
        double damage = from.y[TankLayout.DAMAGE + Stressor.NITRITE.ordinal()];
        double died = TankReadings.deathsBy(from.y, 0, Stressor.NITRITE) * from.y[TankLayout.STOCKED];
        assertThat(damage).isGreaterThan(1);
        assertThat(died).isGreaterThan(1);
        TankStart.stock(to.y, to.parameters, 100, 8);
        Transfer.fish(from.y, from.parameters, to.y, to.parameters, 100);
        assertThat(to.y[TankLayout.DAMAGE + Stressor.NITRITE.ordinal()]).isCloseTo(damage / 2, within(1e-9));
        Transfer.fish(from.y, from.parameters, to.y, to.parameters, 1e9);
        assertThat(fish(from)).isZero();
        // Deaths by cause add up over the site.
        double there = TankReadings.deathsBy(to.y, 0, Stressor.NITRITE) * to.y[TankLayout.STOCKED];
        assertThat(there).isCloseTo(died, within(1e-6));
        assertThat(TankReadings.survivalOf(to.y, 0)).isCloseTo(to.y[TankLayout.survivors(0)], within(1e-4));
    }

    @Test
    void theJumpBetweenTheWatersIsFeltByThoseWhoMove() {
        TestTank from = nursery();
        TestTank warm = main(27);
        TestTank cold = main(20);
        TestTank from2 = nursery();
        Transfer.fish(from.y, from.parameters, warm.y, warm.parameters, 100);
        Transfer.fish(from2.y, from2.parameters, cold.y, cold.parameters, 100);
        assertThat(warm.y[TankLayout.hazard(0, Stressor.TEMPERATURE)]).isZero();
        double jump = from2.y[TankLayout.TEMPERATURE] - cold.y[TankLayout.TEMPERATURE];
        assertThat(cold.y[TankLayout.hazard(0, Stressor.TEMPERATURE)]).isCloseTo(0.01 * (jump - 3), within(1e-9));
        assertThat(cold.y[TankLayout.SHOCK]).isGreaterThan(warm.y[TankLayout.SHOCK]);
        assertThat(cold.y[TankLayout.ACCLIMATED_C]).isCloseTo(27, within(0.01));
    }

    @Test
    void ripeMediaBringTheirBacteriaAndTheirSolids() {
        TestTank from = nursery();
        TestTank to = main(27);
        double aob = from.y[TankLayout.AOB];
        double there = to.y[TankLayout.AOB];
        double held = from.y[TankLayout.HELD_N];
        Transfer.media(from.y, to.y, 0.25);
        assertThat(to.y[TankLayout.AOB]).isCloseTo(there + 0.25 * aob, within(1e-9));
        assertThat(from.y[TankLayout.AOB]).isCloseTo(0.75 * aob, within(1e-9));
        assertThat(to.y[TankLayout.HELD_N]).isCloseTo(0.25 * held, within(1e-9));
        assertThat(held).isPositive();
    }

    @Test
    void fishGoOnlyBetweenSystemsOfTheirSpecies() {
        TestTank from = nursery();
        TestTank to = TestTank.plan().species("common-carp").fill();
        assertThatThrownBy(() -> Transfer.fish(from.y, from.parameters, to.y, to.parameters, 1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("species");
    }

    /** Stocking by halves comes to the same number, with newcomers unharmed. */
    @Test
    void fishCanBeStockedInBatches() {
        TestTank tank = main(27);
        TankStart.stock(tank.y, tank.parameters, 60, 10);
        tank.y[TankLayout.NITRITE] = 40;
        tank.run(2);
        double alive = fish(tank);
        double died = 60 - alive;
        assertThat(died).isGreaterThan(5);
        tank.event(new TankEvent.Stock(40, 10));
        assertThat(fish(tank)).isCloseTo(alive + 40, within(1e-9));
        assertThat(tank.y[TankLayout.STOCKED]).isEqualTo(100);
        assertThat(100 * (1 - TankReadings.survivalOf(tank.y, 0))).isCloseTo(died, within(0.02));
    }
}
