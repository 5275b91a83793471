package startwater.app.view;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * Options side by side as bars to scale from 0, with a whisker over eight plausible tanks of ten. The learner's own is
 * hatched, the best outlined, so that colour is never alone in telling them.
 */
final class OptionBars extends Painted {
    private static final double ROW = 32;
    private static final double BAR = 16;
    private static final double TOP = 6;
    private static final double AXIS = 26;

    private final List<Row> rows;
    private final String yours;
    private final String bestWord;

    /** One option. @param number as printed left of the bar */
    record Row(String label, String number, double value, double low, double high, boolean own, boolean best) {}

    OptionBars(List<Row> rows, String yours, String bestWord, String spoken) {
        super(AccessibleRole.IMAGE_VIEW, 608, TOP + ROW * rows.size() + AXIS);
        this.rows = List.copyOf(rows);
        this.yours = yours;
        this.bestWord = bestWord;
        setAccessibleText(spoken);
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double most = rows.stream()
                .mapToDouble(r -> Math.max(r.value(), r.high()))
                .max()
                .orElse(1);
        double step = step(Math.max(most, 0.05));
        double end = Math.max(step, Math.ceil(most * 1.02 / step) * step);
        double left = 0.44 * width;
        double right = width - 52;
        var g = pen.gc();
        for (double tick = 0; tick <= end + step / 2; tick += step) {
            double x = left + (right - left) * tick / end;
            g.setStroke(pen.color(Token.LINE));
            g.strokeLine(x, TOP, x, TOP + ROW * rows.size());
            pen.text(
                    axis(tick),
                    x,
                    TOP + ROW * rows.size() + 18,
                    13,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.CENTER);
        }
        for (int i = 0; i < rows.size(); i++) {
            row(pen, rows.get(i), TOP + i * ROW, left, right, end, width);
        }
    }

    private void row(Pen pen, Row r, double y, double left, double right, double end, double width) {
        var g = pen.gc();
        if (r.own()) {
            g.setFill(pen.color(Token.OWN, 0.12));
            g.fillRoundRect(0, y + 1, width, ROW - 2, 8, 8);
        }
        if (r.best()) {
            g.setStroke(pen.color(Token.BEST));
            g.setLineWidth(1.5);
            g.strokeRoundRect(0.75, y + 1.75, width - 1.5, ROW - 3.5, 8, 8);
            g.setLineWidth(1);
        }
        Color text = pen.color(r.own() ? Token.OWN_TEXT : r.best() ? Token.BEST : Token.INK);
        boolean strong = r.own() || r.best();
        pen.text(pen.fitted(r.label(), left - 74, 15, strong), 8, y + 21, 15, strong, text);
        pen.text(r.number(), left - 12, y + 21, 15, true, text, TextAlignment.RIGHT);
        double per = (right - left) / end;
        double long1 = Math.max(r.best() ? 3 : 1, r.value() * per);
        double top = y + (ROW - BAR) / 2;
        if (r.own()) {
            hatch(pen, left, top, long1);
        } else {
            g.setFill(pen.color(r.best() ? Token.BEST : Token.BAR, r.best() ? 0.35 : 1));
            g.fillRect(left, top, long1, BAR);
        }
        g.setStroke(pen.color(r.own() ? Token.OWN : r.best() ? Token.BEST : Token.EDGE));
        g.strokeRect(left, top, long1, BAR);
        double middle = y + ROW / 2;
        double low = left + r.low() * per;
        double high = left + r.high() * per;
        g.setStroke(pen.color(Token.INK));
        g.setLineWidth(1.4);
        g.strokeLine(low, middle, high, middle);
        g.strokeLine(low, middle - 4, low, middle + 4);
        g.strokeLine(high, middle - 4, high, middle + 4);
        g.setLineWidth(1);
        if (strong) {
            double x = Math.max(left + long1, high) + 6;
            pen.text(r.own() ? yours : bestWord, x, y + 20, 13, true, text);
        }
    }

    private static void hatch(Pen pen, double left, double top, double length) {
        var g = pen.gc();
        g.save();
        g.beginPath();
        g.rect(left, top, length, BAR);
        g.clip();
        g.setFill(pen.color(Token.OWN, 0.25));
        g.fillRect(left, top, length, BAR);
        g.setStroke(pen.color(Token.OWN));
        g.setLineWidth(2);
        for (double x = left - BAR; x < left + length; x += 6) {
            g.strokeLine(x, top + BAR, x + BAR, top);
        }
        g.restore();
        g.setLineWidth(1);
    }

    private static String axis(double value) {
        return Math.abs(value - Math.rint(value)) < 1e-9
                ? String.valueOf((long) Math.rint(value))
                : String.valueOf(Math.rint(value * 100) / 100);
    }

    /** A step of 1, 2 or 5 times a power of ten that makes four or five ticks. */
    static double step(double most) {
        double power = Math.pow(10, Math.floor(Math.log10(most / 4)));
        double lead = most / 4 / power;
        return power * (lead <= 1 ? 1 : lead <= 2 ? 2 : lead <= 5 ? 5 : 10);
    }
}
