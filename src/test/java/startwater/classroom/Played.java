package startwater.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import startwater.record.Entry;

/** A class of two that played, for tests of the window. */
public final class Played {
    private Played() {}

    /** Two learners play a drill: the hand-out {@code monday} lies in the folder, what came back in {@code in}. */
    public static void twoOf(String drill, Path folder) throws IOException {
        Handout handout = new Handout(
                "monday",
                "Monday",
                Entry.Mode.PRACTICE,
                "",
                true,
                7,
                List.of(new Handout.Drill(Pupils.drill(drill), null)),
                List.of());
        Files.writeString(folder.resolve("monday" + HandoutFile.ENDING), HandoutFile.text(handout));
        Path in = Files.createDirectories(folder.resolve("in"));
        SimulatedClass pupils = new SimulatedClass(folder.resolve("homes"), handout, FakeJudge::judge);
        Files.writeString(in.resolve("f1" + AttemptsFile.ENDING), pupils.play(1, "careful"));
        Files.writeString(in.resolve("f2" + AttemptsFile.ENDING), pupils.play(2, "do-nothing"));
    }
}
