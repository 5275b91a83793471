package startwater.score;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import startwater.drill.Decision;
import startwater.fish.Stressor;
import startwater.tank.FastStepper;

/** Follows options on plausible waters and keeps what came out, so that nothing is followed twice. */
final class LossTable {
    private final Belief belief;
    private final Rollout rollout;
    private final Map<Decision, Row> rows = new HashMap<>();

    /** Results of one option by water, stratum and part; null where it was not followed yet. */
    private record Row(double[][][] parts, double[][][] deaths) {
        static Row empty(int waters) {
            return new Row(new double[waters][][], new double[waters][][]);
        }
    }

    LossTable(Belief belief, Rollout rollout) {
        this.belief = belief;
        this.rollout = rollout;
    }

    /** The losses of options over all waters. */
    Losses of(List<Decision> options) {
        return of(options, 1);
    }

    /** The losses of options over every so many of the waters, weights renewed to add up to 1. */
    Losses of(List<Decision> options, int stride) {
        int[] waters =
                IntStream.range(0, belief.waters()).filter(w -> w % stride == 0).toArray();
        Row[] all = new Row[options.size()];
        for (int o = 0; o < all.length; o++) {
            all[o] = rows.computeIfAbsent(options.get(o), d -> Row.empty(belief.waters()));
        }
        IntStream.range(0, waters.length).parallel().forEach(i -> follow(options, all, waters[i]));
        return losses(all, waters);
    }

    private void follow(List<Decision> options, Row[] all, int water) {
        FastStepper stepper = new FastStepper();
        for (int o = 0; o < all.length; o++) {
            if (all[o].parts()[water] == null) {
                double[][] parts = new double[Belief.STRATA][Component.values().length];
                double[][] deaths = new double[Belief.STRATA][Stressor.COUNT];
                rollout.follow(options.get(o), water, stepper, parts, deaths, null, 0);
                all[o].parts()[water] = parts;
                all[o].deaths()[water] = deaths;
            }
        }
    }

    private Losses losses(Row[] all, int[] waters) {
        int strata = Belief.STRATA;
        double[][][] parts = new double[all.length][waters.length * strata][];
        double[][][] deaths = new double[all.length][waters.length * strata][];
        double[] believed = belief.tankWeights();
        double[] weights = new double[waters.length * strata];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            int water = waters[i / strata];
            for (int o = 0; o < all.length; o++) {
                parts[o][i] = all[o].parts()[water][i % strata];
                deaths[o][i] = all[o].deaths()[water][i % strata];
            }
            weights[i] = believed[water * strata + i % strata];
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] = sum > 0 ? weights[i] / sum : 1.0 / weights.length;
        }
        return new Losses(parts, deaths, weights, strata);
    }
}
