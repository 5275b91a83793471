package startwater.course;

import org.junit.jupiter.api.Test;
import startwater.course.SimulatedCourse.Way;
import startwater.course.SimulatedLearner.World;

class CoachTrialTest {
    @Test
    void explore() {
        int n = Integer.getInteger("n", 400);
            for (World world : World.values()) {
                for (Way way : Way.values()) {
                    double drills = 0, all = 0, known = 0, right = 0, open = 0, sq = 0;
                    long t = System.nanoTime();
                    for (int i = 0; i < n; i++) {
                        SimulatedCourse c = new SimulatedCourse(world.learner(i));
                        c.go(way, i);
                        drills += c.drills();
                        sq += c.drills() * c.drills();
                        all += c.plays.size();
                        known += c.trulyKnown();
                        right += c.success();
                        open += c.done() ? 0 : 1;
                    }
                    double m = drills / n;
                    System.out.printf("%s %s drills %.1f se %.2f all %.1f known %.3f right %.3f open %.0f  %.1f s%n", world, way, m, Math.sqrt((sq / n - m * m) / n), all / n, known / n, right / n, open, (System.nanoTime() - t) * 1e-9);
                }
            }
    }
}
