package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;
import startwater.water.Dose;

/** Changes and doses worked by hand in a tank of 2,000 L. */
class WaterJumpsTest {
    private static final Offset<Double> EXACT = within(1e-9);
    /** mg N bound in a mg of chloramine as Cl2. */
    private static final double N_PER_CL2 = 14.007 / 70.90;

    private static SourceWater source(double free, double combined) {
        return new SourceWater(19, 0.2, 0.1, 5, 1, 1.1, 9, 20, free, combined);
    }

    private static TestTank tank() {
        TestTank tank =
                TestTank.plan().volume(2000).seeds(0.5, 0.25).temperature(27).fill();
        double[] y = tank.y;
        y[TAN] = 1;
        y[NITRITE] = 2;
        y[NITRATE] = 30;
        y[ALKALINITY] = 3;
        y[DIC] = 3.3;
        y[OXYGEN] = 5;
        y[CHLORIDE] = 100;
        y[COMBINED_CHLORINE] = 0.4;
        y[ORGANIC_N] = 0.8;
        y[MEDICATION] = 0.6;
        y[UNEATEN_G] = 8;
        return tank;
    }

    @Test
    void aQuarterChangedIsThreeQuartersOldAndOneQuarterNew() {
        TestTank tank = tank();
        double before = tank.unledgeredNitrogen();
        tank.event(new TankEvent.Change(0.25, source(0, 0)));
        double[] y = tank.y;
        double[] mixed = {y[TAN], y[NITRITE], y[NITRATE], y[ALKALINITY], y[DIC], y[OXYGEN], y[CHLORIDE], y[TEMPERATURE]
        };
        assertThat(mixed).usingComparatorWithPrecision(1e-9).containsExactly(0.8, 1.525, 23.75, 2.5, 2.75, 6, 80, 25);
        double[] thinned = {y[COMBINED_CHLORINE], y[ORGANIC_N], y[MEDICATION], y[UNEATEN_G]};
        assertThat(thinned).usingComparatorWithPrecision(1e-9).containsExactly(0.3, 0.6, 0.45, 6);
        assertThat(y[VOLUMES]).isEqualTo(0.25);
        assertThat(y[EXCHANGED_OUT]).isCloseTo(500 * (1 + 2 + 30 + 0.8 + 0.4 * N_PER_CL2), EXACT);
        assertThat(y[BROUGHT_IN]).isCloseTo(500 * 5.3, EXACT);
        assertThat(tank.unledgeredNitrogen()).isCloseTo(before, within(1e-6));
    }

    /** pH is that of the mixed water: its alkalinity comes out again. */
    @Test
    void aChangeAndADoseEndAtThePhOfTheWaterThatComesOfIt() {
        TestTank tank = tank();
        tank.event(new TankEvent.Change(0.25, source(0, 0)));
        settled(tank);
        tank.event(new TankEvent.Dosing(Dose.SODIUM_CARBONATE, 50));
        settled(tank);
    }

    private static void settled(TestTank tank) {
        double[] y = tank.y;
        double alkalinity = TankReadings.carbonate(y).alkalinity(y[H_ION], y[DIC], y[TAN]);
        assertThat(alkalinity).isCloseTo(y[ALKALINITY], within(1e-6));
    }

    @Test
    void freeChlorineLetInBindsToTheAmmoniaThere() {
        TestTank tank = tank();
        tank.event(new TankEvent.Change(0.25, source(1.2, 0.6)));
        assertThat(tank.y[FREE_CHLORINE]).isZero();
        assertThat(tank.y[COMBINED_CHLORINE]).isCloseTo(0.3 + 0.15 + 0.3, EXACT);
        assertThat(tank.tan()).isCloseTo(0.8 - 0.3 * N_PER_CL2, EXACT);
    }

    @Test
    void freeChlorineStaysFreeWhereThereIsNoAmmonia() {
        TestTank tank = tank();
        tank.y[TAN] = 0;
        tank.y[FREE_CHLORINE] = 0.8;
        tank.event(new TankEvent.Change(0.25, new SourceWater(19, 0, 0, 5, 1, 1.1, 9, 20, 1.2, 0)));
        assertThat(tank.y[FREE_CHLORINE]).isCloseTo(0.6 + 0.3, EXACT);
    }

