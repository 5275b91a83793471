package startwater.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import startwater.content.Library;
import startwater.content.OwnDrills;
import startwater.drill.Scenario;

/** Finds a drill by its id among those that were named, those that ship and those of one's own in the data folder. */
final class DrillFinder {
    private final OwnDrills own;
    private final List<Scenario> named;

    /** @param data the data folder @param named drills that come before all others */
    DrillFinder(Path data, List<Scenario> named) {
        this.own = new OwnDrills(data.resolve("scenarios"), Library.shipped());
        this.named = List.copyOf(named);
    }

    /** Where drills of one's own lie. */
    Path folder() {
        return own.folder();
    }

    Optional<Scenario> find(String id) {
        return named.stream().filter(s -> s.id().equals(id)).findFirst().or(() -> own.find(id));
    }
}
