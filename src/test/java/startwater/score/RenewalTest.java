package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import startwater.drill.Actor;
import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.Seen;
import startwater.drill.TankDraw;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.quantity.Stream;
import startwater.strip.Pad;
import startwater.tank.FastStepper;
import startwater.tank.TankLayout;

/** Resampling and random walks leave the belief where Bayes' rule puts it, and part what has gathered on one tank. */
class RenewalTest {
    /** A tank that was filled this morning, so that its history is quickly run. */
    private static final Scenario FRESH = TrialScenario.secondWeek(15)
            .change()
            .start(new Scenario.Start(0, List.of()))
            .made();

    private static final int SEVEN = 7 * 60;
    private static final int ALKALINITY = Unknown.SOURCE_ALKALINITY.ordinal();
    /** Scores that the pads bear on which are read here. */
    private static final Set<Integer> READ = Set.of(
            ALKALINITY,
            Unknown.SOURCE_CHLORIDE.ordinal(),
            Unknown.BIAS_ALKALINITY.ordinal(),
            Unknown.BIAS_PH.ordinal());

    private static VisitRecord visit(int number, int minute, Decision d, Written... readings) {
        Seen seen = new Seen(26, null, null, null, 0, 240, 0, 0, false, true, true, true, true, 100, 0, 0, List.of());
        return new VisitRecord(number, minute, Actor.LEARNER, seen, List.of(readings), d, null);
    }

    private static DrillLog read(int times) {
        Written[] readings = new Written[times];
        Arrays.setAll(readings, i -> new Written(Pad.ALKALINITY, 9, 1, i));
        return new DrillLog(
                List.of(visit(0, SEVEN, Decision.LEAVE_ALONE, readings).undecided()));
    }

    /** The whole log on a tank with these scores. */
    private static Plausible run(DrillLog log, double[] scores) {
        FastStepper stepper = new FastStepper();
        Plausible tank = Plausible.of(FRESH, Calendar.of(FRESH), scores, Belief.STRATA, stepper);
        for (int v = 0; v < log.size(); v++) {
            if (v > 0) {
                tank.follow(log.visits().get(v - 1));
            }
            tank.observe(log.visits().get(v), new Counted(240, 0), stepper, null);
        }
        return tank;
    }

    private static Plausible[] drawn(DrillLog log, int count, long seed) {
        Plausible[] tanks = new Plausible[count];
        Arrays.setAll(tanks, i -> run(log, TankDraw.scores(Stream.of(seed, i))));
        return tanks;
    }

    private static double[] logs(Plausible[] tanks) {
        return Arrays.stream(tanks).mapToDouble(Plausible::logLikelihood).toArray();
    }

    private static Plausible[] renewed(DrillLog log, Plausible[] tanks, int count) {
        Belief belief = Belief.of(FRESH, log, 1);
        return new Renewal(belief, count, tanks, logs(tanks)).made();
    }

    private static double[] scores(Plausible[] tanks, int unknown) {
        return Arrays.stream(tanks).mapToDouble(t -> t.scores()[unknown]).toArray();
    }

    private static double mean(double[] values) {
        return DoubleStream.of(values).average().orElseThrow();
    }

    private static double sd(double[] values) {
        double mean = mean(values);
        return StrictMath.sqrt(DoubleStream.of(values)
                .map(v -> (v - mean) * (v - mean))
                .average()
                .orElseThrow());
    }

    /** Standard deviation over all scores on which nothing was read, each about its mean. */
    private static double spreadOfTheRest(Plausible[] tanks) {
        double squares = 0;
        int count = 0;
        for (int d = 0; d < Unknown.values().length; d++) {
            if (!READ.contains(d)) {
                squares += sd(scores(tanks, d)) * sd(scores(tanks, d));
                count++;
            }
        }
        return StrictMath.sqrt(squares / count);
    }

    /** Where nothing was learnt the prior stays the prior, and yet every tank has walked far in twenty moves. */
    @Test
    void whereNothingWasLearntThePriorIsKeptAndTheTanksWalk() {
        Plausible[] before = drawn(read(0), 100, 1);
        Plausible[] after = renewed(read(0), before, 100);
        assertThat(spreadOfTheRest(after)).isCloseTo(1, within(0.1));
        double squares = 0;
        for (int d = 0; d < Unknown.values().length; d++) {
            assertThat(mean(scores(after, d))).isCloseTo(0, within(0.4));
            for (int i = 0; i < 100; i++) {
                double walked = after[i].scores()[d] - before[i].scores()[d];
                squares += walked * walked / (100 * Unknown.values().length);
            }
        }
        // Independent draws would lie the root of two apart.
        assertThat(StrictMath.sqrt(squares)).isBetween(0.6, 1.5);
        assertThat(Renewal.distinct(after)).isEqualTo(100);
    }

