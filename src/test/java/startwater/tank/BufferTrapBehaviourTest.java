package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;
import startwater.water.Dose;

/** Raising the pH of an acid tank full of ammonia: TAN 20 mg N/L at pH 6.5, alkalinity brought from 5 to 100 mg/L. */
class BufferTrapBehaviourTest {
    private static TestTank acid(String species, double airPerHour) {
        return TestTank.plan()
                .species(species)
                .seeds(1e-3, 1e-3)
                .air(airPerHour, 0.4)
                .water(6.5, 5, 20, 200)
                .stock(1.5, 12);
    }

    private static TestTank after(Dose compound, String species, double airPerHour) {
        TestTank tank = acid(species, airPerHour);
        tank.dose(compound, 95);
        return tank;
    }

    @Test
    void beforeTheDoseLittleIsToxic() {
        assertThat(acid("nile-tilapia", 2).toxicAmmonia()).isLessThan(0.06);
    }

    @Test
    void sodaAshKillsTheStock() {
        TestTank tank = after(Dose.SODIUM_CARBONATE, "nile-tilapia", 2);
        assertThat(tank.ph()).isCloseTo(9.25, within(0.05));
        assertThat(tank.toxicAmmonia()).isCloseTo(10.9, within(0.5));
        tank.run(4);
        assertThat(tank.survival()).isLessThan(0.02);
        assertThat(TankReadings.deathsBy(tank.y, 0, Stressor.AMMONIA)).isGreaterThan(0.9);
    }

    @Test
    void bicarbonateLooksHarmlessInAClosedVessel() {
        TestTank tank = after(Dose.SODIUM_BICARBONATE, "nile-tilapia", 2);
        assertThat(tank.ph()).isCloseTo(7.6, within(0.05));
        assertThat(tank.toxicAmmonia()).isCloseTo(0.55, within(0.06));
    }

    @Test
    void airThenStripsTheCarbonDioxideAndSetsTheAmmoniaFree() {
        for (double air : new double[] {1.2, 2, 4}) {
            TestTank tank = after(Dose.SODIUM_BICARBONATE, "nile-tilapia", air);
            tank.run(2);
            assertThat(tank.ph()).as("air " + air).isBetween(7.8, 8.3);
            assertThat(tank.toxicAmmonia()).as("air " + air).isBetween(0.8, 2.6);
        }
    }

    /** How deadly depends on air and species: the well-aired catfish tank is lost, the gently aired tilapia ail. */
    @Test
    void theEndDependsOnAirAndSpecies() {
        TestTank catfish = after(Dose.SODIUM_BICARBONATE, "channel-catfish", 4).run(4);
        TestTank tilapia = after(Dose.SODIUM_BICARBONATE, "nile-tilapia", 2).run(4);
        assertThat(catfish.survival()).isLessThan(0.1);
        assertThat(tilapia.survival()).isBetween(0.8, 0.97);
    }

    @Test
    void dilutingFirstAndThenThirtyADaySparesThem() {
        TestTank tank = acid("channel-catfish", 4);
        SourceWater soft = SourceWater.read(27, 6.8, 5, 0, 1, 200, 0, 0);
        for (int day = 0; day < 3; day++) {
            tank.event(new TankEvent.Change(0.5, soft));
            tank.run(0.5);
            tank.event(new TankEvent.Change(0.5, soft));
            tank.dose(Dose.SODIUM_BICARBONATE, 30);
            tank.run(0.5);
        }
        assertThat(tank.survival()).isGreaterThan(0.98);
        assertThat(tank.toxicAmmonia()).isLessThan(0.2);
    }
}
