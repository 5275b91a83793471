package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.LongSupplier;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.model.DrillModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.score.Case;
import startwater.score.Judge;
import startwater.score.Review;
import startwater.score.RunSummary;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;

/** The window's frame: places on the left, one screen at a time beside them. */
public final class Shell extends BorderPane implements Navigator {
    private static final int ZOOM_STEP = 25;

    private final Attempts attempts;
    private final LongSupplier variants;
    private Language language;
    private Look look = new Look(Theme.LIGHT, 100);

    /** @param variants which hidden tank each new drill gets */
    public Shell(Language language, Attempts attempts, LongSupplier variants) {
        this.language = language;
        this.attempts = attempts;
        this.variants = variants;
        home();
    }

    /** Dresses the scene this shell is the root of, and listens for the zoom keys. */
    public void dress(Scene scene) {
        look.dress(scene);
        scene.getAccelerators().put(key(KeyCode.PLUS), () -> zoom(ZOOM_STEP));
        scene.getAccelerators().put(key(KeyCode.EQUALS), () -> zoom(ZOOM_STEP));
        scene.getAccelerators().put(key(KeyCode.MINUS), () -> zoom(-ZOOM_STEP));
    }

    private static KeyCombination key(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    private void zoom(int by) {
        wear(new Look(look.theme(), Math.max(100, Math.min(200, look.textPercent() + by))));
    }

    private void wear(Look next) {
        look = next;
        if (getScene() != null) {
            look.dress(getScene());
        }
        if (getLeft() != null) {
            home();
        }
    }

    private Texts texts() {
        return Texts.of(language, Texts.DRILL, "/startwater/app/text/window", "/startwater/app/text/shell");
    }

    @Override
    public void show(Region screen) {
        setLeft(null);
        setCenter(screen);
        Platform.runLater(screen::requestFocus);
    }

    private void place(Region screen) {
        setLeft(places());
        ScrollPane scroll = new ScrollPane(screen);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
        setCenter(scroll);
    }

    @Override
    public void home() {
        place(new HomeScreen(texts(), this, attempts.open().isPresent(), this::resume, this::lesson));
    }

    private void lesson(Lesson lesson) {
        place(new LessonScreen(lesson, texts(), this));
    }

    @Override
    public void start(Scenario scenario) {
        DrillRun run = DrillRun.start(scenario, variants.getAsLong(), DrillRun.Pace.LEARNER);
        attempts.save(run);
        show(new DrillScreen(run, language, this));
    }

    /** Takes the open drill up again; its decisions so far are judged anew, away from the window's thread. */
    private void resume() {
        attempts.open().ifPresent(run -> {
            place(new VBox(Ui.text(texts().text("shell.takingUp"), "sw-sentence")));

            var unused = CompletableFuture.supplyAsync(() -> judged(run))
                    .thenAccept(verdicts -> Platform.runLater(
                            () -> show(new DrillScreen(new DrillModel(run, verdicts), language, this))));
        });
    }

    private static List<Verdict> judged(DrillRun run) {
        List<Verdict> verdicts = new ArrayList<>();
        for (int i = 0; i < run.past().size(); i++) {
            VisitRecord v = run.past().visits().get(i);
            if (v.asked() && v.decision() != null) {
                verdicts.add(Judge.judge(new Case(run.scenario(), run.past().upTo(i))));
            }
        }
        return verdicts;
    }

    @Override
    public void committed(DrillRun run) {
        attempts.save(run);
    }

    @Override
    public void finished(DrillRun run, List<Verdict> verdicts) {
        attempts.clear();
        DrillWords words = new DrillWords(texts());

        var unused = CompletableFuture.supplyAsync(() -> Review.of(run, verdicts))
                .thenAccept((RunSummary end) ->
                        Platform.runLater(() -> show(new EndScreen(run, verdicts, end, words, this))));
    }

    private VBox places() {
        Texts texts = texts();
        VBox box = new VBox(
                14,
                Ui.text("Startwater", "sw-sentence", "sw-strong", "sw-water"),
                Ui.link(texts.text("shell.home"), this::home));
        for (Lesson lesson : Library.shipped().lessons(language.code())) {
            box.getChildren().add(Ui.link(texts.text("shell.lesson", lesson.title()), () -> lesson(lesson)));
        }
        box.getChildren().add(Ui.grow());
        Ui.Choice<Language> languages =
                new Ui.Choice<>(texts.text("shell.language"), List.of(Language.values()), Language::ownName, chosen -> {
                    language = chosen;
                    home();
                });
        languages.select(language);
        Ui.Choice<Theme> themes = new Ui.Choice<>(
                texts.text("shell.theme"),
                List.of(Theme.LIGHT, Theme.DARK),
                t -> texts.text("shell." + ScreenKeys.of(t)),
                t -> wear(new Look(t, look.textPercent())));
        themes.select(look.theme());
        Ui.Choice<Integer> sizes = new Ui.Choice<>(
                texts.text("shell.size"), List.of(100, 150, 200), s -> s + " %", s -> wear(new Look(look.theme(), s)));
        sizes.select(look.textPercent());
        box.getChildren().addAll(languages, themes, sizes);
        box.getStyleClass().add("sw-panel");
        box.setPadding(new Insets(24));
        box.setPrefWidth(232 * look.scale());
        box.setMinWidth(Region.USE_PREF_SIZE);
        return box;
    }
}
