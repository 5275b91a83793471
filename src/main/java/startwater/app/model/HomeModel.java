package startwater.app.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import startwater.content.Fault;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;
import startwater.record.History;

/** The shelf of drills, what is open, and what comes next. Immutable; made anew each time the shelf is shown. */
public final class HomeModel {
    private final Library library;
    private final List<Card> cards;
    private final @Nullable Card next;
    private final boolean open;

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

    private HomeModel(Library library, List<Card> cards) {
        this.library = library;
        this.cards = List.copyOf(cards);
        this.open = cards.stream().anyMatch(Card::open);
        this.next = next(this.cards);
    }

    /** Reads the shelf. @param own folder of drills of one's own */
    public static HomeModel of(Library library, Path own, History history) {
        List<Card> cards = new ArrayList<>();
        for (Scenario s : library.scenarios()) {
            cards.add(card(s, history));
        }
        library.faults().stream()
                .map(Fault::file)
                .distinct()
                .filter(file -> file.endsWith(ScenarioReader.ENDING))
                .forEach(file -> cards.add(broken(
                        file,
                        library.faults().stream()
                                .filter(f -> f.file().equals(file))
                                .toList())));
        for (Path file : files(own)) {
            Parsed<Scenario> parsed = ScenarioReader.read(file);
            cards.add(
                    parsed.ok()
                            ? card(parsed.get(), history)
                            : broken(Objects.requireNonNull(file.getFileName()).toString(), parsed.faults()));
        }
        return new HomeModel(library, cards);
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

    private static List<Path> files(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(f -> f.toString().endsWith(ScenarioReader.ENDING))
                    .sorted()
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }

    /** What is open goes first, then the first not passed, then the one with the lowest mark. */
    private static @Nullable Card next(List<Card> cards) {
        List<Card> sound = cards.stream().filter(c -> c.scenario() != null).toList();
        return sound.stream()
                .filter(Card::last)
                .findFirst()
                .or(() -> sound.stream().filter(c -> !c.passed()).findFirst())
                .or(() -> sound.stream().min(Comparator.comparingDouble(HomeModel::mark)))
                .orElse(null);
    }

    private static double mark(Card card) {
        Double best = card.played() == null ? null : card.played().best();
        return best == null ? 0 : best;
    }

    public List<Card> cards() {
        return cards;
    }

    /** What comes next, or null on an empty shelf. */
    public @Nullable Card next() {
        return next;
    }

    /** Whether an attempt is open. */
    public boolean open() {
        return open;
    }

    public long passed() {
        return cards.stream().filter(Card::passed).count();
    }

    public List<Lesson> lessons(String language) {
        return library.lessons(language);
    }

    /** The first lesson that teaches a skill of a drill. */
    public Optional<Lesson> lessonFor(Scenario s, String language) {
        return library.lessons(language).stream()
                .filter(l -> l.skills().stream().anyMatch(s.skills()::contains))
                .findFirst();
    }
}
