package startwater.app.chart;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * The options side by side: a bar for the mean, a whisker for the spread, linear from nought. The learner's own row is tinted
 * and hatched, the best one outlined.
 */
public final class OptionBars extends Painted {
    private static final double ROW = 32;
    private static final double BAR = 16;
    private static final double AXIS = 24;
    private static final double INSET = 8;
    private static final double TAG_GAP = 10;

    /**
     * What to draw.
     *
     * @param rows in the order to show, best first
     * @param ownTag printed at the own whisker's end
     * @param bestTag printed at the best whisker's end
     * @param locale of the axis' figures
     * @param summary the chart in words, for screen readers
     */
    public record Data(List<Row> rows, String ownTag, String bestTag, Locale locale, String summary) {
        public Data {
            rows = List.copyOf(rows);
            Check.some("row", rows.size());
            Objects.requireNonNull(ownTag, "ownTag");
            Objects.requireNonNull(bestTag, "bestTag");
            Objects.requireNonNull(locale, "locale");
            Objects.requireNonNull(summary, "summary");
        }
    }

    /**
     * One option.
     *
     * @param mean length of the bar, not negative
     * @param low one end of the whisker, the tenth of a hundred tanks
     * @param high the other end, the ninetieth
     * @param meanText the mean as it is printed
     */
    public record Row(String label, double mean, double low, double high, String meanText, boolean own, boolean best) {
        public Row {
            Objects.requireNonNull(label, "label");
            Objects.requireNonNull(meanText, "meanText");
            Check.ordered("whisker of " + label, low, mean, high);
            if (mean < 0 || low < 0) {
                throw new IllegalArgumentException("chart: bars start at nought; " + label + " is negative");
            }
        }
    }

    private final Data data;

    public OptionBars(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 624, 7 * ROW + AXIS);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected double heightFor(double width) {
        return data.rows().size() * ROW + AXIS;
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double label = 0;
        double number = 0;
        for (Row row : data.rows()) {
            label = Math.max(label, pen.width(row.label(), Pen.TEXT, strong(row)));
            number = Math.max(number, pen.width(row.meanText(), Pen.TEXT, true));
        }
        label = Math.min(label, 0.46 * width);
        double numberRight = INSET + label + 20 + number;
        double from = numberRight + 16;
        Axis axis = axis(pen, from, width - INSET);
        double bottom = data.rows().size() * ROW;
        paintAxis(pen, axis, bottom);
        for (int i = 0; i < data.rows().size(); i++) {
            paintGround(pen, data.rows().get(i), i * ROW, width);
        }
        pen.upright(from, 0, bottom, pen.color(Token.EDGE));
        for (int i = 0; i < data.rows().size(); i++) {
            paintRow(pen, data.rows().get(i), i * ROW, label, numberRight, axis);
        }
    }

    private static boolean strong(Row row) {
        return row.own() || row.best();
    }

    /** The axis ends past the longest whisker, and leaves room for the tags. */
    private Axis axis(Pen pen, double from, double to) {
        double end = 0;
        for (Row row : data.rows()) {
            double longest = Math.max(row.high(), row.mean());
            double tag = tag(row).isEmpty() ? 6 : TAG_GAP + pen.width(tag(row), Pen.LABEL, true) + 6;
            double room = Math.max(20, to - from - tag);
            end = Math.max(end, longest * (to - from) / room);
        }
        return new Axis(0, end <= 0 ? 1 : end, from, to);
    }

    private String tag(Row row) {
        return row.own() ? data.ownTag() : row.best() ? data.bestTag() : "";
    }

    private void paintAxis(Pen pen, Axis axis, double bottom) {
        double step = Axis.step(axis.high(), (int) Math.max(2, (axis.to() - axis.from()) / 62));
        for (double tick : Axis.ticks(0, axis.high(), step)) {
            double x = axis.at(tick);
            pen.upright(x, 0, bottom, pen.color(Token.LINE));
            String text = Axis.text(tick, step, data.locale());
            Color color = pen.color(Token.QUIET);
            pen.text(text, x, bottom + 17, Pen.LABEL, false, color, TextAlignment.CENTER);
        }
    }

    private static void paintGround(Pen pen, Row row, double top, double width) {
        GraphicsContext gc = pen.gc();
        if (row.own()) {
            gc.setFill(pen.color(Token.OWN, 0.13));
            gc.fillRoundRect(0, top + 0.5, width, ROW - 1, 8, 8);
        }
        if (row.best()) {
            gc.setStroke(pen.color(Token.BEST));
            gc.setLineWidth(1.25);
            gc.strokeRoundRect(0.75, top + 1, width - 1.5, ROW - 2, 8, 8);
        }
    }

    private void paintRow(Pen pen, Row row, double top, double label, double numberRight, Axis axis) {
        Color color = pen.color(row.own() ? Token.OWN_TEXT : row.best() ? Token.BEST : Token.INK);
        double baseline = top + ROW / 2 + 5;
        paintLabel(pen, row, top, label, color);
        pen.text(row.meanText(), numberRight, baseline, Pen.TEXT, true, color, TextAlignment.RIGHT);
        paintBar(pen, row, axis, top + (ROW - BAR) / 2);
        double y = top + ROW / 2;
        double low = axis.at(row.low());
        double high = axis.at(row.high());
        if (row.high() > row.low()) {
            Color ink = pen.color(Token.INK);
            pen.line(low, y, high, y, 1.5, ink);
            pen.line(low, y - 4, low, y + 4, 1.5, ink);
            pen.line(high, y - 4, high, y + 4, 1.5, ink);
        }
        double end = Math.max(high, axis.at(row.mean()));
        pen.text(tag(row), end + TAG_GAP, top + ROW / 2 + 4.5, Pen.LABEL, true, color);
    }

    /** On one line where it fits, else smaller on two. */
    private static void paintLabel(Pen pen, Row row, double top, double room, Color color) {
        boolean strong = strong(row);
        if (pen.width(row.label(), Pen.TEXT, strong) <= room) {
            pen.text(row.label(), INSET, top + ROW / 2 + 5, Pen.TEXT, strong, color);
            return;
        }
        List<String> lines = pen.wrap(row.label(), room, Pen.LABEL, strong);
        String second = String.join(" ", lines.subList(1, lines.size()));
        double first = second.isEmpty() ? top + ROW / 2 + 4.5 : top + 13;
        pen.text(pen.fitted(lines.get(0), room, Pen.LABEL, strong), INSET, first, Pen.LABEL, strong, color);
        pen.text(pen.fitted(second, room, Pen.LABEL, strong), INSET, top + 27, Pen.LABEL, strong, color);
    }

    private static void paintBar(Pen pen, Row row, Axis axis, double top) {
        double x = axis.from();
        double length = axis.at(row.mean()) - x;
        if (row.own()) {
            pen.box(x, top, length, BAR, pen.color(Token.OWN, 0.28));
            pen.hatchBox(x, top, length, BAR, 6, 1.75, pen.color(Token.OWN));
            pen.frame(x, top, Math.max(3, length), BAR, 1.25, pen.color(Token.OWN));
        }
        if (row.best()) {
            double shown = Math.max(3, length);
            pen.box(x, top, shown, BAR, pen.color(Token.BEST, row.own() ? 0.0 : 0.22));
            pen.frame(x, top, shown, BAR, 1.75, pen.color(Token.BEST));
        }
        if (!row.own() && !row.best() && length > 0.2) {
            pen.box(x, top, length, BAR, pen.color(Token.BAR));
            pen.frame(x, top, Math.max(1.5, length), BAR, 1, pen.color(Token.EDGE));
        }
    }
}
