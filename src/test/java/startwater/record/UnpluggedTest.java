package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.record.Notice.Kind;

/** A stick that is taken out while it is written to, and a clock that was set back. */
class UnpluggedTest {
    @TempDir
    private Path folder;

    private Path stick = Path.of("");
    private Path pocket = Path.of("");

    @BeforeEach
    void plug() throws IOException {
        stick = Files.createDirectories(folder.resolve("stick"));
        pocket = folder.resolve("pocket");
    }

    private Path file() {
        return stick.resolve("ana.jsonl");
    }

    private static void say(LearnerFile file, String what) {
        file.resolve(null, List.of("units"), what);
    }

    @Test
    void whatIsDoneWithoutTheStickIsWrittenOnceItIsBack() throws IOException {
        try (LearnerFile file = LearnerFile.open(file(), Script.means())) {
            file.name("Ana");
            say(file, "before");
            Files.move(stick, pocket);
            say(file, "away");
            assertThat(file.trouble()).contains(Notice.of(Kind.GONE, file().toString()));
            say(file, "still away");
            assertThat(stick).doesNotExist();
            Files.move(pocket, stick);
            say(file, "back");
            assertThat(file.trouble()).isEmpty();
        }
        assertThat(Files.readAllLines(file()))
                .hasSize(5)
                .allSatisfy(l -> assertThat(EntryText.read(l).sort()).isEqualTo(EntryText.Sort.KNOWN))
                .last()
                .asString()
                .contains("back");
        try (LearnerFile again = LearnerFile.open(file(), Script.means())) {
            assertThat(again.notices()).isEmpty();
            assertThat(again.trouble()).isEmpty();
        }
    }

    @Test
    void whoeverLeavesWithoutTheStickLosesOnlyWhatWaited() throws IOException {
        try (LearnerFile file = LearnerFile.open(file(), Script.means())) {
            file.name("Ana");
            Files.move(stick, pocket);
            say(file, "away");
        }
        assertThat(stick).doesNotExist();
        Files.move(pocket, stick);
        // A folder that was only moved may have got it all the same; nothing in it is torn.
        assertThat(Files.readAllLines(file()))
                .hasSizeBetween(1, 2)
                .allSatisfy(l -> assertThat(EntryText.read(l).sort()).isEqualTo(EntryText.Sort.KNOWN));
    }

    @Test
    void anotherStickIsNotWrittenTo() throws IOException {
        try (LearnerFile file = LearnerFile.open(file(), Script.means())) {
            file.name("Ana");
            Files.move(stick, pocket);
            say(file, "away");
            Files.createDirectories(stick);
            Files.writeString(file(), "");
            say(file, "on another");
            assertThat(file.trouble()).map(Notice::kind).contains(Kind.GONE);
            assertThat(file()).isEmptyFile();
        }
    }

    @Test
    void aClockThatWasSetBackIsToldAndNothingIsLost() throws IOException {
        try (LearnerFile file = LearnerFile.open(file(), Script.means())) {
            file.name("Ana");
            say(file, "at noon");
        }
        Instant back = Script.NOON.minus(Duration.ofDays(400));
        Means wrong = new Means(Storage.DISK, () -> back, () -> "id");
        try (LearnerFile file = LearnerFile.open(file(), wrong)) {
            assertThat(file.notices()).containsExactly(Notice.of(Kind.CLOCK_BACK, "2025-03-30", "2026-05-04"));
            say(file, "earlier");
            assertThat(file.trouble()).isEmpty();
        }
        // The clock stays wrong: it is told as long as it matters, though the last line is of the wrong clock.
        try (LearnerFile file = LearnerFile.open(file(), wrong)) {
            assertThat(file.notices()).extracting(Notice::kind).containsExactly(Kind.CLOCK_BACK);
            assertThat(file.history().noteOn(List.of("units"))).isPresent();
        }
        Means hours = new Means(Storage.DISK, () -> Script.NOON.minus(Duration.ofHours(20)), () -> "id");
        try (LearnerFile file = LearnerFile.open(file(), hours)) {
            assertThat(file.notices()).isEmpty();
        }
    }
}
