package startwater.score;

import java.util.ArrayList;
import java.util.List;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.tank.TankLayout;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/**
 * What a learner could have known, visit by visit: the range of every quantity over the tanks that fit the log up to
 * there. It follows from the log alone; the truth is laid beside it only after the reveal, by {@link #truth}.
 *
 * @param moments one for every visit of the log, in order
 */
public record KnownOverTime(List<Moment> moments) {
    private static final double LOW = 0.05;
    private static final double HIGH = 0.95;
    private static final double SAME_MINUTE = 0.5 / 1440;

    public KnownOverTime {
        moments = List.copyOf(moments);
    }

    /** What is known about. */
    public enum Quantity {
        /** mg N/L. */
        TOTAL_AMMONIA,
        /** NH3-N, mg/L. */
        TOXIC_AMMONIA,
        /** mg N/L. */
        NITRITE,
        /** Nitrite as it counts against chloride, mg N/L. */
        EFFECTIVE_NITRITE,
        /** mg/L as CaCO3. */
        ALKALINITY,
        PH,
        /** mg/L. */
        OXYGEN,
        /** mg/L. */
        CHLORIDE,
        /** Ammonia oxidisers, share of what the media can carry, 0..1. */
        AOB_SHARE,
        /** Nitrite oxidisers, share of what the media can carry, 0..1. */
        NOB_SHARE;

        /** What a value is multiplied by to be shown: shares are shown in per cent. */
        public double shownTimes() {
            return this == AOB_SHARE || this == NOB_SHARE ? 100 : 1;
        }

        double of(double[] y, TankParameters p) {
            return switch (this) {
                case TOTAL_AMMONIA -> y[TankLayout.TAN];
                case TOXIC_AMMONIA -> TankReadings.toxicAmmoniaMgPerL(y);
                case NITRITE -> y[TankLayout.NITRITE];
                case EFFECTIVE_NITRITE -> TankReadings.effectiveNitriteMgPerL(y, p.chlorideHalfMgPerL());
                case ALKALINITY -> TankReadings.alkalinityMgPerL(y);
                case PH -> TankReadings.ph(y);
                case OXYGEN -> y[TankLayout.OXYGEN];
                case CHLORIDE -> y[TankLayout.CHLORIDE];
                case AOB_SHARE -> y[TankLayout.AOB] / p.aobCapacityMgPerDay();
                case NOB_SHARE -> y[TankLayout.NOB] / p.nobCapacityMgPerDay();
            };
        }

        /** The truth, for after the reveal. */
        public double of(TruthPoint truth) {
            return switch (this) {
                case TOTAL_AMMONIA -> truth.ammoniaMgPerL();
                case TOXIC_AMMONIA -> truth.toxicAmmoniaMgPerL();
                case NITRITE -> truth.nitriteMgPerL();
                case EFFECTIVE_NITRITE -> truth.effectiveNitriteMgPerL();
                case ALKALINITY -> truth.alkalinityMgPerL();
                case PH -> truth.ph();
                case OXYGEN -> truth.oxygenMgPerL();
                case CHLORIDE -> truth.chlorideMgPerL();
                case AOB_SHARE -> truth.aobShare();
                case NOB_SHARE -> truth.nobShare();
            };
        }
    }

    /** Five, fifty and ninety-five in a hundred of the belief, in the unit of the quantity. */
    public record Span(double low, double middle, double high) {
        /** Whether a value lies in it. */
        public boolean holds(double value) {
            return low <= value && value <= high;
        }
    }

    /**
     * One visit.
     *
     * @param day days since the system was filled
     * @param asked whether the learner was asked to decide
     * @param spans by {@link Quantity}, in its order
     */
    public record Moment(double day, boolean asked, List<Span> spans) {
        public Moment {
            spans = List.copyOf(spans);
        }

        public Span span(Quantity quantity) {
            return spans.get(quantity.ordinal());
        }
    }

    /** What the log let one know. Takes as long as all its beliefs: not for the thread that paints. @param log not empty */
    public static KnownOverTime of(Scenario scenario, DrillLog log) {
        List<Moment> moments = new ArrayList<>();
        for (int i = 0; i < log.size(); i++) {
            VisitRecord visit = log.visits().get(i);
            Belief belief = Belief.of(scenario, log.upTo(i));
            double[] weights = belief.waterWeights();
            List<Span> spans = new ArrayList<>();
            for (Quantity q : Quantity.values()) {
                spans.add(span(q, belief, weights));
            }
            moments.add(new Moment(visit.day(), visit.asked(), spans));
        }
        return new KnownOverTime(moments);
    }

    private static Span span(Quantity q, Belief belief, double[] weights) {
        double[] values = new double[belief.waters()];
        for (int w = 0; w < values.length; w++) {
            values[w] = q.of(
                    belief.water(w).sim().state(), belief.water(w).sim().draw().parameters());
        }
        return new Span(
                WeightedSample.quantile(values, weights, LOW),
                WeightedSample.quantile(values, weights, 0.5),
                WeightedSample.quantile(values, weights, HIGH));
    }

    /** The truth of a finished run at each of the moments, as it stood when the visit began. */
    public List<TruthPoint> truth(DrillRun run) {
        List<TruthPoint> all = run.truth();
        List<TruthPoint> at = new ArrayList<>();
        int next = 0;
        for (Moment moment : moments) {
            // Two points may share a moment, before and after the decision: the first is what could be seen.
            while (next + 1 < all.size() && all.get(next).day() < moment.day() - SAME_MINUTE) {
                next++;
            }
            at.add(all.get(next));
        }
        return List.copyOf(at);
    }
}
