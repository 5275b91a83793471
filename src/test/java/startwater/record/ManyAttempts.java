package startwater.record;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import startwater.content.ContentHash;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.score.Verdict;
import startwater.strip.Pad;

/** The file of somebody who has played for years: attempts as the program writes them, with marks that follow from their numbers. */
public final class ManyAttempts {
    private static final Instant FIRST = Instant.parse("2024-01-08T08:00:00Z");
    private static final int VISITS = 5;
    private static final List<Pad> READ = List.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH);

    private ManyAttempts() {}

    /** Writes so many finished attempts of a learner into a data folder. @return the file */
    public static Path write(Path data, String name, int attempts) throws IOException {
        Path file = Names.file(Files.createDirectories(data.resolve("learners")), Names.key(name));
        List<Scenario> drills = Library.shipped().scenarios();
        List<String> contents = drills.stream().map(ContentHash::ofPlay).toList();
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            line(out, new Entry.Learner(EntryText.FORMAT, new UUID(1, 2).toString(), name, FIRST));
            for (int i = 0; i < attempts; i++) {
                int which = i % drills.size();
                attempt(out, i, drills.get(which), contents.get(which));
            }
        }
        return file;
    }

    private static void line(BufferedWriter out, Entry entry) throws IOException {
        out.write(EntryText.line(entry));
        out.write('\n');
    }

    private static void attempt(BufferedWriter out, int number, Scenario drill, String content) throws IOException {
        String id = new UUID(7, number).toString();
        Instant at = FIRST.plus(Duration.ofMinutes(90L * number));
        int n = 0;
        line(
                out,
                new Entry.Begun(
                        id,
                        n++,
                        drill.id(),
                        drill.skills(),
                        content,
                        EngineVersion.here(),
                        1 + number,
                        Entry.Mode.PRACTICE,
                        "en",
                        null,
                        at));
        for (int v = 0; v < VISITS; v++) {
            line(out, new Entry.Dipped(id, n++, false, v, 1, at));
            for (Pad pad : READ) {
                line(
                        out,
                        new Entry.Wrote(id, n++, pad, (number + v) % pad.scale().stops(), 1, v, at));
            }
            Decision own = Decision.LEAVE_ALONE.withFeed((number + v) % 3 / 2.0);
            Prediction said =
                    new Prediction(Pad.NITRITE, (number + v) % 5, Prediction.Sureness.values()[(number + v) % 3]);
            line(
                    out,
                    new Entry.Decided(
                            id,
                            n++,
                            3 * v,
                            own,
                            said,
                            new Entry.Sight(2 + v, 14.5, 9.5, null, 120, 0),
                            "0".repeat(64),
                            "1".repeat(64),
                            at));
            line(out, new Entry.Marked(id, n++, 3 * v, marks(number, v, own), at.plusMillis(700)));
            at = at.plusSeconds(240);
        }
        line(out, new Entry.Finished(id, n, 40.0 + number % 60, number % 3 == 0, 118, 1.5, -0.5, 21.0, at));
    }

    private static Entry.Marks marks(int number, int v, Decision own) {
        double mark = (31 * number + 17 * v) % 101;
        Verdict.Word word = mark < 30 ? Verdict.Word.DANGEROUS : mark < 70 ? Verdict.Word.COSTLY : Verdict.Word.SOUND;
        return new Entry.Marks(
                3,
                number % 4,
                null,
                mark,
                word,
                (100 - mark) / 25,
                true,
                false,
                true,
                Verdict.Variable.values()[(number + v) % Verdict.Variable.values().length],
                own,
                own.withFeed(0).withChange(0.25),
                new Entry.Foresight(
                        Pad.NITRITE, Prediction.Sureness.values()[(number + v) % 3], number % 101, (v + 1) / 7.0),
                v == 0 ? null : (Boolean) (number % 2 == 0));
    }
}
