package startwater.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;

/** Desks at which a learner without a name is at work. */
public final class Desks {
    private Desks() {}

    public static Desk nameless(Path folder) {
        return nameless(folder, Means.USUAL);
    }

    public static Desk nameless(Path folder, Means means) {
        Desk desk = Desk.in(folder, means);
        try {
            desk.choose("");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return desk;
    }

    /** A look at the file of that learner, while it is written to or not. */
    public static LearnerFile look(Path folder) {
        try {
            return new Learners(folder, Means.USUAL).look("learner");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
