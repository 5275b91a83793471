package startwater.score;

/**
 * What it is worth to know more before choosing, worked out on the losses of options over states and a belief in the
 * states. Losses may be in any unit; every result is in that unit and has the price of knowing not yet taken off.
 *
 * <p>Between 0 and {@link #ofPerfect()} lies the worth of every test (Raiffa and Schlaifer 1961, Applied Statistical
 * Decision Theory; from memory). The belief is taken as it is: with few tanks the worth is a little too high, since each
 * tank then tells more of itself than it should.
 */
public final class ValueOfInformation {
    private static final double SUM_TOLERANCE = 1e-6;

    private final double[][] losses;
    private final double[] weights;
    private final int best;

    private ValueOfInformation(double[][] losses, double[] weights) {
        this.losses = losses;
        this.weights = weights;
        this.best = least(weights);
    }

    /**
     * @param losses loss by option and state
     * @param weights belief in each state, adding up to 1
     * @throws IllegalArgumentException where there is no option, a row has another length than the weights, or the
     *     weights do not add up to 1
     */
    public static ValueOfInformation of(double[][] losses, double[] weights) {
        if (losses.length == 0) {
            throw new IllegalArgumentException("Worth of knowing: there is no option. Give at least one.");
        }
        double[][] copy = new double[losses.length][];
        for (int o = 0; o < losses.length; o++) {
            if (losses[o].length != weights.length) {
                throw new IllegalArgumentException("Worth of knowing: option " + o + " has " + losses[o].length
                        + " losses for " + weights.length + " states. Give one for each.");
            }
            copy[o] = losses[o].clone();
        }
        requireOne("the weights", sum(weights));
        return new ValueOfInformation(copy, weights.clone());
    }

    /** The worth of knowing more before choosing among options on plausible tanks, in % of the stock. */
    public static ValueOfInformation of(Losses losses) {
        double[][] totals = new double[losses.options()][losses.tanks()];
        double[] weights = new double[losses.tanks()];
        for (int t = 0; t < weights.length; t++) {
            weights[t] = losses.weight(t);
            for (int o = 0; o < totals.length; o++) {
                totals[o][t] = losses.total(o, t);
            }
        }
        return of(totals, weights);
    }

    /** The option to choose with nothing more known; the first of equals. */
    public int best() {
        return best;
    }

    /** Least expected loss with nothing more known. */
    public double loss() {
        return expected(best, weights);
    }

    /** By how much the expected loss would fall if the state were told before choosing: 0 or more. */
    public double ofPerfect() {
        double saved = 0;
        for (int s = 0; s < weights.length; s++) {
            double least = losses[best][s];
            for (double[] option : losses) {
                least = Math.min(least, option[s]);
            }
            saved += weights[s] * (losses[best][s] - least);
        }
        return saved;
    }

    /**
     * By how much the expected loss would fall if a test were read before choosing: 0 or more.
     *
     * @param chances chance of each outcome of the test by state, {@code chances[state][outcome]}, rows adding up to 1
     */
    public double ofTest(double[][] chances) {
        requireStates(chances.length);
        int outcomes = chances.length == 0 ? 0 : chances[0].length;
        for (int s = 0; s < chances.length; s++) {
            if (chances[s].length != outcomes) {
                throw new IllegalArgumentException("Worth of a test: state " + s + " has " + chances[s].length
                        + " outcomes where the first has " + outcomes + ".");
            }
            requireOne("the chances in state " + s, sum(chances[s]));
        }
        double saved = 0;
        double[] joint = new double[weights.length];
        for (int k = 0; k < outcomes; k++) {
            for (int s = 0; s < joint.length; s++) {
                joint[s] = weights[s] * chances[s][k];
            }
            saved += saved(joint);
        }
        return saved;
    }

    /**
     * The same for a test with too many outcomes to list, from outcomes drawn as the belief foretells them. Its error
     * falls with the square root of the draws.
     *
     * @param likelihoods likelihood of each drawn outcome in each state, {@code likelihoods[draw][state]}, each row up to
     *     a factor of its own
     */
    public double ofSampledTest(double[][] likelihoods) {
        double saved = 0;
        for (double[] likelihood : likelihoods) {
            saved += savedAfter(likelihood);
        }
        return likelihoods.length == 0 ? 0 : saved / likelihoods.length;
    }

    /** What choosing anew saves after one outcome: 0 or more. @param likelihood of the outcome in each state */
    double savedAfter(double[] likelihood) {
        requireStates(likelihood.length);
        return saved(WeightedSample.posterior(weights, likelihood));
    }

    /** What choosing anew saves over keeping the choice, under other weights. */
    private double saved(double[] other) {
        return expected(best, other) - expected(least(other), other);
    }

    private int least(double[] belief) {
        int found = 0;
        double least = expected(0, belief);
        for (int o = 1; o < losses.length; o++) {
            double loss = expected(o, belief);
            if (loss < least) {
                least = loss;
                found = o;
            }
        }
        return found;
    }

    private double expected(int option, double[] belief) {
        double sum = 0;
        for (int s = 0; s < belief.length; s++) {
            sum += belief[s] * losses[option][s];
        }
        return sum;
    }

    private void requireStates(int found) {
        if (found != weights.length) {
            throw new IllegalArgumentException(
                    "Worth of a test: chances for " + found + " states where there are " + weights.length + ".");
        }
    }

    private static void requireOne(String what, double sum) {
        if (!(Math.abs(sum - 1) < SUM_TOLERANCE)) {
            throw new IllegalArgumentException("Worth of knowing: " + what + " add up to " + sum + ", not to 1.");
        }
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum;
    }
}
