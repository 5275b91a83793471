package startwater.tank;

import static startwater.tank.TankLayout.FED;
import static startwater.tank.TankLayout.FISH_N;
import static startwater.tank.TankLayout.GROWTH_LOST;
import static startwater.tank.TankLayout.GUT_1;
import static startwater.tank.TankLayout.ORGANIC_N;
import static startwater.tank.TankLayout.UNEATEN_G;
import static startwater.tank.TankLayout.WASTED;

import startwater.fish.Species;

/** What a meal does: eaten feed goes to gut, faeces and body; the rest lies in the water. */
final class Meals {
    /** g N per g protein. */
    static final double NITROGEN_PER_PROTEIN = 0.16;
    /** g of ammonia N that a g of eaten protein ends as, by excretion and from faeces (engineering handbooks). */
    static final double AMMONIA_PER_PROTEIN = 0.092;
    /** Of that, the share excreted; the rest mineralises from faeces. */
    static final double EXCRETED_PER_PROTEIN = 0.9 * AMMONIA_PER_PROTEIN;

    static final double FAECES_PER_PROTEIN = 0.1 * AMMONIA_PER_PROTEIN;

    /** Excretion factor at which all nitrogen that is eaten leaves again: nobody loses weight by eating. */
    private static final double MOST_EXCRETION = NITROGEN_PER_PROTEIN / AMMONIA_PER_PROTEIN;

    private Meals() {}

    /**
     * One meal.
     *
     * @param fraction of the table ration
     * @param share of the day's ration
     * @param weighedAtC the water temperature for which the ration was weighed, °C; NaN for today's
     */
    static void give(double[] y, TankParameters p, double fraction, double share, double weighedAtC) {
        Species species = p.species();
        double biomassG = TankReadings.biomassG(y, p.strata());
        if (species == null || !(biomassG > 0)) {
            return;
        }
        double massG = TankReadings.massG(y, p.strata());
        double temperatureC = y[TankLayout.TEMPERATURE];
        double bestG = biomassG * species.feed().fractionAtBest(massG) * share;
        double weighed = Double.isNaN(weighedAtC) ? temperatureC : weighedAtC;
        double offeredG = fraction * bestG * species.appetite().temperature(weighed);
        double eatenG = Math.min(offeredG, bestG * TankReadings.appetite(y, p));
        double fullG = bestG * species.appetite().temperature(temperatureC);
        if (fullG > 0) {
            y[GROWTH_LOST] += share * Math.max(0, 1 - eatenG / fullG);
            y[WASTED] += share * (offeredG - eatenG) / fullG;
        } else if (bestG > 0) {
            y[WASTED] += share * offeredG / bestG;
        }
        double proteinMg = 1000 * p.proteinFraction();
        double excretion = Math.min(p.excretionFactor(), MOST_EXCRETION);
        double gut = eatenG * proteinMg * EXCRETED_PER_PROTEIN * excretion;
        double faeces = eatenG * proteinMg * FAECES_PER_PROTEIN * excretion;
        double fed = offeredG * proteinMg * NITROGEN_PER_PROTEIN;
        double uneaten = (offeredG - eatenG) * proteinMg * NITROGEN_PER_PROTEIN;
        y[GUT_1] += gut;
        y[ORGANIC_N] += (faeces + uneaten) / p.volumeL();
        y[FISH_N] += fed - gut - faeces - uneaten;
        y[FED] += fed;
        y[UNEATEN_G] += offeredG - eatenG;
    }
}
