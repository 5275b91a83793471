package startwater.tank;

import startwater.water.Dose;

/** Something that happens at one moment and makes the state jump. */
public sealed interface TankEvent {
    /** Does it. */
    void apply(double[] y, TankParameters parameters);

    /**
     * A meal.
     *
     * @param fraction of the table ration
     * @param share of the day's ration
     * @param weighedAtC temperature the ration was weighed for, °C; NaN for the present one
     */
    record Meal(double fraction, double share, double weighedAtC) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            Meals.give(y, p, fraction, share, weighedAtC);
        }
    }

    /**
     * A water change: part of the tank is replaced at once.
     *
     * @param fraction 0..1
     * @param source as it is let in, neutralised or not
     */
    record Change(double fraction, SourceWater source) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            WaterJumps.change(y, p, fraction, source);
        }
    }

    /** A dose, g. */
    record Dosing(Dose compound, double grams) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            WaterJumps.dose(y, p, compound, grams);
        }
    }

    /** Thiosulfate into the tank for so many mg/L of residual. */
    record Neutralise(double chlorineMgPerL) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            ChlorineReactions.neutralise(y, chlorineMgPerL);
        }
    }

    /** Part of the filter bacteria is lost: a hard cleaning, drying, a drug. @param share 0..1 of both groups */
    record FilterLoss(double share) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            y[TankLayout.AOB] *= 1 - share;
            y[TankLayout.NOB] *= 1 - share;
        }
    }

    /** Uneaten feed and part of the solids are taken out. @param share of the organic nitrogen 0..1 */
    record RemoveSolids(double share) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            y[TankLayout.REMOVED] += share * y[TankLayout.ORGANIC_N] * p.volumeL();
            y[TankLayout.ORGANIC_N] *= 1 - share;
            y[TankLayout.UNEATEN_G] *= 1 - share;
        }
    }
}
