package startwater.app.view.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import javafx.stage.Stage;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import startwater.app.Fx;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.strip.FishMood;

class PartsTest {
    private static final List<String> STOPS = List.of("0", "0–1", "1", "1–2", "2");
    private static final List<Color> COLOURS = List.of(Color.WHITE, Color.GRAY, Color.BLACK);

    @Test
    void keysMoveTheTongueFromStopToStopAndHoldAtTheEnds() {
        Fx.run(() -> {
            ScaleView view = new ScaleView(scale());
            press(view, KeyCode.RIGHT);
            assertThat(view.stopProperty().get()).isEqualTo(1);
            press(view, KeyCode.PAGE_UP);
            press(view, KeyCode.RIGHT);
            press(view, KeyCode.RIGHT);
            assertThat(view.stopProperty().get()).isEqualTo(4);
            press(view, KeyCode.HOME);
            press(view, KeyCode.LEFT);
            assertThat(view.stopProperty().get()).isZero();
        });
    }

    @Test
    void aClickPutsTheTongueAtTheNearestStop() {
        Fx.run(() -> {
            ScaleView view = new ScaleView(scale());
            view.resize(324, 106);
            click(view, 12 + 1.5 * 100);
            assertThat(view.stopProperty().get()).isEqualTo(2);
            click(view, 12 + 2.0 * 100);
            assertThat(view.stopProperty().get()).isEqualTo(3);
            click(view, 5000);
            assertThat(view.stopProperty().get()).isEqualTo(4);
        });
    }

    @Test
    void screenReadersHearPadAndStop() {
        Fx.run(() -> {
            ScaleView view = new ScaleView(scale());
            view.stopProperty().set(3);
            assertThat(view.getAccessibleText()).isEqualTo("nitrite: 1–2");
        });
    }

    @Test
    void anotherScaleKeepsTheStopWithinItsEnds() {
        Fx.run(() -> {
            ScaleView view = new ScaleView(scale());
            view.stopProperty().set(4);
            view.show(ScaleLook.column(List.of("0", "10"), 0.5, List.of("0", "0–10", "10"), "chloride"));
            assertThat(view.stopProperty().get()).isEqualTo(2);
        });
    }

    @Test
    void aClickTakesAPadInHand() {
        Fx.run(() -> {
            StripView view = new StripView(new StripLook(List.of(pad("ammonia"), pad("nitrite")), "Two pads."));
            view.resize(464, 116);
            click(view, view.padCentre(1));
            assertThat(view.inHandProperty().get()).isEqualTo(1);
            assertThat(view.getAccessibleText()).isEqualTo("Two pads. nitrite spoken");
            press(view, KeyCode.LEFT);
            press(view, KeyCode.LEFT);
            assertThat(view.inHandProperty().get()).isZero();
        });
    }

    @Test
    void aChoiceChangesByKeysAndIsNeverTakenBack() {
        Fx.run(() -> {
            Choice choice = new Choice("Feed", List.of("none", "half", "full"));
            assertThat(choice.chosenProperty().get()).isEqualTo(-1);
            press(choice, KeyCode.RIGHT);
            press(choice, KeyCode.RIGHT);
            assertThat(choice.chosenProperty().get()).isEqualTo(1);
            ToggleButton half = (ToggleButton) choice.getChildren().get(1);
            half.fire();
            assertThat(half.isSelected()).isTrue();
            assertThat(choice.chosenProperty().get()).isEqualTo(1);
            assertThat(choice.getChildren())
                    .filteredOn(Node::isFocusTraversable)
                    .containsExactly(half);
        });
    }

    @Test
    void aStepperStepsToEvenAmountsAndPutsBackWhatIsNoNumber() {
        Fx.run(() -> {
            Stepper stepper = stepper();
            type(stepper, "22");
            assertThat(stepper.amountProperty().get()).isEqualTo(22);
            press(stepper.field(), KeyCode.UP);
            assertThat(stepper.amountProperty().get()).isEqualTo(25);
            type(stepper, "much");
            assertThat(stepper.field().getText()).isEqualTo("25 %");
            type(stepper, "400");
            assertThat(stepper.field().getText()).isEqualTo("100 %");
        });
    }

    @Test
    void fishMoveOnlyWhileAWindowShowsThem() {
        TankPicture picture = Fx.call(() -> new TankPicture(
                new TankLook(24, 1, FishMood.CALM, 0, 0, 0, true, 1, "", TankLook.Shape.CATFISH, 1, "Calm.")));
        assertThat(picture.isMoving()).isFalse();
        Stage stage = Fx.call(() -> {
            Stage window = new Stage();
            Scene scene = new Scene(new StackPane(picture), 352, 260);
            new Look(Theme.LIGHT, 100).dress(scene);
            window.setScene(scene);
            window.show();
            return window;
        });
        assertThat(picture.isMoving()).isTrue();
        Fx.run(() -> picture.setStill(true));
        assertThat(picture.isMoving()).isFalse();
        Fx.run(() -> picture.setStill(false));
        assertThat(picture.isMoving()).isTrue();
        Fx.run(stage::hide);
        assertThat(picture.isMoving()).isFalse();
    }

    private static Stepper stepper() {
        return new Stepper(
                new Stepper.Names("Change", "less", "more"), 0, 100, 5, v -> Math.round(v) + " %", PartsTest::percent);
    }

    private static @Nullable Double percent(String text) {
        String digits = text.replaceAll("[^0-9.]", "");
        return digits.isEmpty() ? null : Double.valueOf(digits);
    }

    private static void type(Stepper stepper, String text) {
        stepper.field().setText(text);
        Event.fireEvent(stepper.field(), new javafx.event.ActionEvent());
    }

    private static ScaleLook scale() {
        return ScaleLook.matched(List.of("0", "1", "2"), COLOURS, Color.GRAY, STOPS, "nitrite");
    }

    private static StripLook.PadLook pad(String name) {
        return new StripLook.PadLook(name, "", true, Color.GRAY, name + " spoken");
    }

    private static void press(Node node, KeyCode code) {
        Event.fireEvent(node, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, false, false, false, false));
    }

    private static void click(Node node, double x) {
        Event.fireEvent(
                node,
                new MouseEvent(
                        MouseEvent.MOUSE_PRESSED,
                        x,
                        20,
                        x,
                        20,
                        MouseButton.PRIMARY,
                        1,
                        false,
                        false,
                        false,
                        false,
                        true,
                        false,
                        false,
                        true,
                        false,
                        true,
                        null));
    }
}
