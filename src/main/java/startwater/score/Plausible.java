package startwater.score;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import startwater.drill.Actor;
import startwater.drill.Calendar;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.TankDraw;
import startwater.drill.TankSim;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Normal;
import startwater.strip.FishMood;
import startwater.strip.FishSigns;
import startwater.tank.Sensitivity;
import startwater.tank.Stepper;
import startwater.tank.TankLayout;
import startwater.tank.TankReadings;

/** One plausible water with its strata of fish sensitivity, and how well it fits the log so far. Mutable. */
final class Plausible {
    /** A meter may be off by this and the tank still be the one: mg/L and pH, on top of its own noise. */
    private static final double OXYGEN_SD = 0.3;

    private static final double PH_SD = 0.08;
    /** However badly a meter fits, a tank keeps this much: the keeper may have misread it. */
    private static final double LEAST_METER_LOG = -6;
    /** Deaths that come by themselves, hazard per visit: keeps a stray death from ruling out every tank. */
    private static final double STRAY_HAZARD = 1e-4;

    private static final double[] MOOD_BY_DISTANCE = {0.80, 0.14, 0.04, 0.015, 0.005};
    private static final double GILLS_TOLD_RIGHT = 0.95;

    private final double[] scores;
    private final TankSim sim;
    private final double[] strata;
    private final double[] hazardSeen;
    private final double[] hazardSeenBeside;
    private double logLikelihood;
    private double latest;

    private Plausible(double[] scores, TankSim sim, double[] strata, double[] hazardSeen, double[] hazardSeenBeside) {
        this.scores = scores;
        this.sim = sim;
        this.strata = strata;
        this.hazardSeen = hazardSeen;
        this.hazardSeenBeside = hazardSeenBeside;
    }

    /** A tank with these scores, brought to the first visit. */
    static Plausible of(Scenario s, Calendar calendar, double[] scores, int strata, Stepper stepper) {
        TankDraw draw = TankDraw.of(s, scores, sensitivity(s, strata));
        double[] even = new double[strata];
        Arrays.fill(even, 1.0 / strata);
        return new Plausible(
                scores, TankSim.atFirstVisit(s, calendar, draw, stepper), even, new double[strata], new double[strata]);
    }

    /** Strata stand at the middles of equal shares of the prior. */
    private static Sensitivity sensitivity(Scenario s, int strata) {
        double[] factors = new double[strata];
        for (int k = 0; k < strata; k++) {
            factors[k] = TankDraw.prior(s, Unknown.SENSITIVITY).at(Normal.quantile((k + 0.5) / strata));
        }
        return Sensitivity.of(factors);
    }

    Plausible copy() {
        Plausible copy =
                new Plausible(scores, sim.copy(), strata.clone(), hazardSeen.clone(), hazardSeenBeside.clone());
        copy.logLikelihood = logLikelihood;
        copy.latest = latest;
        return copy;
    }

    /**
     * Runs on to a visit and weighs what was seen and written there.
     *
     * @param before fish counted when the visit before was over
     * @param each gets the log likelihood of every written reading, in order; may be null
     * @return the log likelihood of all evidence of this visit
     */
    double observe(VisitRecord v, Counted before, Stepper stepper, double @Nullable [] each) {
        sim.goTo(v.minute(), stepper);
        double[] y = sim.state();
        double log = deaths(sim, hazardSeen, v.seen().found(), before.here());
        TankSim nursery = sim.nursery();
        if (nursery != null) {
            int lost = Math.max(0, before.beside() - v.seen().toCome());
            log += deaths(nursery, hazardSeenBeside, lost, before.beside());
            sim.countedBeside(v.seen().toCome());
        }
        log += eyes(v.seen(), y);
        for (int i = 0; i < v.written().size(); i++) {
            Written w = v.written().get(i);
            double one = StrictMath.log(Observation.likelihood(w, y, sim.draw()));
            log += one;
            if (each != null) {
                each[i] = one;
            }
        }
        sim.counted(v.seen().alive());
        logLikelihood += log;
        latest = log;
        return log;
    }

