package startwater.score;

import java.util.Arrays;
import java.util.Comparator;

/** Quantiles and tail means of weighted values. */
final class WeightedSample {
    private WeightedSample() {}

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
