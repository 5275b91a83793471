package startwater.app.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Node;
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
import startwater.app.model.ClassModel;
import startwater.app.model.DrillModel;
import startwater.app.model.EndModel;
import startwater.app.model.HomeModel;
import startwater.app.model.HomeNext;
import startwater.app.model.LessonModel;
import startwater.app.model.ProgressModel;
import startwater.app.model.ProjectorModel;
import startwater.app.model.RehearsalModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.classroom.AttemptsFile;
import startwater.classroom.ClassWords;
import startwater.classroom.Handout;
import startwater.classroom.MarkMemo;
import startwater.classroom.SecondPass;
import startwater.cli.CrashLog;
import startwater.cli.Notices;
import startwater.content.CourseShelf;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.CourseHistory;
import startwater.record.Entry;
import startwater.record.History;
import startwater.record.LearnerFile;
import startwater.record.Notice;
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
        Texts.DRILL,
        Texts.LESSON,
        Texts.RECORD,
        "/startwater/app/text/window",
        "/startwater/app/text/shell",
        CoachWords.FILE,
        ClassWords.FILE,
        CrashLog.WORDS
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
    private Background.@Nullable Work coaching;
    /** What the coach said last of the learner who is here, or null. */
    private @Nullable HomeNext coach;

    private @Nullable RehearsalModel rehearsal;
    private @Nullable ClassModel classroom;
    private @Nullable Handout handout;
    /** What is to be done once it is known who learns. */
    private Runnable whenKnown = () -> {};

    private Consumer<Path> browser = page -> {};

    /** What is shown, for the note of a fault; read from any thread. */
    private volatile String screen = "";

    private enum Place {
        HOME,
        LESSONS,
        /** One's own system before it is filled. */
        REHEARSAL,
        PROGRESS,
        /** The teacher's desk. */
        CLASS,
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
        // Once the window stands: the two would share the cores.
        Platform.runLater(() -> {
            if (desk.chosen()) {
                askCoach();
            }
        });
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
        banner.show(words.texts(), trouble());
        setLeft(place == Place.DRILL ? null : places());
        Region made = page.get();
        screen = place + " " + made.getClass().getSimpleName();
        setCenter(made);
    }

    /** What is shown, in words of the program; from any thread. */
    public String screen() {
        return screen;
    }

    /** The drill that is being played, or null. */
    @Nullable
    DrillModel playing() {
        return drill;
    }

    /** Says that the program failed. @param noted whether it is in the log */
    public void failed(CrashLog log, boolean noted) {
        tell(log.say(noted, words.texts()));
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
                            place("shell.home", Place.HOME, this::shelf),
                            place("shell.lessons", Place.LESSONS, this::lessons),
                            place("shell.rehearsal", Place.REHEARSAL, this::rehearsal),
                            place("shell.progress", Place.PROGRESS, this::progress),
                            place("shell.class", Place.CLASS, this::classroom));
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
        HomeModel model = HomeModel.of(library, desk.ownDrills(), desk.learner().history(), coach);
        return new HomeView(model, words, new CoachWords(words, library), this::start, this::lesson, this::openHandout);
    }

    /** All that a learner has done is gone through, which takes a second after years: never on the thread that paints. */
    private ProgressModel progressModel(LearnerFile file) {
        ZoneId zone = ZoneId.systemDefault();
        return ProgressModel.of(
                CourseShelf.of(library),
                CourseHistory.of(file.history()),
                LocalDate.now(zone),
                zone,
                file.key().hashCode());
    }

    /** Asks the coach; the shelf is there meanwhile, with what the coach said last. */
    private void askCoach() {
        LearnerFile file = desk.learner();
        if (coaching != null) {
            coaching.cancel();
        }
        coaching = Background.run(() -> progressModel(file).next(), said -> {
            HomeNext next = said.orElse(null);
            if (desk.chosen() && !Objects.equals(coach, next)) {
                coach = next;
                if (place == Place.HOME && handout == null) {
                    anewWithFocus();
                }
            }
        });
    }

    /** Makes the page anew; the keys stay on what has the same id. */
    private void anewWithFocus() {
        Node focus = getScene() == null ? null : getScene().getFocusOwner();
        refresh();
        Node same = focus == null || focus.getId() == null ? null : lookup("#" + focus.getId());
        if (same != null) {
            same.requestFocus();
        }
    }

    private void progress() {
        LearnerFile file = desk.learner();
        go(Place.PROGRESS, () -> waiting("shell.opening"));
        work = Background.run(
                () -> progressModel(file),
                model -> go(
                        Place.PROGRESS,
                        () -> new ProgressView(model, new CoachWords(words, library), this::drill, this::lesson)),
                this::home);
    }

    private void rehearsal() {
        RehearsalModel model = rehearsal == null ? new RehearsalModel(desk.ownDrills()) : rehearsal;
        rehearsal = model;
        go(
                Place.REHEARSAL,
                () -> new RehearsalView(
                        model,
                        Texts.of(language, RehearsalView.words()),
                        new RehearsalView.Actions(this::playFile, page -> browser.accept(page))));
    }

    private void classroom() {
        ClassModel model = classroom == null
                ? new ClassModel(
                        Background.beside(),
                        Platform::runLater,
                        InstantSource.system(),
                        new SecondPass(MarkMemo.inMemory()),
                        Math.max(1, Runtime.getRuntime().availableProcessors()))
                : classroom;
        classroom = model;
        go(Place.CLASS, () -> new ClassView(model, library.scenarios(), words, classDesk()));
    }

    private ClassDesk classDesk() {
        return new ClassDesk(
                () -> getScene() == null ? null : getScene().getWindow(), words.texts(), this::tell, this::room);
    }

    private void tell(String sentence) {
        banner.tell(sentence);
        kept();
    }

    /** One decision on the wall. */
    private void room(ProjectorModel model) {
        go(Place.DRILL, () -> new ProjectorView(model, words, this::classroom));
    }

    /** A learner opens what a teacher handed out. */
    private void openHandout() {
        Handout chosen = classDesk().handout();
        if (chosen != null) {
            handedOut(chosen);
        }
    }

    /** Opens a file that the program was started with: a hand-out, or a drill of one's own. */
    public void open(Path file) {
        if (file.toString().endsWith(ScenarioReader.ENDING)) {
            whenKnown = () -> playFile(file);
        } else {
            whenKnown = () -> {
                Handout found = classDesk().read(file);
                if (found != null) {
                    handedOut(found);
                }
            };
        }
        if (desk.chosen()) {
            enter();
        }
    }

    private void handedOut(Handout given) {
        handout = given;
        go(
                Place.HOME,
                () -> new HandoutPage(
                        given, words, library, drill -> start(drill, given), this::lesson, () -> handIn(given)));
    }

    private void handIn(Handout given) {
        LearnerFile file = desk.learner();
        try {
            String lines = AttemptsFile.text(Files.readString(file.file()), given.id());
            classDesk()
                    .save(
                            words.texts().text("desk.handIn"),
                            given.id() + "-" + file.key() + AttemptsFile.ENDING,
                            lines);
        } catch (IOException unreadable) {
            tell(words.texts().text("desk.cannotRead", file.file()));
        }
    }

    /** Starts a drill that was handed out, or takes it up. */
    private void start(Scenario scenario, Handout given) {
        LearnerFile file = desk.learner();
        String spoken = language.code();
        opening(() ->
                new Attempts(file).goOnOrBegin(scenario, given.mode(), spoken, given.variant(id(file)), given.id()));
    }

    /** Plays a drill of one's own. */
    private void playFile(Path file) {
        Parsed<Scenario> parsed = ScenarioReader.read(file);
        if (parsed.ok()) {
            start(parsed.get());
        } else {
            home();
        }
    }

    /** How a page to print is shown: the window knows a browser. */
    public void showPagesIn(Consumer<Path> shown) {
        browser = shown;
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
        coach = null;
        shelf();
        Runnable first = whenKnown;
        whenKnown = () -> {};
        first.run();
    }

    private void lessons() {
        go(Place.LESSONS, () -> new LessonList(library.lessonCards(language.code()), words, l -> lesson(l.id())));
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
        opening(() -> new Attempts(file).goOnOrBegin(scenario, Entry.Mode.PRACTICE, spoken));
    }

    private static String id(LearnerFile file) {
        Entry.Learner learner = file.history().learner();
        return learner == null ? file.key() : learner.id();
    }

    private void opening(Supplier<Resumed> begun) {
        LearnerFile file = desk.learner();
        if (file.away()) {
            // What was begun cannot be read, and what would be begun now could not be told from it later.
            shelf();
            kept();
            return;
        }
        go(Place.DRILL, () -> waiting("shell.opening"));
        work = Background.run(begun, at -> play(at, model(at, file.history())), this::home);
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
        banner.show(words.texts(), trouble());
    }

    private @Nullable Notice trouble() {
        return desk.chosen() ? desk.learner().trouble().orElse(null) : null;
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

    /** Back to where the drill came from: what was handed out, or the shelf. */
    @Override
    public void home() {
        drill = null;
        Handout given = handout;
        if (given == null) {
            go(Place.HOME, this::homePage);
            askCoach();
        } else {
            handedOut(given);
        }
    }

    private void shelf() {
        handout = null;
        home();
    }

    @Override
    public void committed(DrillRun run) {
        kept();
    }

    @Override
    public void finished(DrillRun run, List<Verdict> verdicts) {
        EndModel end = new EndModel(run, verdicts);
        Steps steps = drill == null ? Steps.NONE : drill.steps();
        Supplier<Region> shown = () -> new EndView(
                end, words, resolved -> resolved(steps, resolved), this::home, () -> again(run.scenario()));
        go(Place.DRILL, shown);
        // Not called off with the page: whoever leaves before the sum is there has finished all the same.
        Background.run(() -> Review.of(run, verdicts), summary -> {
            end.summaryProperty().set(summary);
            steps.finished(summary);
            if (page == shown) {
                refresh();
            }
        });
    }

    @Override
    public boolean plays(DrillRun run) {
        return drill != null && drill.run() == run;
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

    /** Writes what is still to be written; what is still being worked out is not shown any more. */
    public void close() {
        for (Background.Work running : new Background.@Nullable Work[] {work, coaching}) {
            if (running != null) {
                running.cancel();
            }
        }
        desk.close();
    }
}
