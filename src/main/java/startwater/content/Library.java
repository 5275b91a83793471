package startwater.content;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;

/**
 * The drills and lessons that come with the program. A broken one is left out with its faults; the rest stay usable. Drills
 * and the cards of lessons are read at once, a lesson when it is opened, and all of them held against each other when all
 * lessons or their faults are asked for: a window must not wait for prose that nobody reads.
 */
public final class Library {
    private static final class Shipped {
        static final Library ALL = new Library(
                PackedFiles.in("scenarios", ScenarioReader.ENDING, "scenarios"),
                PackedFiles.in("lessons", LessonReader.ENDING, "lessons"));
    }

    private final ContentSet drills;
    private final List<Loaded> lessonFiles;
    private final List<LessonCard> cards;
    private final Map<String, Optional<Lesson>> opened = new ConcurrentHashMap<>();
    private @Nullable ContentSet lessons;

    Library(List<Loaded> scenarioFiles, List<Loaded> lessonFiles) {
        this.drills = ContentSet.of(scenarioFiles, List.of(), Set.of(), ContentSet.UNPLAYED);
        this.lessonFiles = List.copyOf(lessonFiles);
        this.cards = lessonFiles.stream()
                .flatMap(file -> LessonReader.card(file).stream())
                .sorted(Comparator.comparingInt(LessonCard::number))
                .toList();
    }

    /** What comes with the program; read once. */
    public static Library shipped() {
        return Shipped.ALL;
    }

    /** The sound drills, by number. */
    public List<Scenario> scenarios() {
        return drills.scenarios();
    }

    /** The lessons there are in a language, by number; one whose prose is broken is among them. */
    public List<LessonCard> lessonCards(String language) {
        return cards.stream().filter(card -> card.language().equals(language)).toList();
    }

    /** The sound lessons in a language, by number, with all they say. */
    public List<Lesson> lessons(String language) {
        return lessons().lessons().stream()
                .filter(lesson -> lesson.language().equals(language))
                .toList();
    }

    private synchronized ContentSet lessons() {
        if (lessons == null) {
            lessons = ContentSet.of(
                    List.of(), lessonFiles.stream().map(Loaded::anew).toList(), links(), ContentSet.UNPLAYED);
        }
        return lessons;
    }

    /** Drills to which lessons may link: broken ones are there all the same. */
    private Set<String> links() {
        Set<String> links = drills.faults().stream()
                .map(fault -> FileNames.base(fault.file(), ScenarioReader.ENDING))
                .collect(Collectors.toSet());
        links.addAll(ids());
        return links;
    }

    /** A lesson in a language, or in English where it is not there. @param id for example {@code 01-toxic-ammonia} */
    public Optional<Lesson> lesson(String id, String language) {
        Optional<Lesson> found = opened.computeIfAbsent(id + "." + language, key -> open(id, language));
        return found.isPresent() || language.equals(Languages.ENGLISH) ? found : lesson(id, Languages.ENGLISH);
    }

    /** Reads every lesson of a language before anybody opens one: the first takes longer than a blink. @return how many */
    public long readAhead(String language) {
        return lessonCards(language).stream()
                .filter(card -> lesson(card.id(), language).isPresent())
                .count();
    }

    private Optional<Lesson> open(String id, String language) {
        return lessonFiles.stream()
                .filter(file -> LessonReader.language(file.file()).equals(language))
                .filter(file -> LessonReader.id(file.file()).equals(id))
                .findFirst()
                .flatMap(file -> Optional.ofNullable(
                                LessonReader.parse(file.anew(), links()).value())
                        .map(LessonReader.Placed::lesson));
    }

    /** What is wrong with the drills that were left out. */
    public List<Fault> drillFaults() {
        return drills.faults();
    }

    /** What is wrong with the files that were left out. */
    public List<Fault> faults() {
        return Stream.concat(drills.faults().stream(), lessons().faults().stream())
                .sorted(Fault.IN_ORDER)
                .toList();
    }

    /** A sound drill by its id. */
    public Optional<Scenario> drill(String id) {
        return scenarios().stream().filter(scenario -> scenario.id().equals(id)).findFirst();
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
        Optional<Scenario> shipped = drill(idOrPath);
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
