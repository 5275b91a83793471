package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that lie together: folders, twins, numbers, links. */
class ContentFilesTest {
    private static final Edited DRILL = Edited.shipped("scenarios/first-strips.yaml");
    private static final Edited LESSON = Edited.shipped("lessons/01-toxic-ammonia.md");
    private static final Edited LECCION = Edited.shipped("lessons/01-toxic-ammonia.es.md");

    @TempDir
    Path root;

    private Path lessons;
    private Path scenarios;

    @BeforeEach
    void folders() throws IOException {
        lessons = Files.createDirectories(root.resolve("lessons"));
        scenarios = Files.createDirectories(root.resolve("scenarios"));
    }

    private void write(Edited edited) throws IOException {
        Files.writeString(root.resolve(edited.file()), edited.text());
    }

    private static List<Fault> check(Path... paths) {
        return ContentFiles.at(List.of(paths)).check();
    }

    @Test
    void aFolderIsSearchedAndReadmesAndBuildsArePassedOver() throws IOException {
        write(DRILL);
        write(LESSON);
        write(LECCION);
        Files.writeString(root.resolve("README.md"), "# <b>Not a lesson</b>");
        for (String passed : List.of(".git", "target")) {
            Files.createDirectories(root.resolve(passed));
            Files.writeString(root.resolve(passed).resolve("broken.yaml"), "{");
        }
        ContentFiles files = ContentFiles.at(List.of(root));
        assertThat(files.count()).isEqualTo(3);
        assertThat(files.check()).isEmpty();
    }

    @Test
    void aLessonBringsItsTwinAlong() throws IOException {
        write(LESSON);
        write(LECCION.with("minutes: 10", "minutes: 11"));
        assertThat(check(root.resolve(LESSON.file())))
                .extracting(Fault::complaint, fault -> fault.file().endsWith(".es.md"), Fault::line)
                .containsExactly(tuple(Complaint.TWIN_FRONT_DIFFERS, true, LECCION.lineOf("minutes")));
    }

    @Test
    void aLessonWithoutTwinIsSaid() throws IOException {
        write(LESSON);
        assertThat(check(lessons)).extracting(Fault::complaint).containsExactly(Complaint.NO_TWIN);
    }

    @Test
    void twinsMustHaveTheSameNumbersInTheirBlocks() throws IOException {
        write(LESSON);
        Edited other = LECCION.with("inputs: {tan: 2, ph: 7.8", "inputs: {tan: 2, ph: 7.9");
        write(other);
        String block = other.text().substring(0, other.text().indexOf("ph: 7.9"));
        int line = (int) block.substring(0, block.lastIndexOf("```worked"))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
        assertThat(check(lessons))
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.TWIN_DIFFERS, line));
    }

    @Test
    void twinsMustHaveTheSameBlocks() throws IOException {
        String text = LECCION.text();
        write(LESSON);
        write(new Edited(LECCION.file(), text.substring(0, text.indexOf("```drill"))));
        assertThat(check(lessons)).extracting(Fault::complaint).containsExactly(Complaint.TWIN_DIFFERS);
    }

    @Test
    void linksMayLeadToShippedDrillsAndToThoseOfTheFolderBeside() throws IOException {
        write(LESSON.with("id: hungry-second-week", "id: my-own-drill"));
        write(LECCION.with("id: hungry-second-week", "id: my-own-drill"));
        assertThat(check(lessons))
                .extracting(Fault::complaint)
                .containsExactly(Complaint.DEAD_DRILL, Complaint.DEAD_DRILL);
        Files.writeString(
                scenarios.resolve("my-own-drill.yaml"),
                DRILL.with("id: first-strips", "id: my-own-drill").text());
        assertThat(check(lessons)).isEmpty();
    }

    @Test
    void numbersOfDrillsAndLessonsAreUsedOnce() throws IOException {
        write(DRILL);
        Edited copy = DRILL.with("id: first-strips", "id: second-strips");
        Files.writeString(scenarios.resolve("second-strips.yaml"), copy.text());
        write(LESSON);
        write(LECCION);
        Files.writeString(lessons.resolve("01-zebra.md"), LESSON.text());
        Files.writeString(lessons.resolve("01-zebra.es.md"), LECCION.text());
        assertThat(check(root))
                .extracting(Fault::complaint)
                .containsExactly(Complaint.LESSON_NUMBER_TWICE, Complaint.LESSON_NUMBER_TWICE, Complaint.NUMBER_TWICE);
    }

    @Test
    void otherEndingsAreSaid() throws IOException {
        Path text = Files.writeString(root.resolve("drill.txt"), DRILL.text());
        Path short4 = Files.writeString(scenarios.resolve("first-strips.yml"), DRILL.text());
        assertThat(check(text)).extracting(Fault::complaint).containsExactly(Complaint.WRONG_ENDING);
        assertThat(check(scenarios)).extracting(Fault::file).containsExactly(short4.toString());
    }

    @Test
    void linksThatLeadInCirclesAreNotFollowed() throws IOException {
        write(DRILL);
        Files.createSymbolicLink(scenarios.resolve("round"), scenarios);
        assertThat(check(root)).isEmpty();
        assertThat(ContentFiles.at(List.of(root)).count()).isEqualTo(1);
    }

    @Test
    void theSameFileGivenTwiceIsCheckedOnce() throws IOException {
        write(DRILL);
        Path file = root.resolve(DRILL.file());
        assertThat(ContentFiles.at(List.of(file, file, scenarios)).count()).isEqualTo(1);
    }
}
