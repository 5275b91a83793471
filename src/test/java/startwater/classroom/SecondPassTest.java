package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.record.Entry;

/** Which attempts are judged again, how often a case is judged, and that it can be stopped. */
class SecondPassTest {
    private static final Instant NOW = Instant.parse("2026-03-03T08:00:00Z");

    @TempDir
    static Path home;

    private static List<HandedIn> practice;
    private static List<HandedIn> exam;

    @BeforeAll
    static void play() throws IOException {
        practice = collected(Entry.Mode.PRACTICE, "practice");
        exam = collected(Entry.Mode.EXAM, "exam");
    }

    private static List<HandedIn> collected(Entry.Mode mode, String name) throws IOException {
        Handout handout = new Handout(
                name,
                "",
                mode,
                "",
                false,
                3,
                List.of(new Handout.Drill(Pupils.drill("first-strips"), null)),
                List.of());
        Path folder = Files.createDirectories(home.resolve(name));
        SimulatedClass pupils = new SimulatedClass(home.resolve(name + "-homes"), handout, FakeJudge::judge);
        for (int i = 1; i <= 6; i++) {
            Files.writeString(folder.resolve("f" + i + AttemptsFile.ENDING), pupils.play(i, "careful"));
        }
        return new Collector(handout, NOW, 2).collect(folder, (done, all) -> {}, () -> false);
    }

    @Test
    void allExamsAndSuspectsAndASampleOfTheRestAreChosen() {
        assertThat(SecondPass.chosen(exam, 0, 1)).containsExactly(0, 1, 2, 3, 4, 5);
        assertThat(SecondPass.chosen(practice, 0, 1)).isEmpty();
        assertThat(SecondPass.chosen(practice, 2, 1)).hasSize(2).isEqualTo(SecondPass.chosen(practice, 2, 1));
        List<List<Integer>> samples = IntStream.range(0, 20)
                .mapToObj(seed -> SecondPass.chosen(practice, 2, seed))
                .distinct()
                .toList();
        assertThat(samples).hasSizeGreaterThan(5);
        List<HandedIn> odd = new ArrayList<>(practice);
        odd.set(4, odd.get(4).with(List.of(Finding.of(Finding.Kind.ODD_TIMES))));
        assertThat(SecondPass.chosen(odd, 0, 1)).containsExactly(4);
    }

    @Test
    void aCaseThatIsKnownIsNotJudgedAgain() {
        AtomicInteger judged = new AtomicInteger();
        MarkMemo memo = MarkMemo.inMemory();
        SecondPass pass = new SecondPass(memo, (c, care) -> {
            judged.incrementAndGet();
            return FakeJudge.judge(c);
        });
        List<HandedIn> once = pass.judge(exam, SecondPass.chosen(exam, 0, 1), (d, a) -> {}, () -> false);
        int first = judged.get();
        assertThat(first).isPositive();
        List<HandedIn> twice = pass.judge(exam, SecondPass.chosen(exam, 0, 1), (d, a) -> {}, () -> false);
        assertThat(judged).hasValue(first);
        assertThat(twice).isEqualTo(once);
        assertThat(twice).allSatisfy(h -> assertThat(h.findings()).isEmpty());
    }

    @Test
    void marksThatWereWorkedOutOutliveTheProgram() {
        Path file = home.resolve("kept").resolve("class-marks.jsonl");
        SecondPass pass = new SecondPass(MarkFile.at(file), FakeJudge::judge);
        List<HandedIn> once = pass.judge(exam, List.of(0, 1), (d, a) -> {}, () -> false);
        SecondPass later = new SecondPass(MarkFile.at(file), (c, care) -> {
            throw new AssertionError("judged again");
        });
        assertThat(later.judge(exam, List.of(0, 1), (d, a) -> {}, () -> false)).isEqualTo(once);
    }

    @Test
    void stoppedHalfWayTheRestStaysAsItWas() {
        int[] done = {0};
        List<HandedIn> half = new SecondPass(MarkMemo.inMemory(), FakeJudge::judge)
                .judge(exam, SecondPass.chosen(exam, 0, 1), (d, a) -> done[0] = d, () -> done[0] >= 14);
        long checked = half.stream().filter(HandedIn::checked).count();
        assertThat(checked).isBetween(1L, 5L);
        assertThat(half).hasSameSizeAs(exam);
    }

    @Test
    void aCollectionThatIsStoppedLeavesOutTheRest() throws IOException {
        Path folder = home.resolve("exam");
        assertThat(new Collector(null, NOW, 1).collect(folder, (d, a) -> {}, () -> true))
                .isEmpty();
    }

    @Test
    void theSameOnOneThreadAndOnFour() throws IOException {
        Path folder = home.resolve("exam");
        List<List<Finding>> one = findings(new Collector(null, NOW, 1).collect(folder, (d, a) -> {}, () -> false));
        List<List<Finding>> four = findings(new Collector(null, NOW, 4).collect(folder, (d, a) -> {}, () -> false));
        assertThat(four).isEqualTo(one);
    }

    private static List<List<Finding>> findings(List<HandedIn> all) {
        return all.stream().map(HandedIn::findings).toList();
    }
}
