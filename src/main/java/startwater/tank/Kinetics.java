package startwater.tank;

import static startwater.tank.TankLayout.*;

import java.util.Objects;
import org.jspecify.annotations.Nullable;
import startwater.biofilter.FilterMedia;
import startwater.biofilter.Nitrification;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.fish.SurvivalCurve;
import startwater.quantity.Molar;

/**
 * The rates of one system at one moment: the single place where water, filter and fish meet. Both steppers read them
 * from here. A scratch pad: one per thread, no allocation in {@link #evaluate}.
 */
final class Kinetics {
    /** DIC made per O2 used by breathing and mineralising: respiratory quotient 0.9, mmol per mg. */
    private static final double DIC_PER_OXYGEN = 0.9 / 32;

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
    final double[] exposure = new double[Stressor.COUNT];
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
        Species species = p.species();
        if (species != null && y[STOCKED] > 0) {
            hazards(y, p, species, k, p.strata());
        }
    }

    /** The same without the hazards of the strata. */
    void rates(double[] y, TankParameters p, IntervalConstants k, double h) {
        double tan = Math.max(0, y[TAN]);
        double oxygen = Math.max(0, y[OXYGEN]);
        toxicAmmonia = tan * k.carbonate.nh3Fraction(h);
        carbonDioxide = k.carbonate.co2(h, y[DIC]);
        co2PerDic = k.carbonate.dCo2dDic(h, y[DIC], tan);
        co2PerAlkalinity = k.carbonate.co2PerAlkalinity(h, y[DIC], tan);
        filter(y, p, k, h, tan, oxygen);
        double alive = y[STOCKED] > 0 ? fish(y, p, k, h, oxygen) : noFish();
        delay = delayed(y, k, alive) ? 1 : 0;
        carbonMade = respirationDic
                + k.kLaCo2PerDay
                        * (k.co2InBalance - carbonDioxide + co2PerDic * y[DIC] - co2PerAlkalinity * y[ALKALINITY]);
    }

    private void filter(double[] y, TankParameters p, IntervalConstants k, double h, double tan, double oxygen) {
        double volume = p.volumeL();
        double nitrite = Math.max(0, y[NITRITE]);
        double share = k.loadPerHeld == 0 ? 1 : FilterMedia.flowShareAt(k.loadPerHeld * y[HELD_N]);
        double flow = k.flow * share;
        double area = FilterMedia.areaShare(share);
        trapping = k.trapping * flow;
        double ph = Nitrification.phFactor(h) * flow;
        double limitA = k.thetaAob
                * ph
                * Nitrification.alkalinityFactor(y[ALKALINITY])
                * oxygen
                / ((Nitrification.AMMONIA_HALF_MG_PER_L + tan)
                        * (Nitrification.OXYGEN_HALF_AOB_MG_PER_L + oxygen)
                        * (1 + toxicAmmonia / Nitrification.AMMONIA_INHIBITION_AOB_MG_PER_L));
        double nitrousAcid = nitrite * h / (h + k.nitrousAcid);
        double limitN = k.thetaNob
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
        double death = k.decay + k.fouling + y[MEDICATION];
        aobLoss = aobGain * aob / (area * k.aobCapacity) + death;
        nobGain = k.growthNob * limitN * nitrite;
        nobLoss = nobGain * nob / (area * k.nobCapacity) + death;
        mineralisationLoss = k.mineralisation * oxygen / (Nitrification.MINERALISATION_OXYGEN_HALF_MG_PER_L + oxygen);
        heldLoss = k.heldMineralisation * flow * oxygen / (Nitrification.MINERALISATION_OXYGEN_HALF_MG_PER_L + oxygen);
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

    private double noFish() {
        gutExcretion = 0;
        fastingExcretion = 0;
        stress = 0;
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
        fastingExcretion = k.fastingExcretion * alive / volume;
        double mean = k.fedExcretion * alive;
        double fedFactor = mean > 0 ? 1 + excretion / (excretion + mean) : 1;
        double breathing =
                k.oxygenPerFish * alive / volume * fedFactor * oxygen / (oxygen * oxygen + RESPIRATION_HALF_SQUARED);
        oxygenLoss += breathing;
        double square = oxygen * oxygen;
        double breathingSlope = breathing * 2 * RESPIRATION_HALF_SQUARED / (square + RESPIRATION_HALF_SQUARED);
        oxygenSlope += breathingSlope;
        oxygenBend += (breathing - breathingSlope) * oxygen;
        respirationDic += DIC_PER_OXYGEN * breathing * oxygen;
        exposures(y, p, species, k, h, oxygen);
        stress = stress(species, oxygen, y[TEMPERATURE] - y[ACCLIMATED_C]);
        return alive;
    }

    private void exposures(
            double[] y, TankParameters p, Species species, IntervalConstants k, double h, double oxygen) {
        exposure[0] = toxicAmmonia / Species.ammoniumFactor(h);
        exposure[1] = Math.max(0, y[NITRITE]) / (1 + y[CHLORIDE] / p.chlorideHalfMgPerL());
        double critical = species.criticalOxygenMgPerL();
        exposure[2] = oxygen > critical * OXYGEN_NEVER_SHORT
                ? 0
                : Math.max(0, critical / (1 - Math.min(MOST_BOUND, Methaemoglobin.share(y, species))) - oxygen);
        exposure[3] = y[FREE_CHLORINE] + y[COMBINED_CHLORINE];
        exposure[4] = h > H_AT_PH_LOW || h < H_AT_PH_HIGH
                ? Math.max(Species.PH_LOW + StrictMath.log10(h), -StrictMath.log10(h) - Species.PH_HIGH)
                : 0;
        exposure[5] = k.temperatureOutside;
    }

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
        Species.Guidance g = species.guidance();
        return over(exposure[0], g.ammoniaMgPerL())
                + over(exposure[1], g.nitriteMgPerL())
                + over(g.oxygenMgPerL(), oxygen)
                + over(exposure[3], g.chlorineMgPerL())
                + over(carbonDioxide * Molar.CO2, g.carbonDioxideMgPerL())
                + over(lagC, g.warmingCPerDay())
                + over(-lagC, g.coolingCPerDay());
    }

    private static double over(double value, double guidance) {
        return value > guidance ? StrictMath.log(value / Math.max(guidance, LEAST_FOR_LOG)) : 0;
    }

    /** Whether either group could not yet carry the full ration of the fish here, or planned here, at 1 mg N/L. */
    private static boolean delayed(double[] y, IntervalConstants k, double alive) {
        return alive > 0 && (y[AOB] < k.aobForFish * alive || y[NOB] < k.nobForFish * alive);
    }

    /** Bound blood by table, since a power in every rate would cost more than all else. */
    private static final class Methaemoglobin {
        private static final int CELLS = 1024;
        private static final double[] TABLE = new double[CELLS + 1];

        static {
            for (int i = 0; i < CELLS; i++) {
                double u = (double) i / CELLS;
                double power = StrictMath.pow(u / (1 - u), Species.METHAEMOGLOBIN_HILL);
                TABLE[i] = power / (1 + power);
            }
            TABLE[CELLS] = 1;
        }

        static double share(double[] y, @Nullable Species species) {
            if (species == null) {
                return 0;
            }
            double x = Math.max(0, y[DAMAGE + 1]) / species.methaemoglobinHalfMgPerL();
            double cell = CELLS * (x / (1 + x));
            int i = (int) cell;
            return i >= CELLS ? 1 : TABLE[i] + (cell - i) * (TABLE[i + 1] - TABLE[i]);
        }
    }
}
