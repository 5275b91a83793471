package startwater.app.view;

import java.util.Optional;
import startwater.drill.DrillRun;

/** Keeps the open drill. */
public interface Attempts {
    /** Writes what is decided so far. @return false where it could not be written */
    boolean save(DrillRun run);

    /** The drill that was left open, brought back to its last decision. */
    Optional<DrillRun> open();

    /** Forgets the open drill. */
    void clear();
}
