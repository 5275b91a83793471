package startwater.classroom;

import java.util.ArrayList;
import java.util.List;
import startwater.classroom.stats.ItemAnalysis;
import startwater.classroom.stats.Spread;
import startwater.drill.Decision;

/**
 * One decision of a drill over a class.
 *
 * @param number of the decision in the drill, from 1
 * @param marks of those for whom it counted, 0..100
 * @param item how hard it is and how well it tells learners apart
 * @param dangerous how many decided dangerously
 * @param arguable how many chose what another reasonable view accepts
 * @param chosen what was done, the commonest first
 */
public record DecisionItem(
        int number, Spread marks, ItemAnalysis.Item item, int dangerous, int arguable, List<Chosen> chosen) {
    private static final double WIDE_SD = 25;
    private static final double LOW_FACILITY = 0.5;
    private static final double OFTEN = 0.25;

    public DecisionItem {
        chosen = List.copyOf(chosen);
    }

    /**
     * One kind of act and those who chose it.
     *
     * @param code of the act, see {@link startwater.score.Act}
     * @param example one of the decisions, for its words
     * @param count learners
     * @param meanMark of this decision, 0..100
     * @param meanRest mean mark of these learners at the other decisions, 0..100, NaN where there is none: where a poor act
     *     has a high one, look at the drill
     */
    public record Chosen(String code, Decision example, int count, double meanMark, double meanRest) {}

    /** Why a decision is worth the class's time. */
    public enum Reason {
        /** The marks lie far apart: the class disagrees. */
        SPREAD,
        /** Few did it well. */
        HARD,
        /** Another reasonable view accepts what many chose. */
        ARGUABLE
    }

    /** Why it is worth discussing; none where it is not. */
    public List<Reason> reasons() {
        List<Reason> reasons = new ArrayList<>();
        if (marks.sd() >= WIDE_SD) {
            reasons.add(Reason.SPREAD);
        }
        if (item.facility() < LOW_FACILITY) {
            reasons.add(Reason.HARD);
        }
        if (arguable > 0 && arguable >= OFTEN * marks.n()) {
            reasons.add(Reason.ARGUABLE);
        }
        return reasons;
    }
}
