package startwater.app.view;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import startwater.app.model.ClassExport;
import startwater.app.model.ProjectorModel;
import startwater.app.view.Picker.Kind;
import startwater.classroom.Attempt;
import startwater.classroom.AttemptsFile;
import startwater.classroom.ClassWords;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.classroom.Roster;
import startwater.classroom.sheet.AnswerKey;
import startwater.classroom.sheet.Worksheet;
import startwater.cli.LessonPage;
import startwater.cli.TeacherSheet;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.content.WholeFile;
import startwater.drill.Scenario;
import startwater.page.PageFile;
import startwater.page.Paper;
import startwater.page.Pdf;
import startwater.score.Judge;
import startwater.text.Texts;

/** What the teacher's desk and a learner with a hand-out do with files. */
final class ClassDesk implements ClassView.Desk {
    private static final String CSV = ".csv";

    private final Picker picker;
    private final Texts texts;
    private final Consumer<String> said;
    private final Consumer<ProjectorModel> room;

    /**
     * @param texts with the words of a class among them
     * @param said told what came of it, in a sentence
     * @param room shows a decision to the room
     */
    ClassDesk(Picker picker, Texts texts, Consumer<String> said, Consumer<ProjectorModel> room) {
        this.picker = picker;
        this.texts = texts;
        this.said = said;
        this.room = room;
    }

    @Override
    public void keep(Handout handout) {
        String name = handout.title().isBlank() ? handout.id() : plain(handout.title());
        save(texts.text("desk.keep"), name, handouts(), HandoutFile.text(handout));
    }

    /** The lines to hand in, to a file that is picked. */
    void handIn(String name, String lines) {
        save(
                texts.text("desk.handIn"),
                name,
                List.of(new Kind(texts.text("desk.attemptFiles"), AttemptsFile.ENDING)),
                lines);
    }

    private List<Kind> handouts() {
        return List.of(new Kind(texts.text("desk.handouts"), HandoutFile.ENDING));
    }

    /** A title as the name of a file: letters and figures of any language, hyphens between. */
    private static String plain(String title) {
        String name = title.strip().replaceAll("[^\\p{L}\\p{N}]+", "-").replaceAll("^-|-$", "");
        return name.isEmpty() ? "class" : name.substring(0, Math.min(name.length(), 60));
    }

    private void save(String title, String name, List<Kind> kinds, String text) {
        save(title, name, kinds, file -> text.getBytes(StandardCharsets.UTF_8));
    }

    /** Writes to a file that is picked, beside the window's work; says what came of it. */
    private void save(String title, String name, List<Kind> kinds, Function<Path, byte[]> bytes) {
        Path to = picker.save(title, name + kinds.get(0).ending(), kinds);
        if (to != null) {
            Background.write(() -> written(to, bytes), said);
        }
    }

    private String written(Path to, Function<Path, byte[]> bytes) {
        try {
            WholeFile.replace(to, bytes.apply(to));
            return texts.text("desk.saved", to);
        } catch (IOException failed) {
            return texts.text("desk.notSaved", to);
        }
    }

    @Override
    public @Nullable Path folder() {
        return picker.folder(texts.text("desk.choose"));
    }

    @Override
    public @Nullable Handout handout() {
        Path from = picker.open(texts.text("desk.openHandout"), handouts());
        return from == null ? null : read(from);
    }

    /** The hand-out in a file; null, and said why, where there is none. */
    @Nullable
    Handout read(Path file) {
        try {
            HandoutFile.Read read = HandoutFile.read(file, texts.language().code());
            if (read.trouble() != null) {
                said.accept(new ClassWords(texts).refused(String.valueOf(file.getFileName()), read));
            }
            return read.handout();
        } catch (IOException unreadable) {
            said.accept(texts.text("desk.cannotRead", file));
            return null;
        }
    }

    @Override
    public @Nullable Roster roster() {
        Path from = picker.open(texts.text("desk.roster"), List.of(new Kind(texts.text("desk.tables"), CSV)));
        if (from == null) {
            return null;
        }
        try {
            return Roster.read(from);
        } catch (IOException refused) {
            said.accept(texts.text("class.noRoster", from, String.valueOf(refused.getMessage())));
            return null;
        }
    }

    @Override
    public void export(ClassExport export, List<Attempt> attempts, Roster roster, Paper paper) {
        String title = texts.text("desk.export." + export.key());
        String name = texts.text("desk.file." + export.key());
        if (export.page()) {
            page(title, name, paper, () -> export.text(attempts, roster, paper, texts, ZoneId.systemDefault()));
        } else {
            save(
                    title,
                    name,
                    List.of(new Kind(title, export.ending())),
                    export.text(attempts, roster, paper, texts, ZoneId.systemDefault()));
        }
    }

    @Override
    public void worksheet(Scenario drill, Paper paper) {
        page(
                texts.text("desk.worksheet"),
                drill.id() + "-" + texts.text("desk.file.worksheet"),
                paper,
                () -> Worksheet.of(drill, texts, paper));
    }

    @Override
    public void teacherSheet(Scenario drill, boolean key, Paper paper) {
        page(
                texts.text("desk.teacherSheet"),
                drill.id() + "-" + texts.text("desk.file.teacherSheet"),
                paper,
                () -> TeacherSheet.of(
                        drill, Library.shipped(), texts, paper, key ? AnswerKey.of(drill, 1, Judge::judge) : null));
    }

    /** A lesson to work on paper, with the answers on a page of their own. */
    void lesson(Lesson lesson) {
        page(texts.text("shell.printLesson"), lesson.id(), Paper.A4, () -> LessonPage.of(lesson, texts, Paper.A4));
    }

    private void page(String title, String name, Paper paper, java.util.function.Supplier<String> page) {
        List<Kind> kinds =
                List.of(new Kind(texts.text("desk.pdf"), Pdf.ENDING), new Kind(texts.text("desk.html"), ".html"));
        save(title, name, kinds, file -> PageFile.bytes(file, page.get(), paper));
    }

    @Override
    public void debrief(Scenario scenario, long variant, int number) {
        Background.run(() -> ProjectorModel.of(scenario, variant, number, Judge::judge), room);
    }
}
