package startwater.score;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import startwater.drill.Decision;
import startwater.drill.Decision.FilterCare;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/** The named policies. "careful" is what the lessons teach; the others are habits that the drills expose. */
public final class Policies {
    private static final Set<Pad> NONE = EnumSet.noneOf(Pad.class);
    private static final Set<Pad> DAILY = EnumSet.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH);

    public static final Policy CAREFUL = new StandingRules();
    private static final Map<String, Policy> ALL = all();

    private Policies() {}

    /** The policy of this name. @throws IllegalArgumentException naming those there are */
    public static Policy byId(String id) {
        Policy policy = ALL.get(id);
        if (policy == null) {
            throw new IllegalArgumentException("Policy: '" + id + "' is not known. Use one of " + ids() + ".");
        }
        return policy;
    }

    public static List<String> ids() {
        return List.copyOf(ALL.keySet());
    }

    private static Map<String, Policy> all() {
        Map<String, Policy> all = new LinkedHashMap<>();
        add(all, CAREFUL);
        add(all, new Optimal());
        // The feeder goes on with the full table ration; nobody tests, changes or doses.
        add(all, of("do-nothing", NONE, b -> Decision.LEAVE_ALONE));
        add(all, of("hold-feed", DAILY, Policies::holdFeed));
        add(all, of("feeds-because-they-beg", NONE, Policies::feedBeggars));
        add(all, of("half-every-day", NONE, b -> daily(b, Decision.LEAVE_ALONE.withChange(0.5))));
        add(all, of("feeds-never-changes", DAILY, b -> CAREFUL.decide(b)
                .withFeed(1)
                .withChange(0)));
        add(all, of("chases-ph", DAILY, Policies::chasePh));
        add(all, of("doses-and-hopes", DAILY, Policies::doseAndHope));
        add(all, of("salts-every-reading", DAILY, Policies::saltAgain));
        add(all, of("scrubs-filter", DAILY, Policies::scrub));
        add(all, of("stocks-at-once", DAILY, Policies::stockAtOnce));
        add(all, new NeverWrites());
        add(all, of("never-tests", NONE, b -> daily(b, Decision.LEAVE_ALONE.withChange(0.1))));
        add(all, of("away-all-week", NONE, b -> Decision.LEAVE_ALONE));
        return all;
    }

    private static void add(Map<String, Policy> all, Policy policy) {
        all.put(policy.id(), policy);
    }

    private static Policy of(String id, Set<Pad> pads, Function<Notebook, Decision> decide) {
        return new Simple(id, pads, decide);
    }

    private record Simple(String id, Set<Pad> pads, Function<Notebook, Decision> rule) implements Policy {
        @Override
        public Set<Pad> tests(Notebook book) {
            return book.hoursSince(Pad.AMMONIA) >= 20 ? pads : NONE;
        }

        @Override
        public Decision decide(Notebook book) {
            return rule.apply(book);
        }
    }

    /** Once a day, at the first visit of the day; at the others only the feeding stands. */
    private static Decision daily(Notebook book, Decision d) {
        return book.hoursSincePreviousVisit() >= 12 ? d : Decision.LEAVE_ALONE.withFeed(d.feed());
    }

    /** No feed over 0.06 mg/L toxic ammonia or 1 mg/L nitrite, half from half of that; never a change. */
    private static Decision holdFeed(Notebook book) {
        double toxic = book.toxicAmmonia();
        double nitrite = book.value(Pad.NITRITE, 0);
        if (toxic > 0.06 || nitrite >= 1) {
            return Decision.LEAVE_ALONE.withFeed(0);
        }
        return Decision.LEAVE_ALONE.withFeed(toxic > 0.03 || nitrite >= 0.5 ? 0.5 : 1);
    }

    /** Full ration while they come for it; a quarter changed when they look ill. */
    private static Decision feedBeggars(Notebook book) {
        FishMood mood = book.mood();
        if (mood == null) {
            return Decision.LEAVE_ALONE;
        }
        return switch (mood) {
            case BEGGING, CALM -> Decision.LEAVE_ALONE;
            case OFF_FEED -> Decision.LEAVE_ALONE.withFeed(0.5);
            case SLOW, GASPING -> Decision.LEAVE_ALONE.withFeed(0).withChange(0.25);
        };
    }

    /** Soda ash whenever pH reads under 7.6, whatever the ammonia. */
    private static Decision chasePh(Notebook book) {
        double ph = book.value(Pad.PH);
        double grams = ph < 7.6 ? book.scenario().system().volumeL() * 0.03 : 0;
        return Decision.LEAVE_ALONE.withSodaAsh(
                Math.min(grams, book.scenario().shelf().sodaAshG()));
    }

    /** Something from the shelf at every reading; with fish a pinch of each, without fish more ammonia. */
    private static Decision doseAndHope(Notebook book) {
        if (!book.fishIn()) {
            return Decision.LEAVE_ALONE.withAmmoniumChloride(Math.min(book.ammoniumLeftG(), book.ammoniumFor(4)));
        }
        return daily(
                book,
                Decision.LEAVE_ALONE
                        .withSalt(Math.min(book.saltLeftG(), book.saltFor(10)))
                        .withBicarbonate(Math.min(book.bicarbonateLeftG(), book.bicarbonateFor(10))));
    }

    /** The full dose for the nitrite read, every day anew, as if nothing were there yet. */
    private static Decision saltAgain(Notebook book) {
        double nitrite = book.value(Pad.NITRITE, 0);
        double grams = nitrite > 0 ? book.saltFor(Notebook.chlorideWanted(nitrite)) : 0;
        return daily(book, Decision.LEAVE_ALONE.withSalt(Math.min(book.saltLeftG(), grams)));
    }

    /** Keeps the rules, and scrubs the filter every day because it looks dirty. */
    private static Decision scrub(Notebook book) {
        Decision d = CAREFUL.decide(book);
        return book.hoursSincePreviousVisit() >= 12 ? d.withFilter(FilterCare.SCRUB) : d;
    }

    /** Takes ammonia gone for ready: then all planned fish go in, and the full ration from the first day. */
    private static Decision stockAtOnce(Notebook book) {
        if (book.fishIn() || book.scenario().plannedFish() == null) {
            return Decision.LEAVE_ALONE;
        }
        boolean gone = book.decisions() > 0 && book.value(Pad.AMMONIA, READY_BY_EYE) < READY_BY_EYE;
        return gone ? Decision.LEAVE_ALONE.withStock(1) : CAREFUL.decide(book).withStock(0);
    }

    private static final double READY_BY_EYE = 0.75;
}