    /** From a single tank each score walks by steps of 0.135, three in ten of twenty times: 0.33 if all are taken. */
    @Test
    void whatHasGatheredOnOneTankPartsBySmallSteps() {
        double[] high = new double[Unknown.values().length];
        Arrays.fill(high, 2);
        Plausible[] same = new Plausible[100];
        Arrays.setAll(same, i -> run(read(0), high.clone()));
        Plausible[] after = renewed(read(0), same, 100);
        assertThat(spreadOfTheRest(after)).isBetween(0.2, 0.34);
        assertThat(Renewal.distinct(after)).isEqualTo(100);
        assertThat(Renewal.distinct(same)).isEqualTo(1);
    }

    /** Mean and spread of the alkalinity after two readings, against four thousand tanks weighed by Bayes' rule. */
    @Test
    void theReadingsMoveTheScoreThatTheyBearOn() {
        DrillLog log = read(2);
        Plausible[] many = drawn(log, 4000, 7);
        double[] weights = WeightedSample.normalised(logs(many));
        double mean = 0;
        double square = 0;
        for (int i = 0; i < many.length; i++) {
            double score = many[i].scores()[ALKALINITY];
            mean += weights[i] * score;
            square += weights[i] * score * score;
        }
        double spread = StrictMath.sqrt(square - mean * mean);
        Plausible[] after = renewed(log, drawn(log, 200, 3), 150);
        assertThat(after).hasSize(150);
        assertThat(mean(scores(after, ALKALINITY))).isCloseTo(mean, within(0.5 * spread));
        assertThat(sd(scores(after, ALKALINITY))).isBetween(0.6 * spread, 1.5 * spread);
        assertThat(spreadOfTheRest(after)).isCloseTo(1, within(0.15));
    }

    /**
     * Seventy-five readings of three pads leave one tank of 64. Let in by steps, with walks between, they leave tanks that
     * differ as the prior does wherever nothing was read; gathered on that one tank they would keep half of its spread or
     * less. Where four scores are read the log likelihood lies two under its best in the mean (half a chi-square of four).
     */
    @Test
    void aSurpriseIsLetInByStepsAndLeavesTanksThatDiffer() {
        List<Written> high = new ArrayList<>();
        for (int strip = 0; strip < 25; strip++) {
            high.add(new Written(Pad.ALKALINITY, 9, 1, strip));
            high.add(new Written(Pad.CHLORIDE, 3, 1, strip));
            high.add(new Written(Pad.PH, 8, 1, strip));
        }
        DrillLog log = new DrillLog(List.of(visit(0, SEVEN, Decision.LEAVE_ALONE, high.toArray(new Written[0]))
                .undecided()));
        double spread = 0;
        double under = 0;
        int runs = 4;
        for (int seed = 1; seed <= runs; seed++) {
            Plausible[] before = drawn(log, 64, seed);
            assertThat(WeightedSample.effective(WeightedSample.normalised(logs(before))))
                    .isLessThan(2);
            Plausible[] after = renewed(log, before, 64);
            assertThat(Renewal.distinct(after)).isGreaterThan(32);
            spread += spreadOfTheRest(after) / runs;
            under += (DoubleStream.of(logs(after)).max().orElseThrow() - mean(logs(after))) / runs;
        }
        assertThat(spread).isBetween(0.8, 1.1);
        assertThat(under).isBetween(1.0, 4.0);
    }

    /** Every tank that comes out has lived through the whole log: its change at seven, its evidence at five. */
    @Test
    void everyTankHasLivedThroughTheWholeLog() {
        VisitRecord first = visit(0, SEVEN, Decision.LEAVE_ALONE.withChange(0.5), new Written(Pad.ALKALINITY, 8, 1, 0));
        VisitRecord second = visit(1, 17 * 60, Decision.LEAVE_ALONE, new Written(Pad.ALKALINITY, 8, 1, 1));
        DrillLog log = new DrillLog(List.of(first, second.undecided()));
        for (Plausible tank : renewed(log, drawn(log, 40, 9), 20)) {
            Plausible again = run(log, tank.scores());
            assertThat(tank.logLikelihood()).isCloseTo(again.logLikelihood(), within(1e-12));
            assertThat(tank.latest()).isCloseTo(again.latest(), within(1e-12));
            assertThat(tank.sim().minute()).isEqualTo(17 * 60);
            assertThat(tank.sim().state()[TankLayout.VOLUMES]).isCloseTo(0.5, within(1e-12));
        }
    }
}
