package startwater.score;

import startwater.drill.Calendar;
import startwater.drill.Decision;
import startwater.strip.Pad;

/**
 * Standing rule 14: dose, wait, prove it twice, stock a part by what was proved, and the rest while ammonia and nitrite
 * stay under 1 mg/L. Where fish die in a nursery the first proof must do.
 */
final class StartRules {
    private static final double GOAL = 2;
    private static final double TOP_UP_BELOW = 1;
    private static final double ALKALINITY_LEAST = 100;
    private static final double ALKALINITY_GOAL = 150;
    /** Nitrite over this, mg N/L, is diluted. */
    private static final double NITRITE_MOST = 15;
    /** Nitrate from which it is flushed before fish go in, mg N/L; the pad counts nitrite too. */
    private static final double NITRATE_MOST = 50;

    private static final double FLUSH = 0.5;
    private static final double LEAST_SHARE = 0.2;
    private static final double MOST_SHARE = 0.5;
    /** Feed of the first days after the first fish. */
    private static final double HALF_RATION = 0.5;

    private static final int PROOFS = 2;
    /** Deaths in a nursery, share of the planned fish, from which they must not wait any longer. */
    private static final double PRESSED = 0.005;

    private StartRules() {}

    /** Without fish in it. */
    static Decision fishless(Notebook book) {
        Stocking stocking = book.stocking();
        Decision d = buffered(book, Decision.LEAVE_ALONE);
        if (!stocking.mediaOfNursery() && stocking.mediaLeft() > 0) {
            d = d.withRipeMedia(stocking.mediaLeft());
        }
        if (ready(book)) {
            return first(book, d);
        }
        double ammonia = book.value(Pad.AMMONIA);
        if (ammonia < TOP_UP_BELOW) {
            double grams = Math.min(book.ammoniumLeftG(), book.ammoniumFor(GOAL - ammonia));
            d = d.withAmmoniumChloride(Math.rint(10 * grams) / 10);
        }
        return book.value(Pad.NITRITE, 0) > NITRITE_MOST ? d.withChange(FLUSH) : d;
    }

    private static Decision buffered(Notebook book, Decision d) {
        double alkalinity = book.value(Pad.ALKALINITY);
        return alkalinity < ALKALINITY_LEAST
                ? d.withBicarbonate(
                        Math.rint(Math.min(book.bicarbonateLeftG(), book.bicarbonateFor(ALKALINITY_GOAL - alkalinity))))
                : d;
    }

    private static boolean ready(Notebook book) {
        Stocking stocking = book.stocking();
        if (stocking.toCome() == 0 || !fresh(book)) {
            return false;
        }
        return stocking.passes() >= (pressed(stocking) ? 1 : PROOFS) && stocking.provedShare() >= LEAST_SHARE / 2;
    }

    /** Whether both were read at this visit: nobody stocks on yesterday's strip. */
    private static boolean fresh(Notebook book) {
        return book.hoursSince(Pad.AMMONIA) == 0 && book.hoursSince(Pad.NITRITE) == 0;
    }

    private static boolean pressed(Stocking stocking) {
        return stocking.lostBeside() >= Math.max(1, PRESSED * stocking.planned());
    }

    /** The first fish: as many as were proved, a fifth to a half, into flushed water. */
    private static Decision first(Notebook book, Decision d) {
        Stocking stocking = book.stocking();
        double share = Math.min(MOST_SHARE, Math.max(LEAST_SHARE, stocking.provedShare()));
        double flush = book.value(Pad.NITRATE, 0) > NITRATE_MOST ? RuledDoses.tempered(book, FLUSH) : 0;
        return moved(stocking, d.withChange(flush), share).withFeed(HALF_RATION);
    }

    /** With fish in it and more to come: as many again, while the water stays calm. @param d what the other rules say */
    static Decision ramp(Notebook book, Decision d) {
        Stocking stocking = book.stocking();
        boolean calm = stocking.calm() >= (pressed(stocking) ? 1 : PROOFS) && d.change() == 0 && d.feed() == 1;
        if (stocking.toCome() == 0 || !calm || !fresh(book) || book.hoursToNextVisit() * 60 > Calendar.DAY + 60) {
            boolean settling = stocking.steps() == 1 && stocking.calm() < PROOFS;
            return settling ? d.withFeed(Math.min(d.feed(), HALF_RATION)) : d;
        }
        double present = (double) book.alive() / stocking.planned();
        return moved(stocking, d, Math.min(1, Math.max(LEAST_SHARE, present)));
    }

    /** Media go along with the fish that lived by them. */
    private static Decision moved(Stocking stocking, Decision d, double share) {
        Decision stocked = d.withStock(share);
        double of = stocking.toCome() > 0 ? (double) stocking.arriving(share) / stocking.toCome() : 0;
        return stocking.mediaOfNursery() ? stocked.withRipeMedia(of) : stocked;
    }
}
