package startwater.tank;

import static startwater.tank.TankLayout.*;

import startwater.fish.Stressor;
import startwater.water.Dose;

/** Changes of water and doses: instantaneous mixing, then a new pH; fish feel the jump. */
final class WaterJumps {
    /** pH units and degrees a fish bears at once without loss, and the loss beyond, share of the stock per unit (tuned). */
    private static final double PH_BORNE = 0.3;

    private static final double LOSS_PER_PH = 0.004;
    private static final double DEGREES_BORNE = 1.5;
    private static final double LOSS_PER_DEGREE = 0.0006;
    /** Beyond this jump in °C fish also die: hazard per further degree, once (tuned, no source). */
    private static final double DEGREES_DEADLY = 3;

    private static final double HAZARD_PER_DEGREE = 0.01;
    /** How fast a drug in the water loses its force, 1/d: half in a day and a half (tuned, no source). */
    static final double DRUG_DECAY_PER_DAY = 0.5;

    private WaterJumps() {}

    static void change(double[] y, TankParameters p, double fraction, SourceWater source) {
        if (fraction <= 0) {
            return;
        }
        double ph = TankReadings.ph(y);
        double temperature = y[TEMPERATURE];
        double volume = p.volumeL() * fraction;
        y[EXCHANGED_OUT] += volume
                * (y[TAN]
                        + y[NITRITE]
                        + y[NITRATE]
                        + y[ORGANIC_N]
                        + y[COMBINED_CHLORINE] * ChlorineReactions.NITROGEN_PER_COMBINED);
        y[BROUGHT_IN] += volume * source.nitrogenMgPerL();
        mix(y, TAN, fraction, source.tanMgPerL());
        mix(y, NITRITE, fraction, source.nitriteMgPerL());
        mix(y, NITRATE, fraction, source.nitrateMgPerL());
        mix(y, ALKALINITY, fraction, source.alkalinityMeqPerL());
        mix(y, DIC, fraction, source.dicMmolPerL());
        mix(y, OXYGEN, fraction, source.oxygenMgPerL());
        mix(y, CHLORIDE, fraction, source.chlorideMgPerL());
        mix(y, FREE_CHLORINE, fraction, source.freeChlorineMgPerL());
        mix(y, COMBINED_CHLORINE, fraction, source.combinedChlorineMgPerL());
        mix(y, TEMPERATURE, fraction, source.temperatureC());
        mix(y, ORGANIC_N, fraction, 0);
        mix(y, MEDICATION, fraction, 0);
        y[UNEATEN_G] *= 1 - fraction;
        y[VOLUMES] += fraction;
        ChlorineReactions.combine(y);
        double residual = source.freeChlorineMgPerL() + source.combinedChlorineMgPerL();
        double killed = Math.min(
                ChlorineReactions.FILTER_KILL_MOST, ChlorineReactions.FILTER_KILL_PER_MG_PER_L * residual * fraction);
        y[AOB] *= 1 - killed;
        y[NOB] *= 1 - killed;
        felt(y, p, ph, temperature);
    }

    static void dose(double[] y, TankParameters p, Dose compound, double grams) {
        if (grams <= 0) {
            return;
        }
        double ph = TankReadings.ph(y);
        double perL = grams / p.volumeL();
        y[ALKALINITY] += compound.alkalinityMeqPerG() * perL;
        y[DIC] += compound.dicMmolPerG() * perL;
        y[TAN] += compound.tanMgPerG() * perL;
        y[DOSED] += compound.tanMgPerG() * grams;
        y[CHLORIDE] += 1000 * compound.chlorideGPerG() * perL;
        ChlorineReactions.neutralise(y, compound.chlorineRemovedMgPerG() * perL);
        felt(y, p, ph, y[TEMPERATURE]);
    }

    private static void mix(double[] y, int at, double fraction, double source) {
        y[at] = y[at] * (1 - fraction) + source * fraction;
    }

    private static void felt(double[] y, TankParameters p, double phBefore, double temperatureBefore) {
        TankReadings.settlePh(y);
        felt(y, p, phBefore, temperatureBefore, 1);
    }

    /** A share of the fish come from water of this pH and temperature, °C, into the tank's. */
    static void felt(double[] y, TankParameters p, double phBefore, double temperatureBefore, double share) {
        if (!(y[STOCKED] > 0)) {
            return;
        }
        double jumpPh = Math.abs(TankReadings.ph(y) - phBefore);
        double jumpC = Math.abs(y[TEMPERATURE] - temperatureBefore);
        double survival = TankReadings.survival(y, p.strata());
        y[SHOCK] += share
                * survival
                * (LOSS_PER_PH * Math.max(0, jumpPh - PH_BORNE) + LOSS_PER_DEGREE * Math.max(0, jumpC - DEGREES_BORNE));
        double hazard = share * HAZARD_PER_DEGREE * Math.max(0, jumpC - DEGREES_DEADLY);
        if (hazard > 0) {
            shake(y, p, hazard);
        }
    }

    /** A hazard at one moment: the dead leave with their nitrogen. */
    private static void shake(double[] y, TankParameters p, double hazard) {
        double left = StrictMath.exp(-hazard);
        for (int s = 0; s < p.strata(); s++) {
            y[hazard(s, Stressor.TEMPERATURE)] += hazard;
            y[survivors(s)] *= left;
        }
        y[REMOVED] += (1 - left) * (y[GUT_1] + y[GUT_2] + y[FISH_N]);
        y[GUT_1] *= left;
        y[GUT_2] *= left;
        y[FISH_N] *= left;
    }
}
