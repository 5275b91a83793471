package startwater.app.view;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
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
import startwater.app.model.HomeModel;
import startwater.app.model.HomeModel.Card;
import startwater.app.model.HomeNext;
import startwater.app.theme.Look;
import startwater.content.LessonCard;
import startwater.drill.Scenario;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** Home: what comes next and why, with one button; below it the shelf of drills. */
final class HomeView extends BorderPane {
    private static final double CARD_WIDTH = 242;
    private static final double READING_WIDTH = 860;
    private static final double ASKING_EM = 22;

    private final HomeModel model;
    private final DrillWords words;
    private final CoachWords coach;
    private final Texts texts;
    private final Consumer<Scenario> start;
    private final Consumer<String> read;

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
        this.coach = coach;
        this.texts = words.texts();
        this.start = start;
        this.read = read;
        VBox page = new VBox(24);
        page.setPadding(new Insets(28, 24, 24, 32));
        Card next = model.next();
        if (next != null && next.scenario() != null) {
            page.getChildren().add(next(next, next.scenario()));
        }
        model.nextLesson(texts.language().code())
                .ifPresent(l -> page.getChildren().add(next(l)));
        if (page.getChildren().isEmpty()) {
            page.getChildren().add(asking());
        }
        Hyperlink open = Ui.link(texts.text("desk.openHandout"), handout);
        open.setId("open-handout");
        page.getChildren().addAll(open, shelf());
        setCenter(Ui.scroll(page));
        HBox caution = new HBox(Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
        caution.setPadding(new Insets(8, 24, 8, 32));
        caution.getStyleClass().add("sw-hairline-top");
        setBottom(caution);
    }

    private Region next(Card card, Scenario s) {
        Scenario.Words told = words.scenario(s);
        Button go = Ui.button(
                texts.text(card.open() ? "home.goOn" : card.played() != null ? "home.again" : "home.start"),
                "sw-primary",
                () -> start.accept(s));
        go.setId("start");
        go.setDefaultButton(true);
        HBox act = Ui.row(24, go);
        model.lessonFor(s, texts.language().code()).ifPresent(l -> {
            Hyperlink link = Ui.link(texts.text("home.lesson", l.number(), l.title()), () -> read.accept(l.id()));
            act.getChildren()
                    .add(new VBox(Ui.text(texts.text("home.orFirst", l.minutes()), "sw-label", "sw-quiet"), link));
        });
        return new VBox(
                12,
                Ui.text(texts.text("home.next"), "sw-strong", "sw-quiet"),
                Ui.text(told.title(), "sw-title"),
                reading(told.story(), "sw-sentence"),
                Ui.text(told.goal(), "sw-sentence", "sw-strong"),
                Ui.text(why(card), "sw-quiet"),
                facts(s),
                act);
    }

    /** Long lines are hard to read. */
    private static Label reading(String words, String... classes) {
        Label label = Ui.text(words, classes);
        label.setMaxWidth(READING_WIDTH);
        return label;
    }

    /** Room for what the coach will say in a moment, so that the shelf does not jump under a hand. */
    private Region asking() {
        VBox room = new VBox(Ui.text(texts.text("home.next"), "sw-strong", "sw-quiet"));
        room.setStyle("-fx-min-height: " + ASKING_EM + "em;");
        return room;
    }

    private Region next(LessonCard lesson) {
        Button go = Ui.button(texts.text("progress.readLesson"), "sw-primary", () -> read.accept(lesson.id()));
        go.setId("start");
        go.setDefaultButton(true);
        VBox next = new VBox(
                12,
                Ui.text(texts.text("home.next"), "sw-strong", "sw-quiet"),
                Ui.text(texts.text("home.lesson", lesson.number(), lesson.title()), "sw-title"),
                reading(reason(), "sw-sentence"),
                Ui.text(texts.text("home.minutes", lesson.minutes()), "sw-quiet"),
                go);
        model.cards().stream()
                .filter(card -> card.scenario() != null
                        && card.scenario().skills().stream().anyMatch(lesson.skills()::contains))
                .findFirst()
                .ifPresent(card -> next.getChildren().add(orDrill(Objects.requireNonNull(card.scenario()))));
        return next;
    }

    /** Whoever would rather play goes straight to a drill of the same skill. */
    private Region orDrill(Scenario drill) {
        String title = texts.text(
                "progress.drill", drill.number(), words.scenario(drill).title());
        Hyperlink link = Ui.link(title, () -> start.accept(drill));
        link.setId("instead");
        return new VBox(Ui.text(texts.text("progress.or"), "sw-label", "sw-quiet"), link);
    }

    private String why(Card card) {
        return card.open() ? texts.text("home.whyOpen") : reason();
    }

    private String reason() {
        HomeNext next = model.coach();
        return next == null ? "" : coach.reason(next.next());
    }

    private String mark(Card card) {
        Double best = card.played() == null ? null : card.played().best();
        return best == null ? texts.text("home.noMark") : texts.number(Math.rint(best));
    }

    private FlowPane facts(Scenario s) {
        FlowPane row = new FlowPane(40, 8);
        row.getChildren()
                .add(fact(
                        texts.text("home.litres", s.system().volumeL()),
                        words.scenario(s).place()));
        if (s.fish() != null) {
            row.getChildren()
                    .add(fact(texts.number(s.fish().count()), words.scenario(s).stock()));
        }
        row.getChildren()
                .addAll(
                        fact(
                                texts.text("home.days", s.keeper().days()),
                                words.scenario(s).keeper()),
                        fact(
                                texts.text("home.decisions", s.keeper().decisions()),
                                texts.text("home.minutes", minutes(s))));
        return row;
    }

    /** A minute and a half a decision, found by playing. */
    private static long minutes(Scenario s) {
        return Math.round(1.5 * s.keeper().decisions());
    }

    private static VBox fact(String number, String meaning) {
        return new VBox(Ui.text(number, "sw-sentence", "sw-strong"), Ui.text(meaning, "sw-label", "sw-quiet"));
    }

    private Region shelf() {
        FlowPane cards = new FlowPane(16, 16);
        model.cards().forEach(c -> cards.getChildren().add(card(c)));
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
            if (c.equals(model.next())) {
                card.getStyleClass().add("sw-next");
            }
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
