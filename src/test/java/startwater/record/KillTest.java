package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.quantity.Stream;

/** A program that is killed while a drill is played loses at most the field that was not committed. */
class KillTest {
    private static final String DRILL = "chloramine-town";
    private static final int DECISIONS = 3;
    private static final int QUICK = 10;
    private static final int FULL = 200;
    private static final int JUDGED_OF_FULL = 10;

    @TempDir
    private static Path folder;

    /** All lines of the first decisions as nobody killed it, without marks. */
    private static byte[] reference = {};

    private static List<Entry> entries = List.of();

    @BeforeAll
    static void play() throws IOException {
        Path file = folder.resolve("reference.jsonl");
        try (LearnerFile learner = LearnerFile.open(file, Script.means())) {
            learner.name("Ana");
            new Script(4, go(learner)).play(DECISIONS, false);
        }
        reference = Files.readAllBytes(file);
        entries = Files.readAllLines(file).stream()
                .map(l -> EntryText.read(l).entry())
                .toList();
        assertThat(entries).hasSizeGreaterThan(20);
    }

    private static Resumed go(LearnerFile learner) {
        return new Attempts(learner).goOnOrBegin(KilledChild.drill(DRILL), Entry.Mode.PRACTICE, "en");
    }

    @Test
    void killedAtAnyMomentItLosesOnlyWhatWasNotCommitted() throws Exception {
        kill(QUICK, 1);
    }

    @Test
    @Tag("full")
    void killedTwoHundredTimesItLosesOnlyWhatWasNotCommitted() throws Exception {
        kill(FULL, JUDGED_OF_FULL);
    }

    /** @param judged how many of the drills are taken up afterwards and played to their end */
    private static void kill(int times, int judged) throws Exception {
        int early = 0;
        List<String> marks = judged == 0 ? List.of() : marksOf(reference);
        for (int i = 0; i < times; i++) {
            Path file = folder.resolve("killed-" + times + "-" + i + ".jsonl");
            Stream chance = Stream.of(11, times, i);
            int committed = runAndKill(file, 1 + (int) (chance.uniform() * (entries.size() - 1)), chance);
            byte[] left = Files.readAllBytes(file);
            int whole = (int) new String(left, java.nio.charset.StandardCharsets.UTF_8)
                    .chars()
                    .filter(c -> c == '\n')
                    .count();
            assertThat(left).as("a beginning of what was committed").isEqualTo(Arrays.copyOf(reference, left.length));
            assertThat(whole).as("nothing that was committed is lost").isBetween(committed, committed + 1);
            early += whole < entries.size() ? 1 : 0;
            reads(file, whole);
            if (i % (times / judged) == 0) {
                assertThat(playedOn(file, whole)).isEqualTo(marks);
            }
        }
        assertThat(early).as("kills before the end").isGreaterThan(times / 2);
    }

    /** @return how many steps the program said were committed */
    private static int runAndKill(Path file, int after, Stream chance) throws IOException, InterruptedException {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-XX:TieredStopAtLevel=1",
                        "-XX:+UseSerialGC",
                        "-Xshare:auto",
                        "-cp",
                        System.getProperty("java.class.path"),
                        KilledChild.class.getName(),
                        folder.resolve("reference.jsonl").toString(),
                        file.toString())
                .redirectError(new File(folder.toFile(), "child-err"))
                .start();
        try (InputStream said = child.getInputStream()) {
            int committed = 0;
            while (committed < after && said.read() >= 0) {
                committed++;
            }
            assertThat(committed)
                    .as("%s", new File(folder.toFile(), "child-err"))
                    .isEqualTo(after);
            LockSupport.parkNanos((long) (chance.uniform() * TimeUnit.MILLISECONDS.toNanos(4)));
            // The handle leaves what was said readable.
            child.toHandle().destroyForcibly();
            child.waitFor();
            return committed + said.readAllBytes().length;
        }
    }

    /** What is there is read, and played again it is the same tank and log. */
    private static void reads(Path file, int whole) throws IOException {
        Path copy = Files.copy(file, file.resolveSibling(Names.keyOf(file) + "-read.jsonl"));
        try (LearnerFile learner = LearnerFile.open(copy, Script.means())) {
            assertThat(learner.notices().stream().map(Notice::kind)).allMatch(Notice.Kind.SET_ASIDE::equals);
        }
        assertThat(Files.readAllLines(copy)).hasSize(whole);
        List<Replay.Report> reports = new ArrayList<>();
        new Replay(KilledChild::drill, true).all(copy, reports::add);
        assertThat(reports).allMatch(r -> r.outcome() == Replay.Outcome.SAME);
    }

    /** Takes the attempt up, does what was still to be done, and returns its marks. */
    private static List<String> playedOn(Path file, int whole) throws IOException {
        try (LearnerFile learner = LearnerFile.open(file, Script.means())) {
            Again again = new Again(go(learner));
            int left = Math.max(whole, 2);
            for (Entry e : entries.subList(left, entries.size())) {
                again.act((Entry.OfAttempt) e);
                if (e instanceof Entry.Decided d) {
                    again.act(new Entry.Marked(d.attempt(), 0, d.visit(), EntryTextTest.marks(true), d.at()));
                }
            }
        }
        return marks(file);
    }

    private static List<String> marksOf(byte[] lines) throws IOException {
        Path file = Files.write(folder.resolve("marked.jsonl"), lines);
        try (LearnerFile learner = LearnerFile.open(file, Script.means())) {
            go(learner);
        }
        return marks(file);
    }

    /** The marked lines, whatever their place. */
    private static List<String> marks(Path file) throws IOException {
        List<String> marks = Files.readAllLines(file).stream()
                .filter(l -> l.startsWith("{\"kind\":\"marked\""))
                .map(l -> l.replaceFirst("\"n\":\\d+,", ""))
                .toList();
        assertThat(marks).hasSize(DECISIONS);
        return marks;
    }
}
