package startwater.score;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;

/** Beliefs are kept by log, since each visit builds on the one before. What is kept never changes a result. */
final class BeliefMemory {
    private static final int KEPT = 192;
    private static final int SCENARIOS_KEPT = 3;

    private record Key(Scenario scenario, DrillLog log, int waters) {}

    /** Works a belief out. */
    interface Maker {
        Belief made(Scenario scenario, DrillLog log, int waters);
    }

    private final Map<Scenario, Plausible[]> prior = latest(SCENARIOS_KEPT);
    private final Map<Key, Belief> kept = latest(KEPT);

    private static <K, V> Map<K, V> latest(int most) {
        return Collections.synchronizedMap(new LinkedHashMap<>(32, 0.75f, true) {
            @Override
            protected boolean removeEldestEntry(Map.Entry<K, V> eldest) {
                return size() > most;
            }
        });
    }

    /** The tanks drawn for a scenario; not to be changed. Two threads may draw the same; either result serves. */
    Plausible[] drawn(Scenario scenario, Function<Scenario, Plausible[]> maker) {
        Plausible[] known = prior.get(scenario);
        if (known == null) {
            known = maker.apply(scenario);
            prior.put(scenario, known);
        }
        return known;
    }

    Belief belief(Scenario scenario, DrillLog log, int waters, Maker maker) {
        Key key = new Key(scenario, log, waters);
        Belief known = kept.get(key);
        if (known == null) {
            known = maker.made(scenario, log, waters);
            kept.put(key, known);
        }
        return known;
    }

    void clear() {
        kept.clear();
        prior.clear();
    }
}
