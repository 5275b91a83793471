package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.robot.Robot;
import org.jspecify.annotations.Nullable;
import startwater.quantity.Stream;

/** Hands that do one thing at random to whatever a scene shows, on the thread of the window. Each says what it did. */
final class MonkeyHands {
    /** Buttons behind which a dialogue of the system waits for a person. */
    private static final Set<String> DIALOGUES = Set.of("learner-export");

    /** Said where there is nothing to press. */
    static final String NOTHING = "nothing to press";

    private static final KeyCode[] KEYS = {
        KeyCode.TAB,
        KeyCode.TAB,
        KeyCode.TAB,
        KeyCode.ENTER,
        KeyCode.SPACE,
        KeyCode.SPACE,
        KeyCode.ESCAPE,
        KeyCode.LEFT,
        KeyCode.RIGHT,
        KeyCode.UP,
        KeyCode.DOWN,
        KeyCode.HOME,
        KeyCode.END,
        KeyCode.PAGE_UP,
        KeyCode.PAGE_DOWN,
        KeyCode.F1,
        KeyCode.DELETE,
        KeyCode.BACK_SPACE,
        KeyCode.Z,
        KeyCode.A,
        KeyCode.PLUS,
        KeyCode.MINUS,
        KeyCode.DIGIT0,
        KeyCode.DIGIT7,
        KeyCode.R
    };

    private static final String[] WORDS = {
        "0",
        "1",
        "0.5-1",
        "7,5",
        "-3",
        "1e999",
        "NaN",
        "",
        "   ",
        "lots",
        "0,25",
        "99999999999999999999",
        "½",
        "ñandú",
        "\u202etxet",
        "\uD83D\uDC1F",
        "<b>",
        "{0}",
        "'",
        "../../x",
        "a\u0000b",
        "long ".repeat(60),
        "25 %",
        "1/2"
    };

    private final Stream chance;
    private final Robot robot;

    /** To be made on the thread of the window. */
    MonkeyHands(Stream chance) {
        this.chance = chance;
        this.robot = new Robot();
    }

    int pick(int of) {
        return Math.min(of - 1, (int) (of * chance.uniform()));
    }

    <T> T one(List<T> of) {
        return of.get(pick(of.size()));
    }

    /** Presses a button, a link, a box or a segment. */
    String press(Scene scene, Predicate<ButtonBase> which) {
        List<ButtonBase> all = shown(scene, n -> n instanceof ButtonBase b && allowed(b) && which.test(b)).stream()
                .map(ButtonBase.class::cast)
                .toList();
        if (all.isEmpty()) {
            return NOTHING;
        }
        ButtonBase button = one(all);
        String name = name(button);
        button.requestFocus();
        button.fire();
        return "press " + name;
    }

    /** A click, a double click or a click of the other button anywhere on something. */
    String click(Scene scene) {
        Node node = any(scene);
        if (node == null) {
            return "nothing to click";
        }
        String name = name(node);
        Point2D at = inside(node);
        MouseButton button = pick(12) == 0 ? MouseButton.SECONDARY : MouseButton.PRIMARY;
        int times = pick(8) == 0 ? 2 : 1;
        mouse(node, MouseEvent.MOUSE_MOVED, at, button, times);
        mouse(node, MouseEvent.MOUSE_PRESSED, at, button, times);
        mouse(node, MouseEvent.MOUSE_RELEASED, at, button, times);
        mouse(node, MouseEvent.MOUSE_CLICKED, at, button, times);
        return "click " + name;
    }

    String drag(Scene scene) {
        Node node = any(scene);
        if (node == null) {
            return "nothing to drag";
        }
        Point2D at = inside(node);
        mouse(node, MouseEvent.MOUSE_PRESSED, at, MouseButton.PRIMARY, 1);
        mouse(node, MouseEvent.DRAG_DETECTED, at, MouseButton.PRIMARY, 1);
        for (int i = 0; i < 3; i++) {
            at = at.add(pick(200) - 100, pick(200) - 100);
            mouse(node, MouseEvent.MOUSE_DRAGGED, at, MouseButton.PRIMARY, 1);
        }
        mouse(node, MouseEvent.MOUSE_RELEASED, at, MouseButton.PRIMARY, 1);
        return "drag " + name(node);
    }

    String scroll(Scene scene) {
        Node node = any(scene);
        if (node == null) {
            return "nothing to scroll";
        }
        Point2D at = inside(node);
        double by = 40 * (pick(21) - 10);
        Event.fireEvent(
                node,
                new ScrollEvent(
                        ScrollEvent.SCROLL,
                        at.getX(),
                        at.getY(),
                        at.getX(),
                        at.getY(),
                        false,
                        false,
                        false,
                        false,
                        false,
                        false,
                        0,
                        by,
                        0,
                        by,
                        ScrollEvent.HorizontalTextScrollUnits.NONE,
                        0,
                        ScrollEvent.VerticalTextScrollUnits.NONE,
                        0,
                        0,
                        null));
        return "scroll " + name(node);
    }

