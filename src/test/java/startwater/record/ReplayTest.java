package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Difference.What;
import startwater.record.Replay.Outcome;

class ReplayTest {
    private static final Library LIBRARY = Library.shipped();

    /** A drill of three decisions played whole, with its marks. */
    private static String whole = "";

    @TempDir
    private static Path folder;

    private static @Nullable Scenario drill(String id) {
        return LIBRARY.scenarios().stream()
                .filter(s -> s.id().equals(id))
                .findFirst()
                .orElse(null);
    }

    @BeforeAll
    static void play() throws IOException {
        Path file = folder.resolve("whole.jsonl");
        try (LearnerFile learner = LearnerFile.open(file, Script.means(new LooseDisk()))) {
            learner.name("Ana");
            Scenario scenario = LIBRARY.scenario("same-tank-away").get();
            new Script(4, new Attempts(learner).goOnOrBegin(scenario, Entry.Mode.PRACTICE, "en")).play(99, true);
        }
        whole = Files.readString(file);
    }

    private static List<Replay.Report> replay(String text, boolean fast, Function<String, @Nullable Scenario> drills)
            throws IOException {
        Path file = Files.writeString(folder.resolve("tried.jsonl"), text);
        List<Replay.Report> reports = new ArrayList<>();
        new Replay(drills, fast).all(file, reports::add);
        return reports;
    }

    private static Replay.Report one(String text, boolean fast) throws IOException {
        List<Replay.Report> reports = replay(text, fast, ReplayTest::drill);
        assertThat(reports).hasSize(1);
        return reports.get(0);
    }

    /** The text with its first match changed. */
    private static String edited(String pattern, String with) {
        String text = whole.replaceFirst(pattern, with);
        assertThat(text).as(pattern).isNotEqualTo(whole);
        return text;
    }

    @Test
    void theSameStepsGiveTheSameMarks() throws IOException {
        assertThat(whole).contains("\"erased\"", "\"finished\"", "\"worked\"", "\"marked\"", "\"came\"");
        Replay.Report report = one(whole, false);
        assertThat(report.difference()).isNull();
        assertThat(report.outcome()).isEqualTo(Outcome.SAME);
        assertThat(report.state()).isEqualTo(Replay.State.FINISHED);
    }

    @Test
    void everyShippedDrillPlaysAgainTheSame() throws IOException {
        Path file = folder.resolve("all.jsonl");
        try (LearnerFile learner = LearnerFile.open(file, Script.means(new LooseDisk()))) {
            learner.name("Ana");
            for (Scenario s : LIBRARY.scenarios()) {
                Resumed at = new Attempts(learner).goOnOrBegin(s, Entry.Mode.PRACTICE, "en");
                new Script(s.number(), at).play(99, false);
            }
        }
        List<Replay.Report> reports = replay(Files.readString(file), true, ReplayTest::drill);
        assertThat(reports).hasSize(LIBRARY.scenarios().size());
        assertThat(reports).allSatisfy(r -> assertThat(r.outcome())
                .as("%s: %s", r.begun().scenario(), r.difference())
                .isEqualTo(Outcome.SAME));
    }

    /** What differs is found, and the thing that differs first is named. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"temperature_c\":\\d+ | \"temperature_c\":9 | TEMPERATURE",
                "\"tank\":\".... | \"tank\":\"none | TANK",
                "\"log\":\".... | \"log\":\"none | LOG",
                "(\"wrote\".*?\"stop\":)\\d+ | $17 | LOG",
                "(\"kind\":\"decided\".*?\"visit\":)\\d+ | $19 | VISIT",
                "(\"kind\":\"dipped\".*?\"strip\":)\\d+ | $19 | STRIP",
                "(\"kind\":\"erased\".*?\"strip\":)\\d+ | $199 | READING",
                "(\"kind\":\"erased\".*?\"n\":)\\d+ | $199 | LINES",
                "\"alive\":\\d+,\"expected | \"alive\":7,\"expected | END_ALIVE"
            })
    void aChangedLineIsFoundWithoutTheMarks(String pattern, String with, What what) throws IOException {
        Replay.Report report = one(edited(pattern, with), true);
        assertThat(report.outcome()).isEqualTo(Outcome.DIFFERENT);
        assertThat(report.difference()).matches(d -> d != null && d.what() == what);
    }

    @Test
    void aChangedMarkIsFoundAndOnlyByJudgingAgain() throws IOException {
        UnaryOperator<String> other = mark -> edited("(\"kind\":\"marked\".*?\"decision\":)[0-9.]+", "$1" + mark);
        assertThat(one(other.apply("12.25"), true).outcome()).isEqualTo(Outcome.SAME);
        assertThat(one(other.apply("12.25"), false).difference())
                .matches(d ->
                        d != null && d.what() == What.DECISION_MARK && d.kept().equals(12.25));
    }

    @Test
    void anotherVersionIsSaid() throws IOException {
        Replay.Report report = one(edited("\"engine\":\"....", "\"engine\":\"none"), true);
        assertThat(report.outcome()).isEqualTo(Outcome.OTHER_VERSION);
        assertThat(report.difference()).as("it comes out the same all the same").isNull();
    }

    @Test
    void aDrillThatHasChangedOrIsNotThereIsSaid() throws IOException {
        Scenario other = LIBRARY.scenario("soft-water").get();
        assertThat(replay(whole, true, id -> other).get(0).outcome()).isEqualTo(Outcome.DRILL_CHANGED);
        assertThat(replay(whole, true, id -> null).get(0).outcome()).isEqualTo(Outcome.DRILL_UNKNOWN);
    }

    @Test
    void anAttemptThatIsStillOpenIsPlayedAsFarAsItWent() throws IOException {
        List<String> lines = whole.lines().toList();
        for (int to = 2; to < lines.size(); to++) {
            Replay.Report report = one(String.join("\n", lines.subList(0, to)) + "\n", true);
            assertThat(report.outcome()).isEqualTo(Outcome.SAME);
            assertThat(report.state()).isEqualTo(Replay.State.OPEN);
        }
    }

    @Test
    void aNewerFileIsRefusedAndADamagedLineTold() throws IOException {
        assertThatThrownBy(() -> one(edited("\"format\":1", "\"format\":2"), true))
                .isInstanceOf(RefusedException.class);
        Path file = Files.writeString(folder.resolve("bad.jsonl"), "{ no\n" + whole);
        assertThat(new Replay(ReplayTest::drill, true).all(file, r -> {}))
                .containsExactly(Notice.of(Notice.Kind.DAMAGED_LINE, file.toString(), 1));
    }
}
