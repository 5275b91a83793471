package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import startwater.ReferenceTable;
import startwater.quantity.Stream;

class ValueOfInformationTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("decision/worth-of-knowing.csv");
    private static final int STATES = 40;
    private static final int OPTIONS = 6;

    /** Compares with a printed value to its last digit. */
    static void printed(ReferenceTable table, String name, String quantity, double computed) {
        String text = table.rows().stream()
                .filter(r -> r.text("case").equals(name) && r.text("quantity").equals(quantity))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + name + ", " + quantity))
                .text("value");
        int decimals = text.contains(".") ? text.length() - text.indexOf('.') - 1 : 0;
        double half = 0.5 * StrictMath.pow(10, -decimals) + 1e-12;
        table.check(name + ", " + quantity, Double.parseDouble(text), computed, half);
    }

    @Test
    @Tag("outside")
    void drillOrSellComesOutAsInTheTextbooks() {
        ValueOfInformation worth =
                ValueOfInformation.of(new double[][] {{-700, 100}, {-90, -90}}, new double[] {0.25, 0.75});
        printed(TABLE, "drill-or-sell", "least loss", worth.loss());
        printed(TABLE, "drill-or-sell", "perfect", worth.ofPerfect());
        printed(TABLE, "drill-or-sell", "test", worth.ofTest(new double[][] {{0.6, 0.4}, {0.2, 0.8}}));
    }

    @Test
    @Tag("outside")
    void aStripOnTwoStatesComesOutAsByHand() {
        double[] weights = {0.7, 0.3};
        double[][] chances = {{0.8, 0.2}, {0.1, 0.9}};
        ValueOfInformation worth = ValueOfInformation.of(new double[][] {{0, 100}, {8, 15}}, weights);
        ValueOfInformation waiting = ValueOfInformation.of(new double[][] {{0, 100}}, weights);
        printed(TABLE, "two-state", "loss of waiting", waiting.loss());
        printed(TABLE, "two-state", "least loss", worth.loss());
        printed(TABLE, "two-state", "perfect", worth.ofPerfect());
        printed(TABLE, "two-state", "test", worth.ofTest(chances));
        double[] positive = WeightedSample.posterior(weights, new double[] {0.2, 0.9});
        double[] negative = WeightedSample.posterior(weights, new double[] {0.8, 0.1});
        printed(TABLE, "two-state", "high after positive", positive[1]);
        printed(TABLE, "two-state", "high after negative", negative[1]);
    }

    @Test
    @Tag("outside")
    void normalLinearWorthComesOutOnAFineGrid() {
        double[] difference = grid(1, 2, 16_001);
        double[][] losses = {new double[difference.length], difference.clone()};
        ValueOfInformation fine = ValueOfInformation.of(losses, density(difference, 1, 2));
        printed(TABLE, "normal-linear", "perfect", fine.ofPerfect());
        double[] few = grid(1, 2, 401);
        ValueOfInformation coarse =
                ValueOfInformation.of(new double[][] {new double[few.length], few}, density(few, 1, 2));
        printed(TABLE, "normal-linear", "test of one", coarse.ofTest(observed(few, 2)));
        printed(TABLE, "normal-linear", "test of four", coarse.ofTest(observed(few, 1)));
    }

    private static double[] grid(double mean, double sd, int count) {
        double[] at = new double[count];
        Arrays.setAll(at, i -> mean + sd * (-8 + 16.0 * i / (count - 1)));
        return at;
    }

    private static double[] density(double[] at, double mean, double sd) {
        double[] logs = new double[at.length];
        Arrays.setAll(logs, i -> -(at[i] - mean) * (at[i] - mean) / (2 * sd * sd));
        return WeightedSample.normalised(logs);
    }

    /** Chances of narrow classes of an observation with normal noise. */
    private static double[][] observed(double[] truths, double sd) {
        double[] outcomes = grid(1, 4, 8_001);
        double[][] chances = new double[truths.length][];
        Arrays.setAll(chances, s -> density(outcomes, truths[s], sd));
        return chances;
    }

    @Test
    void perfectTestReachesPerfectKnowledgeAndAUselessOneIsWorthNothing() {
        for (int trial = 0; trial < 200; trial++) {
            ValueOfInformation worth = random(trial);
            double[][] perfect = new double[STATES][STATES];
            double[][] useless = new double[STATES][3];
            for (int s = 0; s < STATES; s++) {
                perfect[s][s] = 1;
                useless[s] = new double[] {0.25, 0.5, 0.25};
            }
            assertThat(worth.ofPerfect()).isPositive();
            assertThat(worth.ofTest(perfect)).isCloseTo(worth.ofPerfect(), within(1e-12));
            assertThat(worth.ofTest(useless)).isBetween(0.0, 1e-14);
        }
    }

    /** A test whose outcomes are muddled afterwards can only lose (Blackwell 1951; from memory). */
    @Test
    void sharperTestIsNeverWorthLess() {
        int less = 0;
        for (int trial = 0; trial < 200; trial++) {
            ValueOfInformation worth = random(trial);
            double sharpest = worth.ofPerfect();
            for (double sd : new double[] {0.5, 1, 2, 4, 8}) {
                double[][] chances = chances(STATES, sd);
                double muddled = worth.ofTest(muddled(chances, 0.3));
                double test = worth.ofTest(chances);
                assertThat(test).isBetween(0.0, sharpest + 1e-12);
                assertThat(muddled).isBetween(0.0, test + 1e-12);
                less += muddled < test - 1e-9 ? 1 : 0;
            }
        }
        assertThat(less).isGreaterThan(500);
    }

    @Test
    void sampledWorthAgreesWithTheListedOutcomes() {
        ValueOfInformation worth = random(7);
        double[][] chances = chances(STATES, 2);
        double[] weights = weights(7);
        Stream draws = Stream.of(1);
        double[][] likelihoods = new double[40_000][STATES];
        for (double[] likelihood : likelihoods) {
            int state = WeightedSample.systematic(weights, 1, draws.uniform())[0];
            int outcome = WeightedSample.systematic(chances[state], 1, draws.uniform())[0];
            Arrays.setAll(likelihood, s -> 7 * chances[s][outcome]);
        }
        double exact = worth.ofTest(chances);
        assertThat(exact).isPositive();
        assertThat(worth.ofSampledTest(likelihoods)).isCloseTo(exact, within(0.03 * exact));
    }

    @Test
    void anOutcomeThatNothingExplainsTeachesNothing() {
        assertThat(random(3).ofSampledTest(new double[][] {new double[STATES]})).isZero();
    }

    /** Two options on two tanks: keeping the first costs 4 or 0, the second 1 or 1; the tanks are as likely as 1 to 3. */
    @Test
    void theWorthOverLossesIsThatOverTheirTotals() {
        Losses losses = LossesTest.of(new double[][] {{4, 0}, {2, 2}, {1, 1}}, new double[] {0.25, 0.75});
        ValueOfInformation worth = ValueOfInformation.of(losses);
        assertThat(worth.best()).isZero();
        assertThat(worth.loss()).isEqualTo(1);
        // Told the first tank, one saves 3, in a quarter of the cases.
        assertThat(worth.ofPerfect()).isEqualTo(0.75);
        assertThat(worth.savedAfter(new double[] {1, 0})).isEqualTo(3);
        assertThat(worth.savedAfter(new double[] {0, 1})).isZero();
        assertThat(ValueOfInformation.of(LossesTest.of(new double[][] {{4, 0}, {0, 0.5}}, new double[] {0.25, 0.75}))
                        .best())
                .isEqualTo(1);
    }

    @Test
    void badInputIsNamed() {
        double[] even = {0.5, 0.5};
        assertThatThrownBy(() -> ValueOfInformation.of(new double[][] {{1}}, even))
                .hasMessageContaining("option 0 has 1 losses for 2 states");
        assertThatThrownBy(() -> ValueOfInformation.of(new double[0][], even)).hasMessageContaining("no option");
        assertThatThrownBy(() -> ValueOfInformation.of(new double[][] {{1, 2}}, new double[] {1, 1}))
                .hasMessageContaining("add up to 2.0");
        ValueOfInformation worth = ValueOfInformation.of(new double[][] {{1, 2}}, even);
        assertThatThrownBy(() -> worth.ofTest(new double[][] {{1}, {0.5}})).hasMessageContaining("state 1");
        assertThatThrownBy(() -> worth.ofTest(new double[][] {{1}})).hasMessageContaining("1 states");
        assertThatThrownBy(() -> worth.ofTest(new double[][] {{1}, {0.5, 0.5}})).hasMessageContaining("outcomes");
        assertThatThrownBy(() -> worth.savedAfter(new double[] {1})).hasMessageContaining("1 states");
    }

    private static double[] weights(int trial) {
        Stream draws = Stream.of(trial, 1);
        double[] logs = new double[STATES];
        Arrays.setAll(logs, s -> draws.normal());
        return WeightedSample.normalised(logs);
    }

    private static ValueOfInformation random(int trial) {
        Stream draws = Stream.of(trial, 2);
        double[][] losses = new double[OPTIONS][STATES];
        for (double[] option : losses) {
            double slope = draws.normal() / STATES;
            Arrays.setAll(option, s -> slope * (s - STATES / 2.0) + 0.3 * draws.normal());
        }
        return ValueOfInformation.of(losses, weights(trial));
    }

    private static double[][] chances(int outcomes, double sd) {
        double[] at = new double[outcomes];
        Arrays.setAll(at, i -> i);
        double[][] chances = new double[STATES][];
        Arrays.setAll(chances, s -> density(at, s, sd));
        return chances;
    }

    /** The same test, a share of whose outcomes slips to the next. */
    private static double[][] muddled(double[][] chances, double share) {
        double[][] muddled = new double[chances.length][chances[0].length];
        for (int s = 0; s < chances.length; s++) {
            for (int k = 0; k < chances[s].length; k++) {
                muddled[s][k] += (1 - share) * chances[s][k];
                muddled[s][(k + 1) % chances[s].length] += share * chances[s][k];
            }
        }
        return muddled;
    }
}
