package startwater.score;

import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;
import startwater.fish.Species;

/**
 * Levels at which the standing rules speak, for the kind of fish. Common practice, as the lessons teach it.
 *
 * @param watch rules 1 and 2, toxic ammonia, mg N/L
 * @param act rules 2 and 3
 * @param stop rules 3 and 4
 * @param nitriteShort rule 6 where chloride is short, mg N/L
 * @param nitriteMuch rule 6 whatever the chloride
 * @param oxygen rule 8, mg/L
 */
record RuleLevels(double watch, double act, double stop, double nitriteShort, double nitriteMuch, double oxygen) {
    private static final RuleLevels WARM_WATER = new RuleLevels(0.03, 0.06, 0.15, 1, 5, 5);
    private static final RuleLevels TROUT = new RuleLevels(0.012, 0.025, 0.05, 0.2, 1, 6);

    /** Those of the fish that are there or to come; of warm water where there are none. */
    static RuleLevels of(Scenario s) {
        Scenario.@Nullable Fish fish = s.fishHereOrPlanned();
        return fish != null && Species.byId(fish.species()).shape() == Species.Shape.TROUT ? TROUT : WARM_WATER;
    }

    /** The parameters of the words of a rule. @param salt g, or what stands in its place */
    Object[] told(Object salt, Object decision) {
        return new Object[] {salt, decision, watch, act, stop, nitriteShort, nitriteMuch, oxygen};
    }
}
