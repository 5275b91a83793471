package startwater.tank;

import static startwater.tank.TankLayout.*;

import java.util.Objects;
import startwater.biofilter.FilterMedia;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.fish.SurvivalCurve;
import startwater.quantity.Molar;
import startwater.quantity.Powers;
import startwater.water.CarbonateSystem;

/**
 * The rates of one system at one moment: the single place where water, filter and fish meet. Both steppers read them
 * from here. A scratch pad: one per thread, no allocation in {@link #evaluate}.
 */
final class Kinetics {
    /** DIC made per O2 used by breathing and mineralising: respiratory quotient 0.9, mmol per mg. */
    static final double DIC_PER_OXYGEN = 0.9 / 32;

    static final double GUT_RATE_PER_DAY = 4.8;
    private static final double RESPIRATION_HALF_SQUARED = 0.12;
    private static final double LEAST_FOR_LOG = 1e-12;
    /** Nitrate at which plants take half of what they can, mg N/L (0.1-1.5 published for roots: from memory). */
    private static final double PLANT_NITRATE_HALF_MG_PER_L = 1;
    /** How fast fish get used to a temperature, 1/d: in water that moves by 1 °C a day they lag by 1 °C (tuned). */
    static final double ACCLIMATION_PER_DAY = 1;

    /** Specific losses, 1/d: oxidation of ammonia, of nitrite, mineralisation. */
    double ammoniaLoss;

    double nitriteLoss;
    /** Straight lines through the rates at this state, rate = slope y + bend: for ammonia, nitrite and oxygen used. */
    double ammoniaSlope;

    double ammoniaBend;
    double nitriteSlope;
    double nitriteBend;
    double oxygenSlope;
    double oxygenBend;
    double mineralisationLoss;
    /** Mineralising of held solids, and plants' uptake of nitrate, 1/d. */
    double heldLoss;

    double nitrateLoss;
    /** Organic nitrogen caught by the filter, 1/d. */
    double trapping;
    /** Excretion, mg N/L/d: from the gut, and of body nitrogen by the fast. */
    double gutExcretion;

    double fastingExcretion;
    /** Oxygen used, mg/L/d, per mg/L of oxygen there. */
    double oxygenLoss;

    /** Oxygen at saturation, mg/L. */
    double oxygenSaturation;

    /** Oxygen breathed, mg/L/d, and the excretion of a fed day by which it goes, mg N/d. */
    double breathed;

    double fedExcretion;
    double respirationDic;
    double aobGain;
    double aobLoss;
    double nobGain;
    double nobLoss;
    /** Un-ionised ammonia, mg N/L. */
    double toxicAmmonia;

    double carbonDioxide;
    double co2PerDic;
    /** Fall of CO2 with alkalinity, mmol per meq. */
    double co2PerAlkalinity;
    /** A plane through dDIC/dt = carbonMade + kLaCO2 (co2PerAlkalinity ALK - co2PerDic DIC), mmol/L/d. */
    double carbonMade;
    /** Mean hazard of the living, 1/d. */
    double hazard;

    double stress;
    double delay;
    // How much warmer the water is than the constants are for, °C.
    private double warmer;
    final double[] exposure = new double[Stressor.COUNT];
    private final CarbonateSystem.Point point = new CarbonateSystem.Point();
    private double[] stratumHazard = new double[0];

    /** The hazard of one stratum by one stressor at the last evaluation, 1/d. */
    double stratumHazard(int stratum, int stressor) {
        return stratumHazard[stratum * Stressor.COUNT + stressor];
    }

    /**
     * Works out all rates.
     *
     * @param h hydrogen-ion activity that belongs to this state, mol/L
     */
    void evaluate(double[] y, TankParameters p, IntervalConstants k, double h) {
        rates(y, p, k, h);
        hazard = 0;
        stress = 0;
        Species species = p.species();
        if (species != null && y[STOCKED] > 0) {
            stress = stress(species, Math.max(0, y[OXYGEN]), y[TEMPERATURE] - y[ACCLIMATED_C]);
            hazards(y, p, species, k, p.strata());
        }
    }

