package startwater.content;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import startwater.drill.Scenario;

/** The drills and lessons that come with the program. A broken one is left out with its faults; the rest stay usable. */
public final class Library {
    private static final class Shipped {
        static final Library ALL = new Library(ContentSet.of(
                PackedFiles.in("scenarios", ScenarioReader.ENDING, "scenarios"),
                PackedFiles.in("lessons", LessonReader.ENDING, "lessons"),
                Set.of(),
                ContentSet.UNPLAYED));
    }

    private final ContentSet content;

    Library(ContentSet content) {
        this.content = content;
    }

    /** What comes with the program; read once. */
    public static Library shipped() {
        return Shipped.ALL;
    }

    /** The sound drills, by number. */
    public List<Scenario> scenarios() {
        return content.scenarios();
    }

    /** The sound lessons in a language, by number. */
    public List<Lesson> lessons(String language) {
        return content.lessons().stream()
                .filter(lesson -> lesson.language().equals(language))
                .toList();
    }

    /** A lesson in a language, or in English where it is not there. @param id for example {@code 01-toxic-ammonia} */
    public Optional<Lesson> lesson(String id, String language) {
        return lessons(language).stream()
                .filter(lesson -> lesson.id().equals(id))
                .findFirst()
                .or(() -> language.equals(Languages.ENGLISH) ? Optional.empty() : lesson(id, Languages.ENGLISH));
    }

    /** What is wrong with the files that were left out. */
    public List<Fault> faults() {
        return content.faults();
    }

    /** Ids of the sound drills. */
    public Set<String> ids() {
        return scenarios().stream().map(Scenario::id).collect(Collectors.toUnmodifiableSet());
    }

    /**
     * A drill by its id, or a file of one's own by its path.
     *
     * @param idOrPath an id; or a path, which has a slash in it or ends in .yaml
     */
    public Parsed<Scenario> scenario(String idOrPath) {
        Optional<Scenario> shipped = scenarios().stream()
                .filter(scenario -> scenario.id().equals(idOrPath))
                .findFirst();
        if (shipped.isPresent()) {
            return Parsed.of(shipped.get());
        }
        if (idOrPath.contains("/") || idOrPath.contains("\\") || idOrPath.endsWith(ScenarioReader.ENDING)) {
            return ScenarioReader.read(Path.of(idOrPath));
        }
        Faults faults = Faults.of(idOrPath);
        String known = scenarios().stream().map(Scenario::id).collect(Collectors.joining(", "));
        faults.add(0, Complaint.NO_SUCH_DRILL, "id", idOrPath, "known", new Shown.Names(known));
        return Parsed.failed(faults);
    }
}
