package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static startwater.tank.TankLayout.*;

import java.util.Objects;
import java.util.function.Consumer;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.biofilter.FilterMedia;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.water.CarbonateSystem;

/**
 * The rates at one moment. Both steppers read them from one place, so that their agreement says nothing of a fault in it:
 * here each limiting term, threshold and balance is held against what it is published to do.
 */
class KineticsTest {
    private static final double H = 1e-7;

    private TestTank.Plan plan = TestTank.plan().seeds(1, 1);
    private double h = H;

    private static TestTank tilapia() {
        return TestTank.plan().species("nile-tilapia").seeds(1, 1).stock(1.65, 15);
    }

    private TestTank bare() {
        return plan.fill();
    }

    private Kinetics at(TestTank tank) {
        Kinetics rates = new Kinetics();
        IntervalConstants k = IntervalConstants.exact(SystemTerms.of(tank.parameters), tank.controls, tank.y);
        rates.evaluate(tank.y, tank.parameters, k, h);
        return rates;
    }

    private Kinetics with(TestTank tank, Consumer<double[]> state) {
        state.accept(tank.y);
        return at(tank);
    }

    /** Rate of one state over that of another. */
    private double ratio(ToDoubleFunction<Kinetics> rate, Consumer<double[]> one, Consumer<double[]> other) {
        return rate.applyAsDouble(with(bare(), one)) / rate.applyAsDouble(with(bare(), other));
    }

    private static void water(double[] y, double tan, double nitrite, double oxygen) {
        y[TAN] = tan;
        y[NITRITE] = nitrite;
        y[OXYGEN] = oxygen;
    }

    @Test
    void ammoniaIsOxidisedAtHalfTheRateAtItsHalfSaturation() {
        double slower = ratio(k -> k.ammoniaLoss, y -> water(y, 0.4, 0, 8), y -> water(y, 1e-9, 0, 8));
        assertThat(slower).isCloseTo(0.5, within(0.001));
    }

    @Test
    void nitriteIsOxidisedAtHalfTheRateAtItsHalfSaturation() {
        double slower = ratio(k -> k.nitriteLoss, y -> water(y, 0, 0.5, 8), y -> water(y, 0, 1e-9, 8));
        assertThat(slower).isCloseTo(0.5, within(0.001));
    }

    @Test
    void oxygenLimitsEachGroupByItsOwnHalfSaturation() {
        Consumer<double[]> plenty = y -> water(y, 1, 1, 1e6);
        assertThat(ratio(k -> k.ammoniaLoss, y -> water(y, 1, 1, 0.5), plenty)).isCloseTo(0.5, within(0.001));
        assertThat(ratio(k -> k.nitriteLoss, y -> water(y, 1, 1, 0.9), plenty)).isCloseTo(0.5, within(0.001));
    }

    /** Free ammonia of 10 and of 0.8 mg N/L halves the two groups, nitrous acid of 0.2 mg N/L the second. */
    @Test
    void freeAmmoniaAndNitrousAcidInhibit() {
        h = StrictMath.pow(10, -9.2);
        for (double tan : new double[] {5, 20, 60}) {
            Kinetics k = with(bare(), y -> water(y, tan, 1, 8));
            double byPhAndAmmonia = k.ammoniaLoss * (0.4 + tan) * (1 + k.toxicAmmonia / 10);
            Kinetics little = with(bare(), y -> water(y, 1e-9, 1, 8));
            assertThat(byPhAndAmmonia / (little.ammoniaLoss * 0.4)).isCloseTo(1, within(1e-6));
            assertThat(k.nitriteLoss * (1 + k.toxicAmmonia / 0.8) / little.nitriteLoss)
                    .isCloseTo(1, within(0.001));
        }
        h = 1e-6;
        double share = h / (h + Nitrification.nitrousAcidConstant(27));
        double nitrite = 0.2 / share;
        Kinetics acid = with(bare(), y -> water(y, 0, nitrite, 8));
        Kinetics without = with(bare(), y -> water(y, 0, 1e-9, 8));
        assertThat(acid.nitriteLoss * (0.5 + nitrite) / (without.nitriteLoss * 0.5))
                .isCloseTo(0.5, within(0.001));
    }

