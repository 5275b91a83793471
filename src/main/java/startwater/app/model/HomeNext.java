package startwater.app.model;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import startwater.course.Catalogue;
import startwater.course.Coach;
import startwater.course.Learner;
import startwater.course.Past;
import startwater.course.Suggestion;

/**
 * What comes next, and what else would do as well.
 *
 * @param next the drill or lesson, with its reason
 * @param alternatives at most two, for other skills
 */
public record HomeNext(Suggestion next, List<Suggestion> alternatives) {
    private static final int ALTERNATIVES = 2;

    public HomeNext {
        alternatives = List.copyOf(alternatives);
    }

    /**
     * What the coach says, or empty on an empty shelf.
     *
     * @param today the learner's day
     * @param seed the learner's own, so that ties fall the same way until something is done
     */
    public static Optional<HomeNext> of(Catalogue catalogue, Learner learner, Past past, LocalDate today, long seed) {
        List<Suggestion> ranked = Coach.rank(catalogue, learner, past.plays(), today, seed);
        if (ranked.isEmpty()) {
            return Optional.empty();
        }
        Suggestion next = ranked.get(0);
        List<Suggestion> others = new ArrayList<>();
        for (Suggestion s : ranked) {
            boolean other = s.skill() != next.skill() && others.stream().allMatch(o -> o.skill() != s.skill());
            if (other && others.size() < ALTERNATIVES) {
                others.add(s);
            }
        }
        return Optional.of(new HomeNext(next, others));
    }
}
