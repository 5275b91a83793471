package startwater.drill;

import java.util.List;
import java.util.stream.Stream;

/** The log of a run: its visits so far, oldest first. Immutable. */
public record DrillLog(List<VisitRecord> visits) {
    public static final DrillLog EMPTY = new DrillLog(List.of());

    public DrillLog {
        visits = List.copyOf(visits);
    }

    public DrillLog plus(VisitRecord visit) {
        return new DrillLog(Stream.concat(visits.stream(), Stream.of(visit)).toList());
    }

    /** The log up to the visit with this place in the list, that visit included. */
    public DrillLog upTo(int place) {
        return new DrillLog(visits.subList(0, place + 1));
    }

    public VisitRecord last() {
        return visits.get(visits.size() - 1);
    }

    public int size() {
        return visits.size();
    }
}
