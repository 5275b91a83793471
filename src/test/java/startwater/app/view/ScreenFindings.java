package startwater.app.view;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.geometry.BoundingBox;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Control;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.paint.Paint;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.jspecify.annotations.Nullable;
import startwater.app.theme.Look;
import startwater.app.theme.Theme;
import startwater.app.theme.Token;
import startwater.quantity.Unbroken;

/**
 * What is wrong with the layout of a screen, read from its scene graph: words cut short, words over words, words past the
 * edge, targets too small to hit, type in a size or colour that is not ours, controls without a name. Painted parts are one node
 * each and are looked at as pictures.
 */
final class ScreenFindings {
    /** Sizes of type, in design pixels: 13, 15, 18, 24 and 32. */
    private static final double[] TYPE = {13, 15, 18, 24, 32};
    /** The size of type on the wall of a classroom, px: 28 points, whatever the look. */
    private static final double WALL = 28 * 96 / 72.0;
    /** WCAG 2.2, 2.5.8: a target is at least 24 by 24 CSS pixels. */
    private static final double TARGET = 24;
    /** Boxes of letters have air around them; less than this in both directions is no overlap that can be seen. */
    private static final double AIR = 3;

    private final double scale;
    private final double width;
    private final Set<Paint> colours;
    private final Set<String> found = new LinkedHashSet<>();
    private final List<Shown> words = new ArrayList<>();
    /** How many pages that scroll sideways the node at hand lies in. */
    private int aside;

    private record Shown(String text, Bounds bounds) {}

    private ScreenFindings(Scene scene) {
        this.scale = Look.of(scene).scale();
        this.width = scene.getWidth();
        Theme theme = Look.of(scene).theme();
        this.colours = Arrays.stream(Token.values())
                .map(token -> (Paint) token.in(theme))
                .collect(Collectors.toSet());
    }

    /** All findings of a scene as it stands, laid out. Call on the JavaFX thread. */
    static List<String> of(Scene scene) {
        ScreenFindings findings = new ScreenFindings(scene);
        // Help lies over the page: what is below it is covered, not overlapped.
        Node over = scene.getRoot().lookupAll("*").stream()
                .filter(node -> node instanceof HelpPane && node.isVisible())
                .findFirst()
                .orElse(scene.getRoot());
        findings.walk(over, null);
        findings.overlaps();
        return List.copyOf(findings.found);
    }

