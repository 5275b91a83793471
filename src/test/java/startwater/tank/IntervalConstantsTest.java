package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import java.util.function.Consumer;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import startwater.biofilter.FilterMedia;
import startwater.water.CarbonateSystem;

/** Constants of an interval, by hand, and when they are worked out anew. */
class IntervalConstantsTest {
    private static final Offset<Double> EXACT = within(1e-9);

    private static TestTank tilapia(double temperatureC) {
        return TestTank.plan()
                .species("nile-tilapia")
                .volume(2000)
                .media(FilterMedia.SPONGE)
                .media(20)
                .plants(3000)
                .growth(1.2, 0.7)
                .excretion(1.5)
                .temperature(temperatureC)
                .stock(1, 20);
    }

    private static IntervalConstants at(TestTank tank) {
        return IntervalConstants.exact(SystemTerms.of(tank.parameters), tank.controls, tank.y);
    }

    /** Devices move 2 an hour and the surface 0.1; for CO2 devices count 0.4. At 20 °C no factor of temperature. */
    @Test
    void gasesGoByDevicesAndSurface() {
        TestTank tank = tilapia(20);
        assertThat(at(tank).kLaPerDay).isCloseTo(24 * 2.1, EXACT);
        assertThat(at(tank).kLaCo2PerDay).isCloseTo(24 * 0.9, EXACT);
        tank.controls = tank.controls.withSpareAir(1.5);
        assertThat(at(tank).kLaPerDay).isCloseTo(24 * 3.6, EXACT);
        tank.controls = tank.controls.withAir(false);
        assertThat(at(tank).kLaPerDay).isCloseTo(24 * 1.6, EXACT);
        assertThat(at(tank).kLaCo2PerDay).isCloseTo(24 * 0.7, EXACT);
        tank.y[TEMPERATURE] = 30;
        assertThat(at(tank).kLaPerDay).isCloseTo(24 * 1.6 * StrictMath.pow(1.024, 10), EXACT);
        assertThat(at(tank).kLaCo2PerDay).isCloseTo(24 * 0.7 * StrictMath.pow(1.024, 10), EXACT);
    }

    /** Henry's constant of CO2 at 25 °C is 0.034 mol/L per atm; the room holds 600 ppm. */
    @Test
    void carbonDioxideInBalanceFollowsHenry() {
        assertThat(at(tilapia(25)).co2InBalance).isCloseTo(0.034 * 0.6, within(2e-4));
    }

    /** Benson and Krause (1984): 9.09 mg/L in fresh water at 20 °C, 8.83 at 5 g/kg; 3,033 mg/L of chloride are 5 g of salt. */
    @Test
    void saltTakesOxygenAway() {
        TestTank tank = tilapia(20);
        tank.y[ALKALINITY] = 0;
        tank.y[NITRATE] = 0;
        tank.y[CHLORIDE] = 0;
        tank.y[CHLORIDE] = 3033;
        assertThat(at(tank).oxygenSaturation).isCloseTo(8.83, within(0.01));
        tank.y[CHLORIDE] = 0;
        assertThat(at(tank).oxygenSaturation).isCloseTo(9.09, within(0.01));
        double slope = at(tank).oxygenSaturationSlope;
        tank.y[TEMPERATURE] = 20.5;
        double above = at(tank).oxygenSaturation;
        tank.y[TEMPERATURE] = 19.5;
        assertThat(above - at(tank).oxygenSaturation).isCloseTo(slope, within(0.01 * -slope));
    }

