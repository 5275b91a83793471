package startwater.content;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Collects the faults of one file. Not for several threads. */
final class Faults {
    /** More faults than this in one file help nobody. */
    static final int MOST = 100;

    private final String file;
    private final int linesAbove;
    private final List<Fault> all;

    private Faults(String file, int linesAbove, List<Fault> all) {
        this.file = file;
        this.linesAbove = linesAbove;
        this.all = all;
    }

    static Faults of(String file) {
        return new Faults(file, 0, new ArrayList<>());
    }

    /** The same collection for a part of the file that starts below this many lines. */
    Faults below(int lines) {
        return new Faults(file, linesAbove + lines, all);
    }

    /**
     * Notes a fault.
     *
     * @param line line within the part, from 1; 0 for the line above it, or for the file as a whole, whose first line is named
     * @param values placeholder, value, placeholder, value ...
     */
    void add(int line, Complaint complaint, Object... values) {
        if (all.size() == MOST) {
            all.add(new Fault(
                    file,
                    Math.max(1, line + linesAbove),
                    Complaint.MORE_FAULTS,
                    Map.of("limit", String.valueOf(MOST))));
        }
        if (all.size() > MOST) {
            return;
        }
        Map<String, String> named = new HashMap<>();
        for (int i = 0; i < values.length; i += 2) {
            named.put((String) values[i], Shown.value(values[i + 1]));
        }
        all.add(new Fault(file, Math.max(1, line + linesAbove), complaint, named));
    }

    String file() {
        return file;
    }

    boolean none() {
        return all.isEmpty();
    }

    int count() {
        return all.size();
    }

    /** All so far, in order of their lines. */
    List<Fault> list() {
        return all.stream().sorted(Fault.IN_ORDER).toList();
    }
}