    /** A tenth of both groups per mg/L of residual, by the share let in, and half at the most. */
    @Test
    void residualLetInKillsPartOfTheFilter() {
        TestTank tank = tank();
        double aob = tank.y[AOB];
        double nob = tank.y[NOB];
        tank.event(new TankEvent.Change(0.25, source(1.2, 0.8)));
        assertThat(tank.y[AOB] / aob).isCloseTo(0.95, EXACT);
        assertThat(tank.y[NOB] / nob).isCloseTo(0.95, EXACT);
        TestTank drowned = tank();
        drowned.event(new TankEvent.Change(1, source(9, 0)));
        assertThat(drowned.y[AOB] / aob).isCloseTo(0.5, EXACT);
        assertThat(drowned.y[NOB] / nob).isCloseTo(0.5, EXACT);
    }

    /** 7 g of the pentahydrate take up 1 g of Cl2: 0.5 mg/L in 2,000 L. */
    @Test
    void aDoseOfThiosulfateTakesASeventhOfItsWeightInChlorine() {
        TestTank tank = tank();
        tank.y[FREE_CHLORINE] = 0.2;
        tank.event(new TankEvent.Dosing(Dose.SODIUM_THIOSULFATE, 7));
        assertThat(tank.y[FREE_CHLORINE]).isCloseTo(0, EXACT);
        assertThat(tank.y[COMBINED_CHLORINE]).isCloseTo(0.1, EXACT);
        assertThat(tank.tan()).isCloseTo(1 + 0.3 * N_PER_CL2, EXACT);
    }

    /** By formula weights: 84.006 g of baking soda are a mol, 53.49 g of ammonium chloride hold 14.007 g of nitrogen. */
    @Test
    void dosesAreSpreadOverTheTank() {
        TestTank tank = tank();
        tank.event(new TankEvent.Dosing(Dose.SODIUM_BICARBONATE, 84.006));
        assertThat(tank.y[ALKALINITY]).isCloseTo(3.5, within(1e-5));
        assertThat(tank.y[DIC]).isCloseTo(3.8, within(1e-5));
        tank.event(new TankEvent.Dosing(Dose.AMMONIUM_CHLORIDE, 53.49));
        assertThat(tank.tan()).isCloseTo(1 + 7.0035, within(1e-3));
        assertThat(tank.y[DOSED]).isCloseTo(14_007, within(1.0));
        assertThat(tank.y[CHLORIDE]).isCloseTo(100 + 17.725, within(1e-3));
        tank.event(new TankEvent.Dosing(Dose.AMMONIUM_CHLORIDE, 53.49));
        assertThat(tank.y[DOSED]).isCloseTo(28_014, within(2.0));
    }

    /** From 27 to 19 °C all at once: 5 °C more than is borne. */
    @Test
    void fishFeelAChangeOfAllTheirWater() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .volume(2000)
                .temperature(27)
                .stock(1, 20);
        tank.event(new TankEvent.Change(1, source(0, 0)));
        assertThat(tank.y[hazard(0, Stressor.TEMPERATURE)]).isCloseTo(0.05, EXACT);
        assertThat(tank.y[survivors(0)]).isCloseTo(StrictMath.exp(-0.05), EXACT);
    }

    /** Half of the fish, of which four in five live, come from water 6 °C colder. */
    @Test
    void aJumpIsFeltByTheShareThatMakesIt() {
        TestTank tank = TestTank.plan()
                .species("nile-tilapia")
                .volume(2000)
                .temperature(27)
                .stock(1, 20);
        double[] y = tank.y;
        y[survivors(0)] = 0.8;
        y[GUT_1] = 300;
        y[GUT_2] = 200;
        double nitrogen = y[FISH_N] + 500;
        double left = StrictMath.exp(-0.5 * 0.01 * 3);
        WaterJumps.felt(y, tank.parameters, TankReadings.ph(y) - 0.8, 21, 0.5);
        assertThat(y[SHOCK]).isCloseTo(0.5 * 0.8 * (0.004 * 0.5 + 0.0006 * 4.5), EXACT);
        assertThat(y[hazard(0, Stressor.TEMPERATURE)]).isCloseTo(0.015, EXACT);
        assertThat(y[survivors(0)]).isCloseTo(0.8 * left, EXACT);
        assertThat(y[GUT_1] + y[GUT_2] + y[FISH_N]).isCloseTo(nitrogen * left, within(1e-6));
        assertThat(y[REMOVED]).isCloseTo(nitrogen * (1 - left), within(1e-6));
    }

    @Test
    void aTankWithoutFishFeelsNoJump() {
        TestTank tank = tank();
        tank.event(new TankEvent.Change(1, source(0, 0)));
        assertThat(tank.y[SHOCK]).isZero();
    }
}
