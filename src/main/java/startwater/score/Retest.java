package startwater.score;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.drill.TankSim;
import startwater.quantity.Stream;
import startwater.strip.Pad;
import startwater.strip.ReadingModel;

/**
 * What one more strip would be worth before deciding: algebra on the losses that are computed already. Readings are those
 * of this bottle, with its lasting errors, its spread from dip to dip and the reader's own mistakes.
 */
final class Retest {
    /** Readings of a whole strip that are imagined for each plausible water. */
    private static final int IMAGINED = 4;

    private static final long STRIP = 0x7265_7465L;

    private final Belief belief;
    private final Losses losses;
    private final double[] weights;
    private final ValueOfInformation worth;

    Retest(Belief belief, Losses losses) {
        this.belief = belief;
        this.losses = losses;
        this.weights = belief.waterWeights();
        this.worth = ValueOfInformation.of(byWater(), weights);
    }

    private double[][] byWater() {
        double[][] mean = new double[losses.options()][belief.waters()];
        int strata = losses.tanks() / belief.waters();
        for (int o = 0; o < mean.length; o++) {
            for (int w = 0; w < belief.waters(); w++) {
                for (int k = 0; k < strata; k++) {
                    mean[o][w] += belief.water(w).stratum(k) * losses.total(o, w * strata + k);
                }
            }
        }
        return mean;
    }

    Verdict.Information worth() {
        Scenario s = belief.scenario();
        List<Verdict.PadWorth> pads = new ArrayList<>();
        for (Pad pad : Pad.values()) {
            if (left(pad) > 0) {
                boolean read = belief.log().last().written().stream().anyMatch(w -> w.pad() == pad);
                pads.add(new Verdict.PadWorth(pad, read, worth.ofTest(chances(pad))));
            }
        }
        boolean strips = s.shelf().strips() > 0 && left(Pad.AMMONIA) > 0;
        return new Verdict.Information(strips ? strip() : 0, LossWeights.STRIP, worth.ofPerfect(), pads);
    }

    private int left(Pad pad) {
        return StripsUsed.left(belief.scenario(), belief.log(), pad);
    }

    /** Chance of every stop of a pad, by water. */
    private double[][] chances(Pad pad) {
        double[][] chances = new double[belief.waters()][pad.scale().stops()];
        double sigma = Observation.readingSigmaBlocks(pad);
        for (int w = 0; w < chances.length; w++) {
            double at = position(pad, w);
            for (int stop = 0; stop < chances[w].length; stop++) {
                chances[w][stop] = ReadingModel.probabilityOfStop(pad, stop, at, sigma);
            }
        }
        return chances;
    }

    private double position(Pad pad, int water) {
        TankSim sim = belief.water(water).sim();
        return Observation.padPosition(pad, sim.state(), sim.draw(), 1, 0);
    }

    /**
     * Worth of a whole strip, all its colour pads read together, over imagined readings. What the act chosen now would lose
     * after each reading, over the best act then, is never below 0, and its mean is the worth.
     */
    private double strip() {
        double[][][] chances = new double[Pad.values().length][][];
        for (Pad pad : Pad.values()) {
            chances[pad.ordinal()] = chances(pad);
        }
        double sum = 0;
        for (int truth = 0; truth < belief.waters(); truth++) {
            Stream stream = Stream.of(belief.seed(), STRIP, belief.log().last().minute(), truth);
            for (int i = 0; i < IMAGINED; i++) {
                sum += weights[truth] / IMAGINED * worth.savedAfter(imagine(chances, truth, stream));
            }
        }
        return sum;
    }

    /** Reads a strip in one water: the likelihood of what it shows in every water. */
    private double[] imagine(double[][][] chances, int truth, Stream stream) {
        double[] likelihood = new double[belief.waters()];
        Arrays.fill(likelihood, 1);
        for (Pad pad : Pad.values()) {
            double u = stream.uniform();
            if (pad == Pad.CHLORIDE) {
                continue;
            }
            double[][] stops = chances[pad.ordinal()];
            int stop = WeightedSample.systematic(stops[truth], 1, u)[0];
            for (int w = 0; w < likelihood.length; w++) {
                likelihood[w] *= stops[w][stop];
            }
        }
        return likelihood;
    }
}
