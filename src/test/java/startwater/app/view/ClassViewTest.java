package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import startwater.app.Fx;
import startwater.app.model.ProjectorModel;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.classroom.FakeJudge;
import startwater.classroom.Pupils;
import startwater.text.Language;

/** The teacher's desk and the projector, by what they show and by their keys. */
class ClassViewTest {
    private static final double LEAST_PX = 28 * 96 / 72.0 - 0.5;

    private static List<Node> all(javafx.scene.Parent root) {
        root.applyCss();
        root.layout();
        return new ArrayList<>(root.lookupAll("*"));
    }

    private static void press(Node on, KeyCode code, boolean shift) {
        on.fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, false, false, false));
    }

    @ParameterizedTest
    @EnumSource(Language.class)
    void everyPartOpensAndEveryControlHasAName(Language language) {
        Fx.run(() -> {
            ClassView view = ClassGallery.desk(language);
            new Look(Theme.LIGHT, 100).dress(new Scene(view, 1280, 800));
            for (ClassView.Part part : ClassView.Part.values()) {
                view.open(part);
                for (Node node : all(view)) {
                    if (node instanceof Button b) {
                        assertThat(b.getAccessibleText()).as("%s", b).isNotBlank();
                    }
                }
            }
            view.open(ClassView.Part.DECISIONS);
            assertThat(all(view).stream().filter(Hyperlink.class::isInstance)).hasSizeGreaterThan(3);
        });
    }

    @Test
    void nothingIsHandedOutUntilADrillIsChosen() {
        Fx.run(() -> {
            ClassView view = ClassGallery.desk(Language.EN);
            new Look(Theme.LIGHT, 100).dress(new Scene(view, 1280, 800));
            all(view);
            Button keep = (Button) view.lookup("#keep");
            assertThat(keep.isDisabled()).isTrue();
            all(view).stream()
                    .filter(CheckBox.class::isInstance)
                    .map(CheckBox.class::cast)
                    .findFirst()
                    .orElseThrow()
                    .setSelected(true);
            assertThat(keep.isDisabled()).isFalse();
        });
    }

    @Test
    void handsAreCountedByKeyAndTheWorthIsHiddenUntilItIsRevealed() {
        Fx.run(() -> {
            ProjectorModel model = ProjectorModel.of(Pupils.drill("hungry-second-week"), 7, 2, FakeJudge::judge);
            ProjectorView view = new ProjectorView(model, Shell.words(Language.EN), () -> {});
            new Look(Theme.PROJECTOR, 100).dress(new Scene(view, 1280, 800));
            press(view, KeyCode.A, false);
            press(view, KeyCode.A, false);
            press(view, KeyCode.B, false);
            press(view, KeyCode.A, true);
            assertThat(model.handsProperty().get()).isEqualTo(2);
            assertThat(said(view)).noneMatch(s -> s.contains("loss"));
            for (Node node : all(view)) {
                if (node instanceof Label label && !label.getText().isEmpty()) {
                    assertThat(label.getFont().getSize()).as(label.getText()).isGreaterThanOrEqualTo(LEAST_PX);
                }
            }
            press(view, KeyCode.R, false);
            assertThat(said(view)).anyMatch(s -> s.contains("loss")).anyMatch(s -> s.startsWith("✓"));
            press(view, KeyCode.A, false);
            assertThat(model.handsProperty().get()).isEqualTo(2);
        });
    }

    private static List<String> said(ProjectorView view) {
        return all(view).stream()
                .filter(Label.class::isInstance)
                .map(n -> ((Label) n).getText())
                .toList();
    }
}
