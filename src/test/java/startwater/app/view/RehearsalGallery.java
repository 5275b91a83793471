package startwater.app.view;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Objects;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import startwater.app.Fx;
import startwater.app.model.RehearsalModel;
import startwater.app.theme.Look;
import startwater.app.view.ScreenGallery.Pose;
import startwater.rehearse.Entry;
import startwater.rehearse.Form;
import startwater.rehearse.Systems;

/** Paints the screen of a rehearsal: empty, filled in and reckoned, further down, and refused. */
public final class RehearsalGallery {
    private RehearsalGallery() {}

    static void paint(Pose pose, List<String> findings) throws IOException {
        RehearsalModel model = new RehearsalModel(Files.createTempDirectory("rehearsal"), 100);
        keep(model, pose, findings, "rehearsal-empty", null, 0);
        Form carp = Systems.form(Systems.RAIN_CARP);
        model.take(carp);
        model.show(Objects.requireNonNull(model.reckon(done -> {})));
        keep(model, pose, findings, "rehearsal", Entry.MEDIA_AREA, 0);
        keep(model, pose, findings, "rehearsal-bottom", Entry.SECOND_AIR, 1);
        model.take(carp.with(Entry.COUNT, "5000").with(Entry.STRIPS, "0").with(Entry.TAP_PH, "12"));
        model.show(Objects.requireNonNull(model.reckon(done -> {})));
        keep(model, pose, findings, "rehearsal-refused", Entry.TAP_PH, 0);
    }

    private static void keep(
            RehearsalModel model,
            Pose pose,
            List<String> findings,
            String name,
            @org.jspecify.annotations.Nullable Entry focus,
            double down) {
        Fx.run(() -> {
            RehearsalView view = new RehearsalView(
                    model, RehearsalView.texts(pose.language()), new RehearsalView.Actions(file -> {}, file -> {}));
            Scene scene = new Scene(view, pose.width(), pose.height());
            new Look(pose.theme(), pose.percent()).dress(scene);
            view.getStyleClass().add("sw-paper");
            Stage stage = new Stage();
            stage.setScene(scene);
            stage.show();
            view.applyCss();
            view.layout();
            if (focus != null) {
                view.correct(focus);
            }
            view.applyCss();
            view.layout();
            Node beside = view.lookup("#outlook-scroll");
            ScrollPane scroll = (ScrollPane) (beside == null ? view.lookup("#one") : beside);
            scroll.setVvalue(down);
            view.layout();
            ScreenGallery.write(scene, name + "-" + pose.pose(), findings);
            stage.hide();
        });
    }
}
