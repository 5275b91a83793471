package startwater.tank;

import startwater.water.CarbonateSystem;
import startwater.water.OxygenSaturation;

/**
 * Water that can be let into a system.
 *
 * @param temperatureC °C
 * @param tanMgPerL total ammonia, mg N/L
 * @param nitriteMgPerL mg N/L
 * @param nitrateMgPerL mg N/L
 * @param alkalinityMeqPerL meq/L
 * @param dicMmolPerL dissolved inorganic carbon, mmol/L
 * @param oxygenMgPerL mg/L
 * @param chlorideMgPerL mg/L
 * @param freeChlorineMgPerL mg/L as Cl2
 * @param combinedChlorineMgPerL mg/L as Cl2
 */
public record SourceWater(
        double temperatureC,
        double tanMgPerL,
        double nitriteMgPerL,
        double nitrateMgPerL,
        double alkalinityMeqPerL,
        double dicMmolPerL,
        double oxygenMgPerL,
        double chlorideMgPerL,
        double freeChlorineMgPerL,
        double combinedChlorineMgPerL) {
    /** Nitrogen that a litre of it brings, mg N, bound in chloramine included. */
    public double nitrogenMgPerL() {
        return tanMgPerL
                + nitriteMgPerL
                + nitrateMgPerL
                + combinedChlorineMgPerL * ChlorineReactions.NITROGEN_PER_COMBINED;
    }

    /** Source water described as a keeper reads it: pH and alkalinity in mg/L as CaCO3; saturated with oxygen. */
    public static SourceWater read(
            double temperatureC,
            double ph,
            double alkalinityMgPerL,
            double tanMgPerL,
            double nitrateMgPerL,
            double chlorideMgPerL,
            double freeChlorineMgPerL,
            double combinedChlorineMgPerL) {
        double alkalinity = alkalinityMgPerL / MG_CACO3_PER_MEQ;
        CarbonateSystem carbonate = CarbonateSystem.at(
                temperatureC, CarbonateSystem.ionicStrength(alkalinity, chlorideMgPerL, 0, nitrateMgPerL));
        return new SourceWater(
                temperatureC,
                tanMgPerL,
                0,
                nitrateMgPerL,
                alkalinity,
                carbonate.dicFromPh(alkalinity, tanMgPerL, ph),
                OxygenSaturation.mgPerL(temperatureC, 0, 0),
                chlorideMgPerL,
                freeChlorineMgPerL,
                combinedChlorineMgPerL);
    }

    /**
     * The same water after thiosulfate for {@code statedChlorineMgPerL}: free chlorine goes first, then combined, which
     * leaves its ammonia behind.
     */
    public SourceWater neutralised(double statedChlorineMgPerL) {
        double free = Math.max(0, freeChlorineMgPerL - statedChlorineMgPerL);
        double left = Math.max(0, statedChlorineMgPerL - freeChlorineMgPerL);
        double combined = Math.max(0, combinedChlorineMgPerL - left);
        double freed = (combinedChlorineMgPerL - combined) * ChlorineReactions.NITROGEN_PER_COMBINED;
        return new SourceWater(
                temperatureC,
                tanMgPerL + freed,
                nitriteMgPerL,
                nitrateMgPerL,
                alkalinityMeqPerL,
                dicMmolPerL,
                oxygenMgPerL,
                chlorideMgPerL,
                free,
                combined);
    }

    /** The same water at another temperature, as after tempering. */
    public SourceWater at(double otherTemperatureC) {
        return new SourceWater(
                otherTemperatureC,
                tanMgPerL,
                nitriteMgPerL,
                nitrateMgPerL,
                alkalinityMeqPerL,
                dicMmolPerL,
                oxygenMgPerL,
                chlorideMgPerL,
                freeChlorineMgPerL,
                combinedChlorineMgPerL);
    }

    static final double MG_CACO3_PER_MEQ = 50.04;
}
