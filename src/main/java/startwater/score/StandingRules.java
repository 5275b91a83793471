package startwater.score;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.Scenario;
import startwater.fish.Species;
import startwater.strip.Pad;

/**
 * The standing rules as a policy: what the lessons teach and what the tool plays as "careful". Common practice, with the
 * guidance levels of the extension sheets named in the species files; the numbers are those of the table of rules.
 */
public final class StandingRules implements Policy {
    /** Rules 1-4, NH3-N mg/L: full ration below the first; half and a quarter change; half and half; none above. */
    record AmmoniaSteps(double watch, double act, double stop) {
        static final AmmoniaSteps WARM_WATER = new AmmoniaSteps(0.03, 0.06, 0.15);
        static final AmmoniaSteps TROUT = new AmmoniaSteps(0.012, 0.025, 0.05);
    }

    private static final double AWAY_HOURS = 24;
    private static final double TWICE_A_DAY_HOURS = 15;
    private static final double NIGHT_HOURS = 9;
    private static final double MEASURABLE_NITRITE = 0.1;
    private static final double LOW_ALKALINITY = 80;
    private static final double ALKALINITY_GOAL = 120;
    private static final double ALKALINITY_STEP = 30;
    private static final double MOST_CHANGE = 0.5;
    private static final double TEMPERATURE_STEP_C = 2;
    /** Rule 13: flow under this, % of that through a clean filter, asks for a rinse. */
    static final int LOW_FLOW_PERCENT = 90;

    @Override
    public String id() {
        return "careful";
    }

