package startwater.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import startwater.drill.Calendar;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.TankDraw;
import startwater.drill.VisitRecord;
import startwater.quantity.Stream;
import startwater.tank.FastStepper;

/**
 * The tanks that fit a log, each with its weight: what the learner could know at the last visit of the log, before
 * deciding there.
 *
 * <p>Plausible tanks are drawn from the scenario's priors and weighed by every entry. The tank has no randomness of its
 * own, so where the weights have gathered on few, those are resampled and moved by random-walk Metropolis steps that run
 * the whole history anew: iterated batch importance sampling (Chopin 2002), exact in the limit. Every draw comes from a
 * stream named by scenario, visit and tank, so the belief depends on the log alone, whatever the threads.
 */
final class Belief {
    /** Waters and strata of sensitivity that a decision is judged on: 256 tanks. */
    static final int WATERS = 64;
    /** In an exam: 512 tanks. */
    static final int EXAM_WATERS = 128;

    static final int STRATA = 4;
    /** Tanks drawn at the first visit, of which those that fit are kept. */
    private static final int DRAWN = 1024;
    /** Metropolis steps after each resampling, each of some scores at once and this many spreads long. */
    private static final int MOVES = 20;

    private static final double MOVED_SHARE = 0.3;
    private static final double STEP = 0.9;
    /** Effective waters that the latest evidence must leave at each step, as a share of those that are kept. */
    private static final double FLOOR_SHARE = 0.25;

    private static final int MOST_STAGES = 5;
    private static final double LEAST_SHARE_STEP = 0.02;
    private static final int SHARE_HALVINGS = 20;
    /** A written reading less probable than this in all that is plausible contradicts the tank. */
    private static final double ODD_CHANCE = 0.025;

    private static final long PRIOR = 1;
    private static final long RESAMPLE = 2;
    private static final long MOVE = 3;

    private final Scenario scenario;
    private final Calendar calendar;
    private final DrillLog log;
    private final Plausible[] waters;
    private final double[] logWeights;
    private final int odd;
    private final int readings;

    private Belief(
            Scenario scenario,
            Calendar calendar,
            DrillLog log,
            Plausible[] waters,
            double[] logWeights,
            int odd,
            int readings) {
        this.scenario = scenario;
        this.calendar = calendar;
        this.log = log;
        this.waters = waters;
        this.logWeights = logWeights;
        this.odd = odd;
        this.readings = readings;
    }

    /** The belief after all that is seen and written in the log; the decision of its last visit does not count. */
    static Belief of(Scenario scenario, DrillLog log) {
        return of(scenario, log, WATERS);
    }

    static Belief of(Scenario scenario, DrillLog log, int waters) {
        List<VisitRecord> visits = new ArrayList<>(log.visits());
        int last = visits.size() - 1;
        visits.set(last, visits.get(last).undecided());
        return Memory.SHARED.belief(scenario, new DrillLog(visits), waters);
    }

    /** Beliefs are kept by log, since each visit builds on the one before. What is kept never changes a result. */
    private static final class Memory {
        static final Memory SHARED = new Memory();
        private static final int KEPT = 192;
        private static final int SCENARIOS_KEPT = 3;

        private record Key(Scenario scenario, DrillLog log, int waters) {}

        private final Map<Scenario, Plausible[]> prior = kept(SCENARIOS_KEPT);
        private final Map<Key, Belief> kept = kept(KEPT);

        private static <K, V> Map<K, V> kept(int most) {
            return Collections.synchronizedMap(new LinkedHashMap<>(32, 0.75f, true) {
                @Override
                protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                    return size() > most;
                }
            });
        }

        /** The tanks that the scenario allows, at their first visit: the same whatever is read there. */
        Plausible[] drawn(Scenario s, Calendar calendar) {
            Plausible[] known = prior.get(s);
            if (known == null) {
                Plausible[] made = new Plausible[DRAWN];
                IntStream.range(0, DRAWN)
                        .parallel()
                        .forEach(i -> made[i] = Plausible.of(
                                s, calendar, TankDraw.scores(Stream.of(seed(s), PRIOR, i)), STRATA, new FastStepper()));
                prior.put(s, made);
                known = made;
            }
            return known.clone();
        }

