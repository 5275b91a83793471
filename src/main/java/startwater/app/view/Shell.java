package startwater.app.view;

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
import startwater.app.Desk;
import startwater.app.Settings;
import startwater.app.model.DrillModel;
import startwater.app.model.EndModel;
import startwater.app.model.HomeModel;
import startwater.app.model.LessonModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.cli.Notices;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.record.History;
import startwater.record.LearnerFile;
import startwater.record.Resumed;
import startwater.record.Steps;
import startwater.score.Review;
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
        Texts.DRILL, Texts.LESSON, Texts.RECORD, "/startwater/app/text/window", "/startwater/app/text/shell"
    };

    private static final double NAV_WIDTH = 208;
    private static final int ZOOM_STEP = 25;

    private final Desk desk;
    private final Banner banner = new Banner(this::setTop);
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
        /** Who is learning. */
        LEARNER,
        /** A drill and what follows it take the whole window. */
        DRILL
    }

    public Shell(Language language, Desk desk) {
        this(language, desk, Library.shipped());
    }

    Shell(Language asked, Desk desk, Library library) {
        this.desk = desk;
        this.library = library;
        this.language = asked;
        this.look = desk.settings().map(Shell::look).orElse(new Look(Theme.LIGHT, 100));
        this.words = words(language);
        this.page = desk.chosen() ? this::homePage : this::learnerPage;
        this.place = desk.chosen() ? Place.HOME : Place.LEARNER;
        getStyleClass().add("sw-paper");
        found();
        refresh();
    }

    private static Look look(Settings kept) {
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
        String learner = desk.chosen()
                ? desk.learner().key()
                : desk.settings().map(Settings::learner).orElse(null);
        desk.keep(new Settings(language.code(), look.theme().name(), look.textPercent(), learner));
    }

    /** Tells what was found on opening the learner's file. */
    private void found() {
        banner.clear();
        if (desk.chosen()) {
            desk.learner().notices().forEach(banner::say);
        }
    }

    private void refresh() {
        banner.show(words.texts(), desk.chosen() ? desk.learner().trouble().orElse(null) : null);
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
        VBox top = new VBox(4, Ui.text("Startwater", "sw-sentence", "sw-strong", "sw-water"));
        if (desk.chosen()) {
            top.getChildren()
                    .addAll(
                            place("shell.home", Place.HOME, this::home),
                            place("shell.lessons", Place.LESSONS, this::lessons));
        }
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
        if (desk.chosen()) {
            String name = Notices.name(desk.learner().name(), texts);
            VBox who = new VBox(
                    2,
                    Ui.text(texts.text("learner.current", name), "sw-label", "sw-quiet"),
                    place("learner.manage", Place.LEARNER, this::learner));
            all.getChildren().add(who);
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
        HomeModel model = HomeModel.of(library, desk.ownDrills(), desk.learner().history());
        return new HomeView(model, words, this::start, lesson -> lesson(lesson.id()));
    }

    private Region learnerPage() {
        return scroll(new LearnerPage(desk, words.texts(), this::enter, () -> {
            if (desk.chosen()) {
                refresh();
            } else {
                learner();
            }
        }));
    }

    private void learner() {
        go(Place.LEARNER, this::learnerPage);
    }

    /** A learner is chosen: home, with what was found in the file. */
    private void enter() {
        keepSettings();
        found();
        home();
    }

    private void lessons() {
        go(Place.LESSONS, () -> new LessonList(library.lessons(language.code()), words, l -> lesson(l.id())));
    }

    private void lesson(String id) {
        LessonModel model = new LessonModel(id, (block, step, score, options, sureness) -> {
            List<String> skills =
                    library.lesson(id, language.code()).map(Lesson::skills).orElse(List.of());
            desk.learner().answer(id, skills, block, step, score, options, sureness);
            kept();
        });
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
        LearnerFile file = desk.learner();
        String spoken = language.code();
        go(Place.DRILL, () -> waiting("shell.opening"));
        work = Background.run(
                () -> new Attempts(file).goOnOrBegin(scenario, Entry.Mode.PRACTICE, spoken),
                at -> play(at, model(at, file.history())));
    }

    private static DrillModel model(Resumed at, History history) {
        // Whoever has finished a drill has seen the sum worked.
        int practised = history.finished() == 0 && at.run().past().size() == 0 ? 0 : 1;
        String note = history.noteOn(at.run().scenario().skills()).orElse(null);
        return new DrillModel(at, practised, note);
    }

    private void play(Resumed at, DrillModel model) {
        work = null;
        drill = model;
        model.changesProperty().addListener((p, was, is) -> kept());
        banner.clear();
        if (at.notice() != null) {
            banner.say(at.notice());
        }
        if (model.run().over()) {
            finished(model.run(), model.verdicts());
        } else {
            go(Place.DRILL, () -> new DrillScreen(model, language, this));
        }
    }

    /** Says so as soon as something is not on the disk, and no longer than that. */
    private void kept() {
        banner.show(words.texts(), desk.learner().trouble().orElse(null));
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
        drill = null;
        go(Place.HOME, this::homePage);
    }

    @Override
    public void committed(DrillRun run) {
        kept();
    }

    @Override
    public void finished(DrillRun run, List<Verdict> verdicts) {
        EndModel end = new EndModel(run, verdicts);
        Steps steps = drill == null ? Steps.NONE : drill.steps();
        go(
                Place.DRILL,
                () -> new EndView(
                        end, words, resolved -> resolved(steps, resolved), this::home, () -> again(run.scenario())));
        work = Background.run(() -> Review.of(run, verdicts), summary -> {
            end.summaryProperty().set(summary);
            steps.finished(summary);
            refresh();
        });
    }

    /** Keeps a resolution, and says whether it is on the disk. */
    private boolean resolved(Steps steps, String text) {
        steps.resolved(text);
        kept();
        return steps.kept();
    }

    private void again(Scenario scenario) {
        drill = null;
        start(scenario);
    }

    /** Writes what is still to be written. */
    public void close() {
        desk.close();
    }
}
