package startwater.score;

import java.util.Arrays;
import java.util.stream.IntStream;
import startwater.drill.Calendar;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.quantity.Stream;
import startwater.tank.FastStepper;

/**
 * Weighted waters made into as many of equal weight: resampled systematically, then moved by random-walk Metropolis steps
 * that run the whole history anew: iterated batch importance sampling (Chopin 2002), exact in the limit. Where the latest
 * evidence leaves only few waters, it is let in by steps, each small enough to leave a floor of effective waters, with
 * moves between: so a surprise spreads the belief anew instead of gathering it on one tank. Used once.
 */
final class Renewal {
    /** Metropolis steps after each resampling, each of some scores at once and this many spreads long. */
    private static final int MOVES = 20;

    private static final double MOVED_SHARE = 0.3;
    private static final double STEP = 0.9;
    /** Scores spread no less than this, so that what has gathered on one tank can part again. */
    private static final double LEAST_SPREAD = 0.15;
    /** Effective waters that the latest evidence must leave at each step, as a share of those that are kept. */
    private static final double FLOOR_SHARE = 0.25;

    private static final int MOST_STAGES = 5;
    private static final double LEAST_SHARE_STEP = 0.02;
    private static final int SHARE_HALVINGS = 20;
    private static final long RESAMPLE = 2;
    private static final long MOVE = 3;

    private final Scenario scenario;
    private final Calendar calendar;
    private final DrillLog log;
    private final long seed;
    private final int count;
    private Plausible[] waters;
    private double[] logWeights;

    /**
     * @param belief whose history is run anew
     * @param count waters to make
     */
    Renewal(Belief belief, int count, Plausible[] waters, double[] logWeights) {
        this.scenario = belief.scenario();
        this.calendar = belief.calendar();
        this.log = belief.log();
        this.seed = belief.seed();
        this.count = count;
        this.waters = waters;
        this.logWeights = logWeights;
    }

    /** So many waters of equal weight. */
    Plausible[] made() {
        double floor = Math.min(waters.length, count) * FLOOR_SHARE;
        double shown = 0;
        for (int stage = 0; stage < MOST_STAGES; stage++) {
            double share = stage == MOST_STAGES - 1 ? 1 : shareFor(shown, floor);
            stage(shown, share, stage);
            shown = share;
            if (share >= 1) {
                break;
            }
        }
        return waters;
    }

    /** Log weights with the latest evidence counted to a share. */
    private double[] tempered(double shown, double share) {
        double[] logs = logWeights.clone();
        for (int i = 0; i < logs.length; i++) {
            // The weights hold the latest evidence whole at first, and what was let in afterwards not at all.
            logs[i] += shown == 0 ? (share - 1) * waters[i].latest() : (share - shown) * waters[i].latest();
        }
        return logs;
    }

    /** The greatest share of the latest evidence that leaves the floor of effective waters. */
    private double shareFor(double shown, double floor) {
        if (WeightedSample.effective(WeightedSample.normalised(tempered(shown, 1))) >= floor) {
            return 1;
        }
        double low = shown;
        double high = 1;
        for (int i = 0; i < SHARE_HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (WeightedSample.effective(WeightedSample.normalised(tempered(shown, middle))) >= floor) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return Math.max(low, shown + LEAST_SHARE_STEP);
    }

    /** Resamples and moves with the latest evidence let in to a share. */
    private void stage(double shown, double share, int stage) {
        double[] weights = WeightedSample.normalised(tempered(shown, share));
        double[] spread = spread(weights);
        Plausible[] chosen = new Plausible[count];
        double u = Stream.of(seed, RESAMPLE, log.size(), stage).uniform();
        int[] from = WeightedSample.systematic(weights, count, u);
        for (int i = 0; i < count; i++) {
            chosen[i] = waters[from[i]].copy();
        }
        int first = stage * MOVES;
        IntStream.range(0, count).parallel().forEach(i -> chosen[i] = moved(chosen[i], spread, i, first, share));
        if (distinct(chosen) < count * FLOOR_SHARE) {
            IntStream.range(0, count)
                    .parallel()
                    .forEach(i -> chosen[i] = moved(chosen[i], spread, i, first + MOVES * MOST_STAGES, share));
        }
        waters = chosen;
        logWeights = new double[count];
    }

    private double[] spread(double[] weights) {
        int n = waters[0].scores().length;
        double[] spread = new double[n];
        for (int d = 0; d < n; d++) {
            double mean = 0;
            double square = 0;
            for (int i = 0; i < waters.length; i++) {
                double score = waters[i].scores()[d];
                mean += weights[i] * score;
                square += weights[i] * score * score;
            }
            spread[d] = Math.max(LEAST_SPREAD, StrictMath.sqrt(Math.max(0, square - mean * mean)));
        }
        return spread;
    }

    private Plausible moved(Plausible start, double[] spread, int number, int first, double share) {
        Plausible at = start;
        FastStepper stepper = new FastStepper();
        for (int move = first; move < first + MOVES; move++) {
            Stream stream = Stream.of(seed, MOVE, log.size(), number, move);
            double[] scores = at.scores().clone();
            for (int d = 0; d < scores.length; d++) {
                double step = STEP * spread[d] * stream.normal();
                scores[d] += stream.uniform() < MOVED_SHARE ? step : 0;
            }
            Plausible proposed = rerun(scores, stepper);
            double gain = proposed.tempered(share) + proposed.logPrior() - at.tempered(share) - at.logPrior();
            if (StrictMath.log(stream.uniform()) < gain) {
                at = proposed;
            }
        }
        return at;
    }

    /** The whole history on a tank with other scores. */
    private Plausible rerun(double[] scores, FastStepper stepper) {
        Plausible p = Plausible.of(scenario, calendar, scores, Belief.STRATA, stepper);
        for (int v = 0; v < log.size(); v++) {
            VisitRecord visit = log.visits().get(v);
            p.observe(visit, Counted.before(scenario, log, v), stepper, null);
            if (v < log.size() - 1) {
                p.follow(visit);
            }
        }
        return p;
    }

    /** How many of these waters differ. */
    static long distinct(Plausible[] waters) {
        return Arrays.stream(waters)
                .map(w -> Arrays.hashCode(w.scores()))
                .distinct()
                .count();
    }
}
