package startwater.tank;

import org.jspecify.annotations.Nullable;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.water.CarbonateSystem;

/**
 * Everything that depends on temperature, salt, fish size and switches, worked out once for an interval in which they
 * hardly move, so that the rates need no exponential.
 */
final class IntervalConstants {
    /**
     * Inputs are rounded to a grid before the constants are worked out, so that constants can be kept while nothing
     * moves and yet depend on the state alone, never on what a stepper did before.
     */
    private static final double IONIC_STRENGTH_GRID = 5e-5;

    private static final int MASS_BITS_DROPPED = 40;
    /** Flow through the filter with the pump off, share of the normal. */
    private static final double FLOW_WITHOUT_PUMP = 0.02;
    /** Fasting fish excrete this share of what fed fish do. */
    private static final double FASTING_SHARE = 0.10;
    /**
     * Fish as light as this, g, have nothing left to fast on. No fish is stocked so light; it keeps those that a tank
     * starves for months within what the equations of breathing hold for.
     */
    private static final double NOTHING_LEFT_G = 1e-3;

    private final TemperatureTerms warmth;
    final CarbonateSystem carbonate;
    /** The temperature that the constants are worked out for, °C; {@link Kinetics} follows small departures from it. */
    final double temperatureC;

    final double oxygenSaturation;
    /** Its change with temperature, mg/L per °C. */
    final double oxygenSaturationSlope;

    final double kLaPerDay;
    final double kLaCo2PerDay;
    final double co2InBalance;
    final double thetaAob;
    final double thetaNob;
    final double growthAob;
    final double growthNob;
    final double decay;
    final double mineralisation;
    final double flow;
    /** At full flow: solids caught from the water, and mineralised in the bed, 1/d. */
    final double trapping;

    final double heldMineralisation;
    /** Load of the bed per mg of nitrogen it holds: at a load of 1 the flow is halved. */
    final double loadPerHeld;
    /** What a fouling bed loses and lets go, 1/d. */
    final double fouling;
    /** Nitrate that plants take at most, mg N/L/d. */
    final double plantUptake;

    final double aobCapacity;
    final double nobCapacity;
    final double nitrousAcid;
    /** Nitrogen that a fish of this size excretes fasting, mg N/d each; and fed on the full ration. */
    final double fastingExcretion;

    final double fedExcretion;
    /** Oxygen that a resting, fasting fish of this size takes, mg/d each. */
    final double oxygenPerFish;
    /** Natural logarithm of its factor per degree. */
    final double lnBreathing;
    /** Activity at 20 °C with which each group carries the full ration of one fish at 1 mg N/L. */
    final double aobForFish;

    final double nobForFish;
    final double ammoniaScale;
    private final double ionicStrength;
    /** The mass that the constants are worked out for, g; {@link Kinetics} follows small departures from it. */
    final double massG;

    /** Breathing and excretion of a fish grow with its mass to this power. */
    final double massPower;

    private final Controls controls;

