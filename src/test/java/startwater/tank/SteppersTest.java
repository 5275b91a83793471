package startwater.tank;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.fish.Stressor;

/** The fast stepper against the referee, and what must hold for every system. */
class SteppersTest {
    private static final double DAYS = 7;
    /** Relative, above the floors of {@link Agreement}. */
    private static final double STATE_TOLERANCE = 0.005;

    private static final double SURVIVAL_TOLERANCE = 0.002;

    @Test
    void fastStepperFollowsTheRefereeOverEightRandomSystems() {
        followsTheReferee(0, 8);
    }

    @Test
    @Tag("slow")
    void fastStepperFollowsTheRefereeOverTwoHundredRandomSystems() {
        followsTheReferee(8, 200);
    }

    @Test
    @Tag("full")
    void fastStepperFollowsTheRefereeOverTwoThousandRandomSystems() {
        followsTheReferee(0, 2000);
    }

    /**
     * Tanks that no tolerance was set by. A few in ten thousand kill by a margin that hangs on the fourth digit: their
     * survivors may lie further apart, but not far.
     */
    @Test
    @Tag("full")
    void fastStepperFollowsTheRefereeOverEightThousandOthersButForOneInAThousand() {
        List<Distance> outside = outside(1_000_000, 1_008_000);
        assertThat(outside).hasSizeLessThanOrEqualTo(8);
        assertThat(outside).allMatch(d -> d.state() < 4 * STATE_TOLERANCE && d.survival() < 4 * SURVIVAL_TOLERANCE);
    }

    private static void followsTheReferee(int from, int to) {
        assertThat(outside(from, to)).as("further than allowed").isEmpty();
    }

    private static List<Distance> outside(int from, int to) {
        return IntStream.range(from, to)
                .parallel()
                .mapToObj(Distance::of)
                .filter(d -> !d.within())
                .toList();
    }

    /** How far the fast stepper's end state lies from the referee's. */
    private record Distance(int seed, double state, double survival) {
        static Distance of(int seed) {
            RandomTank tank = RandomTank.of(seed, DAYS, 1);
            double[] fast = tank.run(new FastStepper());
            double[] reference = tank.run(new ReferenceStepper(1e-9, 1e-9));
            return new Distance(
                    seed,
                    Agreement.stateError(fast, reference, tank.parameters()),
                    Agreement.survivalError(fast, reference, 1));
        }

        boolean within() {
            return state < STATE_TOLERANCE && survival < SURVIVAL_TOLERANCE;
        }
    }

    @Test
    void balancesCloseAndNothingTurnsNegativeInAHundredRandomSystems() {
        assertThat(broken(10_000, 10_100)).isEmpty();
    }

    @Test
    @Tag("slow")
    void balancesCloseAndNothingTurnsNegativeInThreeThousandRandomSystems() {
        assertThat(broken(10_100, 13_000)).isEmpty();
    }

    @Test
    @Tag("full")
    void balancesCloseAndNothingTurnsNegativeInAHundredThousandRandomSystems() {
        assertThat(broken(100_000, 200_000)).isEmpty();
    }

    private static List<String> broken(int from, int to) {
        return IntStream.range(from, to)
                .parallel()
                .mapToObj(seed -> {
                    RandomTank tank = RandomTank.of(seed, DAYS, 2);
                    String fault = fault(tank);
                    return fault.isEmpty() ? "" : "seed " + seed + ": " + fault + " " + shrunk(tank);
                })
                .filter(s -> !s.isEmpty())
                .limit(3)
                .toList();
    }

    private static List<RandomTank.Step> shrunk(RandomTank tank) {
        return Shrinking.smallest(
                tank.steps(), fewer -> !fault(tank.with(fewer)).isEmpty());
    }

    /** What is wrong with this run; empty where nothing is. */
    private static String fault(RandomTank tank) {
        Inspector inspector = new Inspector(tank);
        tank.run(new FastStepper(), inspector);
        return inspector.fault;
    }

    /** Looks after every step, and keeps the first fault. */
    private static final class Inspector implements RandomTank.Watcher {
        private final TankParameters p;
        private final double unledgered;
        private final double[] alive;
        private String fault = "";

        Inspector(RandomTank tank) {
            p = tank.parameters();
            unledgered = unledgered(tank.start()) + unledgered(tank.beside());
            alive = new double[p.strata()];
            java.util.Arrays.fill(alive, 1);
        }

        private double unledgered(double[] y) {
            return TankReadings.nitrogenMg(y, p.volumeL()) - TankReadings.ledgerMg(y);
        }

        @Override
        public void after(RandomTank.Step step, double[] y, double[] beside) {
            if (fault.isEmpty()) {
                boolean joined = step.fish() > 0 || step.event() instanceof TankEvent.Stock;
                fault = nitrogen(y, beside) + states(y) + states(beside) + strata(y, joined);
            }
        }

