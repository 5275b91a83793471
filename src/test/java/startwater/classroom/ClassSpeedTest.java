package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.record.Entry;
import startwater.score.Judge;

/**
 * How fast a thousand attempts are taken in, with the tables of the class, on two threads. The times are printed; what is
 * tested is that all of it came out.
 */
@Tag("full")
class ClassSpeedTest {
    private static final int LEARNERS = 1000;
    private static final int DECISIONS = 8;
    private static final int JUDGED = 6;
    private static final double NANO = 1e9;
    private static final List<String> POLICIES =
            List.of("careful", "half-every-day", "salts-every-reading", "feeds-because-they-beg");

    @TempDir
    Path home;

    @Test
    void aThousandAttemptsOfEightDecisionsAreTakenIn() throws IOException {
        Handout handout = new Handout(
                "speed",
                "",
                Entry.Mode.PRACTICE,
                "",
                false,
                7,
                List.of(new Handout.Drill(Pupils.drill("hungry-second-week"), null)),
                List.of());
        SimulatedClass pupils = new SimulatedClass(home.resolve("homes"), handout, FakeJudge::judge);
        Path folder = Files.createDirectories(home.resolve("in"));
        for (int i = 0; i < LEARNERS; i++) {
            Files.writeString(
                    folder.resolve("f" + i + AttemptsFile.ENDING), pupils.play(i, POLICIES.get(i % POLICIES.size())));
        }
        long start = System.nanoTime();
        List<HandedIn> all = new Collector(handout, Instant.parse("2026-03-03T08:00:00Z"), 2)
                .collect(folder, (d, a) -> {}, () -> false);
        double collected = (System.nanoTime() - start) / NANO;
        List<Attempt> counting = Collector.counting(all);
        ClassTable table = ClassTable.of(counting, ZoneOffset.UTC);
        List<DrillStatistics> statistics = DrillStatistics.all(counting);
        double seconds = (System.nanoTime() - start) / NANO;
        System.out.printf(
                "class: %d attempts, %d decisions: first pass %.1f s, with tables %.1f s%n",
                counting.size(),
                counting.stream().mapToInt(a -> a.steps().size()).sum(),
                collected,
                seconds);
        assertThat(counting).hasSize(LEARNERS).allSatisfy(a -> assertThat(a.steps())
                .hasSizeLessThanOrEqualTo(DECISIONS)
                .hasSizeGreaterThan(DECISIONS / 2));
        assertThat(table.rows()).hasSize(LEARNERS);
        assertThat(statistics).singleElement().satisfies(s -> assertThat(s.items())
                .isNotEmpty());

        long judging = System.nanoTime();
        int[] done = {0};
        new SecondPass(MarkMemo.inMemory(), Judge::judge)
                .judge(all, SecondPass.chosen(all, JUDGED, 1), (d, a) -> done[0] = d, () -> false);
        double minutes = (System.nanoTime() - judging) / NANO / 60;
        System.out.printf("class: second pass %d decisions, %.0f a minute%n", done[0], done[0] / minutes);
        assertThat(done[0]).isGreaterThanOrEqualTo(JUDGED);
    }
}