    /** The same without stress and the hazards of the strata: all that the water and the fish's nitrogen need. */
    void rates(double[] y, TankParameters p, IntervalConstants k, double h) {
        double tan = y[TAN] > 0 ? y[TAN] : 0;
        double oxygen = y[OXYGEN] > 0 ? y[OXYGEN] : 0;
        warmer = y[TEMPERATURE] - k.temperatureC;
        oxygenSaturation = k.oxygenSaturation + k.oxygenSaturationSlope * warmer;
        k.carbonate.look(h, y[DIC], tan, point);
        toxicAmmonia = point.toxicAmmonia;
        carbonDioxide = point.co2;
        co2PerDic = point.co2PerDic;
        co2PerAlkalinity = point.co2PerAlkalinity;
        filter(y, p, k, h, tan, oxygen);
        double alive = y[STOCKED] > 0 ? fish(y, p, k, h, oxygen) : noFish();
        delay = delayed(y, k, alive) ? 1 : 0;
        carbonMade = respirationDic
                + k.kLaCo2PerDay
                        * (k.co2InBalance - carbonDioxide + co2PerDic * y[DIC] - co2PerAlkalinity * y[ALKALINITY]);
    }

    private void filter(double[] y, TankParameters p, IntervalConstants k, double h, double tan, double oxygen) {
        double volume = p.volumeL();
        double nitrite = y[NITRITE] > 0 ? y[NITRITE] : 0;
        double share = k.loadPerHeld == 0 ? 1 : FilterMedia.flowShareAt(k.loadPerHeld * y[HELD_N]);
        double flow = k.flow * share;
        double area = FilterMedia.areaShare(share);
        trapping = k.trapping * flow;
        double ph = Nitrification.phFactor(h) * flow;
        double limitA = k.thetaAob
                * warmed(Nitrification.LN_THETA_AOB)
                * ph
                * Nitrification.alkalinityFactor(y[ALKALINITY])
                * oxygen
                / ((Nitrification.AMMONIA_HALF_MG_PER_L + tan)
                        * (Nitrification.OXYGEN_HALF_AOB_MG_PER_L + oxygen)
                        * (1 + toxicAmmonia / Nitrification.AMMONIA_INHIBITION_AOB_MG_PER_L));
        double nitrousAcid = nitrite * h / (h + k.nitrousAcid);
        double limitN = k.thetaNob
                * warmed(Nitrification.LN_THETA_NOB)
                * ph
                * oxygen
                / ((Nitrification.NITRITE_HALF_MG_PER_L + nitrite)
                        * (Nitrification.OXYGEN_HALF_NOB_MG_PER_L + oxygen)
                        * (1
                                + toxicAmmonia / Nitrification.AMMONIA_INHIBITION_NOB_MG_PER_L
                                + nitrousAcid / Nitrification.NITROUS_ACID_INHIBITION_NOB_MG_PER_L));
        double aob = y[AOB];
        double nob = y[NOB];
        ammoniaLoss = aob * limitA / volume;
        nitriteLoss = nob * limitN / volume;
        ammoniaSlope =
                ammoniaLoss * (Nitrification.AMMONIA_HALF_MG_PER_L / (Nitrification.AMMONIA_HALF_MG_PER_L + tan));
        ammoniaBend = (ammoniaLoss - ammoniaSlope) * tan;
        nitriteSlope =
                nitriteLoss * (Nitrification.NITRITE_HALF_MG_PER_L / (Nitrification.NITRITE_HALF_MG_PER_L + nitrite));
        nitriteBend = (nitriteLoss - nitriteSlope) * nitrite;
        aobGain = k.growthAob * limitA * tan;
        double death = k.decay * warmed(Nitrification.LN_THETA_DECAY) + k.fouling + y[MEDICATION];
        aobLoss = aobGain * aob / (area * k.aobCapacity) + death;
        nobGain = k.growthNob * limitN * nitrite;
        nobLoss = nobGain * nob / (area * k.nobCapacity) + death;
        double aerobic = warmed(Nitrification.LN_THETA_MINERALISATION)
                * oxygen
                / (Nitrification.MINERALISATION_OXYGEN_HALF_MG_PER_L + oxygen);
        mineralisationLoss = k.mineralisation * aerobic;
        heldLoss = k.heldMineralisation * flow * aerobic;
        nitrateLoss = k.plantUptake / (PLANT_NITRATE_HALF_MG_PER_L + Math.max(0, y[NITRATE]));
        double perOxygen = 1 / Math.max(oxygen, 1e-9);
        double mineralising = Nitrification.OXYGEN_PER_MINERALISED_N
                * (mineralisationLoss * y[ORGANIC_N] + heldLoss * y[HELD_N] / volume);
        oxygenLoss = perOxygen
                * (Nitrification.OXYGEN_STEP_ONE * ammoniaLoss * tan
                        + Nitrification.OXYGEN_STEP_TWO * nitriteLoss * nitrite
                        + mineralising);
        oxygenSlope = oxygenLoss;
        oxygenBend = 0;
        respirationDic = DIC_PER_OXYGEN * mineralising;
    }

