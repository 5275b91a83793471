package startwater.score;

import java.util.stream.IntStream;
import startwater.drill.Calendar;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.fish.Stressor;
import startwater.quantity.Stream;
import startwater.tank.FastStepper;

/** What a run's decisions would have brought on all the tanks that the first visit left plausible. */
final class Expectation {
    private static final int TANKS = 96;
    private static final long FRESH = 0x6578_7063L;

    private Expectation() {}

    /** Expected deaths of these decisions at these visits, fish, before anything of the outcome is known. */
    static double deaths(Scenario s, DrillLog log) {
        Calendar calendar = Calendar.of(s);
        double[] dead = new double[TANKS];
        double[] weights = new double[TANKS];
        IntStream.range(0, TANKS).parallel().forEach(i -> {
            FastStepper stepper = new FastStepper();
            Plausible tank = Plausible.of(
                    s,
                    calendar,
                    startwater.drill.TankDraw.scores(Stream.of(s.id().hashCode(), FRESH, i)),
                    Belief.STRATA,
                    stepper);
            weights[i] = StrictMath.exp(tank.observe(log.visits().get(0), Counted.before(s, log, 0), stepper, null));
            for (VisitRecord v : log.visits()) {
                tank.sim().goTo(v.minute(), stepper);
                tank.follow(v);
            }
            for (int k = 0; k < Belief.STRATA; k++) {
                for (Stressor cause : Stressor.values()) {
                    dead[i] += tank.stratum(k) * tank.sim().dead(k, cause);
                }
            }
        });
        double sum = 0;
        double total = 0;
        for (int i = 0; i < TANKS; i++) {
            sum += weights[i] * dead[i];
            total += weights[i];
        }
        return total > 0 ? sum / total : 0;
    }
}