        private String nitrogen(double[] y, double[] beside) {
            double drift = unledgered(y) + unledgered(beside) - unledgered;
            double scale = TankReadings.nitrogenMg(y, p.volumeL())
                    + TankReadings.nitrogenMg(beside, p.volumeL())
                    + y[TankLayout.FED]
                    + y[TankLayout.EXCHANGED_OUT];
            return Math.abs(drift) <= 1e-9 * scale ? "" : "nitrogen drifts by " + drift + " mg of " + scale + "; ";
        }

        private static String states(double[] y) {
            for (int i = 0; i < y.length; i++) {
                if (!(y[i] >= 0) || Double.isInfinite(y[i])) {
                    return "state " + i + " is " + y[i] + "; ";
                }
            }
            return "";
        }

        /** Survivors lie between 0 and 1, never rise but by newcomers, and what they lack is the deaths by cause. */
        private String strata(double[] y, boolean joined) {
            for (int s = 0; s < p.strata(); s++) {
                double now = y[TankLayout.survivors(s)];
                if (!(now <= 1 && (joined || now <= alive[s] * (1 + 1e-12)))) {
                    return "stratum " + s + " goes from " + alive[s] + " to " + now + "; ";
                }
                alive[s] = now;
                double dead = 0;
                for (Stressor cause : Stressor.values()) {
                    dead += TankReadings.deathsBy(y, s, cause);
                }
                if (!(Math.abs(1 - now - dead) < 1e-3)) {
                    return "stratum " + s + " has " + now + " survivors but " + dead + " dead by cause; ";
                }
            }
            return "";
        }
    }

    @Test
    void anySplitOverThreadsGivesTheSameBits() throws Exception {
        List<RandomTank> tanks = IntStream.range(0, 64)
                .mapToObj(i -> RandomTank.of(500 + i, DAYS, 4))
                .toList();
        FastStepper one = new FastStepper();
        List<double[]> alone = tanks.stream().map(t -> t.run(one)).toList();
        for (int threads : new int[] {2, 8}) {
            assertThat(together(tanks, threads)).usingRecursiveComparison().isEqualTo(alone);
        }
    }

    /** Each thread has its own stepper, so what a stepper did before differs from thread to thread. */
    private static List<double[]> together(List<RandomTank> tanks, int threads) throws Exception {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            ThreadLocal<FastStepper> steppers = ThreadLocal.withInitial(FastStepper::new);
            List<Callable<double[]>> jobs = new ArrayList<>();
            tanks.forEach(t -> jobs.add(() -> t.run(steppers.get())));
            List<double[]> results = new ArrayList<>();
            for (Future<double[]> done : pool.invokeAll(jobs)) {
                results.add(done.get());
            }
            return results;
        } finally {
            pool.shutdown();
        }
    }

    @Test
    void theLoopAllocatesNothing() {
        RandomTank tank = RandomTank.plain(3, DAYS, 4);
        double[] y = tank.start().clone();
        FastStepper stepper = new FastStepper();
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        // Air off: hundreds of steps in a day, so that what an interval needs once does not count.
        Controls off = tank.controls().withAir(false);
        for (int i = 0; i < 3; i++) {
            stepper.advance(tank.start().clone(), tank.parameters(), off, 1);
        }
        long before = threads.getThreadAllocatedBytes(Thread.currentThread().getId());
        stepper.advance(y, tank.parameters(), off, 1);
        long day = threads.getThreadAllocatedBytes(Thread.currentThread().getId()) - before;
        // Eight intervals of 3 h, each with one record of constants and one carbonate system: under 1 kB an interval.
        assertThat(day).isLessThan(8 * 1024);
    }

    @Test
    void equilibriumStaysPut() {
        RandomTank tank = RandomTank.plain(7, DAYS, 1);
        double[] y = tank.start().clone();
        y[TankLayout.STOCKED] = 0;
        y[TankLayout.FISH_N] = 0;
        y[TankLayout.TAN] = 0;
        y[TankLayout.NITRITE] = 0;
        y[TankLayout.ORGANIC_N] = 0;
        FastStepper stepper = new FastStepper();
        stepper.advance(y, tank.parameters(), tank.controls(), 30);
        double ph = TankReadings.ph(y);
        double oxygen = y[TankLayout.OXYGEN];
        stepper.advance(y, tank.parameters(), tank.controls(), 30);
        assertThat(TankReadings.ph(y)).isEqualTo(ph, org.assertj.core.data.Offset.offset(1e-6));
        assertThat(y[TankLayout.OXYGEN]).isEqualTo(oxygen, org.assertj.core.data.Offset.offset(1e-6));
    }
}
