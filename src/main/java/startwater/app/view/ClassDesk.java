package startwater.app.view;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;
import startwater.app.model.ProjectorModel;
import startwater.classroom.ClassWords;
import startwater.classroom.Handout;
import startwater.classroom.HandoutFile;
import startwater.drill.Scenario;
import startwater.score.Judge;
import startwater.text.Texts;

/** What the teacher's desk and a learner with a hand-out do with files, by the choosers of the system. */
final class ClassDesk implements ClassView.Desk {
    private final Supplier<@Nullable Window> window;
    private final Texts texts;
    private final Consumer<String> said;
    private final Consumer<ProjectorModel> room;

    /**
     * @param texts with the words of a class among them
     * @param said told what came of it, in a sentence
     * @param room shows a decision to the room
     */
    ClassDesk(Supplier<@Nullable Window> window, Texts texts, Consumer<String> said, Consumer<ProjectorModel> room) {
        this.window = window;
        this.texts = texts;
        this.said = said;
        this.room = room;
    }

    @Override
    public void keep(Handout handout) {
        save(texts.text("desk.keep"), handout.id() + HandoutFile.ENDING, HandoutFile.text(handout));
    }

    /** Writes a text to a file that is picked. */
    void save(String title, String name, String text) {
        FileChooser where = new FileChooser();
        where.setTitle(title);
        where.setInitialFileName(name);
        File to = where.showSaveDialog(window.get());
        if (to == null) {
            return;
        }
        try {
            Files.writeString(to.toPath(), text);
            said.accept(texts.text("desk.saved", to));
        } catch (IOException failed) {
            said.accept(texts.text("desk.notSaved", to));
        }
    }

    @Override
    public @Nullable Path folder() {
        DirectoryChooser where = new DirectoryChooser();
        where.setTitle(texts.text("desk.choose"));
        File folder = where.showDialog(window.get());
        return folder == null ? null : folder.toPath();
    }

    @Override
    public @Nullable Handout handout() {
        FileChooser where = new FileChooser();
        where.setTitle(texts.text("desk.openHandout"));
        where.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter(texts.text("desk.handouts"), "*" + HandoutFile.ENDING));
        File from = where.showOpenDialog(window.get());
        return from == null ? null : read(from.toPath());
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
    public void debrief(Scenario scenario, long variant, int number) {
        Background.run(() -> ProjectorModel.of(scenario, variant, number, Judge::judge), room);
    }
}