    @Test
    void linesThroughTheRatesAreTheirTangents() {
        double d = 1e-5;
        for (double at : new double[] {0.05, 0.4, 3}) {
            Kinetics k = with(bare(), y -> water(y, at, at, 6));
            Kinetics more = with(bare(), y -> water(y, at + d, at, 6));
            Kinetics nitrite = with(bare(), y -> water(y, at, at + d, 6));
            assertThat(k.ammoniaSlope * at + k.ammoniaBend).isCloseTo(k.ammoniaLoss * at, within(1e-9));
            assertThat(k.nitriteSlope * at + k.nitriteBend).isCloseTo(k.nitriteLoss * at, within(1e-9));
            // Inhibition, which is held for a step, takes a little more.
            assertThat((more.ammoniaLoss * (at + d) - k.ammoniaLoss * at) / d / k.ammoniaSlope)
                    .isCloseTo(1, within(0.03));
            assertThat((nitrite.nitriteLoss * (at + d) - k.nitriteLoss * at) / d / k.nitriteSlope)
                    .isCloseTo(1, within(0.03));
        }
    }

    /** What fish breathe, as a line in oxygen: its tangent, once what the filter takes is left out. */
    @Test
    void breathingIsATangentToo() {
        TestTank tank = tilapia();
        tank.y[AOB] = 0;
        tank.y[NOB] = 0;
        double d = 1e-5;
        for (double oxygen : new double[] {0.5, 2, 7}) {
            Kinetics k = with(tank, y -> y[OXYGEN] = oxygen);
            Kinetics more = with(tank, y -> y[OXYGEN] = oxygen + d);
            assertThat(k.oxygenSlope * oxygen + k.oxygenBend).isCloseTo(k.oxygenLoss * oxygen, within(1e-9));
            assertThat((more.breathed - k.breathed) / d).isCloseTo(k.oxygenSlope, within(1e-3 * k.oxygenSlope));
            assertThat(k.breathed).isCloseTo(k.oxygenLoss * oxygen, within(1e-9));
        }
    }

    /** 3.43 and 1.14 mg of oxygen for each mg of nitrogen in the two steps, 15 for each mineralised (stoichiometry). */
    @Test
    void oxygenGoesByStoichiometry() {
        Kinetics k = with(bare(), y -> {
            water(y, 2, 1, 6);
            y[ORGANIC_N] = 0.5;
            y[HELD_N] = 100;
        });
        double mineralised = k.mineralisationLoss * 0.5 + k.heldLoss * 100 / TestTank.VOLUME_L;
        assertThat(k.oxygenLoss * 6)
                .isCloseTo(3.43 * k.ammoniaLoss * 2 + 1.14 * k.nitriteLoss + 15 * mineralised, within(1e-9));
        assertThat(k.oxygenSlope).isEqualTo(k.oxygenLoss);
        assertThat(k.respirationDic).isCloseTo(0.9 / 32 * 15 * mineralised, within(1e-9));
    }

    /** A group at the capacity of the media grows no more: it only dies, by 6 % a day at 20 °C, and by what a drug takes. */
    @Test
    void growthEndsAtTheCapacityOfTheMedia() {
        plan = plan.temperature(20);
        Kinetics k = with(bare(), y -> water(y, 2, 2, 8));
        assertThat(k.aobGain - k.aobLoss).isCloseTo(-0.06, within(1e-9));
        assertThat(k.nobGain - k.nobLoss).isCloseTo(-0.06, within(1e-9));
        Kinetics drug = with(bare(), y -> {
            water(y, 2, 2, 8);
            y[MEDICATION] = 0.1;
        });
        assertThat(drug.aobGain - drug.aobLoss).isCloseTo(-0.16, within(1e-9));
        Kinetics half = with(bare(), y -> {
            water(y, 2, 2, 8);
            y[AOB] /= 2;
            y[NOB] /= 2;
        });
        assertThat(half.aobGain - half.aobLoss).isCloseTo(half.aobGain / 2 - 0.06, within(1e-9));
        assertThat(half.nobGain - half.nobLoss).isCloseTo(half.nobGain / 2 - 0.06, within(1e-9));
    }