    private IntervalConstants(
            SystemTerms system,
            Controls controls,
            TemperatureTerms warmth,
            double ionicStrength,
            double massG,
            boolean fouling) {
        TankParameters p = system.parameters();
        this.warmth = warmth;
        this.ionicStrength = ionicStrength;
        this.massG = massG;
        this.controls = controls;
        carbonate = warmth.carbonate.with(ionicStrength);
        // A mol of salt weighs about as much as sodium chloride.
        oxygenSaturation = warmth.oxygen.mgPerL(system.pressureAtm(), ionicStrength * 58.44);
        oxygenSaturationSlope = oxygenSaturation * warmth.oxygenSlope;
        double device = (controls.air() ? p.kLaDevicePerHour() : 0) + controls.spareAirPerHour();
        kLaPerDay = 24 * warmth.gasTheta * (device + p.kLaSurfacePerHour());
        kLaCo2PerDay = 24 * warmth.gasTheta * (device * p.carbonDioxideRatio() + p.kLaSurfacePerHour());
        co2InBalance = carbonate.co2InBalanceWith(p.carbonDioxideAtm());
        thetaAob = warmth.thetaAob;
        thetaNob = warmth.thetaNob;
        growthAob = Nitrification.GROWTH_PER_DAY * p.aobGrowthFactor();
        growthNob = Nitrification.GROWTH_PER_DAY * p.nobGrowthFactor();
        decay = warmth.decay;
        mineralisation = warmth.mineralisation;
        flow = controls.pump() ? 1 : FLOW_WITHOUT_PUMP;
        trapping = p.media().trappingPerDay();
        heldMineralisation =
                FilterBed.HELD_MINERALISATION_PER_DAY / Nitrification.MINERALISATION_PER_DAY * mineralisation;
        loadPerHeld = p.media().load(1 / p.mediaAreaM2());
        this.fouling = fouling ? FilterBed.FOULING_PER_DAY : 0;
        plantUptake = p.plantUptakeMgPerDay() / p.volumeL();
        aobCapacity = system.aobCapacity();
        nobCapacity = system.nobCapacity();
        nitrousAcid = warmth.nitrousAcid;
        temperatureC = warmth.temperatureC;
        Species species = p.species();
        if (species == null || !(massG > 0)) {
            fastingExcretion = 0;
            fedExcretion = 0;
            oxygenPerFish = 0;
            massPower = 0;
            lnBreathing = 0;
            aobForFish = 0;
            nobForFish = 0;
            ammoniaScale = 1;
        } else {
            double feedMg = 1000 * massG * species.feed().fractionAtBest(massG) * p.proteinFraction();
            fedExcretion = Meals.EXCRETED_PER_PROTEIN * feedMg * p.excretionFactor();
            fastingExcretion = massG < NOTHING_LEFT_G
                    ? 0
                    : FASTING_SHARE * fedExcretion * species.appetite().temperature(temperatureC);
            massPower = system.massPower();
            lnBreathing = system.lnBreathing();
            oxygenPerFish = 24 * species.respiration().mgPerKgHour(massG, temperatureC) * massG / 1000;
            aobForFish = TankReadings.aobForRation(p, 1, massG, temperatureC);
            nobForFish = TankReadings.nobForRation(p, 1, massG, temperatureC);
            ammoniaScale = species.ammoniaThresholdFactor(massG);
        }
    }

    /** Constants for the mean temperature of an interval; {@code last} is returned when nothing has moved. */
    static IntervalConstants of(
            SystemTerms system, Controls controls, double[] y, double temperatureC, @Nullable IntervalConstants last) {
        double ionic = IONIC_STRENGTH_GRID * Math.rint(ionicStrength(y) / IONIC_STRENGTH_GRID);
        double mass = rounded(TankReadings.massG(y, system.parameters().strata()));
        TemperatureTerms warmth = TemperatureTerms.near(temperatureC);
        boolean fouling = FilterBed.fouling(y, controls);
        if (last != null
                && last.controls.equals(controls)
                && last.warmth.temperatureC == warmth.temperatureC
                && last.ionicStrength == ionic
                && last.massG == mass
                && last.fouling > 0 == fouling) {
            return last;
        }
        return new IntervalConstants(system, controls, warmth, ionic, mass, fouling);
    }

    /** The carbonate system of this salt at another temperature, °C. */
    CarbonateSystem carbonateAt(double otherC) {
        TemperatureTerms other = TemperatureTerms.near(otherC);
        return other.temperatureC == temperatureC ? carbonate : other.carbonate.with(ionicStrength);
    }

    private static double ionicStrength(double[] y) {
        return CarbonateSystem.ionicStrength(
                y[TankLayout.ALKALINITY], y[TankLayout.CHLORIDE], y[TankLayout.NITRITE], y[TankLayout.NITRATE]);
    }

    /** Rounded to one part in 2,048. */
    private static double rounded(double mass) {
        long half = 1L << (MASS_BITS_DROPPED - 1);
        return Double.longBitsToDouble((Double.doubleToRawLongBits(mass) + half) & -(1L << MASS_BITS_DROPPED));
    }

    /** Constants at exactly this state. */
    static IntervalConstants exact(SystemTerms system, Controls controls, double[] y) {
        return new IntervalConstants(
                system,
                controls,
                TemperatureTerms.at(y[TankLayout.TEMPERATURE]),
                ionicStrength(y),
                TankReadings.massG(y, system.parameters().strata()),
                FilterBed.fouling(y, controls));
    }
}
