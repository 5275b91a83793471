package startwater.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;

/** Finds a drill by its id among those that were named, those that ship and those of one's own in the data folder. */
final class DrillFinder {
    private final Path own;

    private final List<Scenario> named;

    /** @param data the data folder @param named drills that come before all others */
    DrillFinder(Path data, List<Scenario> named) {
        this.own = data.resolve("scenarios");
        this.named = List.copyOf(named);
    }

    /** Where drills of one's own lie. */
    Path folder() {
        return own;
    }

    Optional<Scenario> find(String id) {
        return Stream.concat(named.stream(), DrillShelf.all().stream())
                .filter(s -> s.id().equals(id))
                .findFirst()
                .or(() -> files().stream()
                        .map(ScenarioReader::read)
                        .filter(Parsed::ok)
                        .map(Parsed::get)
                        .filter(s -> s.id().equals(id))
                        .findFirst());
    }

    private List<Path> files() {
        if (!Files.isDirectory(own)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(own)) {
            return all.filter(f -> f.toString().endsWith(ScenarioReader.ENDING))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            return List.of();
        }
    }
}
