package startwater.app.view;

import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.content.Fault;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What comes next and one button; below it the shelf of drills. A broken file shows its fault in place of its drill. */
final class HomeScreen extends VBox {
    private static final double CARD = 300;

    private final Texts texts;
    private final DrillWords words;
    private final Navigator navigator;

    HomeScreen(Texts texts, Navigator navigator, boolean open, Runnable resume, Consumer<Lesson> lesson) {
        super(24);
        this.texts = texts;
        this.words = new DrillWords(texts);
        this.navigator = navigator;
        setPadding(new Insets(24, 32, 24, 32));
        Library library = Library.shipped();
        if (!library.scenarios().isEmpty()) {
            getChildren().add(next(library, open, resume, lesson));
        }
        FlowPane shelf = new FlowPane(16, 16);
        library.scenarios().forEach(s -> shelf.getChildren().add(card(s)));
        library.faults().forEach(f -> shelf.getChildren().add(broken(f)));
        getChildren()
                .addAll(
                        Ui.text(texts.text("shell.shelf"), "sw-sentence", "sw-strong"),
                        shelf,
                        Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
    }

    private VBox next(Library library, boolean open, Runnable resume, Consumer<Lesson> lesson) {
        VBox box = new VBox(10, Ui.text(texts.text("shell.next"), "sw-label", "sw-strong", "sw-quiet"));
        Scenario first = library.scenarios().get(Math.min(1, library.scenarios().size() - 1));
        if (open) {
            box.getChildren()
                    .addAll(
                            Ui.text(texts.text("shell.openDrill"), "sw-title"),
                            Ui.text(texts.text("shell.openDrillHow"), "sw-sentence"),
                            Ui.button(texts.text("shell.takeUp"), "sw-primary", resume));
            return box;
        }
        Scenario.Words said = words.scenario(first);
        Button start = Ui.button(texts.text("shell.start"), "sw-primary", () -> navigator.start(first));
        start.setDefaultButton(true);
        box.getChildren()
                .addAll(
                        Ui.text(said.title(), "sw-title"),
                        Ui.text(said.story(), "sw-sentence"),
                        Ui.text(said.goal(), "sw-strong"),
                        Ui.text(texts.text("shell.how"), "sw-quiet"),
                        start);
        library.lessons(texts.language().code()).stream().findFirst().ifPresent(l -> box.getChildren()
                .add(Ui.link(texts.text("shell.orLesson", l.minutes(), l.title()), () -> lesson.accept(l))));
        return box;
    }

    private VBox card(Scenario s) {
        Scenario.Words said = words.scenario(s);
        VBox card = frame();
        card.getChildren()
                .addAll(
                        Ui.text(s.number() + "  " + said.title(), "sw-strong"),
                        line("shell.place", said.place()),
                        line("shell.water", said.water()),
                        line("shell.stock", said.stock()),
                        line("shell.keeper", said.keeper()));
        Button start = Ui.button(texts.text("shell.startThis"), "sw-second", () -> navigator.start(s));
        start.setAccessibleText(texts.text("shell.startThis") + ": " + said.title());
        card.getChildren().addAll(Ui.grow(), start);
        return card;
    }

    private VBox broken(Fault fault) {
        VBox card = frame();
        card.getChildren()
                .addAll(
                        Ui.text(texts.text("shell.broken"), "sw-strong", "sw-danger"),
                        Ui.text(fault.line(texts.language().code())));
        return card;
    }

    private static VBox frame() {
        VBox card = new VBox(4);
        card.getStyleClass().add("sw-card");
        card.setPadding(new Insets(14, 16, 14, 16));
        card.setPrefWidth(CARD);
        card.setMinHeight(Region.USE_PREF_SIZE);
        return card;
    }

    private Region line(String key, String value) {
        return Ui.text(texts.text(key) + "  " + value, "sw-label");
    }
}
