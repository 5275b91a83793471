package startwater.score;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What the policies came to on one drill, and whether it is fit.
 *
 * @param scenario id
 * @param fit whether the drill rewards care and exposes the habits it names
 * @param why what is wrong, or one reason that says it is fit
 * @param policies one row a policy
 * @param pivot the visit with most at stake and what was best there, or null where it was not looked up
 * @param exposed habits that the drill names and that did badly enough here
 * @param steps decisions of the standing rules that were scored
 * @param arguable how many of those decisions another reasonable view would accept as well
 * @param best how often each act was best among them
 */
public record DrillTrial(
        String scenario,
        boolean fit,
        List<Reason> why,
        List<Row> policies,
        @Nullable Pivot pivot,
        List<String> exposed,
        int steps,
        int arguable,
        Map<Act, Integer> best) {
    public DrillTrial {
        why = List.copyOf(why);
        policies = List.copyOf(policies);
        exposed = List.copyOf(exposed);
        best = Map.copyOf(best);
    }

    /**
     * One policy on one drill.
     *
     * @param mark mean mark of its plays, NaN where none was marked
     * @param error standard error of that mark
     * @param marked plays that were marked
     * @param passed share of them that passed, 0..1
     * @param outcome mean over its tanks
     */
    public record Row(String policy, double mark, double error, int marked, double passed, Outcome outcome) {}

    /**
     * The visit with most at stake.
     *
     * @param visit number of the keeper's visit
     * @param best what was best there most often
     * @param share how often, 0..1
     */
    public record Pivot(int visit, Act best, double share) {}

    /** A reason: a text key and its parameters; numbers, names of policies, or an {@link Act}. */
    public record Reason(String key, List<Object> parameters) {
        public Reason {
            parameters = List.copyOf(parameters);
        }

        static Reason of(String key, Object... parameters) {
            return new Reason(key, List.of(parameters));
        }
    }

    /** The row of a policy. */
    public Row row(String policy) {
        return policies.stream()
                .filter(r -> r.policy().equals(policy))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("Trial: no row for " + policy));
    }
}
