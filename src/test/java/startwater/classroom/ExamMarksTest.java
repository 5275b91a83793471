package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.record.Entry;
import startwater.score.Care;
import startwater.score.Judge;

/** An exam is judged on twice the tanks wherever it is judged: where it is played and where it is checked. */
class ExamMarksTest {
    private static final Instant NOW = Instant.parse("2026-03-02T12:00:00Z");

    @TempDir
    private Path home;

    private List<HandedIn> checked(Care playedWith) throws IOException {
        Handout handout = new Handout(
                "exam-" + playedWith,
                "",
                Entry.Mode.EXAM,
                "",
                false,
                3,
                List.of(new Handout.Drill(Pupils.drill("same-tank-away"), null)),
                List.of());
        Path folder = Files.createDirectories(home.resolve("in-" + playedWith));
        SimulatedClass pupils =
                new SimulatedClass(home.resolve("homes-" + playedWith), handout, c -> Judge.judge(c, playedWith));
        Files.writeString(folder.resolve("f1" + AttemptsFile.ENDING), pupils.play(1, "half-every-day"));
        List<HandedIn> in = new Collector(handout, NOW, 1).collect(folder, (done, all) -> {}, () -> false);
        return new SecondPass(MarkMemo.inMemory())
                .judge(in, SecondPass.chosen(in, 0, 1), (done, all) -> {}, () -> false);
    }

    @Test
    void whatWasMarkedAsAnExamComesOutTheSame() throws IOException {
        List<HandedIn> exam = checked(Care.EXAM);
        assertThat(exam).hasSize(1).allMatch(HandedIn::checked);
        assertThat(exam.get(0).findings()).isEmpty();
    }

    @Test
    void whatWasMarkedWithLessCareDoesNot() throws IOException {
        assertThat(checked(Care.LIVE).get(0).findings())
                .extracting(Finding::kind)
                .contains(Finding.Kind.MARK_CHANGED);
    }
}
