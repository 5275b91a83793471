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
        return secondWeek("second-week", chloride, List.of());
    }

    /** The same, with the keeper gone for three days from the afternoon of the first. */
    static Scenario awayAfter(double chloride) {
        return secondWeek("second-week-away", chloride, List.of(new Scenario.Away(8.5, 11.2)));
    }

    /** The same, with the keeper gone for nearly a week. */
    static Scenario awayAWeek(double chloride) {
        return secondWeek("second-week-away-long", chloride, List.of(new Scenario.Away(8.5, 14.2)));
    }

    private static Scenario secondWeek(String id, double chloride, List<Scenario.Away> away) {
        return secondWeek(id, chloride, away, List.of());
    }

    private static Scenario secondWeek(
            String id, double chloride, List<Scenario.Away> away, List<Scenario.Happening> events) {
        return new Scenario(
                id,
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
                new Scenario.Keeper(List.of(7.0, 17.0), 14, away, 8, List.of(0, 2, 4, 6, 8, 12, 16, 20)),
                new Scenario.Shelf(5000, 3000, 0, 0, 100, 40, 10, true, false),
                events);
    }

    /** The same with a blower that stops twice in the two weeks. */
    static Scenario oldBlower() {
        return failing(Scenario.Happening.Kind.AIR_OFF, 10.875, 13.875);
    }

    /** The same where something happens at these days. */
    static Scenario failing(Scenario.Happening.Kind kind, double... days) {
        return secondWeek(
                "second-week-failing",
                15,
                List.of(),
                java.util.Arrays.stream(days)
                        .mapToObj(day -> new Scenario.Happening(day, kind, 0, 20))
                        .toList());
    }

    /** A tank of catfish in cold water, not fed for its warmth but by habit. */
    static Scenario cold() {
        Scenario s = secondWeek("second-week-cold", 15, List.of());
        Scenario.Water w = s.system();
        Scenario.Water cold = new Scenario.Water(
                w.volumeL(),
                w.media(),
                w.mediaAreaM2(),
                w.airKlaPerHour(),
                w.surfaceKlaPerHour(),
                w.carbonDioxideRatio(),
                w.roomCarbonDioxidePpm(),
                w.altitudeM(),
                15,
                w.temperatureRatePerDay());
        Scenario.Source o = s.source();
        Scenario.Source water = new Scenario.Source(
                15,
                o.ph(),
                o.alkalinityMgPerL(),
                o.ammoniaMgPerL(),
                o.nitrateMgPerL(),
                o.chlorideMgPerL(),
                o.freeChlorineMgPerL(),
                o.combinedChlorineMgPerL(),
                o.statedChlorineMgPerL());
        return s.change().system(cold).source(water).made();
    }

    /** The same system without fish, a week after its first ammonia. */
    static Scenario fishless() {
        Scenario s = secondWeek("second-week-fishless", 15, List.of());
        return s.change()
                .fish(null, s.fish())
                .start(new Scenario.Start(8, List.of(new Scenario.Before(0, 0, 0, 25, 0, 0))))
                .shelf(new Scenario.Shelf(5000, 3000, 0, 200, 100, 40, 10, true, false))
                .made();
    }
}
