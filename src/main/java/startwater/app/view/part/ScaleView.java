package startwater.app.view.part;

import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * The scale card. The pad in hand is a tongue under the blocks; the left and right keys, a click or a drag move it from stop to
 * stop. Pad and block touch without a line between them, as a line would spoil the match.
 */
public final class ScaleView extends Painted {
    private static final double SIDE = 12;
    private static final double BLOCK_TOP = 32;
    private static final double BLOCK_BOTTOM = 62;
    private static final double GAP = 6;
    private static final double CUT = 8;
    private static final double TONGUE = 32;

    private final IntegerProperty stop = new SimpleIntegerProperty(this, "stop") {
        @Override
        public void set(int value) {
            super.set(Math.max(0, Math.min(look.stopTexts().size() - 1, value)));
        }
    };
    private ScaleLook look;

    public ScaleView(ScaleLook look) {
        super(AccessibleRole.SLIDER, 432, 106);
        this.look = look;
        setFocusTraversable(true);
        setCursor(Cursor.HAND);
        setOnMousePressed(event -> {
            requestFocus();
            pulled(event);
        });
        setOnMouseDragged(this::pulled);
        setOnKeyPressed(this::typed);
        stop.addListener(change -> {
            notifyAccessibleAttributeChanged(AccessibleAttribute.VALUE);
            changed();
        });
        changed();
    }

    /** Shows another scale or pad; the stop stays where the new scale has it. */
    public void show(ScaleLook next) {
        look = next;
        stop.set(stop.get());
        changed();
    }

    /** Where the tongue is, from 0: even stops are blocks, odd ones the betweens. */
    public IntegerProperty stopProperty() {
        return stop;
    }

    /** The value goes into the name, as a slider's value is only a number to screen readers. */
    private void changed() {
        setAccessibleText(look.name() + ": " + look.stopTexts().get(stop.get()));
        repaint();
    }

    private void pulled(MouseEvent event) {
        double width = getWidth() / scale();
        stop.set((int) Math.round(2 * ((event.getX() / scale() - SIDE) / pitch(width) - 0.5)));
        event.consume();
    }

    private void typed(KeyEvent event) {
        int last = look.stopTexts().size() - 1;
        int next =
                switch (event.getCode()) {
                    case LEFT, DOWN, KP_LEFT -> stop.get() - 1;
                    case RIGHT, UP, KP_RIGHT -> stop.get() + 1;
                    case PAGE_DOWN -> stop.get() - 2;
                    case PAGE_UP -> stop.get() + 2;
                    case HOME -> 0;
                    case END -> last;
                    default -> -100;
                };
        if (next > -100) {
            stop.set(next);
            event.consume();
        }
    }

    @Override
    public @Nullable Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case VALUE -> (double) stop.get();
            case MIN_VALUE -> 0.0;
            case MAX_VALUE -> (double) (look.stopTexts().size() - 1);
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    public void executeAccessibleAction(AccessibleAction action, Object... parameters) {
        switch (action) {
            case INCREMENT, BLOCK_INCREMENT -> stop.set(stop.get() + 1);
            case DECREMENT, BLOCK_DECREMENT -> stop.set(stop.get() - 1);
            case SET_VALUE -> {
                if (parameters.length > 0 && parameters[0] instanceof Number value) {
                    stop.set(value.intValue());
                }
            }
            default -> super.executeAccessibleAction(action, parameters);
        }
    }

    private double pitch(double width) {
        return (width - 2 * SIDE) / look.labels().size();
    }

    private double centre(double block, double width) {
        return SIDE + (block + 0.5) * pitch(width);
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        GraphicsContext gc = pen.gc();
        gc.setFill(pen.color(Token.CARD_EDGE));
        gc.fillRoundRect(0, 0, width, height, 8, 8);
        gc.setFill(pen.color(Token.CARD));
        gc.fillRoundRect(1, 1, width - 2, height - 2, 6, 6);
        paintLabels(pen, width);
        paintTicks(pen, width, height);
        if (look.isColumn()) {
            paintColumn(pen, width);
            paintPointer(pen, width, height);
        } else {
            for (int block = 0; block < look.labels().size(); block++) {
                paintBlock(pen, block, width);
            }
            paintTongue(pen, width);
        }
    }

