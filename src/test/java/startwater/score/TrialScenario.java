package startwater.score;

import java.util.List;
import java.util.Map;
import startwater.drill.Prior;
import startwater.drill.Scenario;
import startwater.drill.Unknown;

/** A second week in code, for tests that want to bend it. */
final class TrialScenario {
    private TrialScenario() {}

    static Scenario secondWeek(double chloride) {
        return new Scenario(
                "second-week",
                2,
                Map.of(),
                List.of(),
                List.of(),
                List.of(5),
                new Scenario.Water(2400, "moving-bed", 32, 2.0, 0.1, 0.4, 600, 0, 27, 2),
                new Scenario.Fish("channel-catfish", 240, 13.5, 32, List.of(8.0, 12.0, 16.0)),
                null,
                new Scenario.Source(26, 7.6, 110, 0, 1, chloride, 0, 0, 0),
                new Scenario.Start(8, List.of(new Scenario.Before(0, 0.5, 0.1, 0, 0, 0))),
                Map.of(
                        Unknown.AOB_SEED,
                        new Prior.LogNormal(3e-3, 0.8),
                        Unknown.NOB_SEED,
                        new Prior.LogNormal(1.2e-3, 0.8),
                        Unknown.SOURCE_CHLORIDE,
                        new Prior.Uniform(chloride * 0.8, chloride * 1.2),
                        Unknown.SOURCE_ALKALINITY,
                        new Prior.Uniform(60, 160)),
                new Scenario.Keeper(List.of(7.0, 17.0), 14, List.of(), 8, List.of(0, 2, 4, 6, 8, 12, 16, 20)),
                new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false),
                List.of());
    }
}
