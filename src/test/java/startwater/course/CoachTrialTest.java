package startwater.course;

import org.junit.jupiter.api.Test;
import startwater.course.SimulatedCourse.Way;
import startwater.course.SimulatedLearner.World;

class CoachTrialTest {
    @Test
    void trace() {
        SimulatedCourse.visits = 4;
        SimulatedCourse c = new SimulatedCourse(World.TRACED.learner(3));
        c.trace = true;
        c.go(Way.COACH, 3);
    }

    @Test
    void explore() {
        int n = Integer.getInteger("n", 100);
        for (int visits : new int[] {1, 4}) {
            SimulatedCourse.visits = visits;
            for (World world : World.values()) {
                for (Way way : Way.values()) {
                    double drills = 0, all = 0, known = 0, right = 0, open = 0;
                    for (int i = 0; i < n; i++) {
                        SimulatedCourse c = new SimulatedCourse(world.learner(i));
                        c.go(way, i);
                        drills += c.drills;
                        all += c.plays.size();
                        known += c.trulyKnown();
                        right += c.drillRight / (double) c.drillAnswers;
                        open += c.done() ? 0 : 1;
                    }
                    System.out.printf("%d %s %s drills %.1f all %.1f known %.3f right %.3f open %.0f%n", visits, world, way, drills / n, all / n, known / n, right / n, open);
                }
            }
        }
    }
}
