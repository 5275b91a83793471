package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.AttemptFile;
import startwater.app.model.DrillModel;
import startwater.app.model.EndModel;
import startwater.app.model.HomeModel;
import startwater.app.model.LessonModel;
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
import startwater.score.StandIn;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;

/**
 * The frame of the window: the places at the left, the page beside them. Pages are made from their models, so a change of
 * language, look or text size makes the page anew and loses nothing.
 */
public final class Shell extends BorderPane implements Navigator {
    /** The language files of the window. */
    static final String[] WORDS = {
        Texts.DRILL, Texts.LESSON, "/startwater/app/text/window", "/startwater/app/text/shell"
    };

    private static final double NAV_WIDTH = 208;
    private static final int ZOOM_STEP = 25;

    private final AttemptFile data;
    private final Library library;
    private Language language;
    private Look look;
    private DrillWords words;
    private Place place = Place.HOME;
    private Supplier<Region> page;
    private @Nullable DrillModel drill;
    private Background.@Nullable Work work;

    private enum Place {
        HOME,
        LESSONS,
        /** A drill and what follows it take the whole window. */
        DRILL
    }

    public Shell(Language language, AttemptFile data) {
        this(language, data, Library.shipped());
    }

    Shell(Language asked, AttemptFile data, Library library) {
        this.data = data;
        this.library = library;
        Optional<AttemptFile.Settings> kept = data.settings();
        this.language = asked;
        this.look = kept.map(Shell::look).orElse(new Look(Theme.LIGHT, 100));
        this.words = words(language);
        this.page = this::homePage;
        getStyleClass().add("sw-paper");
        refresh();
    }

    private static Look look(AttemptFile.Settings kept) {
        for (Theme theme : Theme.values()) {
            if (theme.name().equals(kept.theme())) {
                return new Look(theme, kept.textPercent());
            }
        }
        return new Look(Theme.LIGHT, kept.textPercent());
    }

    static DrillWords words(Language language) {
        return new DrillWords(Texts.of(language, WORDS));
    }

    /** Dresses the scene that holds this shell, and listens to its zoom keys. */
    public void dress(Scene scene) {
        look.dress(scene);
        key(scene, KeyCode.PLUS, () -> zoom(ZOOM_STEP));
        key(scene, KeyCode.EQUALS, () -> zoom(ZOOM_STEP));
        key(scene, KeyCode.ADD, () -> zoom(ZOOM_STEP));
        key(scene, KeyCode.MINUS, () -> zoom(-ZOOM_STEP));
        key(scene, KeyCode.SUBTRACT, () -> zoom(-ZOOM_STEP));
        key(scene, KeyCode.DIGIT0, () -> wear(new Look(look.theme(), 100)));
        refresh();
    }

