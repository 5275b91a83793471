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

    /**
     * The media are cleaned.
     *
     * @param loss share of both groups lost, 0..1
     * @param solids share of the held solids that goes out, 0..1
     */
    record CleanMedia(double loss, double solids) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            FilterBed.clean(y, loss, solids);
        }
    }

    /** A bed without flow is drained, before it starts again. */
    record DrainFilter() implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            FilterBed.drain(y);
        }
    }

    /** Water flows through a bed again: what it has let go comes with the first of it. */
    record FlushFilter() implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            FilterBed.flush(y, p);
        }
    }

    /** Media lie dry; both groups die off as in a bed that fouls (tuned, no source). @param hours how long */
    record Dry(double hours) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            double left = StrictMath.exp(-FilterBed.FOULING_PER_DAY * hours / 24);
            y[TankLayout.AOB] *= left;
            y[TankLayout.NOB] *= left;
        }
    }

    /** A drug that harms the filter goes into the water. @param share of both groups that it kills if left alone, 0..1 */
    record Medicate(double share) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            y[TankLayout.MEDICATION] -= WaterJumps.DRUG_DECAY_PER_DAY * StrictMath.log1p(-share);
        }
    }

    /**
     * Ripe media are hung into the filter.
     *
     * @param aobMgPerDay activity of ammonia oxidisers on them at 20 °C, mg N/d
     * @param nobMgPerDay of nitrite oxidisers
     */
    record AddMedia(double aobMgPerDay, double nobMgPerDay) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            y[TankLayout.AOB] += aobMgPerDay;
            y[TankLayout.NOB] += nobMgPerDay;
        }
    }

    /** Fish from elsewhere are put in, unharmed and used to the water. @param massG mean body mass, g */
    record Stock(double count, double massG) implements TankEvent {
        @Override
        public void apply(double[] y, TankParameters p) {
            TankStart.stock(y, p, count, massG);
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
