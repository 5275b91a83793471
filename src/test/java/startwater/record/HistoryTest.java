package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class HistoryTest {
    @TempDir
    private Path folder;

    private Path file() {
        return folder.resolve("ana.jsonl");
    }

    private Path index() {
        return folder.resolve("ana.index.json");
    }

    private Path graded() {
        return folder.resolve("ana.graded.jsonl");
    }

    private static Entry begun(String id, String drill) {
        return new Entry.Begun(
                id, 0, drill, List.of("ration"), "c", "e", 1, Entry.Mode.PRACTICE, "en", null, Script.NOON);
    }

    private static Entry finished(String id, @Nullable Double mark, boolean passed) {
        return new Entry.Finished(id, 9, mark, passed, 5, 0, 0, null, Script.NOON);
    }

    private LearnerFile open() throws IOException {
        return LearnerFile.open(file(), Script.means());
    }

    @BeforeEach
    void fill() throws IOException {
        try (LearnerFile file = open()) {
            file.name("Ana");
            double[] marks = {40, 81.5, 60};
            for (int i = 0; i < marks.length; i++) {
                file.add(begun("a" + i, "d"));
                file.add(new Entry.Marked("a" + i, 1, 2, EntryTextTest.marks(true), Script.NOON));
                file.add(new Entry.Marked("a" + i, 2, 3, EntryTextTest.marks(false), Script.NOON));
                file.add(finished("a" + i, marks[i], marks[i] > 70));
            }
            file.add(begun("u", "unmarked"));
            file.add(finished("u", null, true));
            file.add(begun("o", "open"));
            file.answer("01-l", List.of("units"), 1, 0, 0.5, 4, null);
            file.resolve("a2", List.of("ration", "units"), "first");
            file.resolve("a2", List.of("ration"), "last");
        }
    }

    private static void check(History history) {
        assertThat(history.learner()).matches(l -> l != null && l.name().equals("Ana"));
        assertThat(history.drill("d")).isEqualTo(new History.Drill(81.5, true, 3, 3));
        assertThat(history.nextVariant("d")).isEqualTo(4);
        assertThat(history.drill("unmarked")).as("no mark is no pass").isEqualTo(new History.Drill(null, false, 1, 1));
        assertThat(history.drill("never")).isEqualTo(History.Drill.NEW);
        assertThat(history.finished()).isEqualTo(4);
        assertThat(history.open()).singleElement().satisfies(o -> assertThat(o.begun())
                .isEqualTo(begun("o", "open")));
        assertThat(history.noteOn(List.of("units"))).contains("first");
        assertThat(history.noteOn(List.of("ration", "units"))).isPresent();
        assertThat(history.noteOn(List.of("ration"))).contains("last");
        assertThat(history.noteOn(List.of("loading"))).isEmpty();
        assertThat(history.observed()).hasSize(7);
        Observed.Visit first = (Observed.Visit) history.observed().get(0);
        assertThat(first.marks()).isEqualTo(EntryTextTest.marks(true));
        assertThat(first.skills()).containsExactly("ration");
        assertThat(history.observed().get(6)).isInstanceOf(Observed.Answer.class);
    }

    @Test
    void theSameHistoryComesFromTheIndexAndFromTheFileAlone() throws IOException {
        assertThat(index()).exists();
        assertThat(new HistoryIndex(file()).load()).as("the index is taken").isNotNull();
        check(HistoryScan.of(file()).history());
        Files.delete(index());
        Files.delete(graded());
        check(HistoryScan.of(file()).history());
        check(HistoryScan.whole(file()));
    }

    @Test
    void thePredictionOfAVisitIsToldWhatTheNextVisitShowed() throws IOException {
        List<Observed> all = HistoryScan.of(file()).history().observed();
        assertThat(((Observed.Visit) all.get(0)).came())
                .as("the next visit says nothing")
                .isNull();
        List<Observed> turned = List.of(all.get(1), all.get(0));
        assertThat(((Observed.Visit) ObservedText.cameTrue(turned).get(0)).came())
                .isTrue();
    }

    @Test
    void anIndexThatIsDamagedOrDoesNotBelongToTheFileIsMadeAnew() throws IOException {
        String good = Files.readString(index());
        for (String bad : List.of(
                "",
                "{{{",
                "[]",
                "{}",
                good.substring(0, good.length() / 2),
                good.replace("\"format\":1", "\"format\":0"),
                good.replaceFirst("\"covered\":\\d+", "\"covered\":99999999"),
                good.replaceFirst("\"covered\":\\d+", "\"covered\":100"),
                good.replaceFirst("\"tail\":\\d+", "\"tail\":1"),
                good.replaceFirst("\"graded_bytes\":\\d+", "\"graded_bytes\":99999999"))) {
            assertThat(bad).isNotEqualTo(good);
            Files.writeString(index(), bad);
            assertThat(new HistoryIndex(file()).load()).as(bad).isNull();
            check(HistoryScan.of(file()).history());
            try (LearnerFile file = open()) {
                check(file.history());
            }
            assertThat(new HistoryIndex(file()).load()).as("it was made anew").isNotNull();
        }
    }

    @Test
    void aGradedFileThatIsDamagedIsMadeAnewWithoutADoubleOrALoss() throws IOException {
        String good = Files.readString(graded());
        Files.writeString(graded(), good.replaceFirst("visit", "vixit"));
        try (LearnerFile file = open()) {
            check(file.history());
            file.add(new Entry.Abandoned("o", 1, Script.NOON));
        }
        assertThat(graded()).hasContent(good);
        assertThat(HistoryScan.of(file()).history().observed()).hasSize(7);
    }

    @Test
    void aFileThatWasEditedInPlaceIsReadAnew() throws IOException {
        Files.writeString(file(), Files.readString(file()).replaceFirst("\"mark\":81.5", "\"mark\":99.5"));
        Files.setLastModifiedTime(file(), FileTime.from(Instant.now().plusSeconds(60)));
        assertThat(HistoryScan.of(file()).history().drill("d").best()).isEqualTo(99.5);
    }

    @Test
    void whatWasAddedWithoutTheIndexIsCaughtUpFromItsEnd() throws IOException {
        long before = Files.size(file());
        String index = Files.readString(index());
        try (LearnerFile file = open()) {
            file.add(new Entry.Marked("o", 1, 0, EntryTextTest.marks(true), Script.NOON));
            file.add(finished("o", 90.0, true));
        }
        Files.writeString(index(), index);
        assertThat(new HistoryIndex(file()).load()).matches(kept -> kept != null && kept.covered() == before);
        History history = HistoryScan.of(file()).history();
        assertThat(history.open()).isEmpty();
        assertThat(history.drill("open").best()).isEqualTo(90);
        assertThat(history.observed()).hasSize(8);
        assertThat(history.drill("d").finished()).isEqualTo(3);
    }
}
