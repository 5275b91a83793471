package startwater.score;

import java.util.EnumSet;
import java.util.Set;
import startwater.strip.Pad;

/** Rules 12 and 15: what is to be tested when, and which reading is read again. */
final class DueTests {
    private static final double DAILY_HOURS = 20;
    private static final double THIRD_DAY_HOURS = 68;
    /** Where rule 4 or 6 holds, or fish were found dead. */
    private static final double PRESSING_HOURS = 9;

    private static final double PRESSING_TOXIC = 0.06;
    private static final double PRESSING_NITRITE = 1;
    /** A reading this many times what the books say, or as many times less, does not fit. */
    private static final double ODD_FACTOR = 4;

    private static final double ODD_PH = 0.8;
    /** Readings under this tell each other apart badly, mg N/L. */
    private static final double BLUR = 0.25;

    private DueTests() {}

    /**
     * Ammonia, nitrite and pH daily; alkalinity and chloride every third day; the first three sooner while things press.
     * Everything where fish were found dead.
     */
    static Set<Pad> pads(Notebook book) {
        EnumSet<Pad> pads = EnumSet.noneOf(Pad.class);
        boolean dead = book.found() > 0;
        boolean pressing =
                book.toxicAmmonia() > PRESSING_TOXIC || book.value(Pad.NITRITE, 0) > PRESSING_NITRITE || dead;
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

    /** Whether a reading of this visit does not fit what the books say. Without books everything fits. */
    static boolean odd(Notebook book) {
        return odd(book, Pad.AMMONIA)
                || odd(book, Pad.NITRITE)
                || Math.abs(book.value(Pad.PH) - book.expected(Pad.PH)) > ODD_PH;
    }

    private static boolean odd(Notebook book, Pad pad) {
        double expected = Math.max(BLUR, book.expected(pad));
        double read = Math.max(BLUR, book.value(pad));
        return read > ODD_FACTOR * expected || expected > ODD_FACTOR * read;
    }
}
