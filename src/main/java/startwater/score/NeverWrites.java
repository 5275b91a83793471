package startwater.score;

import java.util.EnumSet;
import java.util.Set;
import startwater.drill.Decision;
import startwater.strip.Pad;

/**
 * Tests once a day and writes nothing down. What the strip shows is acted on by the standing rules there and then, as if
 * nothing had been read or dosed before; by the next visit it is forgotten and the feeding goes on in full.
 */
final class NeverWrites implements Policy {
    private static final Set<Pad> DAILY = EnumSet.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH);
    private static final double ONCE_A_DAY_HOURS = 20;

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
        return Double.isNaN(book.value(Pad.AMMONIA)) ? Decision.LEAVE_ALONE : Policies.CAREFUL.decide(book);
    }

    @Override
    public boolean writes() {
        return false;
    }
}
