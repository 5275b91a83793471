package startwater.score;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.Decision.Air;
import startwater.drill.Decision.FilterCare;
import startwater.drill.Decision.FollowUp;
import startwater.drill.Observation;
import startwater.drill.Scenario;
import startwater.strip.Pad;

/**
 * The options of a visit: a grid over feed, change and the doses on the shelf that could bear on this tank, with what the
 * standing rules say. What the learner chose plays no part in it; it is added afterwards.
 */
final class Options {
    /** Options that are shown and scored, the learner's not counted. */
    static final int MOST = 11;
    /** Of them, those at which nobody else is asked to come. */
    static final int MOST_ALONE = MOST - 2;

    private static final double[] FEEDS = {1, 0.5, 0};
    private static final double[] CHANGES = {0, 0.25, 0.5, 0.75};
    private static final double BUFFER_STEP_MG_PER_L = 30;
    private static final double BUFFER_BELOW_MG_PER_L = 100;

    private Options() {}

    /** The whole grid, standing rules first, then doing nothing and holding the feed. */
    static List<Decision> grid(Belief belief, Notebook book) {
        Set<Decision> all = new LinkedHashSet<>();
        Scenario s = belief.scenario();
        all.add(Policies.CAREFUL.decide(book));
        if (s.fish() == null) {
            fishless(belief, book, all);
        } else {
            fishIn(belief, book, all);
        }
        return List.copyOf(all);
    }

    private static void fishIn(Belief belief, Notebook book, Set<Decision> all) {
        Decision nothing = Decision.LEAVE_ALONE;
        if (!book.airSeenOn()) {
            all.add(nothing.withAir(Air.OFF));
            all.add(nothing.withAir(Air.OFF).withChange(0.5));
        }
        all.add(nothing);
        all.add(nothing.withFeed(0));
        double salt = taughtSalt(belief, book);
        double buffer = buffer(belief, book);
        for (double change : CHANGES) {
            for (double feed : FEEDS) {
                Decision d = nothing.withFeed(feed).withChange(change);
                all.add(d);
                if (salt > 0) {
                    all.add(d.withSalt(salt));
                }
                if (buffer > 0) {
                    all.add(d.withBicarbonate(buffer));
                }
            }
        }
    }

    private static void fishless(Belief belief, Notebook book, Set<Decision> all) {
        Decision nothing = Decision.LEAVE_ALONE;
        all.add(nothing);
        double tan = median(belief, Pad.AMMONIA);
        double buffer = buffer(belief, book);
        for (double goal : new double[] {2, 4, 8}) {
            double grams = Math.min(book.ammoniumLeftG(), book.ammoniumFor(goal - tan));
            if (grams > 0) {
                all.add(nothing.withAmmoniumChloride(tenths(grams)));
                if (buffer > 0) {
                    all.add(nothing.withAmmoniumChloride(tenths(grams)).withBicarbonate(buffer));
                }
            }
        }
        if (buffer > 0) {
            all.add(nothing.withBicarbonate(buffer));
        }
        for (double change : new double[] {0.25, 0.5, 0.75}) {
            all.add(nothing.withChange(change));
        }
        all.add(nothing.withFilter(FilterCare.SCRUB));
    }

    private static double median(Belief belief, Pad pad) {
        return belief.band(w -> Observation.padValue(pad, w.sim().state())).middle();
    }

    /** The dose that rule 5 teaches for the nitrite written down, or else believed; 0 where none is due. */
    private static double taughtSalt(Belief belief, Notebook book) {
        double nitrite = book.value(Pad.NITRITE, median(belief, Pad.NITRITE));
        if (nitrite < 0.1) {
            return 0;
        }
        double chloride = book.value(Pad.CHLORIDE, median(belief, Pad.CHLORIDE));
        double missing = Notebook.chlorideWanted(nitrite) - chloride;
        return missing < 5 ? 0 : Math.rint(Math.min(book.saltLeftG(), book.saltFor(missing)));
    }

    private static double buffer(Belief belief, Notebook book) {
        double alkalinity = book.value(Pad.ALKALINITY, median(belief, Pad.ALKALINITY));
        return alkalinity >= BUFFER_BELOW_MG_PER_L
                ? 0
                : Math.rint(Math.min(book.bicarbonateLeftG(), book.bicarbonateFor(BUFFER_STEP_MG_PER_L)));
    }

    private static double tenths(double grams) {
        return Math.rint(grams * 10) / 10;
    }

    /**
     * The options to keep of the grid: standing rules, doing nothing, holding the feed, the best five, and then the best of
     * each kind that is not there yet, so that a learner sees unlike ways side by side.
     *
     * @param grid options as {@link #grid} gives them
     * @param losses expected loss of each on a part of the tanks
     */
    static List<Decision> pruned(List<Decision> grid, double[] losses) {
        if (grid.size() <= MOST_ALONE) {
            return grid;
        }
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < grid.size(); i++) {
            order.add(i);
        }
        order.sort(Comparator.comparingDouble((Integer i) -> losses[i]).thenComparing(i -> i));
        Set<Decision> kept = new LinkedHashSet<>();
        kept.add(grid.get(0));
        kept.add(Decision.LEAVE_ALONE);
        kept.add(Decision.LEAVE_ALONE.withFeed(0));
        grid.stream().filter(d -> d.air() == Air.OFF).forEach(kept::add);
        order.stream().limit(5).map(grid::get).forEach(kept::add);
        Set<String> kinds = new LinkedHashSet<>();
        kept.forEach(d -> kinds.add(kind(d)));
        for (int i : order) {
            if (kept.size() < MOST_ALONE && kinds.add(kind(grid.get(i)))) {
                kept.add(grid.get(i));
            }
        }
        for (int i : order) {
            if (kept.size() < MOST_ALONE) {
                kept.add(grid.get(i));
            }
        }
        return List.copyOf(kept);
    }

    /** With two more: the likeliest of the options, and somebody asked to look again half-way, or called. */
    static List<Decision> attended(List<Decision> alone, Decision likeliest) {
        Set<Decision> all = new LinkedHashSet<>(alone);
        Decision own = likeliest.withFollowUp(FollowUp.NONE);
        all.add(own.withFollowUp(FollowUp.LOOK_AGAIN));
        all.add(own.withFollowUp(FollowUp.CALL));
        return List.copyOf(all);
    }

    /** What kind of act it is, whatever the grams. */
    static String kind(Decision d) {
        return (d.change() > 0 ? "change " : "")
                + (d.saltG() > 0 ? "salt " : "")
                + (d.bicarbonateG() > 0 ? "buffer " : "")
                + (d.air() == Air.OFF ? "still " : "")
                + (d.helpers() != FollowUp.NONE ? d.helpers().name() + " " : "")
                + (d.feed() > 0 ? "feed" : "hold");
    }
}
