package startwater.app.view;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import startwater.record.Entry;
import startwater.record.EntryText;

/** Lines of a learner's file for tests, read without any of its helpers. */
final class Entries {
    private Entries() {}

    /** The lines of the attempt of a drill that was begun last. */
    static List<Entry> ofLast(Path file, String scenario) {
        List<Entry> of = new ArrayList<>();
        String attempt = "";
        try {
            for (String line : Files.readAllLines(file)) {
                Entry entry = EntryText.read(line).entry();
                if (entry instanceof Entry.Begun begun && begun.scenario().equals(scenario)) {
                    attempt = begun.attempt();
                    of.clear();
                }
                if (entry instanceof Entry.OfAttempt step && step.attempt().equals(attempt)) {
                    of.add(entry);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return of;
    }

    static long count(List<Entry> lines, Class<? extends Entry> kind) {
        return lines.stream().filter(kind::isInstance).count();
    }
}
