package startwater.score;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;

/**
 * A case with its losses.
 *
 * @param options the learner's among them
 * @param own place of the learner's
 * @param losses by option, tank and component
 */
public record Scored(Belief belief, Notebook book, Rollout rollout, List<Decision> options, int own, Losses losses) {
    /** Every so many waters one serves to prune the grid. */
    private static final int PRUNING_STRIDE = 8;
    /** Regret that no one could tell from none, % of the stock. */
    static final double LEAST_BAND = 0.05;

    /** Expected loss of an option over that of the best, % of the stock. */
    public double regret(int option) {
        return losses.regret(option);
    }

    /** Whether an option is worse than the best by more than can be told. */
    public boolean worse(int option) {
        return regret(option) > band(losses, option);
    }

    /** The same with more options, followed on the same tanks. */
    Scored with(List<Decision> more) {
        List<Decision> fresh = more.stream().filter(d -> !options.contains(d)).toList();
        List<Decision> all = new ArrayList<>(options);
        all.addAll(fresh);
        return new Scored(
                belief, book, rollout, List.copyOf(all), own, losses.and(new LossTable(belief, rollout).of(fresh)));
    }

    /** The latest case and its losses: the look back on a decision asks for them again. */
    private static final AtomicReference<@Nullable Latest> LATEST = new AtomicReference<>();

    private record Latest(Case c, int waters, Scored scored) {}

    /** Follows all options of a case, once. @param waters plausible waters; fewer are quicker and rougher */
    static Scored of(Case c, int waters) {
        Latest latest = LATEST.get();
        if (latest != null && latest.waters() == waters && latest.c().equals(c)) {
            return latest.scored();
        }
        Scored made = of(c, Belief.of(c.scenario(), c.log(), waters), 1);
        LATEST.set(new Latest(c, waters, made));
        return made;
    }

    /** Forgets what is kept, so that a test can see it made again. */
    static void forget() {
        LATEST.set(null);
    }

    /** Follows all options of a case. @param repeatedDays days for which an option is done anew, once a day */
    static Scored of(Case c, Belief belief, int repeatedDays) {
        Notebook book = bookBefore(c, belief);
        Rollout rollout = new Rollout(belief, book, repeatedDays);
        LossTable table = new LossTable(belief, rollout);
        List<Decision> options = new ArrayList<>(options(belief, book, table));
        Decision choice = c.choice();
        int own = options.indexOf(choice);
        if (own < 0) {
            options.add(choice);
            own = options.size() - 1;
        }
        return new Scored(belief, book, rollout, List.copyOf(options), own, table.of(options));
    }

    private static Notebook bookBefore(Case c, Belief belief) {
        List<VisitRecord> visits = new ArrayList<>(c.log().visits());
        visits.set(visits.size() - 1, belief.log().last());
        return Notebook.of(c.scenario(), belief.calendar(), visits);
    }

    private static List<Decision> options(Belief belief, Notebook book, LossTable table) {
        List<Decision> grid = Options.grid(belief, book);
        if (grid.size() <= Options.MOST_ALONE) {
            return Options.attended(grid, grid.get(0));
        }
        Losses rough = table.of(grid, PRUNING_STRIDE);
        double[] means =
                IntStream.range(0, grid.size()).mapToDouble(rough::mean).toArray();
        return Options.attended(Options.pruned(grid, means), grid.get(rough.best()));
    }

    /** Regret up to which an option counts as good as the best: two standard errors, at least 0.05 % of the stock. */
    double band(int option) {
        return band(losses, option);
    }

    /** The same for any losses. */
    static double band(Losses losses, int option) {
        return Math.max(2 * losses.standardError(option, losses.best()), LEAST_BAND);
    }

    /** Expected loss of the choice over the best, above what cannot be told from none, % of the stock. */
    double over(double regret) {
        return Math.max(0, regret - band(own));
    }

    /** Expected deaths of the choice over the best option's, % of the stock. */
    double deathsUp() {
        return losses.mean(own, Component.DEATHS) - losses.mean(losses.best(), Component.DEATHS);
    }

    /** Fish that the percentages refer to: those here, or those planned. */
    double stock() {
        Scenario s = belief.scenario();
        return s.fish() != null
                ? belief.log().last().seen().alive()
                : s.plannedFish() != null ? s.plannedFish().count() : 0;
    }
}
