package startwater.drill;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario.Fish;
import startwater.drill.Scenario.Happening;
import startwater.drill.Scenario.Keeper;
import startwater.drill.Scenario.Nursery;
import startwater.drill.Scenario.Shelf;
import startwater.drill.Scenario.Source;
import startwater.drill.Scenario.Start;
import startwater.drill.Scenario.Water;

/** A drill with some of its parts otherwise: {@code drill.change().keeper(other).made()}. What is not named stays. */
public final class ScenarioChange {
    private final Scenario from;
    private List<String> exposes;
    private Water system;
    private @Nullable Fish fish;
    private @Nullable Fish planned;
    private Source source;
    private Start start;
    private Map<Unknown, Prior> unknowns;
    private Keeper keeper;
    private Shelf shelf;
    private List<Happening> events;
    private @Nullable Nursery nursery;

    ScenarioChange(Scenario from) {
        this.from = from;
        exposes = from.exposes();
        system = from.system();
        fish = from.fish();
        planned = from.plannedFish();
        source = from.source();
        start = from.start();
        unknowns = from.unknowns();
        keeper = from.keeper();
        shelf = from.shelf();
        events = from.events();
        nursery = from.nursery();
    }

    /** The ids of the habits that do badly here. */
    public ScenarioChange exposes(List<String> habits) {
        exposes = habits;
        return this;
    }

    public ScenarioChange system(Water water) {
        system = water;
        return this;
    }

    /** The fish that are in it and those that are to come, or null for either. */
    public ScenarioChange fish(@Nullable Fish here, @Nullable Fish toCome) {
        fish = here;
        planned = toCome;
        return this;
    }

    public ScenarioChange source(Source water) {
        source = water;
        return this;
    }

    public ScenarioChange start(Start other) {
        start = other;
        return this;
    }

    /** All priors that differ from the usual ones. */
    public ScenarioChange unknowns(Map<Unknown, Prior> priors) {
        unknowns = priors;
        return this;
    }

    public ScenarioChange keeper(Keeper other) {
        keeper = other;
        return this;
    }

    public ScenarioChange shelf(Shelf other) {
        shelf = other;
        return this;
    }

    /** All that happens by itself. */
    public ScenarioChange events(List<Happening> happenings) {
        events = happenings;
        return this;
    }

    /** The system that runs beside, or null for none. */
    public ScenarioChange nursery(@Nullable Nursery other) {
        nursery = other;
        return this;
    }

    public Scenario made() {
        return new Scenario(
                from.id(),
                from.number(),
                from.text(),
                from.skills(),
                exposes,
                from.rules(),
                system,
                fish,
                planned,
                source,
                start,
                unknowns,
                keeper,
                shelf,
                events,
                nursery);
    }
}
