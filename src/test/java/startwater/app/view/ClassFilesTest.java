package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.Desks;
import startwater.app.Fx;
import startwater.classroom.AttemptsFile;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.classroom.Played;
import startwater.text.Language;

/** Files that the window asks for: given, not given, wrong, and where nothing can be written. Nothing is lost in any case. */
class ClassFilesTest {
    @TempDir
    private static Path played;

    @TempDir
    private Path folder;

    private final AnsweredPicker picker = new AnsweredPicker();

    @SuppressWarnings("NullAway.Init")
    private Shell shell;

    @SuppressWarnings("NullAway.Init")
    private Stage stage;

    private static Handout handout = ClassGallery.handout();

    @BeforeAll
    static void play() throws IOException {
        Played.twoOf("first-strips", played);
        handout = HandoutFile.read(played.resolve("monday" + HandoutFile.ENDING), "en")
                .found()
                .orElseThrow();
    }

    @BeforeEach
    void open() {
        Fx.run(() -> {
            shell = new Shell(Language.EN, Desks.nameless(folder.resolve("data")));
            shell.pickFilesWith(picker);
            stage = Stages.show(shell);
        });
    }

    @AfterEach
    void close() {
        Stages.close(shell, stage);
    }

    @Test
    void whatIsBeingWrittenWhenTheWindowClosesIsThere() throws IOException {
        Fx.run(() -> shell.lesson("01-toxic-ammonia"));
        Path file = folder.resolve("lesson.pdf");
        picker.then(file);
        Fx.run(() -> {
            button("print-lesson").fire();
            shell.close();
        });
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    }

    @Test
    void aLessonIsPrintedFromItsOwnPage() throws IOException {
        Fx.run(() -> shell.lesson("01-toxic-ammonia"));
        Path file = folder.resolve("lesson.pdf");
        picker.then(file);
        press("print-lesson");
        waitFor(() -> says("Saved as"));
        assertThat(Files.readString(file, StandardCharsets.ISO_8859_1)).startsWith("%PDF-");
    }

    @Test
    void aHandOutIsSavedCancelledAndRefusedByAFolder() throws IOException {
        press("class");
        tick("First strips");
        picker.then(null);
        press("keep");
        assertThat(there("banner")).isFalse();
        Path file = folder.resolve("class" + HandoutFile.ENDING);
        picker.then(file);
        press("keep");
        waitFor(() -> says("Saved as"));
        assertThat(HandoutFile.read(file, "en").found().orElseThrow().drills()).hasSize(1);
        String before = Files.readString(file);
        picker.then(folder.resolve("no-such-folder").resolve("x"));
        press("keep");
        waitFor(() -> says("cannot be written"));
        assertThat(Files.readString(file)).isEqualTo(before);
        assertThat(selected("First strips")).as("what was ticked").isTrue();
    }

    @Test
    void aFolderIsCollectedAndNamesComeFromTheRosterOnly() throws IOException {
        collect();
        assertThat(says("Two attempts") || says("2 attempts came back.")).isTrue();
        part("Learners");
        assertThat(says("p1")).as("pseudonyms right after the first pass").isTrue();
        assertThat(says("Ana")).isFalse();
        part("Collect");
        Path none = Files.writeString(folder.resolve("none.csv"), "\"broken");
        picker.then(null).then(none).then(Files.writeString(folder.resolve("r.csv"), "pseudonym,name\np1,Ana\n"));
        press("roster");
        press("roster");
        assertThat(says("The roster")).isTrue();
        press("roster");
        part("Learners");
        assertThat(says("Ana")).isTrue();
        assertThat(says("p2")).isTrue();
        part("Collect");
        press("pseudonyms");
        part("Learners");
        assertThat(says("Ana")).isFalse();
        part("Collect");
        press("clear");
        assertThat(says("came back")).isFalse();
        part("Learners");
        assertThat(says("p1")).isFalse();
    }

    @Test
    void aWrongHandOutAndALostFolderAreSaidAndWhatWasCollectedStays() throws IOException {
        collect();
        picker.then(null)
                .then(Files.writeString(folder.resolve("x" + HandoutFile.ENDING), "{"))
                .then(played.resolve("monday" + HandoutFile.ENDING));
        press("choose-handout");
        press("choose-handout");
        assertThat(says("is no hand-out")).isTrue();
        assertThat(says("2 attempts came back.")).isTrue();
        press("choose-handout");
        waitFor(() -> !there("stop") && says("Held against the hand-out: " + handout.title()));
        assertThat(says("2 attempts came back.")).isTrue();
        picker.then(null).then(folder.resolve("gone"));
        press("choose");
        assertThat(says("2 attempts came back.")).isTrue();
        press("choose");
        waitFor(() -> says("cannot be read"));
    }