    /** Growth and oxidation hang on the same limits: half a day's growth for each day's unhindered work. */
    @Test
    void growthFollowsWork() {
        Kinetics k = with(bare(), y -> water(y, 2, 1, 4));
        double[] y = bare().y;
        assertThat(k.aobGain).isCloseTo(0.5 * k.ammoniaLoss * 2 * TestTank.VOLUME_L / y[AOB], within(1e-9));
        assertThat(k.nobGain).isCloseTo(0.5 * k.nitriteLoss * 1 * TestTank.VOLUME_L / y[NOB], within(1e-9));
    }

    /** Constants are kept while the water warms a little: the rates follow by theta per degree all the same. */
    @Test
    void ratesFollowALittleWarmthWithoutNewConstants() {
        TestTank tank = bare();
        water(tank.y, 2, 1, 6);
        IntervalConstants k = IntervalConstants.exact(SystemTerms.of(tank.parameters), tank.controls, tank.y);
        Kinetics cool = new Kinetics();
        cool.evaluate(tank.y, tank.parameters, k, h);
        tank.y[TEMPERATURE] += 0.5;
        Kinetics warm = new Kinetics();
        warm.evaluate(tank.y, tank.parameters, k, h);
        assertThat(warm.ammoniaLoss / cool.ammoniaLoss).isCloseTo(StrictMath.pow(1.09, 0.5), within(2e-5));
        assertThat(warm.nitriteLoss / cool.nitriteLoss).isCloseTo(StrictMath.pow(1.06, 0.5), within(2e-5));
        assertThat(warm.mineralisationLoss / cool.mineralisationLoss)
                .isCloseTo(StrictMath.pow(1.07, 0.5), within(2e-5));
        assertThat(warm.oxygenSaturation).isCloseTo(at(tank).oxygenSaturation, within(0.001));
        assertThat(warm.oxygenSaturation).isLessThan(cool.oxygenSaturation - 0.05);
    }

    /** Solids at the load that halves the flow: half of everything that passes through, and three quarters of the area. */
    @Test
    void aLoadedBedWorksAtHalfItsFlow() {
        plan = plan.media(FilterMedia.SPONGE).seeds(0.5, 0.5);
        TestTank clean = bare();
        TestTank full = bare();
        double half = clean.parameters.mediaAreaM2() * 100 / FilterMedia.SPONGE.load(100);
        water(clean.y, 2, 2, 6);
        water(full.y, 2, 2, 6);
        Kinetics before = at(clean);
        Kinetics loaded = with(full, y -> y[HELD_N] = half);
        assertThat(loaded.ammoniaLoss / before.ammoniaLoss).isCloseTo(0.5, within(1e-9));
        assertThat(loaded.nitriteLoss / before.nitriteLoss).isCloseTo(0.5, within(1e-9));
        assertThat(loaded.trapping / before.trapping).isCloseTo(0.5, within(1e-9));
        assertThat(loaded.heldLoss / before.heldLoss).isCloseTo(0.5, within(1e-9));
        double crowding = (loaded.aobLoss - before.aobLoss + before.aobGain / 2) / loaded.aobGain;
        assertThat(crowding).isCloseTo(0.5 / 0.75, within(1e-9));
        double other = (loaded.nobLoss - before.nobLoss + before.nobGain / 2) / loaded.nobGain;
        assertThat(other).isCloseTo(0.5 / 0.75, within(1e-9));
    }

