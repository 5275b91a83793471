package startwater.app.view;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Objects;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.stage.Stage;
import startwater.app.Fx;
import startwater.app.model.RehearsalModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.rehearse.Entry;
import startwater.rehearse.Form;
import startwater.rehearse.Systems;
import startwater.text.Language;
import startwater.text.Texts;

/** Paints the screen of a rehearsal: empty, filled in and reckoned, further down, and refused. */
public final class RehearsalGallery {
    private RehearsalGallery() {}

    /** Only this screen, in every look. */
    public static void main(String[] args) throws IOException {
        Files.createDirectories(Path.of("target", "gallery"));
        try {
            for (Language language : Language.values()) {
                for (Theme theme : new Theme[] {Theme.LIGHT, Theme.DARK}) {
                    for (int percent : new int[] {100, 200}) {
                        String name =
                                language.code() + "-" + theme.name().toLowerCase(java.util.Locale.ROOT) + "-" + percent;
                        if (args.length == 0 || name.startsWith(args[0])) {
                            paint(language, theme, percent, name);
                        }
                    }
                }
            }
        } finally {
            Platform.exit();
        }
    }

    static void paint(Language language, Theme theme, int percent, String name) throws IOException {
        RehearsalModel model = new RehearsalModel(Files.createTempDirectory("rehearsal"), 100);
        keep(model, language, theme, percent, "rehearsal-empty-" + name, null, 0);
        Form carp = Systems.form(Systems.RAIN_CARP);
        model.take(carp);
        model.show(Objects.requireNonNull(model.reckon(done -> {})));
        keep(model, language, theme, percent, "rehearsal-" + name, Entry.MEDIA_AREA, 0);
        keep(model, language, theme, percent, "rehearsal-bottom-" + name, Entry.SECOND_AIR, 1);
        model.take(carp.with(Entry.COUNT, "5000").with(Entry.STRIPS, "0").with(Entry.TAP_PH, "12"));
        model.show(Objects.requireNonNull(model.reckon(done -> {})));
        keep(model, language, theme, percent, "rehearsal-refused-" + name, Entry.TAP_PH, 0);
    }

    private static void keep(
            RehearsalModel model,
            Language language,
            Theme theme,
            int percent,
            String name,
            @org.jspecify.annotations.Nullable Entry focus,
            double down) {
        Fx.run(() -> {
            RehearsalView view = new RehearsalView(
                    model,
                    Texts.of(language, RehearsalView.words()),
                    new RehearsalView.Actions(file -> {}, file -> {}));
            Scene scene = new Scene(view, 1280, 800);
            new Look(theme, percent).dress(scene);
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
            ScrollPane scroll = (ScrollPane) view.lookup("#outlook-scroll");
            scroll.setVvalue(down);
            view.layout();
            ScreenGallery.write(scene, name);
            stage.hide();
        });
    }
}
