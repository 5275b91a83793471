package startwater.score;

import java.util.EnumSet;
import java.util.Set;
import startwater.drill.Scenario;
import startwater.strip.Pad;

/** Rules 12 and 15: what is to be tested when, and which reading is read again. */
final class DueTests {
    static final double DAILY_HOURS = 20;
    private static final double THIRD_DAY_HOURS = 68;
    /** Where a rule holds feed back for this kind of fish, rule 3 or 6, or fish were found dead. */
    private static final double PRESSING_HOURS = 9;

    /** Nitrogen over this many times what can be there does not fit, nor does a fall to the same share of it. */
    private static final double ODD_FACTOR = 2;

    private static final double ODD_FALL_SHARE = 0.25;
    /** A filter may clear so much in a day, mg N/L; a greater fall does not fit. */
    private static final double MOST_CLEARED = 4;

    private static final double ODD_PH = 0.8;
    /** The strip's own blur, mg N/L. */
    private static final double BLUR = 0.5;

    private DueTests() {}

    /**
     * Ammonia, nitrite and pH daily; alkalinity and chloride every third day; the first three sooner while things press.
     * Everything where fish were found dead.
     */
    static Set<Pad> pads(Notebook book) {
        EnumSet<Pad> pads = EnumSet.noneOf(Pad.class);
        boolean dead = book.found() > 0;
        RuleLevels levels = RuleLevels.of(book.scenario());
        boolean pressing =
                book.toxicAmmonia() > levels.act() || book.value(Pad.NITRITE, 0) > levels.nitriteShort() || dead;
        if (book.hoursSince(Pad.AMMONIA) >= (pressing ? PRESSING_HOURS : DAILY_HOURS)) {
            pads.addAll(EnumSet.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH));
            if (!book.fishIn()) {
                pads.add(Pad.NITRATE);
            }
        }
        double seldom = dead ? PRESSING_HOURS : THIRD_DAY_HOURS;
        if (book.hoursSince(Pad.ALKALINITY) >= seldom) {
            pads.add(Pad.ALKALINITY);
        }
        if (book.fishIn() && book.hoursSince(Pad.CHLORIDE) >= seldom) {
            pads.add(Pad.CHLORIDE);
        }
        return pads;
    }

    /**
     * Whether a reading of this visit does not fit the books: more nitrogen in ammonia and nitrite than was there and than
     * all feed can have made since, far less than a filter can have cleared, or another pH. Without books all fits.
     */
    static boolean odd(Notebook book) {
        double before = book.expected(Pad.AMMONIA) + book.expected(Pad.NITRITE);
        double now = book.value(Pad.AMMONIA) + book.value(Pad.NITRITE);
        double fed = book.fishIn() ? load(book) * Math.min(3, book.hoursSincePreviousVisit() / 24) : 0;
        boolean tooHigh = now > ODD_FACTOR * (before + fed) + BLUR;
        boolean tooLow = before - now > MOST_CLEARED && now < ODD_FALL_SHARE * before;
        return tooHigh || tooLow || Math.abs(book.value(Pad.PH) - book.expected(Pad.PH)) > ODD_PH;
    }

    /** Ammonia that the full ration makes in a day, mg N/L. */
    private static double load(Notebook book) {
        Scenario.Fish fish = book.scenario().fishHereOrPlanned();
        return fish == null ? 0 : Stocking.loadMgPerLPerDay(book.scenario(), fish);
    }
}
