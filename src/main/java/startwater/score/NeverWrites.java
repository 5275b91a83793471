package startwater.score;

import java.util.EnumSet;
import java.util.Set;
import startwater.drill.Decision;
import startwater.strip.Pad;

/**
 * Tests once a day and writes nothing down. What the strip shows is acted on by the standing rules there and then, as if
 * nothing had been read or dosed before; by the next visit it is forgotten and the feeding goes on in full. A proof takes
 * two days in writing: without it, fish go in when today's strip shows none of either, whether a dose was eaten or
 * none was given.
 */
final class NeverWrites implements Policy {
    private static final Set<Pad> DAILY = EnumSet.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH);
    private static final double ONCE_A_DAY_HOURS = 20;
    /** Readings that look like nothing, and like little, mg N/L. */
    private static final double NOTHING = 0.25;

    private static final double LITTLE = 1;
    private static final double HALF = 0.5;

    @Override
    public String id() {
        return "never-writes";
    }

    @Override
    public Set<Pad> tests(Notebook book) {
        return book.hoursSince(Pad.AMMONIA) >= ONCE_A_DAY_HOURS ? DAILY : EnumSet.noneOf(Pad.class);
    }

    @Override
    public Decision decide(Notebook book) {
        if (Double.isNaN(book.value(Pad.AMMONIA))) {
            return Decision.LEAVE_ALONE;
        }
        double enough = book.fishIn() ? LITTLE : NOTHING;
        boolean clear = book.value(Pad.AMMONIA) <= enough && book.value(Pad.NITRITE) <= enough;
        return clear && book.stocking().toCome() > 0
                ? Decision.LEAVE_ALONE.withStock(HALF)
                : Policies.CAREFUL.decide(book);
    }

    @Override
    public boolean writes() {
        return false;
    }
}
