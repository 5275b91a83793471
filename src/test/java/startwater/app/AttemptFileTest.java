package startwater.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.AttemptFile.Result;
import startwater.app.AttemptFile.Settings;
import startwater.content.Library;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.Written;
import startwater.strip.Pad;

class AttemptFileTest {
    private static final Scenario DRILL =
            Library.shipped().scenario("hungry-second-week").get();

    @TempDir
    private Path folder;

    /** Two decisions, a strip that was never read, and a reading at the open visit. */
    private static DrillRun halfway() {
        DrillRun run = DrillRun.start(DRILL, 5, DrillRun.Pace.LEARNER);
        write(run, Pad.AMMONIA, 8);
        run.dipChloride();
        run.decide(
                Decision.LEAVE_ALONE.withFeed(0.5).withChange(0.2).withSalt(300),
                new Prediction(Pad.NITRITE, 5, Prediction.Sureness.SURE));
        run.dip(1);
        run.decide(
                Decision.LEAVE_ALONE
                        .withFeed(0)
                        .withFilter(Decision.FilterCare.RINSE)
                        .withPump(false)
                        .withHeater(false),
                null);
        write(run, Pad.NITRITE, 10);
        return run;
    }

    private static void write(DrillRun run, Pad pad, int stop) {
        DippedStrip strip = run.dip(1);
        run.write(new Written(pad, stop, 1, strip.number()));
    }

    private AttemptFile saved(DrillRun run) {
        AttemptFile file = AttemptFile.in(folder);
        file.save(run);
        file.close();
        assertThat(file.failed()).isFalse();
        return AttemptFile.in(folder);
    }

    @Test
    void anAttemptIsTakenUpWhereItWasLeftToTheLastBit() {
        DrillRun left = halfway();
        AttemptFile again = saved(left);
        assertThat(again.openDrill()).contains(DRILL.id());
        DrillRun taken = again.resume(DRILL).orElseThrow();
        assertThat(taken.log()).isEqualTo(left.log());
        assertThat(taken.truth()).isEqualTo(left.truth());
        assertThat(taken.stripsLeft()).isEqualTo(left.stripsLeft());
        assertThat(taken.chlorideStripsLeft()).isEqualTo(left.chlorideStripsLeft());
        assertThat(taken.saltLeftG()).isEqualTo(left.saltLeftG());
        assertThat(taken.hidden().state()).isEqualTo(left.hidden().state());
    }

    @Test
    void aTornLineKeepsWhatStandsBeforeIt() throws IOException {
        saved(halfway());
        Path file = folder.resolve("open-attempt.jsonl");
        List<String> lines = Files.readAllLines(file);
        Files.write(file, List.of(lines.get(0), lines.get(1), lines.get(2).substring(0, 20)));
        DrillRun taken = AttemptFile.in(folder).resume(DRILL).orElseThrow();
        assertThat(taken.past().visits().stream().filter(v -> v.asked()).count())
                .isEqualTo(1);
    }

    @Test
    void anAttemptOnADrillThatHasChangedIsNotTakenUp() throws IOException {
        saved(halfway());
        Path file = folder.resolve("open-attempt.jsonl");
        Files.writeString(file, Files.readString(file).replaceFirst("\"content\":\"....", "\"content\":\"none"));
        assertThat(AttemptFile.in(folder).resume(DRILL)).isEmpty();
    }

    @Test
    void rubbishInTheFolderCountsAsNothing() throws IOException {
        for (String name : List.of("open-attempt.jsonl", "results.jsonl", "settings.json")) {
            Files.writeString(folder.resolve(name), "{{{ no\n\n[1]\n");
        }
        AttemptFile file = AttemptFile.in(folder);
        assertThat(file.openDrill()).isEmpty();
        assertThat(file.resume(DRILL)).isEmpty();
        assertThat(file.results()).isEmpty();
        assertThat(file.settings()).isEmpty();
    }

    @Test
    void resultsAddUpAndEachPlayGetsAnotherTank() {
        AttemptFile file = AttemptFile.in(folder);
        file.save(halfway());
        assertThat(file.nextVariant("a")).isEqualTo(1);
        file.finished(new Result("a", 1, 40, false));
        file.finished(new Result("a", 2, 81.5, true));
        file.finished(new Result("a", 3, Double.NaN, true));
        file.close();
        AttemptFile again = AttemptFile.in(folder);
        assertThat(again.best().get("a")).isEqualTo(new Result("a", 2, 81.5, true));
        assertThat(again.nextVariant("a")).isEqualTo(4);
        assertThat(again.openDrill()).as("a finished drill is no longer open").isEmpty();
    }

    @Test
    void theLastResolutionOfASkillIsFoundAgain() {
        AttemptFile file = AttemptFile.in(folder);
        file.keep(new AttemptFile.Note(List.of("nitrite", "feeding"), "first"));
        file.keep(new AttemptFile.Note(List.of("nitrite"), "If it shows, \"salt\" first"));
        file.keep(new AttemptFile.Note(List.of("alkalinity"), "other"));
        file.close();
        AttemptFile again = AttemptFile.in(folder);
        assertThat(again.noteOn(List.of("nitrite"))).contains("If it shows, \"salt\" first");
        assertThat(again.noteOn(List.of("feeding"))).contains("first");
        assertThat(again.noteOn(List.of("patience"))).isEmpty();
    }

    @Test
    void settingsOutliveTheWindow() {
        AttemptFile file = AttemptFile.in(folder);
        file.keep(new Settings("es", "DARK", 150));
        file.close();
        assertThat(AttemptFile.in(folder).settings()).contains(new Settings("es", "DARK", 150));
    }

    @Test
    void aFolderThatCannotBeWrittenIsSaidAndStopsNothing() throws IOException {
        Path taken = Files.writeString(folder.resolve("a-file"), "");
        AttemptFile file = AttemptFile.in(taken.resolve("below"));
        file.save(halfway());
        file.close();
        assertThat(file.failed()).isTrue();
    }
}