    /** A key to whatever has the keys, with or without the others held. */
    String key(Scene scene) {
        KeyCode code = KEYS[pick(KEYS.length)];
        boolean shift = pick(6) == 0;
        boolean control = pick(6) == 0;
        Node focus = scene.getFocusOwner();
        if (focus instanceof ButtonBase b && !allowed(b)) {
            code = KeyCode.TAB;
        }
        Node to = focus == null ? scene.getRoot() : focus;
        String typed = code == KeyCode.F1 ? "?" : code.isLetterKey() ? code.getName() : "";
        Event.fireEvent(to, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", code, shift, control, false, false));
        if (!typed.isEmpty() && !control) {
            Event.fireEvent(
                    to, new KeyEvent(KeyEvent.KEY_TYPED, typed, "", KeyCode.UNDEFINED, shift, false, false, false));
        }
        Event.fireEvent(to, new KeyEvent(KeyEvent.KEY_RELEASED, "", "", code, shift, control, false, false));
        return "key " + (control ? "ctrl " : "") + (shift ? "shift " : "") + code + " at " + name(to);
    }

    /** Types into a field, and often presses Enter. */
    String type(Scene scene) {
        List<Node> fields = shown(scene, n -> n instanceof TextInputControl t && t.isEditable());
        if (fields.isEmpty()) {
            return key(scene);
        }
        TextInputControl field = (TextInputControl) one(fields);
        String words = WORDS[pick(WORDS.length)];
        field.requestFocus();
        if (pick(3) == 0) {
            field.clear();
        }
        field.insertText(field.getCaretPosition(), words);
        if (pick(2) == 0) {
            Event.fireEvent(
                    field, new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
        }
        return "type '" + words.strip() + "' into " + name(field);
    }

    /** The same through the toolkit's own robot: the pointer is moved over the window, keys are struck. */
    String robot(Scene scene) {
        double x = scene.getWindow().getX() + pick(1280);
        double y = scene.getWindow().getY() + pick(800);
        Node focus = scene.getFocusOwner();
        if (pick(2) == 0) {
            KeyCode code = focus instanceof ButtonBase b && !allowed(b) ? KeyCode.TAB : KEYS[pick(15)];
            robot.keyType(code);
            return "robot key " + code + " at " + (focus == null ? "nothing" : name(focus));
        }
        boolean dialogue = shown(scene, n -> n instanceof ButtonBase b && !allowed(b)).stream()
                .anyMatch(n -> n.localToScene(n.getLayoutBounds())
                        .contains(
                                x - scene.getWindow().getX(),
                                y - scene.getWindow().getY()));
        robot.mouseMove(x, y);
        if (!dialogue) {
            robot.mouseClick(MouseButton.PRIMARY);
        }
        return "robot click at " + (int) x + " " + (int) y;
    }

    private @Nullable Node any(Scene scene) {
        List<Node> all = shown(scene, n -> !(within(n) instanceof ButtonBase b) || allowed(b));
        return all.isEmpty() ? null : one(all);
    }

    private static @Nullable Node within(Node node) {
        Node at = node;
        while (at != null && !(at instanceof ButtonBase)) {
            at = at.getParent();
        }
        return at;
    }

    private static boolean allowed(ButtonBase button) {
        return button.getId() == null || !DIALOGUES.contains(button.getId());
    }

    private Point2D inside(Node node) {
        Bounds b = node.getLayoutBounds();
        return new Point2D(
                b.getMinX() + chance.uniform() * b.getWidth(), b.getMinY() + chance.uniform() * b.getHeight());
    }

    private static void mouse(Node node, EventType<MouseEvent> type, Point2D at, MouseButton button, int times) {
        boolean first = button == MouseButton.PRIMARY;
        boolean down = type == MouseEvent.MOUSE_PRESSED || type == MouseEvent.MOUSE_DRAGGED;
        Point2D scene = node.localToScene(at);
        double x = scene == null ? 0 : scene.getX();
        double y = scene == null ? 0 : scene.getY();
        Event.fireEvent(
                node,
                new MouseEvent(
                        type,
                        x,
                        y,
                        x,
                        y,
                        button,
                        times,
                        false,
                        false,
                        false,
                        false,
                        first && down,
                        false,
                        !first && down,
                        false,
                        false,
                        true,
                        null));
    }

    private static String name(Node node) {
        return node.getClass().getSimpleName()
                + (node.getId() == null ? "" : "#" + node.getId())
                + (node instanceof ButtonBase b && b.getText() != null ? " '" + b.getText() + "'" : "");
    }

    private static List<Node> shown(Scene scene, Predicate<Node> wanted) {
        List<Node> all = new ArrayList<>();
        gather(scene.getRoot(), wanted, all);
        return all;
    }

    private static void gather(Node node, Predicate<Node> wanted, List<Node> all) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        if (wanted.test(node)) {
            all.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> gather(child, wanted, all));
        }
    }
}
