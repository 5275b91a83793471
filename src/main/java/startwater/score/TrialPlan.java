package startwater.score;

/**
 * How thorough a trial is.
 *
 * @param outcomeSeeds hidden tanks on which every policy but <em>optimal</em> plays for its outcome
 * @param fewestMarked plays of each policy whose decisions are marked at least
 * @param mostMarked plays of each policy whose decisions are marked at most
 * @param waters plausible waters on which a decision is judged, each with four strata of sensitivity
 * @param allMarked whether every policy is marked, or only the rules, the search and the habits that a drill exposes
 * @param pivotSeeds tanks on which the best option of the visit with most at stake is looked up; 0 leaves that out
 */
public record TrialPlan(
        int outcomeSeeds, int fewestMarked, int mostMarked, int waters, boolean allMarked, int pivotSeeds) {
    /** Tanks for the outcome, unless asked otherwise. */
    public static final int SEEDS = 200;

    private static final int QUICK_SEEDS = 12;

    public TrialPlan {
        if (outcomeSeeds < 1 || fewestMarked < 1 || mostMarked < fewestMarked || waters < 1 || pivotSeeds < 0) {
            throw new IllegalArgumentException("Trial: a plan needs at least one seed and one water.");
        }
    }

    /** The whole trial. @param seeds hidden tanks for the outcomes, 1 or more */
    public static TrialPlan whole(int seeds) {
        int marked = Math.min(seeds, 10);
        return new TrialPlan(seeds, Math.min(marked, 4), marked, Optimal.WATERS, true, Math.min(seeds, 50));
    }

    /** A rough one while a drill is being written. @param seeds most hidden tanks for the outcomes */
    public static TrialPlan quick(int seeds) {
        int marked = Math.min(seeds, 2);
        return new TrialPlan(Math.min(seeds, QUICK_SEEDS), marked, marked, Optimal.WATERS / 2, false, 0);
    }
}
