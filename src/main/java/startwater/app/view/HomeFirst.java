package startwater.app.view;

import java.util.Objects;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.model.HomeModel;
import startwater.app.model.HomeModel.Card;
import startwater.app.model.HomeNext;
import startwater.content.LessonCard;
import startwater.drill.Scenario;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** What comes next and why, with one button. Alone made anew when the coach answers. */
final class HomeFirst extends VBox {
    private static final double READING_WIDTH = 860;
    private static final double ASKING_EM = 22;

    private HomeModel model;
    private final DrillWords words;
    private final CoachWords coach;
    private final Texts texts;
    private final Consumer<Scenario> start;
    private final Consumer<String> read;

    /** @param read opens the lesson of an id */
    HomeFirst(HomeModel model, DrillWords words, CoachWords coach, Consumer<Scenario> start, Consumer<String> read) {
        super(24);
        this.model = model;
        this.words = words;
        this.coach = coach;
        this.texts = words.texts();
        this.start = start;
        this.read = read;
        make();
    }

    /** Shows what comes next now; the keys stay on what has the same id. */
    void show(HomeModel now) {
        model = now;
        Keys.keep(this, this::make);
    }

    private void make() {
        getChildren().clear();
        Card next = model.next();
        if (next != null && next.scenario() != null) {
            getChildren().add(next(next, next.scenario()));
        }
        model.nextLesson(texts.language().code()).ifPresent(l -> getChildren().add(next(l)));
        if (getChildren().isEmpty()) {
            getChildren().add(asking());
        }
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
}
