package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Temperature and carbon dioxide as stress: from the levels of the species file on. */
class WarmthBehaviourTest {
    private static TestTank calm(String species, double temperatureC) {
        return TestTank.plan()
                .species(species)
                .seeds(0.5, 0.5)
                .temperature(temperatureC)
                .water(7.6, 150, 0, 300)
                .stock(0.2, 20);
    }

    /** Stress gathered while the room moves by so many °C a day for six days. */
    private static double ramp(String species, double fromC, double perDay) {
        TestTank tank = calm(species, fromC);
        tank.run(1);
        double before = tank.y[TankLayout.STRESS];
        for (int hour = 0; hour < 144; hour++) {
            tank.controls = tank.controls.withSetPoint(fromC + perDay * (hour + 12) / 24);
            tank.run(1.0 / 24);
        }
        return tank.y[TankLayout.STRESS] - before;
    }

    /** Healthy stock is held to at most 2 °C up and 1 °C down a day (water-quality chapter, see the species files). */
    @Test
    void twoDegreesUpAndOneDownADayAreBorne() {
        assertThat(ramp("channel-catfish", 18, 1.9)).isZero();
        assertThat(ramp("channel-catfish", 28, -0.9)).isZero();
        assertThat(ramp("channel-catfish", 18, 2.5)).isGreaterThan(0.3);
        assertThat(ramp("channel-catfish", 28, -1.5)).isGreaterThan(0.5);
    }

    @Test
    void fishGetUsedToANewTemperature() {
        TestTank tank = calm("channel-catfish", 26);
        tank.run(1);
        tank.controls = tank.controls.withSetPoint(21);
        tank.run(12);
        assertThat(tank.y[TankLayout.ACCLIMATED_C]).isCloseTo(21, within(0.01));
        double settled = tank.y[TankLayout.STRESS];
        tank.run(3);
        assertThat(tank.y[TankLayout.STRESS]).isEqualTo(settled);
    }

    /** Both steppers follow the fish's own temperature; a 1 °C step closes as 2 e^-t - e^-2t with rates 1 and 2 per day. */
    @Test
    void bothSteppersFollowTheSlowFish() {
        for (Stepper stepper : new Stepper[] {new FastStepper(), new ReferenceStepper()}) {
            TestTank tank = calm("channel-catfish", 26);
            stepper.advance(tank.y, tank.parameters, tank.controls.withSetPoint(25), 1);
            double left = 2 * StrictMath.exp(-1) - StrictMath.exp(-2);
            assertThat(tank.y[TankLayout.ACCLIMATED_C]).isCloseTo(25 + left, within(2e-3));
        }
    }

    /** Carbon dioxide over 40 mg/L (trout over 20) is stress; the levels stand in the species files. */
    @Test
    void carbonDioxideStressesTroutSoonerThanCatfish() {
        assertThat(stressAt("rainbow-trout", 14, 30)).isGreaterThan(stressAt("rainbow-trout", 14, 15) + 0.01);
        assertThat(stressAt("channel-catfish", 27, 30)).isZero();
        assertThat(stressAt("channel-catfish", 27, 60)).isGreaterThan(0.005);
    }

    /** Stress in the first hour in water that holds so much carbon dioxide, mg/L, without air. */
    private static double stressAt(String species, double temperatureC, double mgPerL) {
        TestTank tank = calm(species, temperatureC);
        tank.controls = tank.controls.withAir(false);
        tank.y[TankLayout.DIC] += (mgPerL - TankReadings.carbonDioxideMgPerL(tank.y)) / 44.01;
        TankReadings.settlePh(tank.y);
        for (int i = 0; i < 20; i++) {
            tank.y[TankLayout.DIC] += (mgPerL - TankReadings.carbonDioxideMgPerL(tank.y)) / 44.01;
            TankReadings.settlePh(tank.y);
        }
        assertThat(TankReadings.carbonDioxideMgPerL(tank.y)).isCloseTo(mgPerL, within(0.1));
        tank.run(1.0 / 24);
        return tank.y[TankLayout.STRESS];
    }

    /** 0.06 % of the stock per °C beyond 1.5, and hazard 0.01 per °C beyond 3, once (tuned). */
    @Test
    void aColdChangeIsShockAndBeyondThreeDegreesHazard() {
        TestTank.Plan plan = TestTank.plan().species("channel-catfish").water(7.6, 150, 0, 300);
        TestTank mild = plan.stock(0.2, 20);
        mild.event(new TankEvent.Change(0.5, plan.source().at(22)));
        assertThat(mild.y[TankLayout.SHOCK]).isCloseTo(0.0006 * (2.5 - 1.5), within(1e-5));
        assertThat(mild.survival()).isEqualTo(1);
        TestTank cold = plan.stock(0.2, 20);
        cold.event(new TankEvent.Change(0.5, plan.source().at(15)));
        assertThat(-StrictMath.log(cold.survival())).isCloseTo(0.01 * (6 - 3), within(1e-9));
    }

    @Test
    void spareAirKeepsFishAliveWithoutMains() {
        TestTank none = dark(0);
        TestTank spare = dark(3);
        assertThat(none.survival()).isLessThan(0.3);
        assertThat(spare.survival()).isGreaterThan(0.99);
    }

    private static TestTank dark(double sparePerHour) {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .seeds(0.6, 0.6)
                .air(6, 0.4)
                .temperature(28)
                .stock(15, 10)
                .fed(0);
        tank.run(1);
        tank.controls = tank.controls.withAir(false).withPump(false).withSpareAir(sparePerHour);
        return tank.run(0.5);
    }
}
