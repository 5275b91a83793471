package startwater.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.InstantSource;
import java.util.ArrayDeque;
import java.util.Deque;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.classroom.AttemptsFile;
import startwater.classroom.MarkMemo;
import startwater.classroom.SecondPass;

/** The desk's work runs in the background, is told in the window, and can be stopped. */
class ClassModelTest {
    @TempDir
    Path folder;

    private final Deque<Runnable> background = new ArrayDeque<>();

    private ClassModel model() {
        return new ClassModel(
                background::add, Runnable::run, InstantSource.system(), new SecondPass(MarkMemo.inMemory()), 1);
    }

    @Test
    void aFolderIsTakenInBehindTheWindow() throws IOException {
        Files.writeString(folder.resolve("x" + AttemptsFile.ENDING), "nothing\n");
        ClassModel model = model();
        model.collect(folder);
        assertThat(model.runningProperty().get()).isTrue();
        assertThat(model.handedInProperty().get()).isEmpty();
        background.pop().run();
        assertThat(model.runningProperty().get()).isFalse();
        assertThat(model.handedInProperty().get()).hasSize(1);
    }

    @Test
    void oneThingAtATime() {
        ClassModel model = model();
        model.collect(folder);
        model.collect(folder);
        model.markAgain(3);
        assertThat(background).hasSize(1);
    }

    @Test
    void aFolderThatIsNotThereIsSaid() {
        ClassModel model = model();
        model.collect(folder.resolve("none"));
        background.pop().run();
        assertThat(model.failedProperty().get()).isEqualTo(folder.resolve("none"));
        assertThat(model.runningProperty().get()).isFalse();
    }
}
