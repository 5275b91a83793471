package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import startwater.app.Fx;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.app.view.ScreenGallery.Pose;
import startwater.text.Language;

/** No words cut short or laid over each other, no type out of our sizes, no target too small, on any screen. */
class ScreenLayoutTest {
    /** The two that are tightest: Spanish, which is longer, and large type. */
    static List<Pose> tight() {
        return List.of(new Pose(Language.ES, Theme.LIGHT, 100, 1280), new Pose(Language.ES, Theme.DARK, 200, 1280));
    }

    static List<Pose> others() {
        return Pose.all().stream().filter(pose -> !tight().contains(pose)).toList();
    }

    @ParameterizedTest
    @MethodSource("tight")
    void theTightestPosesAreLaidOutWhole(Pose pose) throws IOException, InterruptedException {
        assertThat(ScreenGallery.paint(pose)).isEmpty();
    }

    @Tag("full")
    @ParameterizedTest
    @MethodSource("others")
    void everyOtherPoseIsLaidOutWhole(Pose pose) throws IOException, InterruptedException {
        assertThat(ScreenGallery.paint(pose)).isEmpty();
    }

    @Test
    void whatIsWrongIsFound() {
        List<String> found = Fx.call(() -> {
            Label cut = new Label("a line that is much too long for where it stands");
            cut.setPrefWidth(60);
            Label over = new Label("these words lie");
            Label under = new Label("on these words");
            over.relocate(0, 100);
            under.relocate(10, 104);
            Label odd = new Label("seventeen");
            odd.setStyle("-fx-font-size: 17px;");
            odd.relocate(0, 200);
            Button small = new Button();
            small.setMinSize(10, 10);
            small.setPrefSize(10, 10);
            small.setMaxSize(10, 10);
            small.relocate(0, 300);
            Label strange = new Label("in a colour of its own");
            strange.setStyle("-fx-text-fill: #FF00FF;");
            strange.relocate(0, 350);
            Label outside = new Label("past the right edge");
            outside.relocate(380, 400);
            Label torn = new Label("411 g of salt");
            torn.relocate(0, 450);
            Scene scene = new Scene(new Pane(cut, over, under, odd, small, strange, outside, torn), 400, 500);
            new Look(Theme.LIGHT, 100).dress(scene);
            scene.getRoot().applyCss();
            scene.getRoot().layout();
            return ScreenFindings.of(scene);
        });
        assertThat(found).anyMatch(f -> f.startsWith("cut short: "));
        assertThat(found).anyMatch(f -> f.startsWith("over each other: these words lie | on these words"));
        assertThat(found).anyMatch(f -> f.startsWith("size 17.0: seventeen"));
        assertThat(found).anyMatch(f -> f.startsWith("target 10 x "));
        assertThat(found).anyMatch(f -> f.startsWith("no name: Button"));
        assertThat(found).anyMatch(f -> f.startsWith("past the edge: past the right edge"));
        assertThat(found).anyMatch(f -> f.startsWith("colour 0xff00ffff: in a colour of its own"));
        assertThat(found).anyMatch(f -> f.startsWith("a unit may leave its number: 411 g of salt"));
        assertThat(found).hasSize(8);
    }
}
