package startwater.app.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import startwater.app.AttemptFile;
import startwater.app.AttemptFile.Result;
import startwater.content.Fault;
import startwater.content.LessonCard;
import startwater.content.Library;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;

/** The shelf of drills, what is open, and what comes next. Immutable; made anew each time the shelf is shown. */
public final class HomeModel {
    private static final double PASS = 70;

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
     * @param best the best result so far, or null
     * @param open whether an attempt of it is open
     */
    public record Card(
            String name,
            @Nullable Scenario scenario,
            List<Fault> faults,
            @Nullable Result best,
            boolean open) {
        public Card {
            faults = List.copyOf(faults);
        }

        public boolean passed() {
            return best != null && best.passed() && best.mark() >= PASS;
        }
    }

    private HomeModel(Library library, List<Card> cards) {
        this.library = library;
        this.cards = List.copyOf(cards);
        this.open = cards.stream().anyMatch(Card::open);
        this.next = next(this.cards);
    }

    /** Reads the shelf. */
    public static HomeModel of(Library library, AttemptFile data) {
        Map<String, Result> best = data.best();
        Optional<String> open = data.openDrill();
        List<Card> cards = new ArrayList<>();
        for (Scenario s : library.scenarios()) {
            cards.add(card(s, best, open));
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
        for (Path file : files(data.ownDrills())) {
            Parsed<Scenario> parsed = ScenarioReader.read(file);
            cards.add(
                    parsed.ok()
                            ? card(parsed.get(), best, open)
                            : broken(Objects.requireNonNull(file.getFileName()).toString(), parsed.faults()));
        }
        return new HomeModel(library, cards);
    }

    private static Card card(Scenario s, Map<String, Result> best, Optional<String> open) {
        return new Card(
                s.id(),
                s,
                List.of(),
                best.get(s.id()),
                open.filter(s.id()::equals).isPresent());
    }

    private static Card broken(String file, List<Fault> faults) {
        return new Card(file, null, faults, null, false);
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
                .filter(Card::open)
                .findFirst()
                .or(() -> sound.stream().filter(c -> !c.passed()).findFirst())
                .or(() -> sound.stream().min(Comparator.comparingDouble(HomeModel::mark)))
                .orElse(null);
    }

    private static double mark(Card card) {
        return card.best() == null ? 0 : card.best().mark();
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
