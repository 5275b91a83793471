package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.water.Dose;

/** Nothing is lost: nitrogen through a long start-up, and the limit that slow exchange drives the water to. */
class BalanceBehaviourTest {
    private static final double CLOSES = 1e-9;

    @ParameterizedTest
    @ValueSource(strings = {"nile-tilapia", "channel-catfish"})
    void nitrogenClosesThroughAWholeStartUpWithDeathsAndChanges(String species) {
        TestTank.Plan plan = TestTank.plan().species(species).water(7.6, 120, 0.2, 15);
        TestTank tank = plan.stock(3, 15).fed(1).alkalinityKept(100);
        double before = tank.unledgeredNitrogen();
        for (int day = 0; day < 60; day++) {
            tank.run(1);
            if (day % 9 == 8) {
                tank.event(new TankEvent.Change(0.3, plan.source()));
                tank.event(new TankEvent.RemoveSolids(0.5));
                tank.ammonia(0.5);
            }
            assertThat(tank.nitrogenDrift(before)).as("day " + day).isLessThan(CLOSES);
        }
        assertThat(tank.survival()).isLessThan(0.9);
    }

    /** TAN + nitrite + nitrate tends to p/q + source, p all nitrogen that enters, mg N/L/d. */
    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.3, 1.0})
    void slowExchangeDrivesNitrogenToItsLimit(double perDay) {
        TestTank.Plan plan = TestTank.plan().seeds(0.5, 0.5).nitrate(5).water(7.8, 150, 0.3, 50);
        TestTank tank = plan.fill().dosed(2);
        tank.controls = Controls.running(27).withInflow(perDay, 0, plan.source());
        tank.run(120);
        double[] sum = {0};
        tank.run(1, day -> sum[0] += (tank.tan() + tank.nitrite() + tank.nitrate()) / 24);
        // Three doses a day: the hourly mean stands a third of an hour's decline under the true one.
        assertThat(sum[0]).isCloseTo(2 / perDay + 5.3, within(0.06));
    }

    /** The same with fish: what they excrete and what their faeces mineralise, and the organic nitrogen itself. */
    @Test
    void slowExchangeOfAFedTankTendsToWhatTheFishGive() {
        double perDay = 0.4;
        TestTank.Plan plan = TestTank.plan()
                .species("channel-catfish")
                .seeds(0.5, 0.5)
                .nitrate(5)
                .water(7.8, 150, 0, 300);
        TestTank tank = plan.stock(1.5, 15).fed(0.3);
        tank.controls = Controls.running(27).withInflow(perDay, 0, plan.source());
        tank.run(60);
        double fed = tank.y[TankLayout.FED];
        double body = inFish(tank);
        double[] sum = {0};
        tank.run(1, day -> sum[0] += dissolved(tank) / 24);
        double given = (tank.y[TankLayout.FED] - fed - (inFish(tank) - body)) / tank.parameters.volumeL();
        assertThat(sum[0]).isCloseTo(given / perDay + 5, within(0.05 * given / perDay));
        assertThat(sum[0]).isGreaterThan(5.3);
    }

    private static double inFish(TestTank tank) {
        return tank.y[TankLayout.GUT_1] + tank.y[TankLayout.GUT_2] + tank.y[TankLayout.FISH_N];
    }

    private static double dissolved(TestTank tank) {
        return tank.tan() + tank.nitrite() + tank.nitrate() + tank.y[TankLayout.ORGANIC_N];
    }

    /** Handbook arithmetic to the last printed digit: what is there times what is left, plus what is brought. */
    @Test
    void aChangeMixesAsTheHandbookSays() {
        TestTank tank =
                TestTank.plan().volume(1000).water(7.6, 60, 3.0, 20).nitrate(40).fill();
        SourceWater source = SourceWater.read(27, 7.6, 120, 0, 5, 10, 0, 0);
        tank.event(new TankEvent.Change(0.4, source));
        assertThat(tank.tan()).isCloseTo(1.80, within(1e-12));
        assertThat(tank.nitrate()).isCloseTo(26.0, within(1e-12));
        assertThat(tank.alkalinity()).isCloseTo(84.0, within(1e-9));
        assertThat(tank.y[TankLayout.CHLORIDE]).isCloseTo(16.0, within(1e-12));
        assertThat(tank.y[TankLayout.VOLUMES]).isEqualTo(0.4);
    }

    /**
     * Worked doses for one cubic metre: 37.7 g of salt raise chloride by 22.8 mg/L (ten to one on 1 mg N/L of nitrite, 10
     * there), 165 g by 100; 84.0 g of bicarbonate raise alkalinity by 50.0; 3.82 g of ammonium chloride give 1.00 mg N/L.
     */
    @Test
    void dosesRaiseWhatTheHandbookSaysByAsMuch() {
        TestTank tank = TestTank.plan().volume(1000).water(7.6, 60, 0, 10).fill();
        tank.event(new TankEvent.Dosing(Dose.SODIUM_CHLORIDE, 37.7));
        assertThat(tank.y[TankLayout.CHLORIDE]).isCloseTo(10 + 22.8, within(0.1));
        tank.event(new TankEvent.Dosing(Dose.SODIUM_CHLORIDE, 165 - 37.7));
        assertThat(tank.y[TankLayout.CHLORIDE]).isCloseTo(110.0, within(0.1));
        tank.event(new TankEvent.Dosing(Dose.SODIUM_BICARBONATE, 84.0));
        assertThat(tank.alkalinity()).isCloseTo(110.0, within(0.1));
        tank.event(new TankEvent.Dosing(Dose.AMMONIUM_CHLORIDE, 3.82));
        assertThat(tank.tan()).isCloseTo(1.00, within(0.005));
        double chloramine = 2;
        tank.event(new TankEvent.Change(1, new SourceWater(27, 0, 0, 0, 2, 2, 8, 10, 0, chloramine)));
        tank.event(new TankEvent.Dosing(Dose.SODIUM_THIOSULFATE, 7.0 * chloramine));
        assertThat(tank.y[TankLayout.COMBINED_CHLORINE]).isCloseTo(0, within(0.005));
        assertThat(tank.tan()).isCloseTo(2 * 0.1975, within(0.001));
    }
}
