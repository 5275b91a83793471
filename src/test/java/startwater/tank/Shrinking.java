package startwater.tank;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Finds a smallest part of a failing list that still fails, so that a random failure can be read. */
final class Shrinking {
    private Shrinking() {}

    /** @param fails must hold for {@code all} @return a list from which no single entry can go */
    static <T> List<T> smallest(List<T> all, Predicate<List<T>> fails) {
        List<T> kept = new ArrayList<>(all);
        for (int size = Math.max(1, kept.size() / 2); size >= 1; size /= 2) {
            boolean again = true;
            while (again) {
                again = false;
                for (int from = 0; from < kept.size(); from += size) {
                    List<T> fewer = new ArrayList<>(kept.subList(0, from));
                    fewer.addAll(kept.subList(Math.min(kept.size(), from + size), kept.size()));
                    if (fewer.size() < kept.size() && fails.test(fewer)) {
                        kept = fewer;
                        again = true;
                        break;
                    }
                }
            }
        }
        return kept;
    }
}