    private static void key(Scene scene, KeyCode code, Runnable act) {
        scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), act);
    }

    private void zoom(int step) {
        wear(new Look(look.theme(), Math.max(100, Math.min(200, look.textPercent() + step))));
    }

    private void wear(Look now) {
        look = now;
        if (getScene() != null) {
            look.dress(getScene());
        }
        keepSettings();
        refreshFrom("#look");
    }

    /** Makes the page anew and leaves the keys where they were. */
    private void refreshFrom(String id) {
        boolean there = getScene() != null && getScene().getFocusOwner() != null;
        refresh();
        if (there
                && getLeft() instanceof ScrollPane pane
                && pane.getContent().lookup(id) instanceof Ui.Choice<?> choice) {
            choice.focusChosen();
        }
    }

    private void speak(Language now) {
        language = now;
        words = words(now);
        keepSettings();
        refreshFrom("#language");
    }

    private void keepSettings() {
        data.keep(new AttemptFile.Settings(language.code(), look.theme().name(), look.textPercent()));
    }

    private void refresh() {
        setLeft(place == Place.DRILL ? null : places());
        setCenter(page.get());
    }

    private void go(Place where, Supplier<Region> what) {
        if (work != null) {
            work.cancel();
            work = null;
        }
        place = where;
        page = what;
        refresh();
    }

    private Region places() {
        Texts texts = words.texts();
        VBox top = new VBox(
                4,
                Ui.text("Startwater", "sw-sentence", "sw-strong", "sw-water"),
                place("shell.home", Place.HOME, this::home),
                place("shell.lessons", Place.LESSONS, this::lessons));
        VBox languages = new VBox(2, Ui.text(texts.text("shell.language"), "sw-label", "sw-quiet"));
        Ui.Choice<Language> language = new Ui.Choice<>(
                texts.text("shell.language"), List.of(Language.values()), Language::ownName, this::speak);
        language.select(this.language);
        language.setId("language");
        languages.getChildren().add(language);
        VBox looks = new VBox(2, Ui.text(texts.text("shell.look"), "sw-label", "sw-quiet"));
        Ui.Choice<Theme> theme = new Ui.Choice<>(
                texts.text("shell.look"),
                List.of(Theme.values()),
                t -> texts.text("shell." + t.name().toLowerCase(Locale.ROOT)),
                t -> wear(new Look(t, look.textPercent())));
        theme.select(look.theme());
        theme.setId("look");
        looks.getChildren().add(theme);
        VBox size = new VBox(
                2,
                Ui.text(texts.text("shell.size", look.textPercent()), "sw-label", "sw-quiet"),
                Ui.row(
                        8,
                        Ui.button(texts.text("shell.smaller"), "", () -> zoom(-ZOOM_STEP)),
                        Ui.button(texts.text("shell.larger"), "", () -> zoom(ZOOM_STEP))));
        VBox all = new VBox(12, top, Ui.grow(), languages, looks, size);
        if (data.failed()) {
            all.getChildren().add(Ui.text(texts.text("shell.notKept", data.folder()), "sw-label", "sw-danger"));
        }
        all.setPadding(new Insets(28, 16, 20, 16));
        all.getStyleClass().add("sw-panel");
        ScrollPane scroll = scroll(all);
        scroll.setFitToHeight(true);
        scroll.setPrefWidth(NAV_WIDTH * Math.min(2, look.scale()));
        scroll.setMinWidth(Region.USE_PREF_SIZE);
        return scroll;
    }

    private Region place(String key, Place where, Runnable act) {
        Texts texts = words.texts();
        var button = Ui.button(texts.text(key), where == place ? "sw-second" : "", act);
        button.setMaxWidth(Double.MAX_VALUE);
        button.setId(where.name().toLowerCase(Locale.ROOT));
        if (where == place) {
            button.setAccessibleText(texts.text("shell.here", texts.text(key)));
        }
        return button;
    }

    static ScrollPane scroll(Region content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
        return pane;
    }

    private Region homePage() {
        return new HomeView(HomeModel.of(library, data), words, this::start, lesson -> lesson(lesson.id()));
    }

    private void lessons() {
        go(Place.LESSONS, () -> new LessonList(library.lessonCards(language.code()), words, l -> lesson(l.id())));
    }

    private void lesson(String id) {
        LessonModel model = new LessonModel(id);
        go(Place.LESSONS, () -> {
            Optional<Lesson> lesson = library.lesson(id, language.code());
            return lesson.isPresent() ? new LessonView(lesson.get(), model, words, this::drill) : homePage();
        });
    }

    private void drill(String id) {
        library.scenarios().stream().filter(s -> s.id().equals(id)).findFirst().ifPresent(this::start);
    }

    /** Starts a drill, or takes up the open attempt of it. */
    @Override
    public void start(Scenario scenario) {
        boolean open = data.openDrill().filter(scenario.id()::equals).isPresent();
        go(Place.DRILL, () -> waiting("shell.opening"));
        work = Background.run(() -> model(scenario, open), this::play);
    }

    private DrillModel model(Scenario scenario, boolean open) {
        DrillRun run = (open ? data.resume(scenario) : Optional.<DrillRun>empty())
                .orElseGet(() -> DrillRun.start(
                        scenario, data.nextVariant(scenario.id()), DrillRun.Pace.LEARNER, StandIn.BY_THE_RULES));
        // Whoever has finished a drill has seen the sum worked.
        int practised = data.results().isEmpty() && run.past().size() == 0 ? 0 : 1;
        return new DrillModel(
                run, judged(run), practised, data.noteOn(scenario.skills()).orElse(null));
    }

    /** The verdicts of a run taken up again: they follow from the log alone. */
    private static List<Verdict> judged(DrillRun run) {
        List<Verdict> verdicts = new ArrayList<>();
        List<VisitRecord> past = run.past().visits();
        for (int i = 0; i < past.size(); i++) {
            if (past.get(i).asked() && past.get(i).decision() != null) {
                verdicts.add(Judge.judge(new Case(run.scenario(), run.past().upTo(i))));
            }
        }
        return verdicts;
    }

    private void play(DrillModel model) {
        work = null;
        drill = model;
        model.changesProperty().addListener((p, was, is) -> data.save(model.run()));
        data.save(model.run());
        if (model.run().over()) {
            finished(model.run(), model.verdicts());
        } else {
            go(Place.DRILL, () -> new DrillScreen(model, language, this));
        }
    }

    private Region waiting(String key) {
        StackPane pane = new StackPane(Ui.text(words.texts().text(key), "sw-sentence", "sw-quiet"));
        pane.setPadding(new Insets(32));
        return pane;
    }

    @Override
    public void show(Region screen) {
        boolean drillAgain = screen instanceof DrillScreen && drill != null;
        DrillModel model = drill;
        // A drill screen is made anew from its model when language or size change; a look back stays as it is.
        go(
                Place.DRILL,
                drillAgain
                        ? first(screen, () -> new DrillScreen(Objects.requireNonNull(model), language, this))
                        : () -> screen);
    }

    /** The given page at first, later ones made anew. */
    private static Supplier<Region> first(Region page, Supplier<Region> later) {
        boolean[] shown = {false};
        return () -> {
            if (shown[0]) {
                return later.get();
            }
            shown[0] = true;
            return page;
        };
    }

    @Override
    public void home() {
        if (drill != null && !drill.run().over()) {
            data.save(drill.run());
        }
        drill = null;
        go(Place.HOME, this::homePage);
    }

    @Override
    public void committed(DrillRun run) {
        data.save(run);
    }

    @Override
    public void finished(DrillRun run, List<Verdict> verdicts) {
        EndModel end = new EndModel(run, verdicts);
        go(
                Place.DRILL,
                () -> new EndView(
                        end,
                        words,
                        resolved ->
                                data.keep(new AttemptFile.Note(run.scenario().skills(), resolved)),
                        this::home,
                        () -> again(run.scenario())));
        work = Background.run(() -> Review.of(run, verdicts), summary -> {
            end.summaryProperty().set(summary);
            data.finished(new AttemptFile.Result(run.scenario().id(), run.variant(), summary.mark(), summary.passed()));
            refresh();
        });
    }

    private void again(Scenario scenario) {
        drill = null;
        start(scenario);
    }

    /** Writes what is still to be written. */
    public void close() {
        data.close();
    }
}
