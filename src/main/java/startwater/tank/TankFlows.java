package startwater.tank;

import static startwater.tank.TankLayout.*;

import startwater.fish.Stressor;

/**
 * How fast matter moves in a system at one moment, whole system, per hour. The rates are those the steppers integrate, so
 * over a span they add up to what the state has changed by.
 *
 * @param excretedMgN nitrogen that the fish give off as ammonia, mg N/h
 * @param mineralisedMgN organic nitrogen that turns to ammonia, mg N/h
 * @param trappedMgN organic nitrogen that the filter catches, mg N/h
 * @param heldMineralisedMgN of what it holds, turned to ammonia, mg N/h
 * @param loosenedMgN of what it holds, let go by a standing bed, mg N/h
 * @param takenUpMgN nitrate that plants take, mg N/h
 * @param ammoniaOxidisedMgN step one of nitrification, mg N/h
 * @param nitriteOxidisedMgN step two, mg N/h
 * @param oxygenFromAirMg mg O2/h; negative where it leaves
 * @param oxygenUsedMg by fish, filter and solids, mg O2/h
 * @param carbonFromAirMmol CO2 taken from the air, mmol/h; mostly negative
 * @param carbonMadeMmol CO2 breathed out and mineralised, mmol/h
 * @param exposure by stressor, each in its unit
 * @param hazardPerHour of the first stratum by stressor
 */
public record TankFlows(
        double excretedMgN,
        double mineralisedMgN,
        double trappedMgN,
        double heldMineralisedMgN,
        double loosenedMgN,
        double takenUpMgN,
        double ammoniaOxidisedMgN,
        double nitriteOxidisedMgN,
        double oxygenFromAirMg,
        double oxygenUsedMg,
        double carbonFromAirMmol,
        double carbonMadeMmol,
        double[] exposure,
        double[] hazardPerHour) {
    private static final double HOURS = 24;

    public TankFlows {
        exposure = exposure.clone();
        hazardPerHour = hazardPerHour.clone();
    }

    @Override
    public double[] exposure() {
        return exposure.clone();
    }

    @Override
    public double[] hazardPerHour() {
        return hazardPerHour.clone();
    }

    /** The flows of this state under these switches. */
    public static TankFlows of(double[] y, TankParameters p, Controls c) {
        IntervalConstants k = IntervalConstants.exact(SystemTerms.of(p), c, y);
        Kinetics rates = new Kinetics();
        rates.evaluate(y, p, k, y[H_ION]);
        double perHour = p.volumeL() / HOURS;
        double oxygen = Math.max(0, y[OXYGEN]);
        double[] hazards = new double[Stressor.COUNT];
        if (p.species() != null && y[STOCKED] > 0) {
            for (int i = 0; i < hazards.length; i++) {
                hazards[i] = rates.stratumHazard(0, i) / HOURS;
            }
        }
        return new TankFlows(
                (rates.gutExcretion + rates.fastingExcretion) * perHour,
                rates.mineralisationLoss * y[ORGANIC_N] * perHour,
                rates.trapping * y[ORGANIC_N] * perHour,
                rates.heldLoss * y[HELD_N] / HOURS,
                k.fouling * y[HELD_N] / HOURS,
                rates.nitrateLoss * Math.max(0, y[NITRATE]) * perHour,
                rates.ammoniaLoss * Math.max(0, y[TAN]) * perHour,
                rates.nitriteLoss * Math.max(0, y[NITRITE]) * perHour,
                k.kLaPerDay * (k.oxygenSaturation - y[OXYGEN]) * perHour,
                rates.oxygenLoss * oxygen * perHour,
                k.kLaCo2PerDay * (k.co2InBalance - rates.carbonDioxide) * perHour,
                rates.respirationDic * perHour,
                rates.exposure,
                hazards);
    }

    /** Oxygen at saturation in this state, mg/L. */
    public static double oxygenSaturationMgPerL(double[] y, TankParameters p, Controls c) {
        return IntervalConstants.exact(SystemTerms.of(p), c, y).oxygenSaturation;
    }

    /** Feed that holds this nitrogen, g. @param nitrogenMg mg N, @param p for the protein of the feed */
    public static double feedG(double nitrogenMg, TankParameters p) {
        return nitrogenMg == 0 ? 0 : nitrogenMg / (1000 * p.proteinFraction() * Meals.NITROGEN_PER_PROTEIN);
    }
}
