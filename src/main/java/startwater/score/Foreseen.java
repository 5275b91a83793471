package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.drill.Observation;
import startwater.drill.Prediction;
import startwater.drill.TankDraw;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;

/** What the next strip will show: its chances, and how well it was foreseen. */
final class Foreseen {
    private Foreseen() {}

    /** Foresight: how near the block said lies to what the log made likely, and how honest the sureness was. */
    static Verdict.@Nullable Foresight mark(@Nullable Prediction said, Paths paths) {
        if (said == null) {
            return null;
        }
        double[] chances = paths.nextBlocks(said.pad());
        int likeliest = 0;
        for (int b = 1; b < chances.length; b++) {
            likeliest = chances[b] > chances[likeliest] ? b : likeliest;
        }
        double chance = said.block() < chances.length ? chances[said.block()] : 0;
        double near = chances[likeliest] > 0 ? chance / chances[likeliest] : 0;
        double off = said.sureness().chance() - chance;
        return new Verdict.Foresight(50 * near + 50 * (1 - off * off), chance, likeliest, chances[likeliest]);
    }

    /** Chances of each block of a pad at a true value, its betweens shared by the blocks beside. */
    static double[] blockChances(Pad pad, double[] y, TankDraw draw) {
        double reader = ReadingModel.readingSigmaBlocks(pad, Observation.READER_SIGMA_LAB);
        double sigma = StrictMath.sqrt(reader * reader + Observation.PAD_SPREAD_BLOCKS * Observation.PAD_SPREAD_BLOCKS);
        double at = Observation.padPosition(pad, y, draw, 1, 0);
        double[] chances = new double[pad.scale().blocks()];
        for (int stop = 0; stop < pad.scale().stops(); stop++) {
            double p = ReadingModel.probabilityOfStop(pad, stop, at, sigma);
            chances[stop / 2] += stop % 2 == 0 ? p : p / 2;
            if (stop % 2 == 1) {
                chances[stop / 2 + 1] += p / 2;
            }
        }
        return chances;
    }
}
