package startwater.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;

/**
 * The tiger behind one of two doors: when to listen once more and when to open. A plan is a row of losses by state, so
 * that the worth of listening is the worth of a test on the plans that follow.
 */
@Tag("outside")
class TigerTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("decision/tiger.csv");
    private static final double[] EVEN = {0.5, 0.5};
    private static final double[][] OPEN = {{100, -10}, {-10, 100}};
    private static final double[][] HEARD = {{0.85, 0.15}, {0.15, 0.85}};
    private static final int LISTENINGS = 12;

    @Test
    void aFewStepsWithoutDiscount() {
        List<double[]> plans = List.of(new double[2]);
        for (int horizon = 1; horizon <= 4; horizon++) {
            ValueOfInformation next = worth(plans, EVEN);
            double listening = 1 + next.loss() - next.ofTest(HEARD);
            double opening = worth(OPEN, EVEN).loss() + next.loss();
            String quantity = "horizon " + horizon + " at 0.5";
            ValueOfInformationTest.printed(TABLE, "no discount", quantity, -Math.min(listening, opening));
            if (horizon < 4) {
                plans = allPlans(plans, next.loss());
            }
        }
    }

    /** Every way to go on: open a door, or listen and then follow a plan for each sound. */
    private static List<double[]> allPlans(List<double[]> next, double anew) {
        List<double[]> all = new ArrayList<>();
        for (double[] door : OPEN) {
            all.add(new double[] {door[0] + anew, door[1] + anew});
        }
        for (double[] left : next) {
            for (double[] right : next) {
                all.add(listen(1, left, right));
            }
        }
        return all;
    }

    private static double[] listen(double discount, double[] left, double[] right) {
        double[] plan = new double[2];
        for (int s = 0; s < 2; s++) {
            plan[s] = 1 + discount * (HEARD[s][0] * left[s] + HEARD[s][1] * right[s]);
        }
        return plan;
    }

    @Test
    void forEverWithDiscount() {
        List<double[]> gamma75 = settled(0.75);
        value("discount 0.75", "at 0.5", gamma75, 0.5);
        value("discount 0.75", "at 0.85", gamma75, 0.85);
        value("discount 0.75", "at 1", gamma75, 1);
        List<double[]> gamma95 = settled(0.95);
        value("discount 0.95", "at 0.5", gamma95, 0.5);
        value("discount 0.95", "at 0.85", gamma95, 0.85);
        value("discount 0.95", "at 0.97", gamma95, 0.97);
        value("discount 0.95", "at 1", gamma95, 1);
    }

    private static void value(String name, String quantity, List<double[]> plans, double belief) {
        double loss = worth(plans, new double[] {belief, 1 - belief}).loss();
        ValueOfInformationTest.printed(TABLE, name, quantity, -loss);
    }

    @Test
    void beliefAfterListening() {
        double[] once = WeightedSample.posterior(EVEN, new double[] {HEARD[0][0], HEARD[1][0]});
        double[] twice = WeightedSample.posterior(once, new double[] {HEARD[0][0], HEARD[1][0]});
        ValueOfInformationTest.printed(TABLE, "belief", "after one listening", once[0]);
        ValueOfInformationTest.printed(TABLE, "belief", "after two that agree", twice[0]);
    }

    /** Plans improved at every belief that listening can lead to, until nothing changes: policy by policy. */
    private static List<double[]> settled(double discount) {
        double[][] beliefs = beliefs();
        List<double[]> plans = List.of(new double[2]);
        for (int round = 0; round < 600; round++) {
            double anew = discount * worth(plans, EVEN).loss();
            List<double[]> better = new ArrayList<>();
            for (double[] belief : beliefs) {
                better.add(improved(plans, belief, discount, anew));
            }
            plans = better;
        }
        return plans;
    }

    private static double[] improved(List<double[]> plans, double[] belief, double discount, double anew) {
        double[][] follow = new double[2][];
        for (int sound = 0; sound < 2; sound++) {
            double[] after = WeightedSample.posterior(belief, new double[] {HEARD[0][sound], HEARD[1][sound]});
            follow[sound] = plans.get(worth(plans, after).best());
        }
        List<double[]> ways = List.of(
                listen(discount, follow[0], follow[1]),
                new double[] {OPEN[0][0] + anew, OPEN[0][1] + anew},
                new double[] {OPEN[1][0] + anew, OPEN[1][1] + anew});
        return ways.get(worth(ways, belief).best());
    }

    private static double[][] beliefs() {
        double[][] beliefs = new double[2 * LISTENINGS + 3][];
        for (int n = -LISTENINGS; n <= LISTENINGS; n++) {
            double odds = StrictMath.pow(0.85 / 0.15, n);
            beliefs[n + LISTENINGS] = new double[] {odds / (1 + odds), 1 / (1 + odds)};
        }
        beliefs[2 * LISTENINGS + 1] = new double[] {0, 1};
        beliefs[2 * LISTENINGS + 2] = new double[] {1, 0};
        return beliefs;
    }

    private static ValueOfInformation worth(List<double[]> plans, double[] belief) {
        return ValueOfInformation.of(plans.toArray(double[][]::new), belief);
    }

    private static ValueOfInformation worth(double[][] plans, double[] belief) {
        return worth(Arrays.asList(plans), belief);
    }
}
