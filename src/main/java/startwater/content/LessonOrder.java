package startwater.content;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Whether the lessons that come first are there, and in no circle: R39. */
final class LessonOrder {
    private LessonOrder() {}

    /**
     * What is wrong with the order of one lesson.
     *
     * @param after of every sound lesson, the lessons that come first
     * @param there ids of all lessons, broken ones among them
     */
    static List<Fault> check(
            String file, LessonReader.Placed placed, Map<String, List<String>> after, Set<String> there) {
        Faults faults = Faults.of(file);
        int line = placed.front().line("after") + 1;
        for (String first : placed.lesson().after()) {
            if (!there.contains(first)) {
                Optional<String> near = Near.to(first, there);
                if (near.isPresent()) {
                    faults.add(line, Complaint.NO_SUCH_LESSON_NEAR, "id", first, "near", near.get());
                } else {
                    faults.add(line, Complaint.NO_SUCH_LESSON, "id", first);
                }
            }
        }
        List<String> way = new ArrayList<>(List.of(placed.lesson().id()));
        if (back(placed.lesson().id(), way, after, new HashSet<>())) {
            faults.add(line, Complaint.AFTER_CIRCLE, "chain", new Shown.Names(String.join(" → ", way)));
        }
        return faults.list();
    }

    /** Whether a way from the last of {@code way} leads back to the start; {@code way} is then that way. */
    private static boolean back(String start, List<String> way, Map<String, List<String>> after, Set<String> seen) {
        for (String next : after.getOrDefault(way.get(way.size() - 1), List.of())) {
            way.add(next);
            if (next.equals(start) || (seen.add(next) && back(start, way, after, seen))) {
                return true;
            }
            way.remove(way.size() - 1);
        }
        return false;
    }
}