    private void paintLabels(Pen pen, double width) {
        for (int block = 0; block < look.labels().size(); block++) {
            boolean touched = Math.abs(2 * block - stop.get()) < 2;
            pen.text(
                    look.labels().get(block),
                    centre(block, width),
                    22,
                    Pen.TEXT,
                    touched,
                    pen.color(touched ? Token.CARD_INK : Token.CARD_QUIET),
                    TextAlignment.CENTER);
        }
    }

    private void paintTicks(Pen pen, double width, double height) {
        for (int at = 0; at < look.stopTexts().size(); at++) {
            double x = centre(at / 2.0, width);
            double tall = at % 2 == 0 ? 12 : 6;
            pen.line(x, height - 8, x, height - 8 - tall, 1.5, pen.color(Token.CARD_EDGE));
        }
    }

    private void paintBlock(Pen pen, int block, double width) {
        GraphicsContext gc = pen.gc();
        double half = (pitch(width) - GAP) / 2;
        double x = centre(block, width);
        gc.beginPath();
        gc.moveTo(x - half + CUT, BLOCK_TOP);
        gc.lineTo(x + half, BLOCK_TOP);
        gc.lineTo(x + half, BLOCK_BOTTOM);
        gc.lineTo(x - half, BLOCK_BOTTOM);
        gc.lineTo(x - half, BLOCK_TOP + CUT);
        gc.closePath();
        gc.setFill(look.colors().get(block));
        gc.fill();
        gc.setStroke(pen.color(Token.CARD_EDGE));
        gc.setLineWidth(1);
        gc.stroke();
    }

    /** The pad: it covers the blocks' lower outline where it touches them, and has no upper one itself. */
    private void paintTongue(Pen pen, double width) {
        GraphicsContext gc = pen.gc();
        double half = (pitch(width) - GAP) / 2 - 0.5;
        double x = centre(stop.get() / 2.0, width);
        double top = BLOCK_BOTTOM - 0.6;
        double shoulder = BLOCK_BOTTOM + 0.5 * TONGUE;
        double tip = BLOCK_BOTTOM + TONGUE;
        gc.beginPath();
        gc.moveTo(x - half, top);
        gc.lineTo(x - half, shoulder);
        gc.quadraticCurveTo(x - half, tip - 5, x, tip);
        gc.quadraticCurveTo(x + half, tip - 5, x + half, shoulder);
        gc.lineTo(x + half, top);
        gc.setFill(look.pad());
        gc.fill();
        gc.beginPath();
        gc.moveTo(x - half, BLOCK_BOTTOM + 0.5);
        gc.lineTo(x - half, shoulder);
        gc.quadraticCurveTo(x - half, tip - 5, x, tip);
        gc.quadraticCurveTo(x + half, tip - 5, x + half, shoulder);
        gc.lineTo(x + half, BLOCK_BOTTOM + 0.5);
        gc.setStroke(pen.color(Token.CARD_EDGE));
        gc.setLineWidth(1);
        gc.stroke();
    }

    private void paintColumn(Pen pen, double width) {
        GraphicsContext gc = pen.gc();
        double left = centre(0, width) - 0.3 * pitch(width);
        double right = centre(look.labels().size() - 1, width) + 0.3 * pitch(width);
        double top = BLOCK_TOP + 4;
        double tall = BLOCK_BOTTOM - top;
        double front = Math.max(left, Math.min(right, centre(look.front(), width)));
        pen.box(left, top, right - left, tall, pen.color(Token.COLUMN));
        gc.beginPath();
        gc.moveTo(left, top);
        gc.lineTo(front - 2, top);
        gc.bezierCurveTo(front + 3, top + 0.3 * tall, front - 3, top + 0.7 * tall, front + 2, top + tall);
        gc.lineTo(left, top + tall);
        gc.closePath();
        gc.setFill(pen.color(Token.COLUMN_WHITE));
        gc.fill();
        pen.frame(left, top, right - left, tall, 1, pen.color(Token.CARD_EDGE));
        for (int block = 0; block < look.labels().size(); block++) {
            double x = centre(block, width);
            pen.line(x, top - 5, x, top, 1, pen.color(Token.CARD_EDGE));
        }
    }

    private void paintPointer(Pen pen, double width, double height) {
        double x = centre(stop.get() / 2.0, width);
        double tip = BLOCK_BOTTOM + 4;
        pen.polygon(pen.color(Token.CARD_INK), x, tip, x + 7, tip + 12, x - 7, tip + 12);
        pen.line(x, tip + 10, x, height - 8, 2, pen.color(Token.CARD_INK));
    }
}
