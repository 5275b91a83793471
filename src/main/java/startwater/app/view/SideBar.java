package startwater.app.view;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Insets;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.cli.Notices;
import startwater.text.Language;
import startwater.text.Texts;

/** The list at the left: the places, then language, look and text size, then who is learning. */
final class SideBar extends ScrollPane {
    private static final double WIDTH = 208;
    /** Percent by which a press makes the text larger or smaller. */
    static final int ZOOM_STEP = 25;

    private static final Map<Place, String> NAMES = new EnumMap<>(Map.of(
            Place.HOME, "shell.home",
            Place.LESSONS, "shell.lessons",
            Place.REHEARSAL, "shell.rehearsal",
            Place.PROGRESS, "shell.progress",
            Place.CLASS, "shell.class"));

    /** What its buttons do. */
    interface Acts {
        void visit(Place place);

        void speak(Language language);

        void wear(Look look);

        /** @param step percent */
        void zoom(int step);
    }

    private final Acts acts;
    private final Texts texts;
    private final Place here;

    /** @param learner name of the learner who is here, empty for one without; null while nobody is, and then there is no place to go */
    SideBar(Acts acts, Texts texts, Place here, Look look, @Nullable String learner) {
        this.acts = acts;
        this.texts = texts;
        this.here = here;
        VBox top = new VBox(4, Ui.text("Startwater", "sw-sentence", "sw-strong", "sw-water"));
        if (learner != null) {
            NAMES.forEach((place, key) -> top.getChildren().add(button(place, key)));
        }
        VBox all = new VBox(12, top, Ui.grow(), languages(), looks(look), sizes(look));
        if (learner != null) {
            all.getChildren()
                    .add(group(
                            texts.text("learner.current", Notices.name(learner, texts)),
                            button(Place.LEARNER, "learner.manage")));
        }
        all.setPadding(new Insets(28, 16, 20, 16));
        all.getStyleClass().add("sw-panel");
        Ui.scroll(this, all);
        setFitToHeight(true);
        setPrefWidth(WIDTH * Math.min(2, look.scale()));
        setMinWidth(Region.USE_PREF_SIZE);
    }

    private Region languages() {
        String name = texts.text("shell.language");
        return choice("language", name, List.of(Language.values()), Language::ownName, texts.language(), acts::speak);
    }

    private Region looks(Look look) {
        return choice(
                "look",
                texts.text("shell.look"),
                List.of(Theme.values()),
                theme -> texts.text("shell." + theme.name().toLowerCase(Locale.ROOT)),
                look.theme(),
                theme -> acts.wear(new Look(theme, look.textPercent())));
    }

    private Region sizes(Look look) {
        return group(
                texts.text("shell.size", look.textPercent()),
                Ui.row(
                        8,
                        Ui.button(texts.text("shell.smaller"), "", () -> acts.zoom(-ZOOM_STEP)),
                        Ui.button(texts.text("shell.larger"), "", () -> acts.zoom(ZOOM_STEP))));
    }

    private static <T> Region choice(
            String id, String name, List<T> all, Function<T, String> said, T chosen, Consumer<T> act) {
        Ui.Choice<T> choice = new Ui.Choice<>(name, all, said, act);
        choice.select(chosen);
        choice.setId(id);
        return group(name, choice);
    }

    private static VBox group(String name, Region content) {
        return new VBox(2, Ui.text(name, "sw-label", "sw-quiet"), content);
    }

    private Region button(Place place, String key) {
        var button = Ui.button(texts.text(key), place == here ? "sw-second" : "", () -> acts.visit(place));
        button.setMaxWidth(Double.MAX_VALUE);
        button.setId(place.name().toLowerCase(Locale.ROOT));
        if (place == here) {
            button.setAccessibleText(texts.text("shell.here", texts.text(key)));
        }
        return button;
    }
}
