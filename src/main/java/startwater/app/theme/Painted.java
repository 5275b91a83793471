package startwater.app.theme;

import javafx.collections.MapChangeListener;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.canvas.Canvas;
import javafx.scene.layout.Region;

/**
 * A part of the window that draws itself. It is laid out like any region, follows the scene's {@link Look}, and draws only
 * when something changed and it is being laid out. One unit in {@link #paint} is a design pixel whatever the text size.
 */
public abstract class Painted extends Region {
    private final Canvas canvas = new Canvas();
    private final double prefWidth;
    private final double prefHeight;
    private final MapChangeListener<Object, Object> onLook = change -> {
        if (Look.isKey(change.getKey())) {
            requestLayout();
        }
    };

    /** A part with its preferred size in design pixels. */
    protected Painted(AccessibleRole role, double prefWidth, double prefHeight) {
        this.prefWidth = prefWidth;
        this.prefHeight = prefHeight;
        getStyleClass().add("sw-painted");
        setAccessibleRole(role);
        getChildren().add(canvas);
        sceneProperty().addListener((property, old, now) -> moved(old, now));
    }

    /** Draws everything, on a clean ground, in design pixels. */
    protected abstract void paint(Pen pen, double width, double height);

    /** Asks for a drawing at the next pulse. */
    protected final void repaint() {
        requestLayout();
    }

    /** Draws now, without a layout; for animation. */
    protected final void paintNow() {
        Look look = look();
        double scale = look.scale();
        Pen pen = Pen.on(canvas, look);
        paint(pen, getWidth() / scale, getHeight() / scale);
    }

    protected final Look look() {
        return Look.of(getScene());
    }

    /** How many pixels one design pixel takes now. */
    protected final double scale() {
        return look().scale();
    }

    @Override
    protected void layoutChildren() {
        canvas.setWidth(Math.ceil(getWidth()));
        canvas.setHeight(Math.ceil(getHeight()));
        paintNow();
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return prefWidth * scale();
    }

    @Override
    protected double computePrefHeight(double width) {
        return heightFor(width > 0 ? width / scale() : prefWidth) * scale();
    }

    /** The preferred height in design pixels at a width in design pixels. */
    protected double heightFor(double width) {
        return prefHeight;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 0.6 * prefWidth * scale();
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width) * 0.6;
    }

    @Override
    protected double computeMaxWidth(double height) {
        return Double.MAX_VALUE;
    }

    @Override
    protected double computeMaxHeight(double width) {
        return Double.MAX_VALUE;
    }

    private void moved(@org.jspecify.annotations.Nullable Scene old, @org.jspecify.annotations.Nullable Scene now) {
        if (old != null) {
            old.getProperties().removeListener(onLook);
        }
        if (now != null) {
            now.getProperties().addListener(onLook);
        }
    }
}
