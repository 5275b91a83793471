package startwater.score;

import java.util.Arrays;
import java.util.Comparator;

/** Weights on a sample and what follows from them: quantiles, tail means, Bayes' rule, resampling. */
final class WeightedSample {
    private WeightedSample() {}

    /** Weights adding up to 1 from their logarithms, whatever their size; a weight may be 0, not all. */
    static double[] normalised(double[] logs) {
        double most = Double.NEGATIVE_INFINITY;
        for (double l : logs) {
            most = Math.max(most, l);
        }
        double[] weights = new double[logs.length];
        double sum = 0;
        for (int i = 0; i < logs.length; i++) {
            weights[i] = StrictMath.exp(logs[i] - most);
            sum += weights[i];
        }
        for (int i = 0; i < logs.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    /** Number of equal members that the weights amount to (Kish 1965; from memory). */
    static double effective(double[] weights) {
        double squares = 0;
        for (double w : weights) {
            squares += w * w;
        }
        return 1 / squares;
    }

    /** Weights after evidence, adding up to 1; as they were where nothing in the sample explains the evidence. */
    static double[] posterior(double[] weights, double[] likelihood) {
        double[] after = new double[weights.length];
        double sum = 0;
        for (int i = 0; i < after.length; i++) {
            after[i] = weights[i] * likelihood[i];
            sum += after[i];
        }
        if (!(sum > 0)) {
            return weights.clone();
        }
        for (int i = 0; i < after.length; i++) {
            after[i] /= sum;
        }
        return after;
    }

    /**
     * Systematic resampling: members in order, each as often as its weight says, rounded up or down.
     *
     * @param u where the comb starts, 0 to under 1
     */
    static int[] systematic(double[] weights, int count, double u) {
        int[] chosen = new int[count];
        double cumulative = weights[0];
        int from = 0;
        for (int i = 0; i < count; i++) {
            double at = (i + u) / count;
            while (at > cumulative && from < weights.length - 1) {
                cumulative += weights[++from];
            }
            chosen[i] = from;
        }
        return chosen;
    }

    private static Integer[] sorted(double[] values) {
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> values[i]));
        return order;
    }

    /** The least value at or under which at least a share q of the weight lies. */
    static double quantile(double[] values, double[] weights, double q) {
        double below = 0;
        double value = Double.NaN;
        for (int i : sorted(values)) {
            below += weights[i];
            value = values[i];
            if (below >= q - 1e-12) {
                break;
            }
        }
        return value;
    }

    /** Mean of the largest values that carry a share of the weight (conditional value at risk). */
    static double worstMean(double[] values, double[] weights, double share) {
        Integer[] order = sorted(values);
        double left = share;
        double sum = 0;
        for (int i = order.length - 1; i >= 0 && left > 1e-15; i--) {
            double taken = Math.min(left, weights[order[i]]);
            sum += taken * values[order[i]];
            left -= taken;
        }
        return sum / share;
    }
}
