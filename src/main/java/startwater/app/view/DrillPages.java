package startwater.app.view;

import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import javafx.scene.layout.Region;
import org.jspecify.annotations.Nullable;
import startwater.app.model.DrillModel;
import startwater.app.model.EndModel;
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

/** A drill from its start, or from where it was left, to its end page. */
final class DrillPages implements Navigator {
    private final Frame frame;
    private @Nullable DrillModel drill;

    DrillPages(Frame frame) {
        this.frame = frame;
    }

    /** Starts a drill, or takes up the open attempt of it. */
    @Override
    public void start(Scenario scenario) {
        LearnerFile file = frame.desk().learner();
        String spoken = frame.language().code();
        opening(() -> new Attempts(file).goOnOrBegin(scenario, Entry.Mode.PRACTICE, spoken));
    }

    /** Takes up a drill as it is given: from a shelf, or from a hand-out. @param begun works it out beside the window */
    void opening(Supplier<Resumed> begun) {
        LearnerFile file = frame.desk().learner();
        if (file.away()) {
            // What was begun cannot be read, and what would be begun now could not be told from it later.
            frame.home();
            return;
        }
        frame.go(Place.DRILL, () -> Shell.waiting(frame.words().texts().text("shell.opening")));
        frame.work(begun, at -> play(at, model(at, file.history())));
    }

    private static DrillModel model(Resumed at, History history) {
        // Whoever has finished a drill has seen the sum worked.
        int practised = history.finished() == 0 && at.run().past().size() == 0 ? 0 : 1;
        String note = history.noteOn(at.run().scenario().skills()).orElse(null);
        return new DrillModel(at, practised, note);
    }

    private void play(Resumed at, DrillModel model) {
        drill = model;
        model.changesProperty().addListener((p, was, is) -> frame.kept());
        frame.banner().clear();
        if (at.notice() != null) {
            frame.banner().say(at.notice());
        }
        if (model.run().over()) {
            finished(model.run(), model.verdicts());
        } else {
            frame.go(Place.DRILL, () -> screen(model));
        }
    }

    private DrillScreen screen(DrillModel model) {
        return new DrillScreen(model, frame.language(), this);
    }

    @Override
    public void show(Region screen) {
        DrillModel model = drill;
        boolean drillAgain = screen instanceof DrillScreen && model != null;
        // A drill screen is made anew from its model when language or size change; a look back stays as it is.
        frame.go(Place.DRILL, drillAgain ? first(screen, () -> screen(Objects.requireNonNull(model))) : () -> screen);
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
        leave();
        frame.home();
    }

    /** The window is about something else now; what is committed is kept. */
    void leave() {
        drill = null;
    }

    @Override
    public void committed(DrillRun run) {
        frame.kept();
    }

    @Override
    public void finished(DrillRun run, List<Verdict> verdicts) {
        EndModel end = new EndModel(run, verdicts);
        Steps steps = drill == null ? Steps.NONE : drill.steps();
        Supplier<Region> shown = () -> new EndView(
                end, frame.words(), resolved -> resolved(steps, resolved), this::home, () -> again(run.scenario()));
        frame.go(Place.DRILL, shown);
        // Not called off with the page: whoever leaves before the sum is there has finished all the same.
        Background.run(() -> Review.of(run, verdicts), summary -> {
            end.summaryProperty().set(summary);
            steps.finished(summary);
            if (frame.shows(shown)) {
                frame.refresh();
            }
        });
    }

    @Override
    public boolean plays(DrillRun run) {
        return drill != null && drill.run() == run;
    }

    /** The drill that is being played, or null. */
    @Nullable
    DrillModel playing() {
        return drill;
    }

    /** Keeps a resolution, and says whether it is on the disk. */
    private boolean resolved(Steps steps, String text) {
        steps.resolved(text);
        frame.kept();
        return steps.kept();
    }

    private void again(Scenario scenario) {
        drill = null;
        start(scenario);
    }
}
