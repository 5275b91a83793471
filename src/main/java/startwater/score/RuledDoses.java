package startwater.score;

import startwater.strip.Pad;

/** What rules 5, 7 and 9 say of grams and litres, by the notebook. */
final class RuledDoses {
    /** Rule 5: chloride that misses less than this share of what is wanted is left as it is: the strip is no sharper. */
    private static final double SHORT_SHARE = 0.1;

    private static final double LOW_ALKALINITY = 80;
    /** From under 80 this never passes the 120 that is aimed at. */
    private static final double ALKALINITY_STEP = 30;

    private static final double BUFFER_APART_HOURS = 20;
    private static final double LEAST_ALKALINITY = 10;
    private static final double MOST_CHANGE = 0.5;
    private static final double TEMPERATURE_STEP_C = 2;

    private RuledDoses() {}

    /** Chloride last read, carried forward; where it never was, what the source brings, mg/L. */
    static double chloride(Notebook book) {
        return book.value(Pad.CHLORIDE, book.scenario().source().chlorideMgPerL());
    }

    /**
     * Rule 5: salt that lifts chloride to the greater of 100 mg/L and ten to one on the ion, after the change that goes
     * with it: so what a change carries off is put back, and no more. At most what is left on the shelf, g.
     */
    static double salt(Notebook book, double nitrite, double change) {
        if (nitrite < StandingRules.MEASURABLE) {
            return 0;
        }
        double wanted = Notebook.chlorideWanted(nitrite);
        double source = book.scenario().source().chlorideMgPerL();
        double missing = wanted - (chloride(book) + change * (source - chloride(book)));
        return missing > SHORT_SHARE * wanted ? Math.rint(Math.min(book.saltLeftG(), book.saltFor(missing))) : 0;
    }

    /**
     * Rule 7: towards 120 at 30 a day at most, g; none where the aired pH would then turn ammonia toxic.
     *
     * @param stop toxic ammonia over which rule 4 speaks, mg N/L
     */
    static double bicarbonate(Notebook book, double change, double stop) {
        double alkalinity = book.value(Pad.ALKALINITY);
        if (!(alkalinity < LOW_ALKALINITY) || book.hoursSinceBuffer() < BUFFER_APART_HOURS) {
            return 0;
        }
        double after = book.toxicAmmonia()
                * (1 - change)
                * (alkalinity + ALKALINITY_STEP)
                / Math.max(LEAST_ALKALINITY, alkalinity);
        return after > stop ? 0 : Math.rint(Math.min(book.bicarbonateLeftG(), book.bicarbonateFor(ALKALINITY_STEP)));
    }

    /** Rule 9: at most half at once, and no jump of more than two degrees. */
    static double tempered(Notebook book, double change) {
        double gap = Math.abs(book.scenario().source().temperatureC() - book.temperatureC());
        double most = gap * MOST_CHANGE > TEMPERATURE_STEP_C ? TEMPERATURE_STEP_C / gap : MOST_CHANGE;
        return Math.min(change, most);
    }
}
