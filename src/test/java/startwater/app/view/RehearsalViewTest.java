package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.BooleanSupplier;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.app.Fx;
import startwater.app.chart.StartUpChart;
import startwater.app.model.RehearsalModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.rehearse.Entry;
import startwater.rehearse.Systems;
import startwater.text.Language;

class RehearsalViewTest {
    private static final int MOST_TENTHS = 300;

    @TempDir
    Path folder;

    private final List<Path> played = new ArrayList<>();
    private final List<Path> shown = new ArrayList<>();
    private RehearsalModel model;

    @BeforeEach
    void model() {
        model = new RehearsalModel(folder, 3);
    }

    private RehearsalView open(Language language, int percent) {
        return Fx.call(() -> {
            RehearsalView view = new RehearsalView(
                    model, RehearsalView.texts(language), new RehearsalView.Actions(played::add, shown::add));
            Scene scene = new Scene(view, 1280, 800);
            new Look(Theme.LIGHT, percent).dress(scene);
            view.applyCss();
            view.layout();
            return view;
        });
    }

    private static String said(RehearsalView view) {
        return Fx.call(() -> ((Label) view.lookup("#said")).getText());
    }

    private static void press(RehearsalView view, String id) {
        Fx.run(() -> {
            view.applyCss();
            view.layout();
            ((Button) view.lookup("#" + id)).fire();
        });
    }

    private void type(RehearsalView view, Entry entry, String words) {
        Fx.run(() -> ((TextField) view.lookup("#field-" + entry.key())).setText(words));
    }

    private static List<Node> all(Node node) {
        List<Node> found = new ArrayList<>(List.of(node));
        if (node instanceof ScrollPane pane) {
            found.addAll(all(pane.getContent()));
        } else if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> found.addAll(all(child)));
        }
        return found;
    }

    private void await() throws InterruptedException {
        until(() -> model.resultProperty().get() != null);
    }

    private static void until(BooleanSupplier there) throws InterruptedException {
        for (int i = 0; i < MOST_TENTHS && !Fx.<Boolean>call(there::getAsBoolean); i++) {
            Thread.sleep(100);
        }
        Fx.run(() -> {});
    }

    @Test
    void aFormIsReckonedSavedPlayedAndPrinted() throws Exception {
        model.take(Systems.form(Systems.SPONGE_BARREL));
        RehearsalView view = open(Language.EN, 100);
        press(view, "play");
        assertThat(said(view)).isEqualTo("See what to expect first.");
        press(view, "expect");
        await();
        assertThat(said(view)).isEqualTo("Done.");
        assertThat(Fx.<Long>call(() -> all(view).stream()
                        .filter(StartUpChart.class::isInstance)
                        .count()))
                .isEqualTo(1);
        assertThat(Fx.<String>call(() -> all(view).stream()
                        .filter(Label.class::isInstance)
                        .map(n -> ((Label) n).getText())
                        .reduce("", (a, b) -> a + "\n" + b)))
                .contains("A forecast never moves fish", "Filter ready: day");
        press(view, "play");
        press(view, "print");
        until(() -> !played.isEmpty() && !shown.isEmpty());
        assertThat(played).containsExactly(folder.resolve("porch-barrel.yaml"));
        assertThat(Files.readString(shown.get(0))).contains("Ready to fill: Porch barrel");
        type(view, Entry.VOLUME, "60 gal");
        assertThat(said(view)).startsWith("The form has changed");
        press(view, "save");
        assertThat(said(view)).startsWith("The form has changed");
    }

    @Test
    void whatCannotBeReadStaysWithItsReasonAndNothingIsLost() {
        RehearsalView view = open(Language.EN, 100);
        type(view, Entry.VOLUME, "12 parsecs");
        Fx.run(() -> ((TextField) view.lookup("#field-volume")).fireEvent(new javafx.event.ActionEvent()));
        assertThat(Fx.<List<String>>call(() -> all(view).stream()
                        .filter(Label.class::isInstance)
                        .map(n -> ((Label) n).getText())
                        .toList()))
                .anyMatch(text -> text.contains("“parsecs” is not known here"));
        assertThat(new RehearsalModel(folder).form().answer(Entry.VOLUME)).isEqualTo("12 parsecs");
    }

    @Test
    void aRefusedSystemSaysWhyAndLeadsToItsLine() throws Exception {
        model.take(Systems.form(Systems.SPONGE_BARREL).with(Entry.STRIPS, "0"));
        RehearsalView view = open(Language.EN, 100);
        press(view, "expect");
        await();
        assertThat(Objects.requireNonNull(model.resultProperty().get()).outlook())
                .isNull();
        Fx.run(() -> view.correct(Entry.STRIPS));
        assertThat(Fx.<Boolean>call(() -> view.lookup("#field-strips") != null)).isTrue();
    }

    /** Everything that can be reached has a name, and nothing is cut off, in both languages and at twice the text size. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void nothingIsCutOffAndAllHasAName(Language language) {
        model.take(Systems.form(Systems.RAIN_CARP));
        model.show(Objects.requireNonNull(model.reckon(done -> {})));
        RehearsalView view = open(language, 200);
        for (Entry.Section section : Entry.Section.values()) {
            Fx.run(() -> view.correct(Entry.in(section).get(0)));
        }
        Fx.run(() -> {
            view.applyCss();
            view.layout();
            for (Node node : all(view)) {
                if (node.isFocusTraversable()
                        && node.getId() != null
                        && node.getId().startsWith("field-")) {
                    assertThat(node.getAccessibleText()).as(node.getId()).isNotBlank();
                    assertThat(node.getAccessibleHelp()).as(node.getId()).isNotBlank();
                }
                if (node instanceof Label label && label.isWrapText() && label.isVisible() && label.getWidth() > 0) {
                    assertThat(label.getHeight() + 1)
                            .as(label.getText())
                            .isGreaterThanOrEqualTo(label.prefHeight(label.getWidth()));
                }
                if (node instanceof Region region && node.getParent() instanceof javafx.scene.layout.FlowPane flow) {
                    assertThat(region.getBoundsInParent().getMaxX()).isLessThanOrEqualTo(flow.getWidth() + 1);
                }
            }
        });
    }
}