    @Test
    void everyExportGoesToTheFileThatIsPickedOrNowhere() throws IOException {
        collect();
        part("Print and export");
        List<String> ids = List.of("results", "completions", "gradebook", "each", "statements");
        List<String> names = List.of("results.pdf", "records.html", "book.csv", "each.csv", "x.jsonl");
        for (int i = 0; i < ids.size(); i++) {
            picker.then(null);
            press(ids.get(i));
            Path file = folder.resolve(names.get(i));
            picker.then(file);
            press(ids.get(i));
            waitFor(() -> Files.exists(file) && says("Saved as " + file));
        }
        assertThat(Files.readString(folder.resolve("results.pdf"), java.nio.charset.StandardCharsets.ISO_8859_1))
                .startsWith("%PDF-");
        assertThat(folder.resolve("records.html")).content().contains("not a licence");
        assertThat(folder.resolve("book.csv")).content().contains("p1", "p2");
        Path kept = Files.writeString(folder.resolve("kept.csv"), "old");
        Path blocked = Files.createDirectory(folder.resolve("kept.csv.new"));
        Files.writeString(blocked.resolve("in-the-way"), "x");
        picker.then(kept);
        press("gradebook");
        waitFor(() -> says("cannot be written"));
        assertThat(kept).content().isEqualTo("old");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.filter(f -> f.toString().endsWith(".new")))
                    .as("left-overs")
                    .containsExactly(blocked);
        }
    }

    @Test
    void sheetsOfADrillAreKeptAsPdf() {
        press("class");
        part("Print and export");
        Path sheet = folder.resolve("work.pdf");
        picker.then(sheet);
        press("worksheet");
        waitFor(() -> says("Saved as"));
        assertThat(sheet).isNotEmptyFile();
        assertThat(picker.asked).containsExactly("Worksheet for learners: first-strips-worksheet.pdf");
        Path teacher = folder.resolve("teacher.html");
        picker.then(teacher);
        press("teacher-sheet");
        waitFor(() -> says("Saved as " + teacher));
        assertThat(teacher).content().contains("<h1>");
    }

    @Test
    void aLearnerHandsInOrDoesNotAndACopyGoesWhereItIsAskedFor() {
        Fx.run(() -> shell.handedOut(handout));
        Path file = folder.resolve("mine" + AttemptsFile.ENDING);
        picker.then(null).then(folder.resolve("gone").resolve("x")).then(file);
        press("hand-in");
        press("hand-in");
        waitFor(() -> says("cannot be written"));
        press("hand-in");
        waitFor(() -> says("Saved as"));
        assertThat(file).content().contains("\"learner\"");
        press("learner");
        Path copy = folder.resolve("copy.jsonl");
        picker.then(null).then(folder.resolve("gone").resolve("y")).then(copy);
        press("learner-export");
        press("learner-export");
        press("learner-export");
        assertThat(copy).isNotEmptyFile();
        assertThat(Desks.look(folder.resolve("data")).file()).isNotEmptyFile();
    }

    private void collect() {
        press("class");
        part("Collect");
        picker.then(played.resolve("in"));
        press("choose");
        waitFor(() -> !there("stop") && says("came back"));
    }

    private void part(String words) {
        Fx.run(() -> nodes().stream()
                .filter(n -> n instanceof ButtonBase b && words.equals(b.getText()))
                .map(ButtonBase.class::cast)
                .findFirst()
                .orElseThrow()
                .fire());
    }

    private CheckBox box(String words) {
        return nodes().stream()
                .filter(n -> n instanceof CheckBox b && b.getText().equals(words))
                .map(CheckBox.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private void tick(String words) {
        Fx.run(() -> box(words).setSelected(true));
    }

    private boolean selected(String words) {
        return Fx.call(() -> box(words).isSelected());
    }

    private boolean there(String id) {
        return Fx.call(() -> nodes().stream().anyMatch(n -> id.equals(n.getId())));
    }

    private boolean says(String words) {
        return Fx.call(() -> nodes().stream()
                .anyMatch(n -> n instanceof Labeled l
                        && Objects.toString(l.getText(), "").contains(words)));
    }

    private void press(String id) {
        Fx.run(() -> button(id).fire());
    }

    private ButtonBase button(String id) {
        return nodes().stream()
                .filter(n -> id.equals(n.getId()) && n instanceof ButtonBase)
                .map(ButtonBase.class::cast)
                .findFirst()
                .orElseThrow(() -> new AssertionError("no button " + id));
    }

    private List<Node> nodes() {
        shell.applyCss();
        shell.layout();
        return List.copyOf(shell.lookupAll("*"));
    }

    private static void waitFor(BooleanSupplier what) {
        for (int i = 0; i < 300 && !what.getAsBoolean(); i++) {
            org.testfx.util.WaitForAsyncUtils.sleep(50, java.util.concurrent.TimeUnit.MILLISECONDS);
        }
        assertThat(what.getAsBoolean()).isTrue();
    }
}
