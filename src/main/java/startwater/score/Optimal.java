package startwater.score;

import java.util.Set;
import startwater.drill.Decision;
import startwater.drill.DrillLog;
import startwater.drill.VisitRecord;
import startwater.strip.Pad;

/**
 * Tests as the standing rules do and, where the drill asks its learner, takes the option with the least expected loss over
 * the tanks that fit its log. Between those visits it keeps the standing rules, as every option is followed up when judged.
 */
record Optimal(int waters) implements Policy {
    static final String ID = "optimal";
    /** Waters that the options are tried on; each carries four strata of sensitivity. */
    static final int WATERS = 16;

    Optimal() {
        this(WATERS);
    }

    @Override
    public String id() {
        return ID;
    }

    @Override
    public Set<Pad> tests(Notebook book) {
        return Policies.CAREFUL.tests(book);
    }

    @Override
    public Decision decide(Notebook book) {
        return Policies.CAREFUL.decide(book);
    }

    @Override
    public Decision decide(Notebook book, DrillLog log, boolean planned) {
        Decision rules = decide(book);
        if (!planned) {
            return rules;
        }
        VisitRecord open = log.last();
        DrillLog decided = log.size() == 1 ? DrillLog.EMPTY : log.upTo(log.size() - 2);
        Case c = new Case(book.scenario(), decided.plus(open.decided(rules, null)));
        Scored scored = Judge.score(c, waters);
        return scored.options().get(scored.losses().best());
    }
}
