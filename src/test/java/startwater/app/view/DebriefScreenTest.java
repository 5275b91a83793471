package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.util.WaitForAsyncUtils;
import startwater.app.Fx;
import startwater.app.model.DebriefModel;
import startwater.app.model.DebriefModels;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.text.Language;

/** One page that a learner remembers: what matters is in sight, nothing lies over anything, the rest unfolds. */
class DebriefScreenTest {
    private static final List<String> FOLDS =
            List.of("ahead", "causes", "parts", "changed", "habit", "known", "testing", "why");

    @SuppressWarnings("NullAway.Init")
    private static DebriefModel model;

    @BeforeAll
    static void threeVisits() {
        model = DebriefModels.afterThree();
    }

    private static Scene scene(Language language, int percent) {
        DebriefScreen screen = new DebriefScreen(model, Shell.words(language), () -> {});
        Scene scene = new Scene(screen, 1280, 800);
        new Look(Theme.LIGHT, percent).dress(scene);
        layOut(scene);
        return scene;
    }

    private static void layOut(Scene scene) {
        for (int i = 0; i < 3; i++) {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        }
    }

    private static Node find(Scene scene, String id) {
        return Objects.requireNonNull(scene.getRoot().lookup("#" + id), id);
    }

    private static Bounds bounds(Node node) {
        return node.localToScene(node.getBoundsInLocal());
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void sentencesMarksAndTheFirstChartAreInSightWithoutScrolling(Language language) {
        Fx.run(() -> {
            Scene scene = scene(language, 100);
            Bounds chart = bounds(find(scene, "options"));
            Bounds on = bounds(find(scene, "go-on"));
            double lowest = 0;
            for (Node n : scene.getRoot().lookupAll(".sw-sentence")) {
                lowest = Math.max(lowest, bounds(n).getMaxY());
            }
            assertThat(lowest).isLessThanOrEqualTo(chart.getMinY());
            assertThat(chart.getMaxY()).isLessThan(on.getMinY());
            assertThat(on.getMaxY()).isLessThanOrEqualTo(800);
            for (String fold : FOLDS) {
                Bounds at = bounds(find(scene, "open-" + fold));
                assertThat(at.getMaxY()).as(fold).isLessThan(on.getMinY());
            }
        });
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void whatUnfoldsIsMadeThenAndOneAtATime(Language language) {
        Fx.run(() -> {
            Scene scene = scene(language, 100);
            for (String fold : FOLDS) {
                Fold part = (Fold) find(scene, "fold-" + fold);
                assertThat(part.getChildren()).as(fold).hasSize(1);
                ((Button) find(scene, "open-" + fold)).fire();
                layOut(scene);
                assertThat(part.getChildren().get(1).isVisible()).isTrue();
                long open = FOLDS.stream()
                        .filter(f ->
                                ((Fold) find(scene, "fold-" + f)).openProperty().get())
                        .count();
                assertThat(open).isEqualTo(1);
                noWordsAreMissing(scene);
            }
        });
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void atTwiceTheTextSizeThePageScrollsAndKeepsTheButton(Language language) {
        Fx.run(() -> {
            Scene scene = scene(language, 200);
            assertThat(bounds(find(scene, "go-on")).getMaxY()).isLessThanOrEqualTo(800);
            assertThat(bounds(find(scene, "options")).getWidth()).isGreaterThan(1000);
            noWordsAreMissing(scene);
        });
    }

    /** What takes longer comes a moment later, into room that was kept for it. */
    @ParameterizedTest
    @EnumSource(Language.class)
    void whatWouldHaveChangedItComesLaterAndNothingJumps(Language language) {
        String meanwhile = Shell.words(language).texts().text("win.workingOut");
        Scene scene = Fx.call(() -> scene(language, 100));
        List<Double> before = Fx.call(() -> places(scene));
        for (String fold : List.of("changed", "habit")) {
            Fx.run(() -> ((Button) find(scene, "open-" + fold)).fire());
            Fx.run(() -> layOut(scene));
            double height = Fx.call(() -> bounds(find(scene, "fold-" + fold)).getHeight());
            for (int i = 0; i < 300 && Fx.call(() -> said(scene, fold).contains(meanwhile)); i++) {
                WaitForAsyncUtils.sleep(50, TimeUnit.MILLISECONDS);
            }
            Fx.run(() -> {
                layOut(scene);
                assertThat(said(scene, fold)).doesNotContain(meanwhile).allMatch(t -> !t.isBlank());
                assertThat(bounds(find(scene, "fold-" + fold)).getHeight()).isEqualTo(height);
                ((Button) find(scene, "open-" + fold)).fire();
                layOut(scene);
                noWordsAreMissing(scene);
            });
        }
        assertThat(Fx.call(() -> places(scene))).isEqualTo(before);
    }

    private static List<Double> places(Scene scene) {
        return FOLDS.stream()
                .map(f -> bounds(find(scene, "open-" + f)).getMinY())
                .toList();
    }

    private static List<String> said(Scene scene, String fold) {
        return find(scene, "fold-" + fold).lookupAll(".label").stream()
                .map(n -> ((Labeled) n).getText())
                .toList();
    }

    private static void noWordsAreMissing(Scene scene) {
        for (Node n : scene.getRoot().lookupAll(".label")) {
            assertThat(((Labeled) n).getText()).doesNotContain("{", "win.", "part.", "NaN");
        }
        assertThat(scene.getRoot().lookupAll(".label").stream().map(Label.class::cast))
                .isNotEmpty();
    }
}