        Belief belief(Scenario scenario, DrillLog log, int waters) {
            Key key = new Key(scenario, log, waters);
            Belief known = kept.get(key);
            if (known != null) {
                return known;
            }
            Belief made = log.size() == 1
                    ? fresh(scenario, log, waters)
                    : Belief.of(scenario, log.upTo(log.size() - 2), waters)
                            .next(log.visits().get(log.size() - 2), log);
            kept.put(key, made);
            return made;
        }
    }

    /** Forgets kept beliefs, so that a test can see them made again. */
    static void forget() {
        Scored.forget();
        Memory.SHARED.kept.clear();
        Memory.SHARED.prior.clear();
    }

    private static long seed(Scenario s) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < s.id().length(); i++) {
            hash = (hash ^ s.id().charAt(i)) * 0x100000001b3L;
        }
        return hash;
    }

    private static Belief fresh(Scenario s, DrillLog log, int count) {
        Calendar calendar = Calendar.of(s);
        Plausible[] drawn = Memory.SHARED.drawn(s, calendar);
        IntStream.range(0, DRAWN).parallel().forEach(i -> drawn[i] = drawn[i].copy());
        return weighed(s, calendar, log, drawn, new double[DRAWN], 0, 0).renewed(count);
    }

    /** The belief one visit on: the decision made, the time run, the new evidence weighed. */
    private Belief next(VisitRecord decided, DrillLog longer) {
        Plausible[] moved = new Plausible[waters.length];
        IntStream.range(0, waters.length).parallel().forEach(i -> {
            moved[i] = waters[i].copy();
            moved[i].follow(decided);
        });
        return weighed(scenario, calendar, longer, moved, logWeights.clone(), odd, readings);
    }

    private static Belief weighed(
            Scenario s, Calendar calendar, DrillLog log, Plausible[] waters, double[] logs, int odd, int readings) {
        VisitRecord now = log.last();
        Counted before = Counted.before(s, log, log.size() - 1);
        double[][] each = new double[waters.length][now.written().size()];
        double[] weightsBefore = WeightedSample.normalised(logs);
        IntStream.range(0, waters.length)
                .parallel()
                .forEach(i -> logs[i] += waters[i].observe(now, before, new FastStepper(), each[i]));
        int oddNow = odd;
        for (int r = 0; r < now.written().size(); r++) {
            double predictive = 0;
            for (int i = 0; i < waters.length; i++) {
                predictive += weightsBefore[i] * StrictMath.exp(each[i][r]);
            }
            oddNow += predictive < ODD_CHANCE ? 1 : 0;
        }
        int all = readings + now.written().size();
        Belief belief = new Belief(s, calendar, log, waters, logs, oddNow, all);
        return log.size() > 1 && belief.effective() < waters.length / 2.0 ? belief.renewed(waters.length) : belief;
    }

    /** Number of waters that the weights amount to. */
    double effective() {
        return WeightedSample.effective(WeightedSample.normalised(logWeights));
    }

    /**
     * Resampled systematically, then moved. Where the latest evidence leaves only few waters, it is let in by steps, each
     * small enough to leave a floor of effective waters, with moves between: so a surprise spreads the belief anew instead
     * of gathering it on one tank.
     */
    private Belief renewed(int count) {
        double floor = Math.min(waters.length, count) * FLOOR_SHARE;
        Belief at = this;
        double shown = 0;
        for (int stage = 0; stage < MOST_STAGES; stage++) {
            double share = stage == MOST_STAGES - 1 ? 1 : at.shareFor(shown, floor);
            at = at.stage(count, shown, share, stage);
            shown = share;
            if (share >= 1) {
                break;
            }
        }
        return at;
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

    private Belief stage(int count, double shown, double share, int stage) {
        double[] weights = WeightedSample.normalised(tempered(shown, share));
        double[] spread = spread(weights);
        Plausible[] chosen = new Plausible[count];
        double u = Stream.of(seed(scenario), RESAMPLE, log.size(), stage).uniform();
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
        return new Belief(scenario, calendar, log, chosen, new double[count], odd, readings);
    }

    private static long distinct(Plausible[] waters) {
        return Arrays.stream(waters)
                .map(w -> Arrays.hashCode(w.scores()))
                .distinct()
                .count();
    }

    /** How many different waters there are. */
    long distinct() {
        return distinct(waters);
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
            spread[d] = Math.max(0.15, StrictMath.sqrt(Math.max(0, square - mean * mean)));
        }
        return spread;
    }

    private Plausible moved(Plausible start, double[] spread, int number, int first, double share) {
        Plausible at = start;
        FastStepper stepper = new FastStepper();
        for (int move = first; move < first + MOVES; move++) {
            Stream stream = Stream.of(seed(scenario), MOVE, log.size(), number, move);
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
        Plausible p = Plausible.of(scenario, calendar, scores, STRATA, stepper);
        for (int v = 0; v < log.size(); v++) {
            VisitRecord visit = log.visits().get(v);
            p.observe(visit, Counted.before(scenario, log, v), stepper, null);
            if (v < log.size() - 1) {
                p.follow(visit);
            }
        }
        return p;
    }

    int waters() {
        return waters.length;
    }

    Plausible water(int i) {
        return waters[i];
    }

    Calendar calendar() {
        return calendar;
    }

    Scenario scenario() {
        return scenario;
    }

    DrillLog log() {
        return log;
    }

    /** Written readings so far, and how many of them nothing plausible explains. */
    int readings() {
        return readings;
    }

    int oddReadings() {
        return odd;
    }

    /** Whether the log earns credit: at most one reading, or one in six, is one that no plausible tank explains. */
    boolean credible() {
        return odd <= Math.max(1, readings / 6);
    }

    /** Weights of the waters, adding up to 1. */
    double[] waterWeights() {
        return WeightedSample.normalised(logWeights);
    }

    /** Weights of all tanks, water by water and stratum by stratum within, adding up to 1. */
    double[] tankWeights() {
        return tankWeights(waterWeights());
    }

    /** Weights of all tanks from weights of the waters. */
    double[] tankWeights(double[] byWater) {
        double[] all = new double[waters.length * STRATA];
        for (int i = 0; i < waters.length; i++) {
            for (int k = 0; k < STRATA; k++) {
                all[i * STRATA + k] = byWater[i] * waters[i].stratum(k);
            }
        }
        return all;
    }

    /** The same belief where somebody comes at other times from here on; what is past stays as it was. */
    Belief in(Scenario other) {
        return new Belief(other, Calendar.of(other), log, waters, logWeights, odd, readings);
    }

    /** Tenth, median and ninetieth of a quantity over the waters as they are now. */
    Verdict.Band band(ToDoubleFunction<Plausible> quantity) {
        double[] values = new double[waters.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = quantity.applyAsDouble(waters[i]);
        }
        return band(values, waterWeights());
    }

    static Verdict.Band band(double[] values, double[] weights) {
        return new Verdict.Band(
                WeightedSample.quantile(values, weights, 0.1),
                WeightedSample.quantile(values, weights, 0.5),
                WeightedSample.quantile(values, weights, 0.9));
    }

    /** The seed of everything drawn for this scenario's judging. */
    long seed() {
        return seed(scenario);
    }
}
