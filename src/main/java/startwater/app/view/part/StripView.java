package startwater.app.view.part;

import javafx.beans.property.IntegerProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * The wet strip: a paddle with lens-shaped pads, each with its name and what was written down. A click, or the left and right
 * keys, take another pad in hand.
 */
public final class StripView extends Painted {
    private static final double GRIP = 46;
    private static final double PADDLE = 58;
    private static final double LENS_WIDTH = 46;
    private static final double LENS_HEIGHT = 32;
    private static final double STAGGER = 5;

    private final IntegerProperty inHand = new SimpleIntegerProperty(this, "inHand", -1);
    private StripLook look;

    public StripView(StripLook look) {
        super(AccessibleRole.TEXT, 464, 116);
        this.look = look;
        setFocusTraversable(true);
        setCursor(Cursor.HAND);
        setOnMousePressed(this::pressed);
        setOnKeyPressed(this::typed);
        inHand.addListener(change -> changed());
        changed();
    }

    /** Shows another strip, or the same with more written down. */
    public void show(StripLook next) {
        look = next;
        if (inHand.get() >= next.pads().size()) {
            inHand.set(-1);
        }
        changed();
    }

    /** Which pad is being matched, from 0; -1 for none. */
    public IntegerProperty inHandProperty() {
        return inHand;
    }

    /** The middle of a pad, in pixels from the left edge, for what stands below it. */
    public double padCentre(int pad) {
        return columnCentre(pad, getWidth() / scale()) * scale();
    }

    private void changed() {
        int pad = inHand.get();
        boolean some = pad >= 0 && pad < look.pads().size();
        setAccessibleText(some ? look.summary() + " " + look.pads().get(pad).spoken() : look.summary());
        repaint();
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        double column = (event.getX() / scale() - GRIP) / columnWidth(getWidth() / scale());
        if (column >= 0 && column < look.pads().size()) {
            inHand.set((int) column);
        }
        event.consume();
    }

    private void typed(KeyEvent event) {
        int step =
                switch (event.getCode()) {
                    case LEFT -> -1;
                    case RIGHT -> 1;
                    default -> 0;
                };
        if (step != 0) {
            int next = inHand.get() < 0 ? 0 : inHand.get() + step;
            inHand.set(Math.max(0, Math.min(look.pads().size() - 1, next)));
            event.consume();
        }
    }

    private double columnWidth(double width) {
        return (width - GRIP - 18) / look.pads().size();
    }

    private double columnCentre(int pad, double width) {
        return GRIP + (pad + 0.5) * columnWidth(width);
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        paintPaddle(pen, width);
        for (int i = 0; i < look.pads().size(); i++) {
            paintPad(pen, i, columnCentre(i, width), columnWidth(width));
        }
    }

    private static void paintPaddle(Pen pen, double width) {
        GraphicsContext gc = pen.gc();
        double top = 0.5;
        double bottom = PADDLE - 0.5;
        double right = width - 0.5;
        double round = 24;
        gc.beginPath();
        gc.moveTo(0.5, 20.5);
        gc.lineTo(22, 20.5);
        gc.bezierCurveTo(36, 20.5, 34, top, 54, top);
        gc.lineTo(right - round, top);
        gc.arcTo(right, top, right, top + round, round);
        gc.lineTo(right, bottom - round);
        gc.arcTo(right, bottom, right - round, bottom, round);
        gc.lineTo(54, bottom);
        gc.bezierCurveTo(34, bottom, 36, PADDLE - 20.5, 22, PADDLE - 20.5);
        gc.lineTo(0.5, PADDLE - 20.5);
        gc.closePath();
        gc.setFill(pen.color(Token.CARD));
        gc.fill();
        gc.setStroke(pen.color(Token.CARD_EDGE));
        gc.setLineWidth(1);
        gc.stroke();
    }

    private void paintPad(Pen pen, int number, double centre, double column) {
        StripLook.PadLook pad = look.pads().get(number);
        double lens = Math.min(LENS_WIDTH, column - 10);
        double y = PADDLE / 2 + (number % 2 == 0 ? -STAGGER : STAGGER);
        lens(pen.gc(), centre, y, lens);
        pen.gc().setFill(pad.color());
        pen.gc().fill();
        pen.gc().setStroke(pen.color(Token.CARD_EDGE));
        pen.gc().setLineWidth(1);
        pen.gc().stroke();
        boolean held = number == inHand.get();
        Color nameColor = pen.color(held ? Token.INK : Token.QUIET);
        String name = pen.fitted(pad.name(), column - 2, Pen.LABEL, held);
        pen.text(name, centre, PADDLE + 20, Pen.LABEL, held, nameColor, TextAlignment.CENTER);
        Color writtenColor = pen.color(held && pad.open() ? Token.WATER : pad.open() ? Token.QUIET : Token.INK);
        String written = pen.fitted(pad.written(), column + 12, Pen.TEXT, true);
        pen.text(written, centre, PADDLE + 40, Pen.TEXT, !pad.open() || held, writtenColor, TextAlignment.CENTER);
        if (held) {
            double tip = PADDLE + 48;
            pen.polygon(pen.color(Token.WATER), centre, tip, centre + 7, tip + 8, centre - 7, tip + 8);
        }
    }

    /** Two arcs that meet in points at the left and the right. */
    private static void lens(GraphicsContext gc, double x, double y, double width) {
        double half = width / 2;
        double high = LENS_HEIGHT * 0.66 * width / LENS_WIDTH;
        gc.beginPath();
        gc.moveTo(x - half, y);
        gc.bezierCurveTo(x - 0.42 * half, y - high, x + 0.42 * half, y - high, x + half, y);
        gc.bezierCurveTo(x + 0.42 * half, y + high, x - 0.42 * half, y + high, x - half, y);
        gc.closePath();
    }
}
