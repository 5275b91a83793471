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

    private static final int BEST = 5;
    private static final int BEST_BESIDE_STOCKING = 2;
    private static final double[] FEEDS = {1, 0.5, 0};
    private static final double[] CHANGES = {0, 0.25, 0.5, 0.75};
    /** Shares of the planned fish: a fifth, a half, all; none is in every other option. */
    private static final List<Double> SHARES = List.of(0.2, 0.5, 1.0);
    /** Share of a nursery's media that may be taken while its fish stay. */
    private static final double MEDIA_OF_NURSERY = 0.25;

    private static final double BUFFER_STEP_MG_PER_L = 30;
    private static final double BUFFER_BELOW_MG_PER_L = 100;

    private Options() {}

    /** The whole grid, standing rules first, then doing nothing and holding the feed. */
    static List<Decision> grid(Belief belief, Notebook book) {
        Set<Decision> all = new LinkedHashSet<>();
        Scenario s = belief.scenario();
        Decision rules = Policies.CAREFUL.decide(book);
        all.add(rules);
        if (book.fishIn() || s.fish() != null) {
            fishIn(belief, book, all);
        } else {
            fishless(belief, book, all);
        }
        stock(book, rules, all);
        filter(book, rules, all);
        spareAir(book, rules, all);
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

    /** Shares of the fish to come, with what the rules say of the water and without; and ripe media beside or alone. */
    private static void stock(Notebook book, Decision rules, Set<Decision> all) {
        Stocking stocking = book.stocking();
        Decision water = rules.withStock(0).withRipeMedia(0);
        List<Double> shares = stocking.toCome() > 0 ? SHARES : List.of();
        for (double share : shares) {
            for (double feed : new double[] {1, 0.5}) {
                all.add(Decision.LEAVE_ALONE.withStock(share).withFeed(feed));
            }
            all.add(water.withAmmoniumChloride(0).withStock(share));
        }
        if (stocking.mediaLeft() > 0 && stocking.planned() > 0) {
            double media = stocking.mediaOfNursery() ? MEDIA_OF_NURSERY : stocking.mediaLeft();
            all.add(Decision.LEAVE_ALONE.withRipeMedia(media));
            all.add(water.withRipeMedia(media));
            for (double share : shares) {
                double along = stocking.mediaOfNursery() ? share : media;
                all.add(Decision.LEAVE_ALONE.withStock(share).withRipeMedia(along));
            }
        }
    }

    /** Where the filter passes less water: rinsed gently, or in the ways that cost it its bacteria. */
    private static void filter(Notebook book, Decision rules, Set<Decision> all) {
        if (book.flowPercent() < StandingRules.LOW_FLOW_PERCENT) {
            for (FilterCare care : List.of(FilterCare.RINSE, FilterCare.SCRUB, FilterCare.DRAIN, FilterCare.LEAVE)) {
                all.add(rules.withFilter(care));
            }
            all.add(Decision.LEAVE_ALONE.withFilter(FilterCare.RINSE));
        }
    }

    private static void spareAir(Notebook book, Decision rules, Set<Decision> all) {
        if (book.scenario().shelf().spareAirKlaPerHour() > 0) {
            all.add(rules.withAir(Air.SPARE));
            all.add(rules.withAir(Air.ON));
            all.add(Decision.LEAVE_ALONE.withAir(Air.SPARE));
            all.add(Decision.LEAVE_ALONE.withFeed(0).withAir(Air.SPARE));
        }
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
     * The options to keep of the grid: standing rules, doing nothing, holding the feed, the best five (two where fish are to
     * come, since every share of them is a kind of its own), and then the best of each kind that is not there yet, so that a learner sees unlike ways side by side.
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
        if (grid.contains(Decision.LEAVE_ALONE.withFeed(0))) {
            kept.add(Decision.LEAVE_ALONE.withFeed(0));
        }
        grid.stream().filter(d -> d.air() == Air.OFF).forEach(kept::add);
        boolean stocks = grid.stream().anyMatch(d -> d.stock() > 0);
        order.stream()
                .limit(stocks ? BEST_BESIDE_STOCKING : BEST)
                .map(grid::get)
                .forEach(kept::add);
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
                + (d.air() == Air.OFF ? "still " : d.air() == Air.SPARE ? "spare " : "")
                + (d.stock() > 0 ? "stock" + Math.round(5 * d.stock()) + " " : "")
                + (d.ripeMedia() > 0 ? "media " : "")
                + (d.filter() != FilterCare.LEAVE ? d.filter().name() + " " : "")
                + (d.ammoniumChlorideG() > 0 ? "ammonium " : "")
                + (d.helpers() != FollowUp.NONE ? d.helpers().name() + " " : "")
                + (d.feed() > 0 ? "feed" : "hold");
    }
}
