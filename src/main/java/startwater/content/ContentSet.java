package startwater.content;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiConsumer;
import startwater.drill.Scenario;

/**
 * Drills and lessons that lie together, read and held against each other.
 *
 * @param scenarios the sound ones, by number
 * @param lessons the sound ones, by number, English before Spanish
 * @param faults all faults, by file and line
 */
record ContentSet(List<Scenario> scenarios, List<Lesson> lessons, List<Fault> faults) {
    /** A player that never complains: for where playing would take too long. */
    static final BiConsumer<ScenarioReader.Placed, Faults> UNPLAYED = (placed, faults) -> {};

    ContentSet {
        scenarios = List.copyOf(scenarios);
        lessons = List.copyOf(lessons);
        faults = List.copyOf(faults);
    }

    /**
     * Reads files.
     *
     * @param otherDrills ids of drills elsewhere to which lessons may link
     * @param player plays a drill to its end, and notes why that cannot be
     */
    static ContentSet of(
            List<Loaded> scenarioFiles,
            List<Loaded> lessonFiles,
            Set<String> otherDrills,
            BiConsumer<ScenarioReader.Placed, Faults> player) {
        Reading reading = new Reading();
        reading.drills.addAll(otherDrills);
        scenarioFiles.forEach(file -> reading.scenario(file, player));
        lessonFiles.forEach(reading::lesson);
        reading.twins();
        reading.order();
        return new ContentSet(
                reading.scenarios.values().stream()
                        .sorted(Comparator.comparingInt(Scenario::number))
                        .toList(),
                reading.lessons.values().stream()
                        .map(LessonReader.Placed::lesson)
                        .sorted(Comparator.comparingInt(Lesson::number).thenComparing(Lesson::language))
                        .toList(),
                reading.faults.stream().sorted(Fault.IN_ORDER).toList());
    }

    private static final class Reading {
        private final Set<String> drills = new HashSet<>();
        private final Map<String, Scenario> scenarios = new TreeMap<>();
        private final Map<String, LessonReader.Placed> lessons = new TreeMap<>();
        private final Set<String> lessonFiles = new HashSet<>();
        private final Map<Integer, String> drillNumbers = new HashMap<>();
        private final Map<String, String> lessonNumbers = new HashMap<>();
        private final List<Fault> faults = new ArrayList<>();

        private void scenario(Loaded file, BiConsumer<ScenarioReader.Placed, Faults> player) {
            // A broken drill is there all the same: lessons that link to it are not at fault.
            drills.add(FileNames.base(file.file(), ScenarioReader.ENDING));
            Parsed<ScenarioReader.Placed> parsed = ScenarioReader.parse(file);
            faults.addAll(parsed.faults());
            ScenarioReader.Placed placed = parsed.value();
            if (placed == null) {
                return;
            }
            Scenario scenario = placed.scenario();
            String other = drillNumbers.putIfAbsent(scenario.number(), file.file());
            if (other != null) {
                add(
                        file.file(),
                        placed.root().line("number"),
                        Complaint.NUMBER_TWICE,
                        "number",
                        scenario.number(),
                        "other",
                        other);
                return;
            }
            Faults played = Faults.of(file.file());
            player.accept(placed, played);
            if (!played.none()) {
                faults.addAll(played.list());
                return;
            }
            scenarios.put(file.file(), scenario);
        }

        private void lesson(Loaded file) {
            lessonFiles.add(file.file());
            Parsed<LessonReader.Placed> parsed = LessonReader.parse(file, drills);
            faults.addAll(parsed.faults());
            LessonReader.Placed placed = parsed.value();
            if (placed == null) {
                return;
            }
            Lesson lesson = placed.lesson();
            String other = lessonNumbers.putIfAbsent(lesson.number() + lesson.language(), file.file());
            if (other != null) {
                add(file.file(), 0, Complaint.LESSON_NUMBER_TWICE, "number", lesson.number(), "other", other);
                return;
            }
            lessons.put(file.file(), placed);
        }

        private void twins() {
            for (String file : lessonFiles) {
                String twin = LessonReader.twin(file);
                if (!lessonFiles.contains(twin) && file.endsWith(LessonReader.ENDING)) {
                    add(file, 0, Complaint.NO_TWIN, "twin", FileNames.base(twin, ""));
                }
                LessonReader.Placed here = lessons.get(file);
                LessonReader.Placed there = lessons.get(twin);
                // Said once, in the Spanish file: the English one is written first.
                if (here != null && there != null && here.lesson().language().equals(Languages.SPANISH)) {
                    faults.addAll(Twins.compare(file, here, there));
                }
            }
        }

        /** Lessons that come first: they must be there, and no way along them may lead back. */
        private void order() {
            Map<String, List<String>> after = new TreeMap<>();
            for (LessonReader.Placed placed : lessons.values()) {
                if (placed.lesson().language().equals(Languages.ENGLISH)) {
                    after.put(placed.lesson().id(), placed.lesson().after());
                }
            }
            lessons.forEach((file, placed) -> {
                if (placed.lesson().language().equals(Languages.ENGLISH)) {
                    faults.addAll(LessonOrder.check(file, placed, after, lessonIds()));
                }
            });
        }

        /** Those that are there, broken ones among them. */
        private Set<String> lessonIds() {
            Set<String> ids = new HashSet<>();
            for (String file : lessonFiles) {
                ids.add(FileNames.base(file, LessonReader.ENDING).replace(".es", ""));
            }
            return ids;
        }

        private void add(String file, int line, Complaint complaint, Object... values) {
            Faults one = Faults.of(file);
            one.add(line, complaint, values);
            faults.addAll(one.list());
        }
    }
}
