package startwater.app.view;

import java.util.Objects;
import startwater.content.Library;
import startwater.course.Item;
import startwater.course.Reason;
import startwater.course.Source;
import startwater.course.Suggestion;
import startwater.drill.Scenario;
import startwater.drill.Skill;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The coach in words: what a drill or lesson is called, and why it comes next. */
final class CoachWords {
    /** The language file that these words need, beside those of drills and lessons. */
    static final String FILE = "/startwater/app/text/progress";

    private final DrillWords words;
    private final Library library;

    CoachWords(DrillWords words, Library library) {
        this.words = words;
        this.library = library;
    }

    Texts texts() {
        return words.texts();
    }

    String skill(Skill skill) {
        return texts().text("skill." + skill.id());
    }

    /** Number and title, for example "Drill 2, The hungry second week". */
    String title(Source source) {
        boolean drill = source.kind() == Source.Kind.DRILL;
        return drill
                ? library.drill(source.id())
                        .map(s -> texts().text("progress.drill", s.number(), title(s)))
                        .orElse(source.id())
                : library.lessonCards(texts().language().code()).stream()
                        .filter(l -> l.id().equals(source.id()))
                        .findFirst()
                        .map(l -> texts().text("progress.lesson", l.number(), l.title()))
                        .orElse(source.id());
    }

    private String title(Scenario s) {
        return words.scenario(s).title();
    }

    String title(Item item) {
        return title(item.source());
    }

    /** Why something is suggested. */
    String reason(Suggestion s) {
        Reason r = s.reason();
        String skill = r.skill() == null ? "" : skill(r.skill());
        String second = r.habit() != null
                ? texts().text("habit." + r.habit().id())
                : r.other() == null ? "" : skill(Objects.requireNonNull(r.other()));
        return texts().text(r.key(), skill, second);
    }
}
