package startwater.classroom.stats;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.math3.distribution.FDistribution;

/**
 * What the scores of a class say about its items: how hard each is, whether those who do well elsewhere do well on it, and
 * how much the items agree. Scores are 0..1; NaN where a learner had no such item.
 *
 * @param items in the order of the columns
 * @param complete learners who had every item: correlations and reliability rest on them alone
 * @param reliability KR-20 (Kuder and Richardson 1937, Psychometrika 2:151), which for graded scores is coefficient alpha;
 *     NaN where it cannot be worked out
 * @param reliabilityWithin its interval (Feldt 1965, Psychometrika 30:357)
 */
public record ItemAnalysis(List<Item> items, int complete, double reliability, Interval reliabilityWithin) {
    /** Below this many learners no item should be thrown out for its numbers. */
    public static final int ENOUGH = 30;

    private static final double HARD = 0.2;
    private static final double EASY = 0.95;
    private static final double TELLS_LITTLE = 0.1;
    private static final double TAIL = 0.025;

    public ItemAnalysis {
        items = List.copyOf(items);
    }

    /** What is odd about an item: reasons to look at it, not to throw it out. */
    public enum Sign {
        /** Mean under 0.2. */
        HARD,
        /** Mean over 0.95. */
        EASY,
        /** Corrected point-biserial under 0.1: those who do well elsewhere do not do better here. */
        TELLS_LITTLE
    }

    /**
     * One item.
     *
     * @param learners who had it
     * @param facility mean score, 0..1
     * @param facilityWithin its interval
     * @param discrimination corrected point-biserial: correlation of the item with the sum of the others; NaN where all
     *     scored alike
     * @param discriminationWithin its interval
     */
    public record Item(
            int learners,
            double facility,
            Interval facilityWithin,
            double discrimination,
            Interval discriminationWithin) {
        public List<Sign> signs() {
            List<Sign> signs = new ArrayList<>();
            if (facility < HARD) {
                signs.add(Sign.HARD);
            }
            if (facility > EASY) {
                signs.add(Sign.EASY);
            }
            if (discrimination < TELLS_LITTLE) {
                signs.add(Sign.TELLS_LITTLE);
            }
            return signs;
        }
    }

    /**
     * The analysis of a class.
     *
     * @param scores one row a learner, one column an item, 0..1 or NaN
     * @throws IllegalArgumentException where rows differ in length or a score lies outside
     */
    public static ItemAnalysis of(double[][] scores) {
        int items = scores.length == 0 ? 0 : scores[0].length;
        for (double[] row : scores) {
            if (row.length != items || Arrays.stream(row).anyMatch(s -> s < 0 || s > 1)) {
                throw new IllegalArgumentException("Item analysis: rows of one length with scores in 0..1, please.");
            }
        }
        double[][] whole = Arrays.stream(scores)
                .filter(row -> Arrays.stream(row).noneMatch(Double::isNaN))
                .toArray(double[][]::new);
        List<Item> all =
                IntStream.range(0, items).mapToObj(i -> item(scores, whole, i)).toList();
        double alpha = reliability(whole, items);
        return new ItemAnalysis(all, whole.length, alpha, within(alpha, whole.length, items));
    }

    private static Item item(double[][] scores, double[][] whole, int item) {
        double[] had = Arrays.stream(scores)
                .mapToDouble(row -> row[item])
                .filter(s -> !Double.isNaN(s))
                .toArray();
        double facility = Arrays.stream(had).average().orElse(Double.NaN);
        double[] own = column(whole, item);
        double[] rest = Arrays.stream(whole)
                .mapToDouble(row -> Arrays.stream(row).sum() - row[item])
                .toArray();
        double r = correlation(own, rest);
        return new Item(
                had.length,
                facility,
                Interval.ofMean(facility, had.length),
                r,
                Interval.ofCorrelation(r, whole.length));
    }

    private static double[] column(double[][] scores, int item) {
        return Arrays.stream(scores).mapToDouble(row -> row[item]).toArray();
    }

    /** KR-20, with population variances throughout. */
    private static double reliability(double[][] whole, int items) {
        if (items < 2 || whole.length < 2) {
            return Double.NaN;
        }
        double total = variance(Arrays.stream(whole)
                .mapToDouble(row -> Arrays.stream(row).sum())
                .toArray());
        double parts = IntStream.range(0, items)
                .mapToDouble(i -> variance(column(whole, i)))
                .sum();
        return total > 0 ? items / (items - 1.0) * (1 - parts / total) : Double.NaN;
    }

    private static Interval within(double alpha, int learners, int items) {
        if (!(alpha < 1) || learners < 2) {
            return Interval.UNKNOWN;
        }
        FDistribution f = new FDistribution(learners - 1.0, (learners - 1.0) * (items - 1.0));
        return new Interval(
                1 - (1 - alpha) * f.inverseCumulativeProbability(1 - TAIL),
                1 - (1 - alpha) * f.inverseCumulativeProbability(TAIL));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElse(Double.NaN);
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElse(Double.NaN);
    }

    /** Pearson's r; NaN where one side does not vary. */
    static double correlation(double[] a, double[] b) {
        double meanA = mean(a);
        double meanB = mean(b);
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += (a[i] - meanA) * (b[i] - meanB);
        }
        double scale = Math.sqrt(variance(a) * variance(b)) * a.length;
        return scale > 0 ? sum / scale : Double.NaN;
    }
}