    private void walk(Node node, @Nullable Bounds clip) {
        if (!node.isVisible() || node.getOpacity() == 0) {
            return;
        }
        @Nullable Bounds inner = clip;
        if (node instanceof ScrollPane pane) {
            inner = both(clip, pane.localToScene(pane.getBoundsInLocal()));
            aside += sideways(pane) ? 1 : 0;
        }
        if (node instanceof Labeled labeled) {
            truncated(labeled);
        }
        if (node instanceof Text text) {
            text(text, clip);
        }
        if (node instanceof TextFlow flow) {
            shown(said(flow), flow.localToScene(flow.getLayoutBounds()), clip);
        }
        if (node instanceof Control control && control.isFocusTraversable()) {
            control(control);
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                walk(child, inner);
            }
        }
        if (node instanceof ScrollPane pane && sideways(pane)) {
            aside--;
        }
    }

    /** Whether what is past the right edge of a page can be scrolled to. */
    private static boolean sideways(ScrollPane pane) {
        return !pane.isFitToWidth() && pane.getHbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
    }

    /** What can be seen through both, a page within a page. */
    private static Bounds both(@Nullable Bounds outer, Bounds inner) {
        if (outer == null) {
            return inner;
        }
        double left = Math.max(outer.getMinX(), inner.getMinX());
        double top = Math.max(outer.getMinY(), inner.getMinY());
        double right = Math.min(outer.getMaxX(), inner.getMaxX());
        double bottom = Math.min(outer.getMaxY(), inner.getMaxY());
        return new BoundingBox(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
    }

    private void truncated(Labeled labeled) {
        String says = labeled.getText();
        if (says == null || says.isBlank()) {
            return;
        }
        for (Node child : labeled.getChildrenUnmodifiable()) {
            if (child instanceof Text text
                    && text.isVisible()
                    && !text.getText().equals(says)) {
                add("cut short", text.getText() + " | " + says);
            }
        }
    }

    private void text(Text text, @Nullable Bounds clip) {
        if (text.getText().isBlank() || text.getParent() instanceof TextField) {
            return;
        }
        Bounds at = text.localToScene(text.getBoundsInLocal());
        double left = clip == null ? 0 : Math.max(0, clip.getMinX());
        double right = clip == null ? width : Math.min(width, clip.getMaxX());
        if (aside == 0 && (at.getMinX() < left - AIR || at.getMaxX() > right + AIR)) {
            add("past the edge", text.getText());
        }
        String kept = Unbroken.of(text.getText());
        if (!kept.equals(text.getText()) && kept.contains(" ")) {
            add("a unit may leave its number", text.getText());
        }
        double size = text.getFont().getSize() / scale;
        boolean ours = Math.abs(text.getFont().getSize() - WALL) < 0.26;
        for (double one : TYPE) {
            ours |= Math.abs(size - one) < 0.26;
        }
        if (!ours) {
            add(String.format(Locale.ROOT, "size %.1f", size), text.getText());
        }
        if (!colours.contains(text.getFill())) {
            add("colour " + text.getFill(), text.getText());
        }
        if (!(text.getParent() instanceof TextFlow)) {
            shown(text.getText(), at, clip);
        }
    }

    /** Keeps what can be seen of some words: a page that scrolls cuts them at its edge. */
    private void shown(String text, Bounds at, @Nullable Bounds clip) {
        if (clip == null) {
            words.add(new Shown(text, at));
            return;
        }
        double left = Math.max(at.getMinX(), clip.getMinX());
        double top = Math.max(at.getMinY(), clip.getMinY());
        double right = Math.min(at.getMaxX(), clip.getMaxX());
        double bottom = Math.min(at.getMaxY(), clip.getMaxY());
        if (right > left && bottom > top) {
            words.add(new Shown(text, new BoundingBox(left, top, right - left, bottom - top)));
        }
    }

    private void control(Control control) {
        if (control instanceof ButtonBase button && !(control instanceof Hyperlink)) {
            Bounds at = button.getBoundsInLocal();
            if (at.getWidth() < TARGET || at.getHeight() < TARGET) {
                add(String.format(Locale.ROOT, "target %.0f x %.0f", at.getWidth(), at.getHeight()), name(control));
            }
        }
        boolean page = control instanceof ScrollPane;
        if (!page
                && control.getAccessibleRole() != AccessibleRole.NODE
                && name(control).isBlank()) {
            add("no name", control.getClass().getSimpleName() + " #" + control.getId());
        }
    }

    private static String said(TextFlow flow) {
        return flow.getChildren().stream()
                .map(child -> child instanceof Text text ? text.getText() : "")
                .collect(Collectors.joining());
    }

    private static String name(Control control) {
        if (control.getAccessibleText() != null) {
            return control.getAccessibleText();
        }
        return control instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    }

    private void overlaps() {
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                Bounds a = words.get(i).bounds();
                Bounds b = words.get(j).bounds();
                double across = Math.min(a.getMaxX(), b.getMaxX()) - Math.max(a.getMinX(), b.getMinX());
                double down = Math.min(a.getMaxY(), b.getMaxY()) - Math.max(a.getMinY(), b.getMinY());
                if (across > AIR && down > AIR * scale) {
                    add(
                            "over each other",
                            words.get(i).text() + " | " + words.get(j).text());
                }
            }
        }
    }

    private void add(String what, String where) {
        String short80 = where.replace('\n', ' ');
        found.add(what + ": " + (short80.length() > 120 ? short80.substring(0, 120) : short80));
    }
}
