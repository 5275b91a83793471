package startwater.app.view;

import java.util.function.IntConsumer;
import javafx.scene.AccessibleRole;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;
import startwater.strip.Pad;
import startwater.strip.PadColours;
import startwater.strip.Scale;
import startwater.strip.Srgb;

/**
 * The scale of a pad with the wet pad as a tongue beneath it. Pad and block touch with no line between, since a line would
 * spoil the match. Left and right, a click or a drag move the tongue over blocks and the betweens.
 */
final class ScaleCard extends Painted {
    private static final double INSET = 12;
    private static final double BLOCK_TOP = 34;
    private static final double BLOCK_HEIGHT = 28;
    private static final double TONGUE = 34;
    private static final double CORNER = 7;

    private Pad pad = Pad.AMMONIA;
    private double position;
    private int stop;
    private String[] labels = new String[0];
    private final IntConsumer moved;

    ScaleCard(IntConsumer moved) {
        super(AccessibleRole.SLIDER, 432, 110);
        this.moved = moved;
        setFocusTraversable(true);
        setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.LEFT || e.getCode() == KeyCode.RIGHT) {
                moved.accept(stop + (e.getCode() == KeyCode.LEFT ? -1 : 1));
                e.consume();
            }
        });
        setOnMousePressed(e -> {
            requestFocus();
            moved.accept(stopAt(e.getX()));
        });
        setOnMouseDragged(e -> moved.accept(stopAt(e.getX())));
    }

    /** @param position where the pad's colour lies, blocks; @param labels of the blocks */
    void show(Pad shownPad, double shownPosition, int shownStop, String[] shownLabels, String spoken) {
        pad = shownPad;
        position = shownPosition;
        stop = shownStop;
        labels = shownLabels.clone();
        setAccessibleText(spoken);
        repaint();
    }

    private int stopAt(double x) {
        double width = getWidth() / scale();
        double pitch = (width - 2 * INSET) / pad.scale().blocks();
        double block = (x / scale() - INSET) / pitch - 0.5;
        return (int) Math.max(0, Math.min(pad.scale().stops() - 1, Math.rint(2 * block)));
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        var g = pen.gc();
        Scale scale = pad.scale();
        g.setFill(pen.color(Token.CARD));
        g.fillRoundRect(0, 0, width, height, 8, 8);
        double pitch = (width - 2 * INSET) / scale.blocks();
        double block = pitch - 8;
        for (int b = 0; b < scale.blocks(); b++) {
            double left = INSET + b * pitch + 4;
            g.setFill(colour(b));
            g.fillPolygon(
                    new double[] {left + CORNER, left + block, left + block, left, left},
                    new double[] {
                        BLOCK_TOP, BLOCK_TOP, BLOCK_TOP + BLOCK_HEIGHT, BLOCK_TOP + BLOCK_HEIGHT, BLOCK_TOP + CORNER
                    },
                    5);
            pen.text(
                    labels.length > b ? labels[b] : "",
                    left + block / 2,
                    22,
                    15,
                    stop == 2 * b,
                    pen.color(Token.CARD_INK),
                    TextAlignment.CENTER);
        }
        g.setStroke(pen.color(Token.CARD_QUIET));
        for (int s = 0; s < scale.stops(); s++) {
            double x = INSET + (s / 2.0 + 0.5) * pitch;
            double tall = s % 2 == 0 ? 10 : 5;
            g.strokeLine(x, BLOCK_TOP + BLOCK_HEIGHT + TONGUE - tall, x, BLOCK_TOP + BLOCK_HEIGHT + TONGUE);
        }
        double centre = INSET + (stop / 2.0 + 0.5) * pitch;
        double half = block / 2;
        double top = stop % 2 == 0 ? BLOCK_TOP + BLOCK_HEIGHT : BLOCK_TOP + 6;
        g.setFill(colour(position));
        g.fillPolygon(
                new double[] {centre - half, centre + half, centre + half, centre, centre - half},
                new double[] {
                    top,
                    top,
                    BLOCK_TOP + BLOCK_HEIGHT + TONGUE - 10,
                    BLOCK_TOP + BLOCK_HEIGHT + TONGUE + 4,
                    BLOCK_TOP + BLOCK_HEIGHT + TONGUE - 10
                },
                5);
    }

    private Color colour(double at) {
        Srgb srgb = pad.matchedByColour()
                ? PadColours.of(pad).srgb(at)
                : Srgb.of8Bit(
                        (int) Math.rint(235 - 150 * at / (pad.scale().blocks() - 1)),
                        (int) Math.rint(235 - 150 * at / (pad.scale().blocks() - 1)),
                        (int) Math.rint(238 - 140 * at / (pad.scale().blocks() - 1)));
        return Color.web(srgb.clipped().hex());
    }

    static Color padColour(Pad pad, double at) {
        return Color.web(PadColours.of(pad).srgb(at).clipped().hex());
    }
}