    /** What a factor theta per degree makes of a rate that is kept for a temperature next to the present one. */
    private double warmed(double lnTheta) {
        double x = lnTheta * warmer;
        return 1 + x * (1 + x / 2);
    }

    private double noFish() {
        gutExcretion = 0;
        fastingExcretion = 0;
        breathed = 0;
        fedExcretion = 0;
        for (int i = 0; i < Stressor.COUNT; i++) {
            exposure[i] = 0;
        }
        return 0;
    }

    private double fish(double[] y, TankParameters p, IntervalConstants k, double h, double oxygen) {
        Species species = Objects.requireNonNull(p.species());
        int strata = p.strata();
        double volume = p.volumeL();
        double alive = TankReadings.fishAlive(y, strata);
        double excretion = GUT_RATE_PER_DAY * y[GUT_2];
        gutExcretion = excretion / volume;
        double heavier = alive > TankReadings.LEAST_FISH && k.massG > 0
                ? y[FISH_N] / (alive * Species.BODY_NITROGEN_MG_PER_G * k.massG) - 1
                : 0;
        double active = alive * (1 + k.massPower * heavier);
        fastingExcretion = k.fastingExcretion * active / volume;
        double mean = k.fedExcretion * active;
        fedExcretion = mean;
        double fedFactor = fedFactor(excretion, mean);
        double breathing = k.oxygenPerFish
                * warmed(k.lnBreathing)
                * active
                / volume
                * fedFactor
                * oxygen
                / (oxygen * oxygen + RESPIRATION_HALF_SQUARED);
        oxygenLoss += breathing;
        double square = oxygen * oxygen;
        double breathingSlope = breathing * 2 * RESPIRATION_HALF_SQUARED / (square + RESPIRATION_HALF_SQUARED);
        oxygenSlope += breathingSlope;
        oxygenBend += (breathing - breathingSlope) * oxygen;
        breathed = breathing * oxygen;
        respirationDic += DIC_PER_OXYGEN * breathed;
        exposures(y, p, species, h, oxygen);
        return alive;
    }

    /** How much more fish breathe that digest. @param excretion at the moment, @param fedDay on the full ration, mg N/d */
    static double fedFactor(double excretion, double fedDay) {
        return fedDay > 0 ? 1 + excretion / (excretion + fedDay) : 1;
    }