    @Test
    void plantsTakeHalfOfWhatTheyCanAtOneMilligram() {
        plan = plan.plants(2400);
        assertThat(with(bare(), y -> y[NITRATE] = 1).nitrateLoss * 1).isCloseTo(0.5, within(1e-9));
        assertThat(with(bare(), y -> y[NITRATE] = 9).nitrateLoss * 9).isCloseTo(0.9, within(1e-9));
        assertThat(with(bare(), y -> y[NITRATE] = -1e-12).nitrateLoss).isCloseTo(1, within(1e-9));
    }

    /** Ammonia and oxygen below nothing, by rounding, count as nothing. */
    @Test
    void whatRoundingLeavesBelowNothingCountsAsNothing() {
        Kinetics k = with(bare(), y -> water(y, -1e-9, -1e-9, -1e-9));
        assertThat(k.toxicAmmonia).isZero();
        assertThat(k.ammoniaLoss).isZero();
        assertThat(k.aobGain).isZero();
        assertThat(k.nobGain).isZero();
    }

    @ParameterizedTest
    @CsvSource({"4, 1", "5, 0", "7, 0", "9.5, 0", "10.5, 1"})
    void acidAndAlkalineWaterHarmByTheUnitsOutside(double ph, double exposure) {
        h = StrictMath.pow(10, -ph);
        assertThat(at(tilapia()).exposure[Stressor.PH.ordinal()]).isCloseTo(exposure, within(1e-9));
    }

    @Test
    void coldAndHeatHarmByTheDegreesOutside() {
        Species tilapia = Species.byId("nile-tilapia");
        int warmth = Stressor.TEMPERATURE.ordinal();
        assertThat(with(tilapia(), y -> y[TEMPERATURE] = tilapia.coldLimitC() - 2).exposure[warmth])
                .isEqualTo(2);
        assertThat(with(tilapia(), y -> y[TEMPERATURE] = tilapia.warmLimitC() + 1.5).exposure[warmth])
                .isEqualTo(1.5);
        assertThat(at(tilapia()).exposure[warmth]).isZero();
    }

    @Test
    void chlorideHalvesTheNitriteThatCountsAndAmmoniaCountsAsMeasuredInHardWater() {
        TestTank tank = tilapia();
        double half = tank.parameters.chlorideHalfMgPerL();
        h = 1e-9;
        Kinetics k = with(tank, y -> {
            water(y, 1, 4, 6);
            y[CHLORIDE] = half;
            y[FREE_CHLORINE] = 0.01;
            y[COMBINED_CHLORINE] = 0.02;
        });
        assertThat(k.exposure[Stressor.NITRITE.ordinal()]).isCloseTo(2, within(1e-12));
        assertThat(k.exposure[Stressor.CHLORINE.ordinal()]).isCloseTo(0.03, within(1e-12));
        assertThat(k.exposure[Stressor.AMMONIA.ordinal()]).isCloseTo(k.toxicAmmonia, within(1e-4 * k.toxicAmmonia));
        assertThat(with(tank, y -> y[NITRITE] = -1e-9).exposure[Stressor.NITRITE.ordinal()])
                .isZero();
    }

    /** Half the blood bound: twice the oxygen is needed; more than three quarters never count. */
    @Test
    void boundBloodNeedsMoreOxygen() {
        TestTank tank = tilapia();
        double critical = Objects.requireNonNull(tank.parameters.species()).criticalOxygenMgPerL();
        int nitrite = DAMAGE + Stressor.NITRITE.ordinal();
        int lack = Stressor.LOW_OXYGEN.ordinal();
        double half = Objects.requireNonNull(tank.parameters.species()).methaemoglobinHalfMgPerL();
        tank.y[OXYGEN] = critical / 2;
        assertThat(at(tank).exposure[lack]).isCloseTo(critical / 2, within(1e-12));
        assertThat(with(tank, y -> y[nitrite] = half).exposure[lack]).isCloseTo(1.5 * critical, within(1e-6));
        assertThat(with(tank, y -> y[nitrite] = 1e9).exposure[lack]).isCloseTo(3.5 * critical, within(1e-6));
        tank.y[OXYGEN] = 3 * critical;
        assertThat(at(tank).exposure[lack]).isCloseTo(critical, within(1e-6));
        tank.y[OXYGEN] = 4.1 * critical;
        assertThat(at(tank).exposure[lack]).isZero();
    }

