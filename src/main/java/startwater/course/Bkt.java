package startwater.course;

/**
 * Bayesian knowledge tracing: the chance that a skill is known, renewed with each answer (Corbett and Anderson 1995, from
 * memory). The parameters are fixed and never fitted: fits to one class end in local optima and degenerate values.
 *
 * @param start chance that a skill is known before anything is seen of the learner
 * @param learn chance to learn the skill at an answer
 * @param slip chance of a wrong answer though the skill is known
 * @param guess chance of a right answer though it is not
 */
public record Bkt(double start, double learn, double slip, double guess) {
    /** Customary values within the bounds slip at most 0.1 and guess at most 0.3 that keep the model plausible. */
    public static final Bkt USUAL = new Bkt(0.35, 0.15, 0.1, 0.25);

    private static final int FEW_OPTIONS = 3;
    private static final double GUESS_OF_FEW = 0.3;
    private static final double LEAST_PRIOR = 0.05;
    private static final double MOST_PRIOR = 0.9;
    /** Two right of four stand in for what is not seen yet. */
    private static final double PSEUDO_RIGHT = 2;

    private static final double PSEUDO_ALL = 4;

    public Bkt {
        for (double p : new double[] {start, learn, slip, guess}) {
            if (!(p >= 0 && p <= 1)) {
                throw new IllegalArgumentException("Knowledge tracing: " + p + " is no chance. Give 0 to 1.");
            }
        }
        if (!(slip + guess < 1)) {
            throw new IllegalArgumentException(
                    "Knowledge tracing: slip and guess together must be under 1, or right answers would speak against knowing.");
        }
    }

    /** The same where one of three options may be hit by luck. @param options how many there were, 0 where none were given */
    public Bkt among(int options) {
        return options == FEW_OPTIONS ? new Bkt(start, learn, slip, GUESS_OF_FEW) : this;
    }

    /** Chance of a right answer. @param known chance that the skill is known */
    public double success(double known) {
        return known * (1 - slip) + (1 - known) * guess;
    }

    /**
     * Chance that the skill is known, once an answer is seen and before anything is learnt from it.
     *
     * @param x how right the answer was, 0 to 1: both posteriors weighted by it
     */
    public double seen(double known, double x) {
        if (!(x >= 0 && x <= 1)) {
            throw new IllegalArgumentException("Knowledge tracing: an answer is right from 0 to 1, not " + x + ".");
        }
        double right = known * (1 - slip) / success(known);
        double wrong = known * slip / (1 - success(known));
        return x * right + (1 - x) * wrong;
    }

    /** Chance that the skill is known after an answer and what was learnt from it. */
    public double after(double known, double x) {
        double seen = seen(known, x);
        return seen + (1 - seen) * learn;
    }

    /** The same for an answer that bears on the skill only in part. @param weight share of the whole step, 0 to 1 */
    public double after(double known, double x, double weight) {
        return known + weight * (after(known, x) - known);
    }

    /**
     * Where a skill that was never seen starts, from how the learner does overall.
     *
     * @param right sum of all answers so far, each 0 to 1
     * @param answers how many; {@link #start} while there are none
     */
    public double prior(double right, double answers) {
        if (answers <= 0) {
            return start;
        }
        double mean = (PSEUDO_RIGHT + right) / (PSEUDO_ALL + answers);
        double known = (mean - guess) / (1 - slip - guess);
        return Math.max(LEAST_PRIOR, Math.min(MOST_PRIOR, known));
    }
}