    /** Does what was decided at the visit, or lets the orders stand. */
    void follow(VisitRecord v) {
        if (v.decision() != null && v.actor() != Actor.ORDERS) {
            sim.act(v.decision());
            if (v.decision().stock() > 0) {
                // The newcomers' luck is mixed in: deaths count from here.
                for (int k = 0; k < strata.length; k++) {
                    hazardSeen[k] = -StrictMath.log(Math.max(1e-300, sim.survival(k)));
                }
            }
        } else {
            sim.visited();
        }
    }

    /** How well the deaths in one water fit. @param seenHazard hazards up to the count before; brought up to this one */
    private double deaths(TankSim where, double[] seenHazard, int found, int aliveBefore) {
        if (aliveBefore <= 0) {
            return 0;
        }
        double sum = 0;
        for (int k = 0; k < strata.length; k++) {
            double hazard = -StrictMath.log(Math.max(1e-300, where.survival(k)));
            double met = Math.max(0, hazard - seenHazard[k]) + STRAY_HAZARD;
            seenHazard[k] = hazard;
            strata[k] *= StrictMath.exp(logBinomial(found, aliveBefore, met)) + 1e-12;
            sum += strata[k];
        }
        for (int k = 0; k < strata.length; k++) {
            strata[k] /= sum;
        }
        return StrictMath.log(sum);
    }

    /** Log of the chance of so many deaths, less the binomial coefficient, which is the same in every tank. */
    private static double logBinomial(int found, int alive, double hazard) {
        double die = -StrictMath.expm1(-hazard);
        double rest = -(alive - found) * hazard;
        double share = (double) found / alive;
        // Over the likeliest outcome, so that strata compare without underflow.
        double best = found == 0
                ? 0
                : found * StrictMath.log(share) + (alive > found ? (alive - found) * StrictMath.log1p(-share) : 0);
        return (found == 0 ? 0 : found * StrictMath.log(die)) + rest - best;
    }

    private double eyes(Seen seen, double[] y) {
        double log = 0;
        if (seen.oxygenMgPerL() != null) {
            log += meter((seen.oxygenMgPerL() - y[TankLayout.OXYGEN]) / OXYGEN_SD);
        }
        if (seen.ph() != null) {
            log += meter((seen.ph() - TankReadings.ph(y)) / PH_SD);
        }
        FishMood mood = FishSigns.mood(y, sim.draw().parameters());
        if (seen.mood() != null && mood != null) {
            log += StrictMath.log(
                    MOOD_BY_DISTANCE[Math.abs(mood.ordinal() - seen.mood().ordinal())]);
            boolean brown = FishSigns.brownGills(y, sim.draw().parameters());
            log += StrictMath.log(brown == seen.brownGills() ? GILLS_TOLD_RIGHT : 1 - GILLS_TOLD_RIGHT);
        }
        return log;
    }

    private static double meter(double deviation) {
        return Math.max(LEAST_METER_LOG, -deviation * deviation / 2);
    }

    double logLikelihood() {
        return logLikelihood;
    }

    /** Log likelihood of the evidence of the latest visit alone. */
    double latest() {
        return latest;
    }

    /** Log likelihood with the latest visit's evidence counted in part only. @param share 0..1 */
    double tempered(double share) {
        return logLikelihood - (1 - share) * latest;
    }

    /** Log of the prior density of the scores, less a constant. */
    double logPrior() {
        double sum = 0;
        for (double score : scores) {
            sum -= score * score / 2;
        }
        return sum;
    }

    double[] scores() {
        return scores;
    }

    TankSim sim() {
        return sim;
    }

    /** The belief in a stratum, given this water. */
    double stratum(int k) {
        return strata[k];
    }

    int strata() {
        return strata.length;
    }
}
