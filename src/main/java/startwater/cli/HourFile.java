package startwater.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import startwater.drill.Calendar;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;
import startwater.score.Policy;
import startwater.text.Texts;

/** Hidden tanks hour by hour as comma-separated values (RFC 4180: CRLF, one heading, no cell that needs quotes). */
final class HourFile {
    private static final String STANDARD_OUTPUT = "-";
    private static final String END = "\r\n";
    /** Tanks whose hours are held at a time. */
    private static final int BLOCK = 8;

    private HourFile() {}

    static boolean isStandardOutput(Path file) {
        return file.toString().equals(STANDARD_OUTPUT);
    }

    /**
     * Plays and writes, a few tanks at a time.
     *
     * @param file or {@code -} for {@code out}
     * @throws WrongUseException when the file cannot be written
     */
    static PolicyRuns play(
            Scenario scenario, Policy policy, long firstSeed, int seeds, Path file, PrintWriter out, Texts texts) {
        if (isStandardOutput(file)) {
            PolicyRuns runs = play(scenario, policy, firstSeed, seeds, out);
            out.flush();
            return runs;
        }
        try (PrintWriter to = new PrintWriter(Files.newBufferedWriter(file, StandardCharsets.UTF_8))) {
            PolicyRuns runs = play(scenario, policy, firstSeed, seeds, to);
            if (to.checkError()) {
                throw new IOException("disk full or gone");
            }
            return runs;
        } catch (IOException e) {
            throw new WrongUseException(texts.text("cli.cannotWrite", file));
        }
    }

    private static PolicyRuns play(Scenario scenario, Policy policy, long firstSeed, int seeds, PrintWriter to) {
        int firstMinute = Calendar.of(scenario).first();
        List<DrillRun> runs = new ArrayList<>();
        to.print(HourColumn.heading() + END);
        for (int done = 0; done < seeds; done += BLOCK) {
            Map<Long, HourTable> tables = new ConcurrentHashMap<>();
            PolicyRuns block = PolicyRuns.play(
                    scenario,
                    policy,
                    firstSeed + done,
                    Math.min(BLOCK, seeds - done),
                    seed -> tables.computeIfAbsent(seed, s -> new HourTable(s, firstMinute)));
            for (DrillRun run : block.runs()) {
                runs.add(run);
                HourTable table = tables.get(run.variant());
                if (table != null) {
                    table.rows().forEach(row -> to.print(HourColumn.line(row) + END));
                }
            }
        }
        return new PolicyRuns(scenario, policy, runs);
    }
}
