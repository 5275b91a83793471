package startwater.cli;

import java.util.List;
import java.util.Map;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;
import startwater.text.Texts;

/** The drills a command can find: those that ship by id, others by path. */
final class DrillShelf {
    private DrillShelf() {}

    static List<Scenario> all() {
        return List.of(stand());
    }

    /** The drill of this id or path. @throws WrongUseException where there is none or it is broken */
    static Scenario find(String idOrPath, Texts texts) {
        Scenario s = stand();
        if (s.id().equals(idOrPath)) {
            return s;
        }
        throw new WrongUseException(texts.text("cli.noDrill", idOrPath, s.id()));
    }

    private static Scenario stand() {
        return new Scenario(
                "second-week",
                2,
                Map.of(
                        "en",
                        new Scenario.Words(
                                "The hungry second week", "a", "b", "c", "d", "A story.", "A goal.", "A debrief.")),
                List.of(),
                List.of(),
                List.of(5),
                new Scenario.Water(2400, "moving-bed", 32, 2.0, 0.1, 0.4, 600, 0, 27, 2),
                new Scenario.Fish("channel-catfish", 240, 13.5, 32, List.of(8.0, 12.0, 16.0)),
                null,
                new Scenario.Source(26, 7.6, 110, 0, 1, 15, 0, 0, 0),
                new Scenario.Start(8, List.of(new Scenario.Before(0, 0.5, 0.1, 0, 0, 0))),
                Map.of(
                        Unknown.AOB_SEED,
                        new Prior.LogNormal(3e-3, 0.8),
                        Unknown.NOB_SEED,
                        new Prior.LogNormal(1.2e-3, 0.8)),
                new Scenario.Keeper(List.of(7.0, 17.0), 14, List.of(), 8, List.of(0, 2, 4, 6, 8, 12, 16, 20)),
                new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false),
                List.of());
    }
}
