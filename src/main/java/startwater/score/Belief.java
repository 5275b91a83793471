package startwater.score;

import java.util.ArrayList;
import java.util.List;
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
 * the whole history anew, see {@link Renewal}. Every draw comes from a
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

    private static final BeliefMemory MEMORY = new BeliefMemory();
    /** A written reading less probable than this in all that is plausible contradicts the tank. */
    private static final double ODD_CHANCE = 0.025;

    private static final long PRIOR = 1;

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
        return MEMORY.belief(scenario, new DrillLog(visits), waters, Belief::made);
    }

    /** Forgets kept beliefs, so that a test can see them made again. */
    static void forget() {
        Scored.forget();
        MEMORY.clear();
    }

    private static long seed(Scenario s) {
        long hash = 0xcbf29ce484222325L;
        for (int i = 0; i < s.id().length(); i++) {
            hash = (hash ^ s.id().charAt(i)) * 0x100000001b3L;
        }
        return hash;
    }

    /** The belief of a log whose last visit is undecided: that of the log up to the visit before, carried on. */
    private static Belief made(Scenario scenario, DrillLog log, int waters) {
        return log.size() == 1
                ? fresh(scenario, log, waters)
                : of(scenario, log.upTo(log.size() - 2), waters)
                        .next(log.visits().get(log.size() - 2), log);
    }

    private static Belief fresh(Scenario s, DrillLog log, int count) {
        Calendar calendar = Calendar.of(s);
        Plausible[] prior = MEMORY.drawn(s, drill -> drawn(drill, calendar));
        Plausible[] drawn = new Plausible[DRAWN];
        IntStream.range(0, DRAWN).parallel().forEach(i -> drawn[i] = prior[i].copy());
        return weighed(s, calendar, log, drawn, new double[DRAWN], 0, 0).renewed(count);
    }

    /** The tanks that the scenario allows, at their first visit: the same whatever is read there. */
    private static Plausible[] drawn(Scenario s, Calendar calendar) {
        Plausible[] made = new Plausible[DRAWN];
        IntStream.range(0, DRAWN)
                .parallel()
                .forEach(i -> made[i] = Plausible.of(
                        s, calendar, TankDraw.scores(Stream.of(seed(s), PRIOR, i)), STRATA, new FastStepper()));
        return made;
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

    private Belief renewed(int count) {
        Plausible[] renewed = new Renewal(this, count, waters, logWeights).made();
        return new Belief(scenario, calendar, log, renewed, new double[count], odd, readings);
    }

    /** How many different waters there are. */
    long distinct() {
        return Renewal.distinct(waters);
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
