package startwater.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.image.Image;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import startwater.app.view.Shell;
import startwater.cli.Startwater;
import startwater.text.Language;

/** The window. */
public final class Window extends Application {
    private static final List<String> ICONS = List.of("icon/startwater-48.png", "icon/startwater-256.png");

    private static Startwater.WindowWishes wishes = new Startwater.WindowWishes(null, null, null);
    private static Runnable opened = () -> {};

    private static volatile boolean begun;

    private @Nullable Shell shell;

    /** How it is to open, and whom to tell once it does: the toolkit makes this object itself. */
    static void prepare(Startwater.WindowWishes asked, Runnable whenOpen) {
        wishes = asked;
        opened = whenOpen;
    }

    /** Whether the toolkit came up, so that what fails from here on is a fault of the program. */
    static boolean begun() {
        return begun;
    }

    @Override
    public void start(Stage stage) {
        begun = true;
        Path folder = wishes.data();
        Desk desk = Desk.in(folder);
        desk.openTheOnly();
        Language language = wishes.language() != null
                ? wishes.language()
                : desk.settings().map(s -> Language.of(s.language())).orElseGet(Language::ofComputer);
        Shell frame = new Shell(language, desk);
        shell = frame;
        CrashWatch.over(frame, desk);
        Scene scene = new Scene(frame, 1280, 800);
        frame.dress(scene);
        frame.showPagesIn(page -> getHostServices().showDocument(page.toUri().toString()));
        stage.setTitle("Startwater");
        for (String icon : ICONS) {
            stage.getIcons().add(new Image(Objects.requireNonNull(Window.class.getResourceAsStream(icon), icon)));
        }
        stage.setScene(scene);
        stage.setMinWidth(900);
        stage.setMinHeight(640);
        stage.show();
        if (wishes.open() != null) {
            frame.open(wishes.open());
        }
        opened.run();
    }

    @Override
    public void stop() {
        if (shell != null) {
            shell.close();
        }
    }
}
