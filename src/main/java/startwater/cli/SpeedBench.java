package startwater.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CountDownLatch;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.DrillRun;
import startwater.drill.Observation;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Care;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.strip.Pad;
import startwater.tank.Agreement;
import startwater.tank.FastStepper;
import startwater.tank.ReferenceStepper;
import startwater.tank.Stepper;
import startwater.tank.YardstickStepper;

/**
 * Measures the fast stepper beside general methods on the same right-hand side, and the judging of one decision. A
 * system-day is one water carried over one day, however many strata of fish share it. All take turns in short rounds
 * and keep their best: other programs on the machine can only slow a round down.
 */
final class SpeedBench {
    static final double RELATIVE = 1e-6;
    static final double ABSOLUTE = 1e-8;
    private static final int TANKS = 64;
    private static final int CHECKED = 64;
    private static final int ROUNDS = 16;
    private static final double ROUND_SECONDS = 0.2;
    private static final double WARM_UP_SECONDS = 1;
    private static final double MINUTES_OF_RUNGE_KUTTA = 15;
    private static final double NANO = 1e-9;

    private final List<BenchTank> tanks =
            IntStream.range(0, TANKS).mapToObj(BenchTank::of).toList();

    /** All results; rates are system-days per second. */
    record Result(
            double dp853PerSecond,
            double rk4PerSecond,
            double oursOneThreadPerSecond,
            double oursTwoThreadsPerSecond,
            double decisionSeconds,
            double beliefSeconds,
            double secondLookSeconds,
            int options,
            double maxStateError,
            double maxSurvivalError) {
        /** The results by the names that scripts read. */
        Map<String, Double> byKey() {
            Map<String, Double> map = new LinkedHashMap<>();
            map.put("dp853_per_second", dp853PerSecond);
            map.put("rk4_per_second", rk4PerSecond);
            map.put("ours_1t_per_second", oursOneThreadPerSecond);
            map.put("ours_2t_per_second", oursTwoThreadsPerSecond);
            map.put("ours_2t_over_dp853", oursTwoThreadsPerSecond / dp853PerSecond);
            map.put("ours_1t_over_rk4", oursOneThreadPerSecond / rk4PerSecond);
            map.put("decision_seconds", decisionSeconds);
            map.put("belief_seconds", beliefSeconds);
            map.put("second_look_seconds", secondLookSeconds);
            map.put("decision_options", (double) options);
            map.put("max_state_error", maxStateError);
            map.put("max_survival_error", maxSurvivalError);
            return map;
        }
    }

