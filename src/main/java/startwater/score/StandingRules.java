package startwater.score;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;
import startwater.fish.Species;
import startwater.strip.FishMood;
import startwater.strip.Pad;

/**
 * The standing rules as a policy: what the lessons teach and what the tool plays as "careful". Common practice, with the
 * guidance levels of the extension sheets named in the species files; the numbers are those of the table of rules.
 */
public final class StandingRules implements Policy {
    private static final double AWAY_HOURS = 24;
    private static final double TWICE_A_DAY_HOURS = 15;
    private static final double NIGHT_HOURS = 9;
    /** The first block over 0 of both pads, mg N/L. */
    static final double MEASURABLE = 0.1;
    /** Rule 6: chloride under this share of what is wanted, all salt on the shelf counted, is short. */
    private static final double SHORT_OF_CHLORIDE = 0.6;
    /** Rule 10: appetite for warmth under which the water is outside the feeding range, and under which nobody eats. */
    private static final double FEEDING_RANGE = 0.5;

    private static final double NO_APPETITE = 0.05;
    /** Rule 10: water that has cooled by so much since the visit before goes on cooling, °C. */
    private static final double COOLING_C = 1;
    /** Rule 13: flow under this, % of that through a clean filter, asks for a rinse. */
    static final int LOW_FLOW_PERCENT = 90;

    @Override
    public String id() {
        return "careful";
    }

    @Override
    public Set<Pad> tests(Notebook book) {
        return DueTests.pads(book);
    }

    @Override
    public boolean testsAgain(Notebook book) {
        return DueTests.odd(book);
    }

    @Override
    public Decision decide(Notebook book) {
        return ruling(book).decision();
    }

    /**
     * Rule 15 besides: someone who knows is called where fish die at two visits running, or come to the surface in good
     * oxygen. Whoever keeps the tank meanwhile, by the orders left, calls nobody.
     */
    @Override
    public Decision decide(Notebook book, DrillLog log, boolean planned) {
        Decision d = decide(book);
        boolean choking =
                book.mood() == FishMood.GASPING && book.airSeenOn() && !airShort(book, RuleLevels.of(book.scenario()));
        boolean dying = book.found() > 0 && book.foundBefore() > 0;
        return book.fishIn() && (dying || choking) ? d.withFollowUp(Decision.FollowUp.CALL) : d;
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
            if (book.hoursSince(Pad.AMMONIA) > DueTests.DAILY_HOURS) {
                spoke.add(12);
            }
        }
        if (book.flowPercent() < LOW_FLOW_PERCENT) {
            spoke.add(13);
            decision = decision.withFilter(Decision.FilterCare.RINSE);
        }
        return new Ruling(decision, List.copyOf(spoke));
    }

    private static Decision withFish(Notebook book, Set<Integer> spoke) {
        RuleLevels levels = RuleLevels.of(book.scenario());
        double toxic = book.toxicAmmonia();
        double nitrite = book.value(Pad.NITRITE, 0);
        boolean away = book.hoursToNextVisit() > AWAY_HOURS + 1;
        boolean twice = book.hoursToNextVisit() <= TWICE_A_DAY_HOURS;
        double feed = 1;
        double change = 0;
        boolean again = false;
        if (airShort(book, levels) || !book.airSeenOn()) {
            spoke.add(8);
        }
        if (toxic > levels.stop()) {
            spoke.add(4);
            feed = 0;
            change = 0.5;
            again = !twice;
        } else if (toxic > levels.act()) {
            spoke.add(3);
            feed = away ? 0 : 0.5;
            change = 0.5;
        } else if (toxic > levels.watch()) {
            spoke.add(2);
            feed = twice ? 1 : 0.5;
            change = 0.25;
        }
        if (nitrite >= MEASURABLE) {
            spoke.add(5);
        }
        if ((nitrite > levels.nitriteShort() && shortOfChloride(book, nitrite)) || nitrite > levels.nitriteMuch()) {
            feed = Math.min(feed, 0.5);
            change = Math.max(change, 0.5);
            spoke.add(6);
        }
        if (away && (nitrite >= MEASURABLE || book.value(Pad.AMMONIA, 0) >= MEASURABLE)) {
            feed = 0;
            spoke.add(11);
        }
        feed = Math.min(feed, warmthAllows(book, spoke));
        if (spoke.contains(8)) {
            feed = 0;
        }
        change = RuledDoses.tempered(book, change);
        Decision d = Decision.LEAVE_ALONE
                .withChange(change)
                .withSalt(RuledDoses.salt(book, nitrite, change))
                .withBicarbonate(RuledDoses.bicarbonate(book, change, levels.stop()));
        if (d.bicarbonateG() > 0) {
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
        d = d.withFeed(feed);
        if (spareAir(book, spoke.contains(8))) {
            d = d.withAir(Decision.Air.SPARE);
        }
        return again ? d.withFollowUp(Decision.FollowUp.LOOK_AGAIN) : d;
    }

    private static boolean airShort(Notebook book, RuleLevels levels) {
        return book.oxygenMgPerL() < levels.oxygen();
    }

    /** Rule 6: whether chloride stays short with all the salt that is left. */
    private static boolean shortOfChloride(Notebook book, double nitrite) {
        double reached = RuledDoses.chloride(book) + RuledDoses.salt(book, nitrite, 0) / book.saltFor(1);
        return reached < SHORT_OF_CHLORIDE * Notebook.chlorideWanted(nitrite);
    }

    /**
     * Rule 10: the table ration is weighed for the warmth of the water, so it falls with it by itself. Outside the feeding
     * range there is none where fish no longer eat, and half while the water cools on: what is weighed now is too much by
     * evening.
     *
     * @return most that may be fed, share of the table ration
     */
    private static double warmthAllows(Notebook book, Set<Integer> spoke) {
        Scenario.Fish fish = book.scenario().fishHereOrPlanned();
        if (fish == null) {
            return 1;
        }
        double appetite = Species.byId(fish.species()).appetite().temperature(book.temperatureC());
        boolean cooling = book.cooledC() >= COOLING_C;
        if (appetite >= FEEDING_RANGE && !(cooling && appetite < 1)) {
            return 1;
        }
        spoke.add(10);
        return appetite < NO_APPETITE ? 0 : cooling ? 0.5 : 1;
    }

    /** Rule 8: spare air where air is short, and for the night where it has failed before. */
    private static boolean spareAir(Notebook book, boolean isShort) {
        boolean night = book.hoursToNextVisit() >= NIGHT_HOURS;
        return book.scenario().shelf().spareAirKlaPerHour() > 0 && (isShort || (night && book.airFailed()));
    }
}
