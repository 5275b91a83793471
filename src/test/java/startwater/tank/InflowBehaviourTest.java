package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Top-up of what evaporates, slow exchange, plants: by arithmetic that can be done by hand. */
class InflowBehaviourTest {
    /** Salts stay: each day brings what the topped-up water holds. 2 % a day of 50 mg/L over 30 days: 50 + 30. */
    @Test
    void evaporationConcentratesChlorideByArithmetic() {
        TestTank.Plan plan = TestTank.plan().water(7.6, 120, 0, 50);
        TestTank tank = plan.fill();
        tank.controls = Controls.running(27).withInflow(0, 0.02, plan.source());
        double before = tank.unledgeredNitrogen();
        tank.run(30);
        assertThat(tank.y[TankLayout.CHLORIDE]).isCloseTo(50 + 30 * 0.02 * 50, within(1e-6));
        assertThat(tank.nitrate()).isCloseTo(1.6, within(1e-6));
        assertThat(tank.alkalinity()).isCloseTo(120 * 1.6, within(1e-6));
        assertThat(tank.y[TankLayout.VOLUMES]).isZero();
        assertThat(tank.nitrogenDrift(before)).isLessThan(1e-9);
    }

    /** With some exchange q beside the top-up e, a salt comes to rest at source times (q + e) / q. */
    @ParameterizedTest
    @CsvSource({"0.1, 0.02, 60", "0.2, 0.1, 75"})
    void exchangeHoldsTheConcentrationInCheck(double exchange, double evaporation, double rest) {
        TestTank.Plan plan = TestTank.plan().water(7.6, 120, 0, 50);
        TestTank tank = plan.fill();
        tank.controls = Controls.running(27).withInflow(exchange, evaporation, plan.source());
        tank.run(150);
        assertThat(tank.y[TankLayout.CHLORIDE]).isCloseTo(rest, within(1e-4));
    }

    /** Cold inflow cools: at rest the room's pull 2/d and the inflow's 0.5/d weigh 27 and 12 °C. */
    @Test
    void coldInflowCoolsTheTank() {
        TestTank.Plan plan = TestTank.plan();
        TestTank tank = plan.fill();
        tank.controls = Controls.running(27).withInflow(0.5, 0, plan.source().at(12));
        tank.run(20);
        assertThat(tank.y[TankLayout.TEMPERATURE]).isCloseTo((2 * 27 + 0.5 * 12) / 2.5, within(1e-6));
    }

    @Test
    void exchangeAndTopUpNeedASource() {
        org.assertj.core.api.Assertions.assertThatThrownBy(
                        () -> Controls.running(27).withInflow(0, 0.02, null))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("source");
    }

    /** Far over its half level a plant bed takes what it can: 30 of 60 mg N/L in ten days at 3 mg N/L a day. */
    @Test
    void plantsTakeNitrateAtTheirRate() {
        TestTank tank = planted(3, 60);
        double alkalinity = tank.y[TankLayout.ALKALINITY];
        double before = tank.unledgeredNitrogen();
        tank.run(10);
        double taken = 60 - tank.nitrate();
        assertThat(taken).isBetween(29.0, 30.0);
        assertThat(tank.y[TankLayout.TAKEN_UP]).isCloseTo(taken * tank.parameters.volumeL(), within(1e-6));
        // One equivalent for each mol of nitrate taken up (charge balance of the root: from memory).
        assertThat(tank.y[TankLayout.ALKALINITY] - alkalinity).isCloseTo(taken / 14.007, within(1e-9));
        assertThat(tank.nitrogenDrift(before)).isLessThan(1e-9);
    }

    /** The integrated Monod law: t = (S0 - S + K ln(S0 / S)) / V, here for 5 to 0.5 mg N/L with K 1 and V 2. */
    @Test
    void plantsSlowDownInPoorWater() {
        TestTank tank = planted(2, 5);
        tank.run(3);
        double s = tank.nitrate();
        assertThat((5 - s + StrictMath.log(5 / s)) / 2).isCloseTo(3, within(0.003));
    }

    private static TestTank planted(double mgPerLDay, double nitrate) {
        return TestTank.plan()
                .plants(mgPerLDay * TestTank.VOLUME_L)
                .seeds(1e-12, 1e-12)
                .nitrate(nitrate)
                .fill();
    }
}
