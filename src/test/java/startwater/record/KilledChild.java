package startwater.record;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import startwater.content.ScenarioReader;
import startwater.drill.Scenario;

/** A program that plays what stands in a file, says after each step that it is committed, and is killed while at it. */
final class KilledChild {
    private KilledChild() {}

    /** @param args the file to do again, and the file to write */
    public static void main(String[] args) throws IOException {
        List<String> script = Files.readAllLines(Path.of(args[0]));
        try (LearnerFile file = LearnerFile.open(Path.of(args[1]), Script.means())) {
            file.name("Ana");
            say();
            Again again = null;
            for (String line : script) {
                Entry entry = EntryText.read(line).entry();
                if (entry instanceof Entry.Begun begun) {
                    again = new Again(new Attempts(file).goOnOrBegin(drill(begun.scenario()), begun.mode(), "en"));
                    say();
                } else if (entry instanceof Entry.OfAttempt step && again != null) {
                    again.act(step);
                    say();
                }
            }
        }
    }

    /** One byte, at once: what is said before a kill has been said. */
    private static void say() {
        System.out.write('.');
        System.out.flush();
    }

    static Scenario drill(String id) {
        // One file is read quicker than all that ship.
        return ScenarioReader.read(Path.of("scenarios", id + ".yaml")).get();
    }
}
