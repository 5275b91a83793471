package startwater.classroom;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import startwater.record.Entry;
import startwater.score.Judge;

/** Measures how fast a class is taken in; run by hand, prints and tests nothing. */
final class ClassSpeed {
    private static final double NANO = 1e9;

    private ClassSpeed() {}

    public static void main(String[] args) throws IOException {
        int learners = args.length > 0 ? Integer.parseInt(args[0]) : 1000;
        Path home = Files.createTempDirectory("class-speed");
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
        List<String> policies = List.of("careful", "half-every-day", "salts-every-reading", "feeds-because-they-beg");
        for (int i = 0; i < learners; i++) {
            Files.writeString(folder.resolve("f" + i + AttemptsFile.ENDING), pupils.play(i, policies.get(i % 4)));
        }
        for (int round = 0; round < 3; round++) {
            long start = System.nanoTime();
            List<HandedIn> all = new Collector(handout, Instant.parse("2026-03-03T08:00:00Z"), 2)
                    .collect(folder, (d, a) -> {}, () -> false);
            double collected = (System.nanoTime() - start) / NANO;
            List<Attempt> counting = Collector.counting(all);
            ClassTable table = ClassTable.of(counting, ZoneOffset.UTC);
            List<DrillStatistics> statistics = DrillStatistics.all(counting);
            double seconds = (System.nanoTime() - start) / NANO;
            int decisions = counting.stream().mapToInt(a -> a.steps().size()).sum();
            System.out.printf(
                    "%d attempts, %d decisions (%d scored): first pass %.2f s, with tables %.2f s, %.0f attempts/s, %d rows, %d items%n",
                    counting.size(),
                    decisions,
                    counting.stream().mapToInt(a -> a.scored().size()).sum(),
                    collected,
                    seconds,
                    counting.size() / seconds,
                    table.rows().size(),
                    statistics.get(0).items().size());
            if (round == 2) {
                long judging = System.nanoTime();
                int[] done = {0};
                new SecondPass(MarkMemo.inMemory(), Judge::judge)
                        .judge(all, SecondPass.chosen(all, 6, 1), (d, a) -> done[0] = d, () -> false);
                System.out.printf("second pass: %.2f decisions/s%n", done[0] / ((System.nanoTime() - judging) / NANO));
            }
        }
    }
}
