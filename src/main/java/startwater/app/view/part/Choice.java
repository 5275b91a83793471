package startwater.app.view.part;

import java.util.List;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;

/**
 * One of several, side by side in one outline; where they do not fit they go on in a second row. The tab key goes to the chosen one, the left and right keys choose another; as
 * with radio buttons a choice can be changed but not taken back.
 */
public final class Choice extends FlowPane {
    private final IntegerProperty chosen = new SimpleIntegerProperty(this, "chosen", -1);

    /**
     * @param name of the choice, for screen readers
     * @param labels at least one
     */
    public Choice(String name, List<String> labels) {
        getStyleClass().add("sw-choice");
        setAccessibleText(name);
        setMaxWidth(USE_PREF_SIZE);
        addEventFilter(KeyEvent.KEY_PRESSED, this::typed);
        setLabels(name, labels);
        chosen.addListener(change -> mark());
    }

    /** Shows other labels; nothing is chosen then. */
    public void setLabels(String name, List<String> labels) {
        getChildren().clear();
        for (int i = 0; i < labels.size(); i++) {
            getChildren().add(segment(name, labels.get(i), i));
        }
        chosen.set(-1);
        mark();
    }

    /** Which label is chosen, from 0; -1 for none yet. */
    public IntegerProperty chosenProperty() {
        return chosen;
    }

    @Override
    protected double computePrefWidth(double height) {
        double width = snappedLeftInset() + snappedRightInset();
        for (Node segment : getManagedChildren()) {
            width += snapSizeX(segment.prefWidth(-1));
        }
        return width;
    }

    @Override
    protected double computePrefHeight(double width) {
        return super.computePrefHeight(width < 0 ? computePrefWidth(-1) : width);
    }

    private ToggleButton segment(String name, String label, int number) {
        ToggleButton segment = new ToggleButton(label);
        segment.setAccessibleRole(AccessibleRole.RADIO_BUTTON);
        segment.setAccessibleText(name + ": " + label);
        segment.setMaxWidth(Double.MAX_VALUE);
        segment.setOnAction(event -> {
            chosen.set(number);
            mark();
        });
        return segment;
    }

    /** A bound property may refuse, so the look follows the property, never the click. */
    private void mark() {
        int now = chosen.get();
        for (int i = 0; i < getChildren().size(); i++) {
            Node node = getChildren().get(i);
            if (node instanceof ToggleButton segment) {
                segment.setSelected(i == now);
                segment.setFocusTraversable(i == Math.max(0, now));
            }
            node.getStyleClass().removeAll("sw-first", "sw-after-selected");
            if (i == 0) {
                node.getStyleClass().add("sw-first");
            } else if (i == now + 1 && now >= 0) {
                node.getStyleClass().add("sw-after-selected");
            }
        }
    }

    private void typed(KeyEvent event) {
        int step =
                switch (event.getCode()) {
                    case LEFT, UP -> -1;
                    case RIGHT, DOWN -> 1;
                    default -> 0;
                };
        if (step == 0 || getChildren().isEmpty()) {
            return;
        }
        int last = getChildren().size() - 1;
        int next = chosen.get() < 0 ? (step > 0 ? 0 : last) : Math.max(0, Math.min(last, chosen.get() + step));
        chosen.set(next);
        getChildren().get(next).requestFocus();
        event.consume();
    }
}
