package startwater.app;

import java.util.Objects;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;

/**
 * The keys and the mouse of a person, through the toolkit's own robot: they go the way of real ones, from the window to what
 * has the focus or lies under the pointer. There are no pauses between them; each is over when the window has taken it.
 */
public final class Hands {
    private final Robot robot = Fx.call(Robot::new);

    /** Strikes a key. */
    public void key(KeyCode code) {
        Fx.run(() -> robot.keyType(code));
        settle();
    }

    /** Strikes a key while another is held. */
    public void chord(KeyCode held, KeyCode code) {
        Fx.run(() -> {
            robot.keyPress(held);
            robot.keyType(code);
            robot.keyRelease(held);
        });
        settle();
    }

    /** Types words into what has the keys. */
    public void type(Scene scene, String words) {
        Fx.run(() -> words.codePoints().forEach(c -> {
            Node focus = Objects.requireNonNull(scene.getFocusOwner(), "nothing has the keys");
            Event.fireEvent(
                    focus,
                    new KeyEvent(
                            KeyEvent.KEY_TYPED,
                            Character.toString(c),
                            "",
                            KeyCode.UNDEFINED,
                            false,
                            false,
                            false,
                            false));
        }));
        settle();
    }

    /** Moves the pointer to the middle of something and clicks. */
    public void click(Node node) {
        Fx.run(() -> {
            Bounds at = node.localToScreen(node.getBoundsInLocal());
            robot.mouseMove(at.getCenterX(), at.getCenterY());
        });
        settle();
        Fx.run(() -> robot.mouseClick(MouseButton.PRIMARY));
        settle();
    }

    /** Until the window has taken what was done: an event passes two queues. */
    public static void settle() {
        for (int i = 0; i < 3; i++) {
            Fx.run(() -> {});
        }
    }
}