    @Test
    void aFilterIsLateWhileEitherGroupCannotCarryTheFish() {
        assertThat(at(bare()).delay).isZero();
        assertThat(at(tilapia()).delay).isZero();
        assertThat(with(tilapia(), y -> y[AOB] = 0).delay).isEqualTo(1);
        assertThat(with(tilapia(), y -> y[NOB] = 0).delay).isEqualTo(1);
        TestTank tank = tilapia();
        double fish = TankReadings.fishAlive(tank.y, tank.parameters.strata());
        double enough = TankReadings.aobForRation(tank.parameters, fish, 15, 27);
        assertThat(with(tank, y -> y[AOB] = enough * 1.02).delay).isZero();
        assertThat(with(tank, y -> y[AOB] = enough * 0.98).delay).isEqualTo(1);
        double enoughOfTheOther = TankReadings.nobForRation(tank.parameters, fish, 15, 27);
        assertThat(with(tank, y -> {
                            y[AOB] = enough * 2;
                            y[NOB] = enoughOfTheOther * 1.02;
                        })
                        .delay)
                .isZero();
        assertThat(with(tank, y -> y[NOB] = enoughOfTheOther * 0.98).delay).isEqualTo(1);
    }

    @Test
    void whereNoFishAreNothingBreathesOrExcretes() {
        Kinetics k = at(tilapia());
        assertThat(k.breathed).isPositive();
        assertThat(k.fastingExcretion).isPositive();
        TestTank tank = tilapia();
        tank.y[STOCKED] = 0;
        k.evaluate(
                tank.y,
                tank.parameters,
                IntervalConstants.exact(SystemTerms.of(tank.parameters), tank.controls, tank.y),
                1e-3);
        assertThat(new double[] {
                    k.breathed, k.fastingExcretion, k.gutExcretion, k.fedExcretion, k.hazard, k.stress, k.delay
                })
                .containsOnly(0);
        assertThat(k.exposure).containsOnly(0);
    }

    /** Fish that grew since the constants were made breathe and fast by their mass; the gut gives off 4.8 of it a day. */
    @Test
    void excretionComesFromTheGutAndFromTheFast() {
        TestTank tank = tilapia();
        Kinetics k = with(tank, y -> y[GUT_2] = 1000);
        assertThat(k.gutExcretion).isCloseTo(4.8 * 1000 / TestTank.VOLUME_L, within(1e-9));
        double fish = TankReadings.fishAlive(tank.y, tank.parameters.strata());
        double fed = TestTank.VOLUME_L * k.fastingExcretion / 0.10;
        assertThat(k.fedExcretion).isCloseTo(fed, within(0.001 * fed));
        assertThat(Kinetics.fedFactor(50, 50)).isEqualTo(1.5);
        assertThat(Kinetics.fedFactor(0, 50)).isEqualTo(1);
        assertThat(Kinetics.fedFactor(50, 0)).isEqualTo(1);
        assertThat(fed / fish).isBetween(1.0, 40.0);
        IntervalConstants kept = IntervalConstants.exact(SystemTerms.of(tank.parameters), tank.controls, tank.y);
        tank.y[FISH_N] *= 1.01;
        Kinetics grown = new Kinetics();
        grown.evaluate(tank.y, tank.parameters, kept, h);
        assertThat(grown.breathed / at(tilapia()).breathed).isGreaterThan(1);
        assertThat(grown.fastingExcretion / k.fastingExcretion).isCloseTo(1 + 0.01 * kept.massPower, within(1e-6));
    }