    /** Measures everything: about half a minute. */
    Result measure() {
        double[] errors = errors();
        List<Racer> racers = List.of(
                new Racer(() -> YardstickStepper.dormandPrince853(RELATIVE, ABSOLUTE), 1),
                new Racer(() -> YardstickStepper.rungeKutta4(MINUTES_OF_RUNGE_KUTTA), 1),
                new Racer(FastStepper::new, 1),
                new Racer(FastStepper::new, 2));
        double[] best = new double[racers.size()];
        racers.forEach(r -> rate(r, WARM_UP_SECONDS));
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < best.length; i++) {
                best[i] = Math.max(best[i], rate(racers.get(i), ROUND_SECONDS));
            }
        }
        Decisions decisions = new Decisions();
        return new Result(
                best[0],
                best[1],
                best[2],
                best[3],
                decisions.seconds,
                decisions.beliefSeconds,
                decisions.secondLookSeconds,
                decisions.options,
                errors[0],
                errors[1]);
    }

    /** A stepper to be timed on so many threads. */
    private record Racer(Supplier<Stepper> stepper, int threads) {}

    /** Greatest error of any state, and of survival, against Dormand-Prince at 1e-10, over the first tanks. */
    private double[] errors() {
        double[][] each = new double[CHECKED][];
        IntStream.range(0, CHECKED).parallel().forEach(i -> {
            BenchTank tank = tanks.get(i);
            double[] ours = tank.run(new FastStepper());
            double[] reference = tank.run(new ReferenceStepper());
            each[i] = new double[] {
                Agreement.stateError(ours, reference, tank.parameters()),
                Agreement.survivalError(ours, reference, tank.parameters().strata())
            };
        });
        double[] worst = new double[2];
        for (double[] e : each) {
            worst[0] = Math.max(worst[0], e[0]);
            worst[1] = Math.max(worst[1], e[1]);
        }
        return worst;
    }

    private double rate(Racer racer, double seconds) {
        int threads = racer.threads();
        CountDownLatch done = new CountDownLatch(threads);
        double[] rates = new double[threads];
        for (int t = 0; t < threads; t++) {
            int number = t;
            Thread thread = new Thread(() -> {
                rates[number] = alone(racer.stepper().get(), number * TANKS / threads, seconds);
                done.countDown();
            });
            thread.setDaemon(true);
            thread.start();
        }
        try {
            done.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        return Arrays.stream(rates).sum();
    }

    private double alone(Stepper stepper, int from, double seconds) {
        long start = System.nanoTime();
        long runs = 0;
        double elapsed;
        do {
            tanks.get((int) ((from + runs) % TANKS)).run(stepper);
            runs++;
            elapsed = (System.nanoTime() - start) * NANO;
        } while (elapsed < seconds);
        return runs * BenchTank.DAYS / elapsed;
    }

    /** The judging of one decision in the second week of a catfish nursery. */
    private static final class Decisions {
        private static final int CASES = 12;

        final double seconds;
        final double beliefSeconds;
        /** The slowest: a learner waits for the one at hand, not for the usual one. */
        final double secondLookSeconds;

        final int options;

        Decisions() {
            Scenario scenario = secondWeek();
            List<Double> first = new ArrayList<>();
            List<Double> again = new ArrayList<>();
            double slowest = 0;
            int most = 0;
            for (int i = 0; i < CASES; i++) {
                Case c = firstVisit(scenario, i);
                long start = System.nanoTime();
                Judge.judge(c);
                long middle = System.nanoTime();
                most = Math.max(most, Judge.judge(c).options().size());
                again.add((System.nanoTime() - middle) * NANO);
                first.add((middle - start) * NANO);
                long look = System.nanoTime();
                Judge.secondLook(c, Care.LIVE);
                slowest = Math.max(slowest, (System.nanoTime() - look) * NANO);
            }
            // The belief is kept from the visit on, so the second judging takes the options alone.
            seconds = again.stream().sorted().skip(CASES / 4).findFirst().orElseThrow();
            beliefSeconds = Math.max(
                    0, first.stream().sorted().skip(CASES / 4).findFirst().orElseThrow() - seconds);
            secondLookSeconds = slowest;
            options = most;
        }

        private static Case firstVisit(Scenario s, int number) {
            DrillRun run = DrillRun.start(s, number, DrillRun.Pace.LEARNER);
            VisitRecord v = run.now();
            for (Pad pad : new Pad[] {Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY}) {
                double value = Observation.padValue(pad, run.hidden().state());
                v = v.with(new Written(pad, pad.scale().nearestStop(pad.scale().position(value)), 1, 0));
            }
            return new Case(s, new DrillLog(List.of(v.decided(Decision.LEAVE_ALONE, null))));
        }

        private static Scenario secondWeek() {
            return new Scenario(
                    "bench-second-week",
                    2,
                    Map.of(),
                    List.of(),
                    List.of(),
                    List.of(5),
                    new Scenario.Water(2400, "moving-bed", 32, 2.0, 0.1, 0.4, 600, 0, 27, 2),
                    new Scenario.Fish("channel-catfish", 240, 13.5, 32, List.of(8.0, 12.0, 16.0)),
                    null,
                    new Scenario.Source(26, 7.6, 90, 0, 1, 15, 0, 0, 0),
                    new Scenario.Start(8, List.of(new Scenario.Before(0, 0.5, 0.1, 0, 0, 0))),
                    Map.of(
                            Unknown.AOB_SEED, new Prior.LogNormal(3e-3, 0.8),
                            Unknown.NOB_SEED, new Prior.LogNormal(1.2e-3, 0.8),
                            Unknown.SOURCE_ALKALINITY, new Prior.Uniform(60, 160)),
                    new Scenario.Keeper(List.of(7.0, 17.0), 14, List.of(), 8, List.of(0, 2, 4, 6, 8, 12, 16, 20)),
                    new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false),
                    List.of());
        }
    }
}
