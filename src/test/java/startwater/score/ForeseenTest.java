package startwater.score;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import startwater.drill.Decision;
import startwater.drill.Observation;
import startwater.drill.Prediction;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;
import startwater.tank.TankLayout;

/** What the next strip will show, and what a prediction of it is worth. */
class ForeseenTest {
    private static final Scenario SCENARIO = TrialScenario.secondWeek(15);
    private static final HandScored FED = HandScored.of(SmallBelief.of(SCENARIO, 4), Decision.LEAVE_ALONE);

    private final Paths paths = FED.paths(0, 0);

    private static double[] ammonia(double value) {
        TankSim sim = OneTank.of(SCENARIO);
        sim.state()[TankLayout.TAN] = value;
        return Foreseen.blockChances(Pad.AMMONIA, sim.state(), sim.draw());
    }

    @Test
    void theChancesOfAllBlocksAddUpToOne() {
        for (double value : new double[] {0, 0.07, 0.5, 1.4, 20, 50}) {
            assertThat(Arrays.stream(ammonia(value)).sum()).isCloseTo(1, within(1e-12));
        }
    }

    /** In the middle of the scale a block's neighbours are as likely on either side. */
    @Test
    void aValueOnABlockIsReadOffTheBlocksBesideAlike() {
        double[] chances = ammonia(1);
        assertThat(chances).hasSize(9);
        for (int off = 1; off <= 4; off++) {
            assertThat(chances[4 + off]).isCloseTo(chances[4 - off], within(1e-12));
            assertThat(chances[4 + off]).isLessThan(chances[4 + off - 1]);
        }
        // Half way between two blocks, in their ratio, both are as likely.
        double[] between = ammonia(StrictMath.sqrt(2));
        assertThat(between[4]).isCloseTo(between[5], within(1e-12));
    }

    /** A between is shared by the blocks beside it; pad and reader spread add as squares. */
    @Test
    void aBetweenIsSharedByTheBlocksBesideIt() {
        double sigma = StrictMath.hypot(
                ReadingModel.readingSigmaBlocks(Pad.AMMONIA, Observation.READER_SIGMA_LAB),
                Observation.PAD_SPREAD_BLOCKS);
        double[] stops = new double[Pad.AMMONIA.scale().stops()];
        Arrays.setAll(stops, i -> ReadingModel.probabilityOfStop(Pad.AMMONIA, i, 4, sigma));
        double[] chances = ammonia(1);
        assertThat(chances[4]).isCloseTo(stops[8] + (stops[7] + stops[9]) / 2, within(1e-12));
        assertThat(chances[0]).isCloseTo(stops[0] + stops[1] / 2, within(1e-12));
        assertThat(chances[8]).isCloseTo(stops[16] + stops[15] / 2, within(1e-12));
    }

    private Verdict.Foresight said(int block, Sureness sureness) {
        return Objects.requireNonNull(Foreseen.mark(new Prediction(Pad.AMMONIA, block, sureness), paths));
    }

    @Test
    void nothingSaidIsNotMarked() {
        assertThat(Foreseen.mark(null, paths)).isNull();
    }

    @Test
    void theLikeliestIsTheBlockThatMostWatersShow() {
        double[] chances = paths.nextBlocks(Pad.AMMONIA);
        Verdict.Foresight any = said(0, Sureness.SURE);
        double most = Arrays.stream(chances).max().orElseThrow();
        assertThat(any.likeliestChance()).isEqualTo(most);
        assertThat(chances[any.likeliest()]).isEqualTo(most);
        assertThat(any.likeliest()).isPositive();
    }

    /** Half for how near, as a share of the likeliest; half for how honest, less the square of what the words were off. */
    @Test
    void theMarkIsForNearnessAndForHonesty() {
        double[] chances = paths.nextBlocks(Pad.AMMONIA);
        int best = said(0, Sureness.SURE).likeliest();
        for (Sureness sureness : Sureness.values()) {
            double off = sureness.chance() - chances[best];
            assertThat(said(best, sureness).mark()).isCloseTo(100 - 50 * off * off, within(1e-9));
            assertThat(said(best, sureness).chance()).isEqualTo(chances[best]);
        }
        double little = chances[best + 1];
        double near = little / chances[best];
        assertThat(said(best + 1, Sureness.NOT_SURE).mark())
                .isCloseTo(50 * near + 50 - 50 * (0.35 - little) * (0.35 - little), within(1e-9));
    }

    @Test
    void aBlockBeyondTheScaleHasNoChance() {
        Verdict.Foresight beyond = said(9, Sureness.SURE);
        assertThat(beyond.chance()).isZero();
        assertThat(beyond.mark()).isCloseTo(50 * (1 - 0.81), within(1e-9));
    }
}