    /** Rule 12: ammonia, nitrite and pH daily; alkalinity and chloride every third day; sooner where rule 4 or 6 holds. */
    @Override
    public Set<Pad> tests(Notebook book) {
        EnumSet<Pad> pads = EnumSet.noneOf(Pad.class);
        boolean pressing = book.toxicAmmonia() > 0.06 || book.value(Pad.NITRITE, 0) > 1 || book.found() > 0;
        if (book.hoursSince(Pad.AMMONIA) >= (pressing ? 9 : 20)) {
            pads.addAll(EnumSet.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH));
            if (!book.fishIn()) {
                pads.add(Pad.NITRATE);
            }
        }
        if (book.hoursSince(Pad.ALKALINITY) >= 68) {
            pads.add(Pad.ALKALINITY);
        }
        if (book.fishIn() && book.hoursSince(Pad.CHLORIDE) >= 68) {
            pads.add(Pad.CHLORIDE);
        }
        return pads;
    }

    @Override
    public Decision decide(Notebook book) {
        return ruling(book).decision();
    }

    /**
     * What the rules say, and which of them spoke.
     *
     * @param rules numbers of the rules that bear on this visit, the weightiest first
     */
    public record Ruling(Decision decision, List<Integer> rules) {
        public Ruling {
            rules = List.copyOf(rules);
        }
    }

    /** What the rules say here, with their numbers. */
    public Ruling ruling(Notebook book) {
        Set<Integer> spoke = new LinkedHashSet<>();
        Decision decision;
        if (book.fishIn()) {
            Decision fed = withFish(book, spoke);
            decision = StartRules.ramp(book, fed);
            if (decision.stock() > 0) {
                spoke.add(14);
            }
        } else {
            spoke.add(14);
            decision = StartRules.fishless(book);
        }
        if (book.flowPercent() < LOW_FLOW_PERCENT) {
            spoke.add(13);
            decision = decision.withFilter(Decision.FilterCare.RINSE);
        }
        return new Ruling(decision, List.copyOf(spoke));
    }

    private static Decision withFish(Notebook book, Set<Integer> spoke) {
        AmmoniaSteps steps = stepsFor(book);
        double toxic = book.toxicAmmonia();
        double nitrite = book.value(Pad.NITRITE, 0);
        boolean away = book.hoursToNextVisit() > AWAY_HOURS + 1;
        boolean twice = book.hoursToNextVisit() <= TWICE_A_DAY_HOURS;
        double feed = 1;
        double change = 0;
        boolean again = false;
        if (book.oxygenMgPerL() < (steps.equals(AmmoniaSteps.TROUT) ? 6 : 5) || !book.airSeenOn()) {
            spoke.add(8);
        }
        if (toxic > steps.stop()) {
            spoke.add(4);
            feed = 0;
            change = 0.5;
            again = !twice;
        } else if (toxic > steps.act()) {
            spoke.add(3);
            feed = away ? 0 : 0.5;
            change = 0.5;
        } else if (toxic > steps.watch()) {
            spoke.add(2);
            feed = twice ? 1 : 0.5;
            change = 0.25;
        }
        double salt = salt(book, nitrite);
        if (nitrite >= MEASURABLE_NITRITE) {
            spoke.add(5);
        }
        double chloride = book.value(Pad.CHLORIDE, book.scenario().source().chlorideMgPerL());
        boolean shortOfChloride =
                nitrite >= MEASURABLE_NITRITE && chloride + added(book, salt) < 0.6 * Notebook.chlorideWanted(nitrite);
        boolean trout = steps.equals(AmmoniaSteps.TROUT);
        if ((nitrite > (trout ? 0.2 : 1) && shortOfChloride) || nitrite > (trout ? 1 : 5)) {
            feed = Math.min(feed, 0.5);
            change = Math.max(change, 0.5);
            spoke.add(6);
        }
        if (away && (nitrite >= MEASURABLE_NITRITE || book.value(Pad.AMMONIA, 0) >= 0.5)) {
            feed = 0;
            spoke.add(11);
        }
        if (spoke.contains(8)) {
            feed = 0;
        }
        change = tempered(book, change);
        if (change > 0 && salt > 0) {
            salt = Math.min(book.saltLeftG(), salt + book.saltFor(change * Math.max(0, chloride - source(book))));
        }
        Decision d = Decision.LEAVE_ALONE.withFeed(feed).withChange(change).withSalt(Math.rint(salt));
        double bicarbonate = Math.rint(bicarbonate(book, change, steps));
        if (bicarbonate > 0) {
            spoke.add(7);
        }
        if (change > 0) {
            spoke.add(9);
        }
        if (Double.isNaN(toxic)) {
            // Rule 12: what was not tested is no reason to feed in full.
            spoke.add(12);
            feed = Math.min(feed, 0.5);
        }
        if (book.found() > 0) {
            spoke.add(15);
        }
        if (spoke.isEmpty()) {
            spoke.add(1);
        }
        d = d.withBicarbonate(bicarbonate);
        if (spareAir(book, spoke.contains(8))) {
            d = d.withAir(Decision.Air.SPARE);
        }
        return again ? d.withFollowUp(Decision.FollowUp.LOOK_AGAIN) : d;
    }

    /** Rule 8: spare air where air is short, and for the night where it has failed before. */
    private static boolean spareAir(Notebook book, boolean isShort) {
        boolean night = book.hoursToNextVisit() >= NIGHT_HOURS;
        return book.scenario().shelf().spareAirKlaPerHour() > 0 && (isShort || (night && book.airFailed()));
    }

    static AmmoniaSteps stepsFor(Notebook book) {
        Scenario.Fish fish = book.scenario().fishHereOrPlanned();
        return fish != null && Species.byId(fish.species()).shape() == Species.Shape.TROUT
                ? AmmoniaSteps.TROUT
                : AmmoniaSteps.WARM_WATER;
    }

    private static double source(Notebook book) {
        return book.scenario().source().chlorideMgPerL();
    }

    private static double added(Notebook book, double saltG) {
        return saltG / book.saltFor(1);
    }

    /** Rule 5: chloride to the greater of 100 mg/L and ten to one on the ion; only what is missing. */
    private static double salt(Notebook book, double nitrite) {
        if (nitrite < MEASURABLE_NITRITE) {
            return 0;
        }
        double chloride = book.value(Pad.CHLORIDE, source(book));
        double missing = Notebook.chlorideWanted(nitrite) - chloride;
        return missing > 0.1 * Notebook.chlorideWanted(nitrite) ? Math.min(book.saltLeftG(), book.saltFor(missing)) : 0;
    }

    /** Rule 7: towards 120 at 30 a day at most; dilute first where the aired pH would turn ammonia toxic. */
    private static double bicarbonate(Notebook book, double change, AmmoniaSteps steps) {
        double alkalinity = book.value(Pad.ALKALINITY);
        boolean today = book.last().bicarbonateG() > 0 && book.hoursSincePreviousVisit() < 20;
        if (!(alkalinity < LOW_ALKALINITY) || today) {
            return 0;
        }
        double lift = Math.min(ALKALINITY_STEP, ALKALINITY_GOAL - alkalinity);
        double after = book.toxicAmmonia() * (1 - change) * (alkalinity + lift) / Math.max(10, alkalinity);
        return after > steps.stop() ? 0 : Math.min(book.bicarbonateLeftG(), book.bicarbonateFor(lift));
    }

    /** Rule 9: at most half at once, and no jump of more than two degrees. */
    static double tempered(Notebook book, double change) {
        double gap = Math.abs(book.scenario().source().temperatureC() - book.temperatureC());
        double most = gap * MOST_CHANGE > TEMPERATURE_STEP_C ? TEMPERATURE_STEP_C / gap : MOST_CHANGE;
        return Math.min(change, most);
    }
}
