package startwater.app.view;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javafx.geometry.Insets;
import javafx.geometry.VPos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.HomeModel;
import startwater.app.model.HomeModel.Card;
import startwater.app.model.HomeNext;
import startwater.app.theme.Look;
import startwater.drill.Scenario;
import startwater.record.Entry;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** Home: what comes next and why, with one button; below it the shelf of drills. */
final class HomeView extends BorderPane {
    private static final double CARD_WIDTH = 242;
    private static final String NEXT = "sw-next";

    private HomeModel model;
    private final DrillWords words;
    private final Texts texts;
    private final Consumer<Scenario> start;
    private final HomeFirst first;
    private final Map<String, Region> playable = new HashMap<>();

    /**
     * The page.
     *
     * @param read opens the lesson of an id
     * @param handout asks for a hand-out of a class
     */
    HomeView(
            HomeModel model,
            DrillWords words,
            CoachWords coach,
            Consumer<Scenario> start,
            Consumer<String> read,
            Runnable handout) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        this.start = start;
        this.first = new HomeFirst(model, words, coach, start, read);
        VBox page = new VBox(24);
        page.setPadding(new Insets(28, 24, 24, 32));
        page.getChildren().add(first);
        model.gone().forEach(begun -> page.getChildren().add(gone(begun)));
        Hyperlink open = Ui.link(texts.text("desk.openHandout"), handout);
        open.setId("open-handout");
        page.getChildren().addAll(open, shelf());
        setCenter(Ui.scroll(page));
        HBox caution = new HBox(Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
        caution.setPadding(new Insets(8, 24, 8, 32));
        caution.getStyleClass().add("sw-hairline-top");
        setBottom(caution);
    }

    /** Shows what the coach says now; the shelf stays as it is, and so do the keys. */
    void coachSays(@Nullable HomeNext said) {
        model = model.with(said);
        first.show(model);
        markNext();
    }

    private void markNext() {
        Card next = model.next();
        playable.forEach((name, card) -> {
            card.getStyleClass().remove(NEXT);
            if (next != null && next.name().equals(name)) {
                card.getStyleClass().add(NEXT);
            }
        });
    }

    private Label gone(Entry.Begun begun) {
        String key = begun.handout() == null ? "home.gone" : "home.goneHandout";
        Label said = Ui.text(texts.text(key, begun.scenario(), model.ownDrills()));
        said.setId("gone-" + begun.scenario());
        return said;
    }

    private String mark(Card card) {
        Double best = card.played() == null ? null : card.played().best();
        return best == null ? texts.text("home.noMark") : texts.number(Math.rint(best));
    }

    private Region shelf() {
        FlowPane cards = new FlowPane(16, 16);
        model.cards().forEach(c -> cards.getChildren().add(card(c)));
        markNext();
        HBox head = Ui.row(
                16,
                Ui.text(texts.text("home.shelf"), "sw-sentence", "sw-strong"),
                Ui.text(
                        texts.text(
                                "home.shelfHow", model.passed(), model.cards().size()),
                        "sw-label",
                        "sw-quiet"));
        VBox shelf = new VBox(12, head, cards);
        shelf.getStyleClass().add("sw-hairline-top");
        shelf.setPadding(new Insets(20, 0, 0, 0));
        return shelf;
    }

    private Region card(Card c) {
        VBox card = new VBox(8);
        card.getStyleClass().add("sw-card");
        card.setPadding(new Insets(14, 16, 14, 16));
        Scenario s = c.scenario();
        if (s == null) {
            broken(card, c);
        } else {
            playable.put(c.name(), card);
            card.getChildren()
                    .addAll(Ui.text(s.number() + "  " + words.scenario(s).title(), "sw-strong"), lines(s));
            Label state = Ui.text(state(c), "sw-label", c.passed() ? "sw-safe" : "sw-quiet");
            Button go = Ui.button(texts.text(c.open() ? "home.goOn" : "home.play"), "", () -> start.accept(s));
            go.setId("card-" + s.id());
            go.setAccessibleText(texts.text("home.cardSpoken", words.scenario(s).title(), state(c)));
            card.getChildren().addAll(Ui.grow(), Ui.row(12, state, Ui.grow(), go));
        }
        card.sceneProperty().addListener((p, was, is) -> size(card));
        size(card);
        return card;
    }

    private void size(VBox card) {
        double width = CARD_WIDTH * Look.of(card.getScene()).scale();
        card.setPrefWidth(card.getChildren().size() > 2 ? width : 2 * width + 16);
        card.setMaxWidth(card.getPrefWidth());
    }

    private void broken(VBox card, Card c) {
        String said = c.faults().stream()
                .limit(4)
                .map(f -> f.line(texts.language().code()))
                .collect(Collectors.joining("\n"));
        Label faults = Ui.text(said, "sw-label");
        faults.setId("faults-" + c.name());
        card.getChildren()
                .add(new VBox(8, Ui.text(texts.text("home.broken", c.name()), "sw-strong", "sw-danger"), faults));
    }

    private String state(Card c) {
        if (c.open()) {
            return texts.text("home.isOpen");
        }
        return c.played() == null
                ? texts.text("home.notPlayed")
                : texts.text(c.passed() ? "home.passed" : "home.best", mark(c));
    }

    private GridPane lines(Scenario s) {
        GridPane grid = new GridPane();
        grid.setHgap(10);
        grid.setVgap(2);
        Scenario.Words w = words.scenario(s);
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(Region.USE_PREF_SIZE);
        ColumnConstraints values = new ColumnConstraints();
        values.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().addAll(names, values);
        String skills = s.skills().stream()
                .limit(3)
                .map(id -> texts.text("skill." + id.toLowerCase(Locale.ROOT)))
                .collect(Collectors.joining(", "));
        List<String> said = List.of(w.place(), w.water(), w.stock(), w.keeper(), skills);
        List<String> keys = List.of("home.place", "home.water", "home.stock", "home.keeper", "home.skills");
        for (int i = 0; i < said.size(); i++) {
            Label name = Ui.text(texts.text(keys.get(i)), "sw-label", "sw-quiet");
            GridPane.setValignment(name, VPos.TOP);
            grid.add(name, 0, i);
            grid.add(Ui.text(said.get(i), "sw-label"), 1, i);
        }
        return grid;
    }
}
