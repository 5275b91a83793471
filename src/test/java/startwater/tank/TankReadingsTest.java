package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import startwater.fish.Species;
import startwater.fish.Stressor;

/** What is read off a state, by hand. */
class TankReadingsTest {
    private static final Offset<Double> EXACT = within(1e-9);
    private static final int NITRITE_HARM = DAMAGE + Stressor.NITRITE.ordinal();

    private final double[] y = new double[TankLayout.length(2)];

    private static TestTank tilapia() {
        return TestTank.plan()
                .species("nile-tilapia")
                .volume(2000)
                .protein(0.32)
                .excretion(1.5)
                .temperature(27)
                .stock(1, 20);
    }

    /** Emerson et al. (1975): pKa 0.09018 + 2729.92/T is 9.2464 at 25 °C, so 5.366 % is un-ionised at pH 8. */
    @Test
    void toxicAmmoniaIsItsPublishedShare() {
        y[H_ION] = 1e-8;
        y[TEMPERATURE] = 25;
        y[TAN] = 2;
        assertThat(TankReadings.ph(y)).isCloseTo(8, EXACT);
        assertThat(TankReadings.toxicAmmoniaMgPerL(y)).isCloseTo(2 * 0.05366, within(2e-5));
    }

    @Test
    void chlorideAtItsHalfLevelHalvesNitrite() {
        y[NITRITE] = 4;
        y[CHLORIDE] = 25;
        assertThat(TankReadings.effectiveNitriteMgPerL(y, 25)).isCloseTo(2, EXACT);
        y[CHLORIDE] = 75;
        assertThat(TankReadings.effectiveNitriteMgPerL(y, 25)).isCloseTo(1, EXACT);
    }

    /** Three units below the first constant of carbonic acid nearly all carbon is gas: 44 mg for a mmol. */
    @Test
    void inSourWaterAllCarbonIsCarbonDioxide() {
        y[H_ION] = 1e-3;
        y[TEMPERATURE] = 25;
        y[DIC] = 1.5;
        assertThat(TankReadings.carbonDioxideMgPerL(y)).isCloseTo(1.5 * 44.01, within(0.05));
    }

    /** Half a stock of each sensitivity; of one half a fifth has died, of the other three fifths. */
    @Test
    void theLivingAreTheMeanOverTheStrata() {
        y[STOCKED] = 200;
        y[survivors(0)] = 0.8;
        y[survivors(1)] = 0.4;
        y[FISH_N] = 120 * 10 * 25.6;
        assertThat(TankReadings.survival(y, 2)).isCloseTo(0.6, EXACT);
        assertThat(TankReadings.fishAlive(y, 2)).isCloseTo(120, EXACT);
        assertThat(TankReadings.massG(y, 2)).isCloseTo(10, EXACT);
        assertThat(TankReadings.biomassG(y, 2)).isCloseTo(1200, EXACT);
    }

    @Test
    void withoutFishThereIsNoMass() {
        y[FISH_N] = 1;
        y[survivors(0)] = 1;
        assertThat(TankReadings.biomassG(y, 2)).isZero();
        assertThat(TankReadings.massG(y, 2)).isZero();
        // One part in a hundred thousand of a fish is none.
        y[STOCKED] = 2e-5;
        assertThat(TankReadings.massG(y, 2)).isZero();
    }

    /** A hazard of 0.1 and one of 0.3: the dead are shared one to three. */
    @Test
    void deathsAreSharedByHazard() {
        y[STOCKED] = 500;
        y[hazard(1, Stressor.AMMONIA)] = 0.1;
        y[hazard(1, Stressor.TEMPERATURE)] = 0.3;
        double dead = 1 - StrictMath.exp(-0.4);
        assertThat(TankReadings.survivalOf(y, 1)).isCloseTo(1 - dead, EXACT);
        assertThat(TankReadings.deathsBy(y, 1, Stressor.AMMONIA)).isCloseTo(dead / 4, EXACT);
        assertThat(TankReadings.deadBy(y, 1, Stressor.TEMPERATURE)).isCloseTo(500 * dead * 0.75, EXACT);
        assertThat(TankReadings.deathsBy(y, 0, Stressor.AMMONIA)).isZero();
        assertThat(TankReadings.survivalOf(y, 0)).isEqualTo(1);
    }

    /** At the half level half of the blood is bound. */
    @Test
    void nitriteBindsBlood() {
        y[NITRITE_HARM] = 3.7;
        assertThat(TankReadings.methaemoglobin(y, Species.byId("nile-tilapia"))).isCloseTo(0.5, EXACT);
        assertThat(TankReadings.methaemoglobin(y, null)).isZero();
    }