    /** Each cause adds the logarithm of how often it lies over guidance; under it none does. */
    @Test
    void stressIsTheSumOfLogarithmsOverGuidance() {
        TestTank tank = tilapia();
        Species.Guidance g = Objects.requireNonNull(tank.parameters.species()).guidance();
        tank.y[OXYGEN] = 7;
        assertThat(at(tank).stress).isZero();
        assertThat(with(tank, y -> y[OXYGEN] = g.oxygenMgPerL() / 2).stress).isCloseTo(StrictMath.log(2), within(1e-9));
        assertThat(with(tank, y -> y[FREE_CHLORINE] = 3 * g.chlorineMgPerL()).stress)
                .isCloseTo(StrictMath.log(6), within(1e-9));
        TestTank warm = tilapia();
        assertThat(with(warm, y -> y[ACCLIMATED_C] = y[TEMPERATURE] - 2 * g.warmingCPerDay()).stress)
                .isCloseTo(StrictMath.log(2), within(1e-9));
        assertThat(with(warm, y -> y[ACCLIMATED_C] = y[TEMPERATURE] + 2 * g.coolingCPerDay()).stress)
                .isCloseTo(StrictMath.log(2), within(1e-9));
        Kinetics k = at(warm);
        double lag = -2 * g.coolingCPerDay();
        assertThat(k.quickStress(Objects.requireNonNull(warm.parameters.species()), 7, lag))
                .isCloseTo(StrictMath.log(2), within(1e-6));
        assertThat(k.quickStress(Objects.requireNonNull(warm.parameters.species()), 7, 0))
                .isZero();
    }

    /** The mean hazard is that of the living: a stratum that has died out does not count. */
    @Test
    void theMeanHazardIsThatOfTheLiving() {
        TestTank tank = tilapia();
        int damage = DAMAGE + Stressor.CHLORINE.ordinal();
        int strata = tank.parameters.strata();
        Kinetics k = with(tank, y -> y[damage] = 5);
        double sum = 0;
        for (int s = 0; s < strata; s++) {
            sum += k.stratumHazard(s, Stressor.CHLORINE.ordinal());
        }
        assertThat(k.hazard).isPositive().isCloseTo(sum / strata, within(1e-9 * sum));
        double last = k.stratumHazard(strata - 1, Stressor.CHLORINE.ordinal());
        Kinetics one = with(tank, y -> {
            for (int s = 0; s < strata - 1; s++) {
                y[survivors(s)] = 0;
            }
        });
        assertThat(one.hazard).isCloseTo(last, within(1e-9 * last));
        assertThat(with(tank, y -> y[survivors(strata - 1)] = 0).hazard).isZero();
    }

    /** The plane through the change of carbon: at the state itself it is what gas and breathing make of it. */
    @Test
    void thePlaneOfCarbonPassesThroughTheState() {
        TestTank tank = bare();
        Kinetics k = with(tank, y -> y[ORGANIC_N] = 0.2);
        IntervalConstants c = IntervalConstants.exact(SystemTerms.of(tank.parameters), tank.controls, tank.y);
        double byPlane =
                k.carbonMade + c.kLaCo2PerDay * (k.co2PerAlkalinity * tank.y[ALKALINITY] - k.co2PerDic * tank.y[DIC]);
        double byGas = k.respirationDic + c.kLaCo2PerDay * (c.co2InBalance - k.carbonDioxide);
        assertThat(byPlane).isCloseTo(byGas, within(1e-9));
        CarbonateSystem water = c.carbonate;
        assertThat(k.carbonDioxide).isCloseTo(water.co2(h, tank.y[DIC]), within(1e-12));
    }
}
