package startwater.app;

import java.util.concurrent.ThreadLocalRandom;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import startwater.app.view.Shell;
import startwater.cli.Startwater;
import startwater.text.Language;

/** The window. */
public final class Window extends Application {
    private static final long MOST_VARIANTS = 1_000_000;

    private static Startwater.@Nullable WindowWishes wishes;

    static void wishes(Startwater.WindowWishes asked) {
        wishes = asked;
    }

    @Override
    public void start(Stage stage) {
        Startwater.WindowWishes asked = wishes;
        Language language = asked == null || asked.language() == null ? Language.ofComputer() : asked.language();
        Shell shell = new Shell(
                language, AttemptFile.in(asked == null ? null : asked.data()), () -> ThreadLocalRandom.current()
                        .nextLong(1, MOST_VARIANTS));
        Scene scene = new Scene(shell, 1280, 800);
        shell.dress(scene);
        stage.setTitle("Startwater");
        stage.setScene(scene);
        stage.setMinWidth(900);
        stage.setMinHeight(640);
        stage.show();
    }
}
