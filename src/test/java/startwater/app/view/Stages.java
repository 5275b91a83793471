package startwater.app.view;

import javafx.scene.Scene;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import startwater.app.Fx;

/** Windows of tests, of the size that the program opens. */
final class Stages {
    private Stages() {}

    /** Puts a shell on a stage and shows it. On the thread that paints. */
    static Stage show(Shell shell) {
        Scene scene = new Scene(shell, 1280, 800);
        shell.dress(scene);
        Stage stage = new Stage();
        stage.setScene(scene);
        stage.show();
        return stage;
    }

    /** Closes both, as the program does; a test may have opened neither. */
    static void close(@Nullable Shell shell, @Nullable Stage stage) {
        if (shell != null && stage != null) {
            Fx.run(() -> {
                shell.close();
                stage.close();
            });
        }
    }
}
