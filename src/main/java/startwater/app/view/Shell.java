package startwater.app.view;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.jspecify.annotations.Nullable;
import startwater.app.Desk;
import startwater.app.Settings;
import startwater.app.model.DrillModel;
import startwater.app.model.HomeModel;
import startwater.app.model.HomeNext;
import startwater.app.model.LessonModel;
import startwater.app.model.ProgressModel;
import startwater.app.model.RehearsalModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.classroom.ClassWords;
import startwater.classroom.Handout;
import startwater.cli.CrashLog;
import startwater.content.CourseShelf;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.content.Parsed;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;
import startwater.record.CourseHistory;
import startwater.record.LearnerFile;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;

/**
 * The frame of the window: the places at the left, the page beside them. Pages are made from their models, so a change of
 * language, look or text size makes the page anew and loses nothing.
 */
public final class Shell extends BorderPane implements Frame, SideBar.Acts {
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

    /** A page of a class may take some seconds; a disk that does not answer is not waited for any longer. */
    private static final Duration WRITING = Duration.ofSeconds(20);

    private final Desk desk;
    private final Banner banner = new Banner(this::setTop);
    private final Library library;
    private Language language;
    private Look look;
    private DrillWords words;
    private Place place = Place.HOME;
    private Supplier<Region> page;
    private final DrillPages drills = new DrillPages(this);
    private final ClassPages classes = new ClassPages(this, drills);
    private Background.@Nullable Work work;
    private Background.@Nullable Work coaching;
    /** What the coach said last of the learner who is here, or null. */
    private @Nullable HomeNext coach;

    private @Nullable RehearsalModel rehearsal;
    /** What is to be done once it is known who learns. */
    private Runnable whenKnown = () -> {};

    private Consumer<Path> browser = page -> {};
    private Picker picker =
            new SystemPicker(() -> getScene() == null ? null : getScene().getWindow());

    /** What is shown, for the note of a fault; read from any thread. */
    private volatile String screen = "";

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
        // Once the window stands: the two would share the cores.
        Platform.runLater(() -> {
            if (desk.chosen()) {
                askCoach();
            }
            String spoken = language.code();
            Background.run(() -> library.readAhead(spoken), read -> {});
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

    /** Dresses the scene that holds this shell, listens to its zoom keys and makes the first page, for whose size it must be dressed. */
    public void dress(Scene scene) {
        look.dress(scene);
        key(scene, KeyCode.PLUS, () -> zoom(SideBar.ZOOM_STEP));
        key(scene, KeyCode.EQUALS, () -> zoom(SideBar.ZOOM_STEP));
        key(scene, KeyCode.ADD, () -> zoom(SideBar.ZOOM_STEP));
        key(scene, KeyCode.MINUS, () -> zoom(-SideBar.ZOOM_STEP));
        key(scene, KeyCode.SUBTRACT, () -> zoom(-SideBar.ZOOM_STEP));
        key(scene, KeyCode.DIGIT0, () -> wear(new Look(look.theme(), 100)));
        refresh();
    }

    private static void key(Scene scene, KeyCode code, Runnable act) {
        scene.getAccelerators().put(new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN), act);
    }

    @Override
    public void zoom(int step) {
        wear(new Look(look.theme(), Math.max(100, Math.min(200, look.textPercent() + step))));
    }

    @Override
    public void wear(Look now) {
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

    private SideBar sideBar() {
        return new SideBar(
                this, words.texts(), place, look, desk.chosen() ? desk.learner().name() : null);
    }

    @Override
    public void speak(Language now) {
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

    @Override
    public void refresh() {
        kept();
        setLeft(place == Place.DRILL ? null : sideBar());
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
        return drills.playing();
    }

    /** Says that the program failed. @param noted whether it is in the log */
    public void failed(CrashLog log, boolean noted) {
        banner.tell(log.say(noted, words.texts()));
        kept();
    }

    @Override
    public void go(Place where, Supplier<Region> what) {
        callOff();
        if (where != Place.DRILL) {
            drills.leave();
        }
        place = where;
        page = what;
        refresh();
    }

    @Override
    public void visit(Place where) {
        switch (where) {
            case HOME -> shelf();
            case LESSONS -> lessons();
            case REHEARSAL -> rehearsal();
            case PROGRESS -> progress();
            case CLASS -> classes.desk();
            case LEARNER -> learner();
            case DRILL -> throw new IllegalArgumentException("a drill is started, not visited");
        }
    }

    @Override
    public Desk desk() {
        return desk;
    }

    @Override
    public Library library() {
        return library;
    }

    @Override
    public Language language() {
        return language;
    }

    @Override
    public DrillWords words() {
        return words;
    }

    @Override
    public Banner banner() {
        return banner;
    }

    @Override
    public Picker picker() {
        return picker;
    }

    @Override
    public <T> void work(Supplier<T> asked, Consumer<T> done) {
        callOff();
        // A page that waits for what failed gives way.
        work = Background.run(asked, done, this::home);
    }

    @Override
    public boolean shows(Supplier<Region> asked) {
        return page == asked;
    }

    private void callOff() {
        if (work != null) {
            work.cancel();
            work = null;
        }
    }

    /** A page while something is worked out. */
    static Region waiting(String said) {
        StackPane pane = new StackPane(Ui.text(said, "sw-sentence", "sw-quiet"));
        pane.setPadding(new Insets(32));
        return pane;
    }

    private Region homePage() {
        HomeModel model = HomeModel.of(library, desk.ownDrills(), desk.learner().history(), coach);
        return new HomeView(
                model, words, new CoachWords(words, library), this::start, this::lesson, classes::openHandout);
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
                if (getCenter() instanceof HomeView home) {
                    home.coachSays(next);
                }
            }
        });
    }

