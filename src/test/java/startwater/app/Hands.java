package startwater.app;

import java.util.Objects;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Supplier;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/**
 * The keys and the mouse of a person, through the toolkit's own robot: they go the way of real ones, from the window to what
 * has the focus or lies under the pointer. There are no pauses between them; each is over when the window has taken it.
 */
public final class Hands {
    private static final int MOST_TRIES = 300;
    private static final long PAUSE_NANOS = 20_000_000;

    private final Robot robot = Fx.call(Robot::new);

    /** Strikes a key. */
    public void key(KeyCode code) {
        Fx.run(() -> {
            dressed();
            robot.keyType(code);
        });
        settle();
    }

    /** Strikes a key while another is held. */
    public void chord(KeyCode held, KeyCode code) {
        Fx.run(() -> {
            dressed();
            robot.keyPress(held);
            robot.keyType(code);
            robot.keyRelease(held);
        });
        settle();
    }

    /** Types words into what has the keys. */
    public void type(Scene scene, String words) {
        Fx.run(Hands::dressed);
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

    /**
     * Moves the pointer to the middle of something and clicks. It is looked for and pointed at in one go, since a page may be
     * made anew at any moment; while it is not there this waits.
     *
     * @param wanted gives it, or null while it is not there
     * @throws AssertionError where it does not come
     */
    public void click(Supplier<@Nullable Node> wanted) {
        for (int i = 0; !Fx.<Boolean>call(() -> pointAt(wanted.get())); i++) {
            if (i == MOST_TRIES) {
                throw new AssertionError("what is to be clicked is not there");
            }
            settle();
            LockSupport.parkNanos(PAUSE_NANOS);
        }
        settle();
        Fx.run(() -> robot.mouseClick(MouseButton.PRIMARY));
        settle();
    }

    private boolean pointAt(@Nullable Node node) {
        dressed();
        Bounds at = node == null ? null : node.localToScreen(node.getBoundsInLocal());
        if (at != null) {
            robot.mouseMove(at.getCenterX(), at.getCenterY());
        }
        return at != null;
    }

    /** A control takes keys once it has its looks. No person is quicker than the next frame; these hands are. */
    private static void dressed() {
        for (Window window : Window.getWindows()) {
            window.getScene().getRoot().applyCss();
            window.getScene().getRoot().layout();
        }
    }

    /** Until the window has taken what was done: an event passes two queues. */
    public static void settle() {
        for (int i = 0; i < 3; i++) {
            Fx.run(() -> {});
        }
    }
}