    /** Growth 0.5 a day by the factor of the tank; decay 0.06 and mineralising 0.2 a day, 0.02 of what a bed holds. */
    @Test
    void theFilterHasItsRates() {
        IntervalConstants k = at(tilapia(20));
        assertThat(k.growthAob).isCloseTo(0.6, EXACT);
        assertThat(k.growthNob).isCloseTo(0.35, EXACT);
        assertThat(k.decay).isCloseTo(0.06, EXACT);
        assertThat(k.mineralisation).isCloseTo(0.2, EXACT);
        assertThat(k.heldMineralisation).isCloseTo(0.02, EXACT);
        assertThat(k.thetaAob).isCloseTo(1, EXACT);
        assertThat(k.thetaNob).isCloseTo(1, EXACT);
        assertThat(k.plantUptake).isCloseTo(1.5, EXACT);
        // 3,000 mg N on 20 m2 are 150 a square metre, which halve the flow through a sponge.
        assertThat(k.loadPerHeld).isCloseTo(1.0 / 3000, EXACT);
        assertThat(at(tilapia(21)).heldMineralisation).isCloseTo(0.02 * 1.07, EXACT);
        assertThat(at(tilapia(21)).decay).isCloseTo(0.06 * 1.05, EXACT);
    }

    /** After four hours without flow a tenth an hour is lost. */
    @Test
    void aStandingBedFoulsAndAFlowingOneDoesNot() {
        TestTank tank = tilapia(20);
        tank.y[STAGNANT_HOURS] = 5;
        assertThat(at(tank).fouling).isZero();
        assertThat(at(tank).flow).isEqualTo(1);
        tank.controls = tank.controls.withPump(false);
        assertThat(StrictMath.exp(-at(tank).fouling / 24)).isCloseTo(0.9, EXACT);
        assertThat(at(tank).flow).isCloseTo(0.02, EXACT);
        tank.y[STAGNANT_HOURS] = 3;
        assertThat(at(tank).fouling).isZero();
    }

    /**
     * A fish of 20 g eats 1.3 g with 0.416 g of protein a day: 0.0828 of it is excreted, half as much again here; fasting
     * a tenth of that by appetite, which 21 °C halve. Resting it takes 500 / 20^0.2 mg per kg and hour at 25 °C.
     */
    @Test
    void aFishHasItsExcretionAndItsBreath() {
        IntervalConstants k = at(tilapia(21));
        double fed = 1.5 * 0.0828 * 416;
        assertThat(k.fedExcretion).isCloseTo(fed, within(1e-6));
        assertThat(k.fastingExcretion).isCloseTo(0.1 * fed / 2, within(1e-6));
        double breath = 24 * 0.020 * 500 / StrictMath.pow(20, 0.2) / StrictMath.pow(1.07, 4);
        assertThat(k.oxygenPerFish).isCloseTo(breath, within(1e-6));
        assertThat(k.massPower).isCloseTo(0.8, EXACT);
        assertThat(k.ammoniaScale).isCloseTo(StrictMath.pow(20.0 / 12, 0.25), within(1e-6));
        double load = 1.5 * 0.092 * 416;
        assertThat(k.aobForFish).isCloseTo(1.4 * load / 1.09, within(1e-6));
        assertThat(k.nobForFish).isCloseTo(1.5 * load / 1.06, within(1e-6));
    }

    @Test
    void withoutFishNothingIsBreathed() {
        TestTank tank = TestTank.plan().species("nile-tilapia").fill();
        IntervalConstants k = at(tank);
        assertThat(new double[] {k.fedExcretion, k.fastingExcretion, k.oxygenPerFish, k.aobForFish, k.nobForFish})
                .containsOnly(0);
        assertThat(k.ammoniaScale).isEqualTo(1);
        IntervalConstants bare = at(TestTank.plan().fill());
        assertThat(bare.oxygenPerFish).isZero();
    }

    @Test
    void thoseWithNothingLeftDoNotFast() {
        TestTank tank = tilapia(27);
        tank.y[FISH_N] = TankReadings.fishAlive(tank.y, 1) * 25.6 * 0.99e-3;
        assertThat(at(tank).fastingExcretion).isZero();
        tank.y[FISH_N] = TankReadings.fishAlive(tank.y, 1) * 25.6 * 1.01e-3;
        assertThat(at(tank).fastingExcretion).isPositive();
    }

