package startwater.cli;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import startwater.tank.FastStepper;

/**
 * Measures how the time of a computation grows with waters, days, groups of fish in one water, options and threads. Each
 * row is measured a few times and keeps its best, in turns with the others of its kind.
 */
final class ScalingBench {
    private static final int ROUNDS = 7;
    private static final int WATERS = 64;
    private static final int WATERS_FOR_THREADS = 512;
    private static final int STRATA = 4;
    private static final double NANO = 1e-9;

    /** What is varied. */
    enum Along {
        WATERS,
        WEEKS,
        GROUPS,
        OPTIONS,
        THREADS
    }

    /**
     * One measurement.
     *
     * @param along what is varied
     * @param number how many of it
     * @param seconds best time
     */
    record Row(Along along, int number, double seconds) {
        String key() {
            return "scaling_" + along.name().toLowerCase(Locale.ROOT) + "_" + number + "_seconds";
        }
    }

    /** One computation to be timed. */
    private record Job(Along along, int number, Runnable work) {}

    private ScalingBench() {}

    /** Measures everything: some ten seconds on an idle machine. */
    static List<Row> measure() {
        List<Row> rows = new ArrayList<>();
        rows.addAll(best(List.of(waters(WATERS), waters(2 * WATERS), waters(4 * WATERS))));
        rows.addAll(best(List.of(weeks(1), weeks(2), weeks(4))));
        rows.addAll(best(List.of(groups(1), groups(4), groups(16))));
        rows.addAll(best(List.of(options(3), options(6), options(12))));
        rows.addAll(best(List.of(threads(1), threads(2), threads(4), threads(8))));
        return rows;
    }

    /** The seconds by the names that scripts read. */
    static Map<String, Double> byKey(List<Row> rows) {
        Map<String, Double> map = new LinkedHashMap<>();
        rows.forEach(row -> map.put(row.key(), row.seconds()));
        return map;
    }

    private static Job waters(int waters) {
        List<BenchTank> tanks = tanks(waters, STRATA);
        return new Job(Along.WATERS, waters, () -> run(tanks, 1));
    }

    private static Job weeks(int weeks) {
        List<BenchTank> tanks = tanks(WATERS, STRATA);
        return new Job(Along.WEEKS, weeks, () -> run(tanks, weeks));
    }

    private static Job groups(int strata) {
        List<BenchTank> tanks = tanks(WATERS, strata);
        return new Job(Along.GROUPS, strata, () -> run(tanks, 1));
    }

    /** An option is one more roll-out of every water. */
    private static Job options(int options) {
        List<BenchTank> tanks = tanks(WATERS, STRATA);
        return new Job(Along.OPTIONS, options, () -> {
            for (int option = 0; option < options; option++) {
                run(tanks, 1);
            }
        });
    }

    private static Job threads(int threads) {
        List<BenchTank> tanks = tanks(WATERS_FOR_THREADS, STRATA);
        return new Job(Along.THREADS, threads, () -> together(tanks, threads));
    }

    private static List<BenchTank> tanks(int waters, int strata) {
        return IntStream.range(0, waters).mapToObj(i -> BenchTank.of(i, strata)).toList();
    }

    private static void run(List<BenchTank> tanks, int weeks) {
        FastStepper stepper = new FastStepper();
        tanks.forEach(tank -> tank.run(stepper, weeks));
    }

    private static void together(List<BenchTank> tanks, int threads) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Callable<Boolean>> parts = new ArrayList<>();
            for (int t = 0; t < threads; t++) {
                List<BenchTank> part = tanks.subList(t * tanks.size() / threads, (t + 1) * tanks.size() / threads);
                parts.add(() -> {
                    run(part, 1);
                    return true;
                });
            }
            for (Future<Boolean> done : pool.invokeAll(parts)) {
                done.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        } catch (ExecutionException e) {
            throw new IllegalStateException(e.getCause());
        } finally {
            pool.shutdown();
        }
    }

    private static List<Row> best(List<Job> jobs) {
        double[] best = new double[jobs.size()];
        Arrays.fill(best, Double.POSITIVE_INFINITY);
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < best.length; i++) {
                long start = System.nanoTime();
                jobs.get(i).work().run();
                best[i] = Math.min(best[i], (System.nanoTime() - start) * NANO);
            }
        }
        return IntStream.range(0, best.length)
                .mapToObj(i -> new Row(jobs.get(i).along(), jobs.get(i).number(), best[i]))
                .toList();
    }
}
