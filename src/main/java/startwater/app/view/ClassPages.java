package startwater.app.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.Objects;
import javafx.application.Platform;
import org.jspecify.annotations.Nullable;
import startwater.app.model.ClassModel;
import startwater.app.model.ProjectorModel;
import startwater.classroom.AttemptsFile;
import startwater.classroom.Handout;
import startwater.classroom.MarkFile;
import startwater.classroom.SecondPass;
import startwater.content.Lesson;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.record.LearnerFile;

/** The teacher's desk, one decision on the wall, and what a learner does with a hand-out. */
final class ClassPages {
    private final Frame frame;
    private final DrillPages drills;
    private @Nullable ClassModel classroom;
    private @Nullable Handout handout;

    ClassPages(Frame frame, DrillPages drills) {
        this.frame = frame;
        this.drills = drills;
    }

    /** Whether the learner is working through a hand-out. */
    boolean handedOut() {
        return handout != null;
    }

    /** Lays the hand-out aside. */
    void putAway() {
        handout = null;
    }

    /** The teacher's desk as it was left. */
    void desk() {
        ClassModel model = classroom == null
                ? new ClassModel(
                        Background.beside(),
                        Platform::runLater,
                        InstantSource.system(),
                        new SecondPass(MarkFile.in(frame.desk().folder())),
                        Math.max(1, Runtime.getRuntime().availableProcessors()))
                : classroom;
        classroom = model;
        frame.go(Place.CLASS, () -> new ClassView(model, frame.library().scenarios(), frame.words(), files()));
    }

    private ClassDesk files() {
        return new ClassDesk(frame.picker(), frame.words().texts(), this::tell, this::room);
    }

    /** Puts a lesson on paper. */
    void print(Lesson lesson) {
        files().lesson(lesson);
    }

    private void tell(String sentence) {
        frame.banner().tell(sentence);
        frame.kept();
    }

    /** One decision on the wall. */
    private void room(ProjectorModel model) {
        frame.go(Place.DRILL, () -> new ProjectorView(model, frame.words(), this::desk));
    }

    /** A learner picks what a teacher handed out. */
    void openHandout() {
        open(files().handout());
    }

    /** Opens the hand-out in a file, or says why not. */
    void open(Path file) {
        open(files().read(file));
    }

    /** Shows a learner what a teacher handed out; nothing where there is none. */
    void open(@Nullable Handout given) {
        if (given != null) {
            handout = given;
            show();
        }
    }

    /** The page of the hand-out at hand. @throws NullPointerException where there is none */
    void show() {
        Handout given = Objects.requireNonNull(handout, "no hand-out is open");
        frame.go(
                Place.HOME,
                () -> new HandoutPage(
                        given,
                        frame.words(),
                        frame.library(),
                        drill -> start(drill, given),
                        frame::lesson,
                        () -> handIn(given)));
    }

    private void handIn(Handout given) {
        LearnerFile file = frame.desk().learner();
        try {
            String lines = AttemptsFile.text(Files.readString(file.file()), given.id());
            files().handIn(given.id() + "-" + file.key(), lines);
        } catch (IOException unreadable) {
            tell(frame.words().texts().text("desk.cannotRead", file.file()));
        }
    }

    /** Starts a drill that was handed out, or takes it up. */
    private void start(Scenario scenario, Handout given) {
        LearnerFile file = frame.desk().learner();
        String spoken = frame.language().code();
        drills.opening(() ->
                new Attempts(file).goOnOrBegin(scenario, given.mode(), spoken, given.variant(id(file)), given.id()));
    }

    private static String id(LearnerFile file) {
        Entry.Learner learner = file.history().learner();
        return learner == null ? file.key() : learner.id();
    }
}
