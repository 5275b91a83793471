package startwater.score;

/**
 * What it is worth to know more before acting: the expected loss of the best act now, less the expected loss when the act
 * may follow what is learnt (Raiffa and Schlaifer, Applied Statistical Decision Theory, 1961).
 *
 * <p>Arrays are {@code losses[act][state]} in any unit, {@code weights[state]} adding up to 1 and
 * {@code chances[reading][state]}, for each state adding up to 1 over the readings. The worth is in the unit of the losses.
 */
public final class SampleWorth {
    private SampleWorth() {}

    /** The least expected loss of an act now. */
    public static double best(double[][] losses, double[] weights) {
        double best = Double.POSITIVE_INFINITY;
        for (double[] act : losses) {
            best = Math.min(best, mean(act, weights));
        }
        return best;
    }

    /** Worth of knowing the state itself: no test is worth more. */
    public static double perfect(double[][] losses, double[] weights) {
        double known = 0;
        for (int s = 0; s < weights.length; s++) {
            double least = Double.POSITIVE_INFINITY;
            for (double[] act : losses) {
                least = Math.min(least, act[s]);
            }
            known += weights[s] * least;
        }
        return Math.max(0, best(losses, weights) - known);
    }

    /** Worth of one reading before acting: 0 or more. */
    public static double of(double[][] losses, double[] weights, double[][] chances) {
        double after = 0;
        for (double[] reading : chances) {
            double least = Double.POSITIVE_INFINITY;
            for (double[] act : losses) {
                double sum = 0;
                for (int s = 0; s < weights.length; s++) {
                    sum += weights[s] * reading[s] * act[s];
                }
                least = Math.min(least, sum);
            }
            after += least;
        }
        return Math.max(0, best(losses, weights) - after);
    }

    static double mean(double[] values, double[] weights) {
        double sum = 0;
        for (int s = 0; s < weights.length; s++) {
            sum += weights[s] * values[s];
        }
        return sum;
    }

    /** The act of least expected loss; the first of equals. */
    static int bestAct(double[][] losses, double[] weights) {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int a = 0; a < losses.length; a++) {
            double mean = mean(losses[a], weights);
            if (mean < least) {
                least = mean;
                best = a;
            }
        }
        return best;
    }
}
