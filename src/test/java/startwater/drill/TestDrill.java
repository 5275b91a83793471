package startwater.drill;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario.Happening;
import startwater.drill.Scenario.Happening.Kind;

/** A drill in code that a test can bend: a ripe tank of 1,000 L, visited at 7 and 17 h, from day 2 on for ten days. */
final class TestDrill {
    static final int FISH = 200;
    private static final List<Double> MEALS = List.of(8.0, 12.0, 16.0);

    private final List<Happening> events = new ArrayList<>();
    private String media = "moving-bed";
    private Scenario.@Nullable Fish fish = fish(FISH, 12);
    private Scenario.@Nullable Fish planned;
    private Scenario.@Nullable Nursery nursery;
    private @Nullable Double roomC;
    private double exchangePerDay;
    private double evaporationLPerDay;
    private double ripeMediaShare;
    private double spareAir;
    private double seed = 0.4;

    static TestDrill drill() {
        return new TestDrill();
    }

    static Scenario.Fish fish(int count, double massG) {
        return new Scenario.Fish("nile-tilapia", count, massG, 32, MEALS);
    }

    TestDrill media(String id) {
        media = id;
        return this;
    }

    TestDrill room(double celsius) {
        roomC = celsius;
        return this;
    }

    TestDrill inflow(double exchange, double evaporationL) {
        exchangePerDay = exchange;
        evaporationLPerDay = evaporationL;
        return this;
    }

    TestDrill spareAir(double klaPerHour) {
        spareAir = klaPerHour;
        return this;
    }

    TestDrill seed(double share) {
        seed = share;
        return this;
    }

    TestDrill happens(double day, Kind kind, double hours, double amount) {
        events.add(new Happening(day, kind, hours, amount));
        return this;
    }

    /** No fish yet, so many to come, and a bag of ripe media. */
    TestDrill planned(int count, double massG, double bagShare) {
        fish = null;
        planned = fish(count, massG);
        ripeMediaShare = bagShare;
        return this;
    }

    /** The fish to come live in a nursery of 300 L with a sponge. */
    TestDrill nursery(int count, double massG) {
        planned(count, massG, 0);
        Scenario.Water water = new Scenario.Water(300, "sponge", 8, 6, 0.1, 0.4, 600, 0, 27, 2);
        nursery = new Scenario.Nursery(water, fish(count, massG), 0.4, 0.3, 0.5);
        return this;
    }

    Scenario scenario() {
        return new Scenario(
                "test-drill",
                1,
                Map.of(),
                List.of(),
                List.of(),
                List.of(1),
                new Scenario.Water(
                        1000, media, 20, 4, 0.1, 0.4, 600, 0, 27, 2, roomC, exchangePerDay, evaporationLPerDay, 0),
                fish,
                planned,
                new Scenario.Source(25, 7.6, 120, 0, 1, 60, 0, 0, 0),
                new Scenario.Start(2, List.of(new Scenario.Before(0, 0.4, 0.1, 0, 0, 0))),
                Map.of(Unknown.AOB_SEED, new Prior.Known(seed), Unknown.NOB_SEED, new Prior.Known(seed)),
                new Scenario.Keeper(List.of(7.0, 17.0), 10, List.of(), 8, List.of(0, 2, 4, 6)),
                new Scenario.Shelf(1000, 1000, 0, 100, 0, 40, 5, true, false, ripeMediaShare, spareAir),
                events,
                nursery);
    }

    /** The hidden tank at the first visit. */
    TankSim tank() {
        return tank(scenario());
    }

    static TankSim tank(Scenario s) {
        return TankSim.atFirstVisit(s, Calendar.of(s), TankDraw.hidden(s, 1), new startwater.tank.FastStepper());
    }

    /** The minute of an hour of a day. */
    static int at(int day, int hour) {
        return day * Calendar.DAY + hour * 60;
    }
}
