package startwater.app.model;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import startwater.content.Fault;
import startwater.content.LessonCard;
import startwater.content.Library;
import startwater.content.OwnDrills;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.course.Source;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.record.History;

/** The shelf of drills, what is open, and what comes next. Immutable; made anew each time the shelf is shown. */
public final class HomeModel {
    private final Library library;
    private final Path own;
    private final List<Card> cards;
    private final List<Entry.Begun> gone;
    private final @Nullable HomeNext coach;

    /**
     * One drill on the shelf.
     *
     * @param name id, or the name of a broken file
     * @param scenario the drill, or null where its file is broken
     * @param faults what is wrong with it, in order
     * @param played what the learner made of it, or null while no attempt came to its end
     * @param open whether an attempt of it is open
     * @param last whether that is the attempt begun last
     */
    public record Card(
            String name,
            @Nullable Scenario scenario,
            List<Fault> faults,
            History.@Nullable Drill played,
            boolean open,
            boolean last) {
        public Card {
            faults = List.copyOf(faults);
        }

        public boolean passed() {
            return played != null && played.passed();
        }
    }

    private HomeModel(Library library, Path own, List<Card> cards, List<Entry.Begun> gone, @Nullable HomeNext coach) {
        this.library = library;
        this.own = own;
        this.cards = List.copyOf(cards);
        this.gone = List.copyOf(gone);
        this.coach = coach;
    }

    /**
     * Reads the shelf.
     *
     * @param own folder of drills of one's own
     * @param coach what the coach says comes next, or null where it says nothing
     */
    public static HomeModel of(Library library, Path own, History history, @Nullable HomeNext coach) {
        List<Card> cards = new ArrayList<>();
        for (Scenario s : library.scenarios()) {
            cards.add(card(s, history));
        }
        library.drillFaults().stream()
                .map(Fault::file)
                .distinct()
                .filter(file -> file.endsWith(ScenarioReader.ENDING))
                .forEach(file -> cards.add(broken(
                        file,
                        library.drillFaults().stream()
                                .filter(f -> f.file().equals(file))
                                .toList())));
        OwnDrills shelf = new OwnDrills(own, library);
        for (Path file : shelf.files()) {
            Parsed<Scenario> parsed = shelf.read(file);
            cards.add(
                    parsed.ok()
                            ? card(parsed.get(), history)
                            : broken(Objects.requireNonNull(file.getFileName()).toString(), parsed.faults()));
        }
        List<Entry.Begun> gone = history.open().stream()
                .map(History.Open::begun)
                .filter(begun -> cards.stream()
                        .noneMatch(c -> c.scenario() != null && c.name().equals(begun.scenario())))
                .toList();
        return new HomeModel(library, own, cards, gone, coach);
    }

    private static Card card(Scenario s, History history) {
        History.Drill drill = history.drill(s.id());
        List<History.Open> open = history.open();
        boolean last =
                !open.isEmpty() && open.get(open.size() - 1).begun().scenario().equals(s.id());
        return new Card(
                s.id(),
                s,
                List.of(),
                drill.finished() == 0 ? null : drill,
                history.open(s.id()).isPresent(),
                last);
    }

    private static Card broken(String file, List<Fault> faults) {
        return new Card(file, null, faults, null, false, false);
    }

    /** The same shelf with what the coach says now. @param said what comes next, or null where it says nothing */
    public HomeModel with(@Nullable HomeNext said) {
        return new HomeModel(library, own, cards, gone, said);
    }

    /** Where drills of one's own lie. */
    public Path ownDrills() {
        return own;
    }

    /** Open attempts whose drill is not on the shelf, oldest first: it came with a hand-out, or its file was taken away. */
    public List<Entry.Begun> gone() {
        return gone;
    }

    public List<Card> cards() {
        return cards;
    }

    /** The drill that comes next: the one left half way last, else the coach's; null where that is a lesson, or nothing. */
    public @Nullable Card next() {
        return cards.stream()
                .filter(Card::last)
                .findFirst()
                .or(() -> cards.stream()
                        .filter(c -> c.scenario() != null && c.name().equals(suggested(Source.Kind.DRILL)))
                        .findFirst())
                .orElse(null);
    }

    /** The lesson that comes next, where it is one. */
    public Optional<LessonCard> nextLesson(String language) {
        return next() != null
                ? Optional.empty()
                : library.lessonCards(language).stream()
                        .filter(l -> l.id().equals(suggested(Source.Kind.LESSON)))
                        .findFirst();
    }

    private @Nullable String suggested(Source.Kind kind) {
        return coach == null || coach.next().item().source().kind() != kind
                ? null
                : coach.next().item().source().id();
    }

    /** What the coach says, or null. */
    public @Nullable HomeNext coach() {
        return coach;
    }

    public long passed() {
        return cards.stream().filter(Card::passed).count();
    }

    public List<LessonCard> lessons(String language) {
        return library.lessonCards(language);
    }

    /** The first lesson that teaches a skill of a drill. */
    public Optional<LessonCard> lessonFor(Scenario s, String language) {
        return library.lessonCards(language).stream()
                .filter(l -> l.skills().stream().anyMatch(s.skills()::contains))
                .findFirst();
    }
}
