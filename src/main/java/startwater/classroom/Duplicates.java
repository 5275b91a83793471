package startwater.classroom;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import startwater.content.ContentHash;
import startwater.record.AttemptCheck;

/** Attempts that are another learner's. Both sides are told: who copied from whom cannot be seen. */
final class Duplicates {
    private static final int FEW = 3;

    private Duplicates() {}

    static List<HandedIn> flagged(List<HandedIn> all) {
        Map<String, List<Integer>> ids = new HashMap<>();
        Map<String, List<Integer>> logs = new HashMap<>();
        Map<String, List<Integer>> times = new HashMap<>();
        for (int i = 0; i < all.size(); i++) {
            Attempt a = all.get(i).attempt();
            if (a == null) {
                continue;
            }
            put(ids, a.id().toString(), i);
            AttemptCheck check = all.get(i).check();
            if (check != null && !a.steps().isEmpty() && check.difference().isEmpty()) {
                put(logs, check.key(last(check)) + a.variant() + a.whole(), i);
            }
            if (a.steps().size() >= FEW) {
                put(times, a.scenario().id() + a.steps().stream().map(Step::at).toList(), i);
            }
        }
        List<HandedIn> out = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            List<Finding> more = new ArrayList<>();
            if (!say(all, ids, Finding.Kind.SAME_ATTEMPT, i, more)
                    && !say(all, times, Finding.Kind.SAME_TIMES, i, more)) {
                say(all, logs, Finding.Kind.SAME_LOG, i, more);
            }
            out.add(more.isEmpty() ? all.get(i) : all.get(i).with(more));
        }
        return out;
    }

    private static startwater.drill.VisitRecord last(AttemptCheck check) {
        return check.decided().get(check.decided().size() - 1);
    }

    private static void put(Map<String, List<Integer>> map, String key, int at) {
        map.computeIfAbsent(key, k -> new ArrayList<>()).add(at);
    }

    private static boolean say(
            List<HandedIn> all, Map<String, List<Integer>> map, Finding.Kind kind, int at, List<Finding> more) {
        String learner = all.get(at).learner();
        for (List<Integer> alike : map.values()) {
            if (alike.contains(at)) {
                for (int other : alike) {
                    if (!all.get(other).learner().equals(learner)) {
                        more.add(new Finding(kind, all.get(other).learner()));
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** One file handed in twice counts once, and that is said: the same attempt of the same learner. */
    static List<HandedIn> once(List<HandedIn> all) {
        Map<String, HandedIn> kept = new java.util.LinkedHashMap<>();
        for (HandedIn h : all) {
            Attempt a = h.attempt();
            String key = a == null ? h.file() + kept.size() : h.learner() + a.id() + content(h);
            HandedIn first = kept.putIfAbsent(key, h);
            if (first != null) {
                kept.put(key, first.with(List.of(new Finding(Finding.Kind.TWICE, h.file()))));
            }
        }
        return List.copyOf(kept.values());
    }

    private static String content(HandedIn h) {
        Attempt a = h.attempt();
        return a == null ? "" : a.steps().size() + " " + a.mark() + h.findings() + ContentHash.of(a.scenario());
    }
}
