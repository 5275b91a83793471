package startwater.app.view;

import java.util.List;
import javafx.scene.layout.Region;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.score.Verdict;

/** Where a screen sends the learner. */
public interface Navigator {
    /** Shows a screen in place of the present one. */
    void show(Region screen);

    /** Whether this run is still what the window is about: it may have been left while something was worked out. */
    default boolean plays(DrillRun run) {
        return true;
    }

    /** Back to the shelf. What is committed is kept. */
    void home();

    /** Starts a drill on a hidden tank of its own. */
    void start(Scenario scenario);

    /** A decision is committed: it is written to disk before anything moves on. */
    void committed(DrillRun run);

    /** The run is over: shows its end page. */
    void finished(DrillRun run, List<Verdict> verdicts);
}
