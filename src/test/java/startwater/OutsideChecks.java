package startwater;

import java.util.Map;
import java.util.TreeMap;

/** What the tests of a run found when they compared a computed value with a published one, by reference table. */
final class OutsideChecks {
    private static final Map<String, Map<String, Outcome>> BY_TABLE = new TreeMap<>();

    private OutsideChecks() {}

    /** One comparison: how far off, and how far it may be, in the unit of the value. */
    record Outcome(double off, double allowed) {
        /** 0 where they agree, 1 at the edge of what is allowed. */
        double shareOfAllowed() {
            return allowed > 0 ? off / allowed : off == 0 ? 0 : Double.POSITIVE_INFINITY;
        }
    }

    static synchronized void keep(ReferenceTable table, String what, double off, double allowed) {
        BY_TABLE.computeIfAbsent(table.name(), name -> new TreeMap<>()).put(what, new Outcome(off, allowed));
    }

    /** The outcomes so far by table and by value compared. */
    static synchronized Map<String, Map<String, Outcome>> all() {
        Map<String, Map<String, Outcome>> copy = new TreeMap<>();
        BY_TABLE.forEach((name, outcomes) -> copy.put(name, Map.copyOf(outcomes)));
        return copy;
    }
}