    private void progress() {
        LearnerFile file = desk.learner();
        go(Place.PROGRESS, () -> waiting(words.texts().text("shell.opening")));
        work(
                () -> progressModel(file),
                model -> go(
                        Place.PROGRESS,
                        () -> new ProgressView(model, new CoachWords(words, library), this::drill, this::lesson)));
    }

    private void rehearsal() {
        RehearsalModel model = rehearsal == null ? new RehearsalModel(desk.ownDrills()) : rehearsal;
        rehearsal = model;
        go(
                Place.REHEARSAL,
                () -> new RehearsalView(
                        model,
                        RehearsalView.texts(language),
                        new RehearsalView.Actions(this::playFile, page -> browser.accept(page))));
    }

    /** Opens a file that the program was started with: a hand-out, or a drill of one's own. */
    public void open(Path file) {
        if (file.toString().endsWith(ScenarioReader.ENDING)) {
            whenKnown = () -> playFile(file);
        } else {
            whenKnown = () -> classes.open(file);
        }
        if (desk.chosen()) {
            enter();
        }
    }

    /** Plays a drill of one's own. */
    private void playFile(Path file) {
        Parsed<Scenario> parsed = ScenarioReader.read(file);
        if (parsed.ok()) {
            start(parsed.get());
        } else {
            banner.tell(words.texts().text("home.broken", file) + "\n"
                    + parsed.faults().get(0).line(language.code()));
            home();
        }
    }

    /** Who asks for files and folders: the choosers of the system, unless another is given. */
    void pickFilesWith(Picker other) {
        picker = other;
    }

    /** Shows a learner what a teacher handed out. */
    void handedOut(Handout given) {
        classes.open(given);
    }

    /** How a page to print is shown: the window knows a browser. */
    public void showPagesIn(Consumer<Path> shown) {
        browser = shown;
    }

    private Region learnerPage() {
        return Ui.scroll(new LearnerPage(desk, words.texts(), picker, this::enter, () -> {
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

    @Override
    public void lesson(String id) {
        LessonModel model = new LessonModel(id, (block, step, score, options, sureness) -> {
            List<String> skills =
                    library.lesson(id, language.code()).map(Lesson::skills).orElse(List.of());
            desk.learner().answer(id, skills, block, step, score, options, sureness);
            kept();
        });
        go(Place.LESSONS, () -> {
            Optional<Lesson> lesson = library.lesson(id, language.code());
            return lesson.isPresent()
                    ? new LessonView(lesson.get(), model, words, this::drill, () -> classes.print(lesson.get()))
                    : homePage();
        });
    }

    /** Starts a drill, or takes up the open attempt of it. */
    public void start(Scenario scenario) {
        drills.start(scenario);
    }

    private void drill(String id) {
        library.drill(id).ifPresent(this::start);
    }

    @Override
    public void kept() {
        banner.show(words.texts(), desk.chosen() ? desk.learner().trouble().orElse(null) : null);
    }

    @Override
    public void home() {
        if (classes.handedOut()) {
            classes.show();
        } else {
            go(Place.HOME, this::homePage);
            askCoach();
        }
    }

    private void shelf() {
        classes.putAway();
        home();
    }

    /** Writes what is still to be written; what is still being worked out is not shown any more. */
    public void close() {
        callOff();
        if (coaching != null) {
            coaching.cancel();
        }
        desk.close();
        Background.finishWriting(WRITING);
    }
}