    private static boolean kept(Consumer<TestTank> change) {
        TestTank tank = tilapia(20);
        tank.y[CHLORIDE] = 200;
        tank.y[STAGNANT_HOURS] = 5;
        SystemTerms terms = SystemTerms.of(tank.parameters);
        IntervalConstants last = IntervalConstants.of(terms, tank.controls, tank.y, tank.y[TEMPERATURE], null);
        change.accept(tank);
        return last == IntervalConstants.of(terms, tank.controls, tank.y, tank.y[TEMPERATURE], last);
    }

    /** Constants are kept while nothing that they hang on has moved, and only then. */
    @Test
    void constantsAreKeptWhileNothingMoves() {
        assertThat(kept(tank -> tank.y[TAN] += 3)).isTrue();
        assertThat(kept(tank -> tank.y[TEMPERATURE] += 0.001)).isTrue();
        assertThat(kept(tank -> tank.y[TEMPERATURE] += 0.01)).isFalse();
        assertThat(kept(tank -> tank.y[CHLORIDE] += 20)).isFalse();
        assertThat(kept(tank -> tank.y[FISH_N] *= 1.002)).isFalse();
        assertThat(kept(tank -> tank.controls = tank.controls.withAir(false))).isFalse();
        assertThat(kept(tank -> tank.y[STAGNANT_HOURS] = 0)).isTrue();
    }

    @Test
    void aBedThatBeginsToFoulNeedsNewOnes() {
        TestTank tank = tilapia(20);
        tank.controls = tank.controls.withPump(false);
        SystemTerms terms = SystemTerms.of(tank.parameters);
        tank.y[STAGNANT_HOURS] = 3;
        IntervalConstants borne = IntervalConstants.of(terms, tank.controls, tank.y, 20, null);
        tank.y[STAGNANT_HOURS] = 5;
        IntervalConstants fouling = IntervalConstants.of(terms, tank.controls, tank.y, 20, borne);
        assertThat(borne.fouling).isZero();
        assertThat(fouling.fouling).isPositive();
        tank.y[STAGNANT_HOURS] = 6;
        assertThat(IntervalConstants.of(terms, tank.controls, tank.y, 20, fouling))
                .isSameAs(fouling);
    }

    /** Rounded so that constants can be kept: mass to a part in 2,048, the carbonate system to a twentieth of a mmol. */
    @Test
    void roundingIsSmall() {
        for (double massG : new double[] {0.37, 3.3, 19.99, 412.7}) {
            TestTank tank = tilapia(20);
            tank.y[FISH_N] = TankReadings.fishAlive(tank.y, 1) * 25.6 * massG;
            SystemTerms terms = SystemTerms.of(tank.parameters);
            IntervalConstants near = IntervalConstants.of(terms, tank.controls, tank.y, 20, null);
            assertThat(near.massG).isCloseTo(massG, within(massG / 2048));
            assertThat(near.carbonate.kh()).isCloseTo(at(tank).carbonate.kh(), within(1e-9));
            assertThat(near.oxygenSaturation).isCloseTo(at(tank).oxygenSaturation, within(1e-4));
        }
    }

    @Test
    void theCarbonateSystemOfTheSameSaltAtAnotherTemperature() {
        TestTank tank = tilapia(20);
        IntervalConstants k = at(tank);
        assertThat(k.carbonateAt(20)).isSameAs(k.carbonate);
        double ionic = CarbonateSystem.ionicStrength(tank.y[ALKALINITY], tank.y[CHLORIDE], 0, tank.y[NITRATE]);
        CarbonateSystem warm = CarbonateSystem.at(25, ionic);
        assertThat(k.carbonateAt(25).alkalinity(1e-8, 2, 1)).isCloseTo(warm.alkalinity(1e-8, 2, 1), EXACT);
    }
}