    /** Each alone halves appetite: 0.76 mg/L of NH3 (0.06 and half of 1.4), half the blood bound, 2.5 mg/L, 21 °C. */
    @Test
    void appetiteFallsWithEachStrain() {
        TestTank tank = tilapia();
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isCloseTo(1, EXACT);
        tank.y[OXYGEN] = 2.5;
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isCloseTo(0.5, EXACT);
        tank.y[OXYGEN] = 7;
        tank.y[TEMPERATURE] = 21;
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isCloseTo(0.5, EXACT);
        tank.y[TEMPERATURE] = 27;
        tank.y[NITRITE_HARM] = 3.7;
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isCloseTo(0.5, within(1e-4));
        tank.y[NITRITE_HARM] = 0;
        tank.y[H_ION] = 1e-9;
        // pKa 9.1853 at 27 °C: 39.5 % of it is un-ionised at pH 9.
        tank.y[TAN] = 0.76 * (1 + StrictMath.pow(10, 0.09018 + 2729.92 / 300.15 - 9));
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isCloseTo(0.5, within(1e-4));
        TestTank bare = TestTank.plan().fill();
        assertThat(TankReadings.appetite(bare.y, bare.parameters)).isZero();
    }

    /** At pH 6.5 and below ammonium counts: there a unit of NH3 weighs 0.31 x 10 and one times as much. */
    @Test
    void ammoniaTakesMoreAppetiteInSourWater() {
        TestTank tank = tilapia();
        tank.y[H_ION] = StrictMath.pow(10, -6.6);
        double x = StrictMath.pow(10, 0.4);
        double counted = 0.76 / (1 + 0.31 * x * x);
        tank.y[TAN] = counted * (1 + StrictMath.pow(10, 0.09018 + 2729.92 / 300.15 - 6.6));
        assertThat(TankReadings.appetite(tank.y, tank.parameters)).isCloseTo(0.5, within(1e-4));
    }

    @Test
    void aStandingBedBearsFourHours() {
        y[STAGNANT_HOURS] = 1.5;
        assertThat(TankReadings.hoursBorne(y)).isCloseTo(2.5, EXACT);
        y[STAGNANT_HOURS] = 9;
        assertThat(TankReadings.hoursBorne(y)).isZero();
    }

    @Test
    void allNitrogenIsCounted() {
        y[TAN] = 1;
        y[NITRITE] = 2;
        y[NITRATE] = 30;
        y[ORGANIC_N] = 0.5;
        y[COMBINED_CHLORINE] = 0.4;
        y[HELD_N] = 100;
        y[LOOSE_N] = 20;
        y[GUT_1] = 3000;
        y[GUT_2] = 400;
        y[FISH_N] = 50_000;
        assertThat(TankReadings.nitrogenMg(y, 1000)).isCloseTo(33_500 + 400 * 14.007 / 70.9 + 53_520, within(1e-6));
    }

    @Test
    void ledgersTellWhatCameInLessWhatWentOut() {
        y[FED] = 5000;
        y[DOSED] = 300;
        y[BROUGHT_IN] = 70;
        y[EXCHANGED_OUT] = 1000;
        y[REMOVED] = 200;
        y[TAKEN_UP] = 30;
        assertThat(TankReadings.ledgerMg(y)).isCloseTo(4140, EXACT);
    }

    /**
     * A hundred fish of 20 g eat 130 g of feed with 41.6 g of protein a day, from which 3,827.2 mg N of ammonia come, half
     * as much again in this tank. At 1 mg N/L a group that is half-saturated at 0.4 mg/L works at 1/1.4 of what it could.
     */
    @Test
    void theFilterForARationCarriesItAtOneMilligram() {
        TankParameters p = tilapia().parameters;
        double load = 1.5 * 3827.2;
        assertThat(TankReadings.loadMgPerDay(p, 100, 20)).isCloseTo(load, within(1e-6));
        assertThat(TankReadings.aobForRation(p, 100, 20, 20)).isCloseTo(1.4 * load, within(1e-6));
        assertThat(TankReadings.nobForRation(p, 100, 20, 20)).isCloseTo(1.5 * load, within(1e-6));
        assertThat(TankReadings.aobForRation(p, 100, 20, 22)).isCloseTo(1.4 * load / 1.09 / 1.09, within(1e-6));
        assertThat(TankReadings.nobForRation(p, 100, 20, 18)).isCloseTo(1.5 * load * 1.06 * 1.06, within(1e-6));
        assertThat(TankReadings.loadMgPerDay(TestTank.plan().fill().parameters, 100, 20))
                .isZero();
    }

    /** Sponge: at 150 mg N per square metre half of the flow is left. */
    @Test
    void whatABedHoldsSlowsTheFlow() {
        TankParameters p = TestTank.plan()
                .media(startwater.biofilter.FilterMedia.SPONGE)
                .media(20)
                .fill()
                .parameters;
        y[HELD_N] = 3000;
        assertThat(p.flowShare(y)).isCloseTo(0.5, EXACT);
        y[HELD_N] = 0;
        assertThat(p.flowShare(y)).isEqualTo(1);
    }
}
