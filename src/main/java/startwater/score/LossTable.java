package startwater.score;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.tank.FastStepper;

/** Follows options on plausible waters and keeps what came out, so that nothing is followed twice. */
final class LossTable {
    private final Belief belief;
    private final Rollout rollout;
    /** Results of options by water; null where one was not followed yet. */
    private final Map<Decision, @Nullable Bill[]> rows = new HashMap<>();

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
        @Nullable Bill[][] all = new Bill[options.size()][];
        for (int o = 0; o < all.length; o++) {
            all[o] = rows.computeIfAbsent(options.get(o), d -> new Bill[belief.waters()]);
        }
        IntStream.range(0, waters.length).parallel().forEach(i -> follow(options, all, waters[i]));
        return losses(all, waters);
    }

    private void follow(List<Decision> options, @Nullable Bill[][] all, int water) {
        FastStepper stepper = new FastStepper();
        for (int o = 0; o < all.length; o++) {
            if (all[o][water] == null) {
                all[o][water] = rollout.follow(options.get(o), water, stepper);
            }
        }
    }

    private Losses losses(@Nullable Bill[][] all, int[] waters) {
        int strata = Belief.STRATA;
        double[][][] parts = new double[all.length][waters.length * strata][];
        double[][][] deaths = new double[all.length][waters.length * strata][];
        double[][] beside = new double[all.length][waters.length * strata];
        double[] believed = belief.tankWeights();
        double[] weights = new double[waters.length * strata];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            int water = waters[i / strata];
            for (int o = 0; o < all.length; o++) {
                Bill bill = Objects.requireNonNull(all[o][water]);
                parts[o][i] = bill.parts()[i % strata];
                deaths[o][i] = bill.deaths()[i % strata];
                beside[o][i] = bill.beside()[i % strata];
            }
            weights[i] = believed[water * strata + i % strata];
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] = sum > 0 ? weights[i] / sum : 1.0 / weights.length;
        }
        return new Losses(parts, deaths, beside, weights, strata);
    }
}