    private void exposures(double[] y, TankParameters p, Species species, double h, double oxygen) {
        exposure[0] = toxicAmmonia / Species.ammoniumFactor(h);
        exposure[1] = (y[NITRITE] > 0 ? y[NITRITE] : 0) / (1 + y[CHLORIDE] / p.chlorideHalfMgPerL());
        double critical = species.criticalOxygenMgPerL();
        exposure[2] = oxygen > critical * OXYGEN_NEVER_SHORT
                ? 0
                : Math.max(
                        0, critical / (1 - Math.min(MOST_BOUND, species.boundBlood(y[DAMAGE + NITRITE_AT]))) - oxygen);
        exposure[3] = y[FREE_CHLORINE] + y[COMBINED_CHLORINE];
        exposure[4] = h > H_AT_PH_LOW || h < H_AT_PH_HIGH
                ? Math.max(Species.PH_LOW + StrictMath.log10(h), -StrictMath.log10(h) - Species.PH_HIGH)
                : 0;
        double temperature = y[TEMPERATURE];
        double cold = species.coldLimitC() - temperature;
        double warm = temperature - species.warmLimitC();
        exposure[5] = cold > 0 ? cold : warm > 0 ? warm : 0;
    }

    private static final int NITRITE_AT = Stressor.NITRITE.ordinal();
    private static final double MOST_BOUND = 0.75;
    private static final double OXYGEN_NEVER_SHORT = 1 / (1 - MOST_BOUND);
    private static final double H_AT_PH_LOW = StrictMath.pow(10, -Species.PH_LOW);
    private static final double H_AT_PH_HIGH = StrictMath.pow(10, -Species.PH_HIGH);

    private void hazards(double[] y, TankParameters p, Species species, IntervalConstants k, int strata) {
        if (stratumHazard.length < strata * Stressor.COUNT) {
            stratumHazard = new double[strata * Stressor.COUNT];
        }
        double weighted = 0;
        double living = 0;
        for (int s = 0; s < strata; s++) {
            double sum = 0;
            for (int i = 0; i < Stressor.COUNT; i++) {
                double damage = y[DAMAGE + i];
                double scale = p.sensitivity().at(s) * (i == 0 ? k.ammoniaScale : 1);
                SurvivalCurve curve = species.curves().get(i);
                double rate = damage > 0 ? curve.hazardPerDay(damage, scale) : 0;
                stratumHazard[s * Stressor.COUNT + i] = rate;
                sum += rate;
            }
            double survivors = y[survivors(s)];
            weighted += sum * survivors;
            living += survivors;
        }
        hazard = living > 0 ? weighted / living : 0;
    }

    /** @param lagC how much warmer the water is than what the fish are used to, °C */
    private double stress(Species species, double oxygen, double lagC) {
        return StrictMath.log(strain(species, oxygen, lagC));
    }

    /** The stress of the last rates by a short series instead of the logarithm. */
    double quickStress(Species species, double oxygen, double lagC) {
        double strain = strain(species, oxygen, lagC);
        return strain > 1 ? Powers.quickLn(strain) : 0;
    }

    /** How often over guidance, all causes multiplied, 1 where none is: a sum of logarithms is that of the product. */
    private double strain(Species species, double oxygen, double lagC) {
        Species.Guidance g = species.guidance();
        return times(exposure[0], g.ammoniaMgPerL())
                * times(exposure[1], g.nitriteMgPerL())
                * times(g.oxygenMgPerL(), oxygen)
                * times(exposure[3], g.chlorineMgPerL())
                * times(carbonDioxide * Molar.CO2, g.carbonDioxideMgPerL())
                * times(lagC, g.warmingCPerDay())
                * times(-lagC, g.coolingCPerDay());
    }

    private static double times(double value, double guidance) {
        return value > guidance ? value / Math.max(guidance, LEAST_FOR_LOG) : 1;
    }

    /** Whether either group could not yet carry the full ration of the fish here, or planned here, at 1 mg N/L. */
    private static boolean delayed(double[] y, IntervalConstants k, double alive) {
        return alive > 0 && (y[AOB] < k.aobForFish * alive || y[NOB] < k.nobForFish * alive);
    }
}
