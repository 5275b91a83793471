package startwater.app.chart;

import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * What the fish die of, under the own choice and the best one: one scale for all rows, both as figures, the total under a rule.
 */
public final class CauseBars extends Painted {
    private static final double HEAD = 22;
    private static final double ROW = 26;
    private static final double TOTAL = 32;
    private static final double GAP = 16;

    /**
     * What to draw.
     *
     * @param ownHead over the column of the own choice
     * @param bestHead over the column of the best choice
     * @param total the sum, drawn without a bar
     * @param summary the chart in words, for screen readers
     */
    public record Data(String ownHead, String bestHead, List<Row> rows, Row total, String summary) {
        public Data {
            rows = List.copyOf(rows);
            Check.some("row", rows.size());
            Objects.requireNonNull(ownHead, "ownHead");
            Objects.requireNonNull(bestHead, "bestHead");
            Objects.requireNonNull(total, "total");
            Objects.requireNonNull(summary, "summary");
        }
    }

    /**
     * One cause.
     *
     * @param own deaths under the own choice, not negative
     * @param best deaths under the best choice, not negative
     */
    public record Row(String label, double own, double best, String ownText, String bestText) {
        public Row {
            Check.finite("deaths by " + label, own + best);
            if (own < 0 || best < 0) {
                throw new IllegalArgumentException("chart: deaths by " + label + " are negative");
            }
            Objects.requireNonNull(ownText, "ownText");
            Objects.requireNonNull(bestText, "bestText");
        }
    }

    private final Data data;

    public CauseBars(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 320, HEAD + 3 * ROW + TOTAL);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected double heightFor(double width) {
        return HEAD + data.rows().size() * ROW + TOTAL;
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double label = pen.width(data.total().label(), Pen.TEXT, true);
        double column =
                Math.max(pen.width(data.ownHead(), Pen.LABEL, true), pen.width(data.bestHead(), Pen.LABEL, true));
        double longest = 0;
        for (Row row : data.rows()) {
            label = Math.max(label, pen.width(row.label(), Pen.TEXT, false));
            column = Math.max(column, figures(pen, row));
            longest = Math.max(longest, Math.max(row.own(), row.best()));
        }
        column = Math.max(column, figures(pen, data.total()));
        label = Math.min(label, 0.4 * width);
        double ownRight = width - column - GAP;
        double bars = label + GAP;
        Axis axis = new Axis(0, longest <= 0 ? 1 : longest, bars, Math.max(bars, ownRight - column - GAP));
        pen.text(data.ownHead(), ownRight, 14, Pen.LABEL, true, pen.color(Token.OWN_TEXT), TextAlignment.RIGHT);
        pen.text(data.bestHead(), width, 14, Pen.LABEL, true, pen.color(Token.BEST), TextAlignment.RIGHT);
        double top = HEAD;
        for (Row row : data.rows()) {
            String name = pen.fitted(row.label(), label, Pen.TEXT, false);
            pen.text(name, 0, top + 18, Pen.TEXT, false, pen.color(Token.INK));
            paintBars(pen, row, axis, top);
            paintFigures(pen, row, ownRight, width, top + 18, pen.color(Token.INK), pen.color(Token.INK));
            top += ROW;
        }
        pen.upright(bars, HEAD + 2, top - 2, pen.color(Token.EDGE));
        pen.level(0, width, top + 3, pen.color(Token.EDGE));
        pen.text(data.total().label(), 0, top + 23, Pen.TEXT, true, pen.color(Token.INK));
        paintFigures(pen, data.total(), ownRight, width, top + 23, pen.color(Token.OWN_TEXT), pen.color(Token.BEST));
    }

    private static double figures(Pen pen, Row row) {
        return Math.max(pen.width(row.ownText(), Pen.TEXT, true), pen.width(row.bestText(), Pen.TEXT, true));
    }

    private static void paintFigures(
            Pen pen, Row row, double ownRight, double bestRight, double baseline, Color own, Color best) {
        pen.text(row.ownText(), ownRight, baseline, Pen.TEXT, true, own, TextAlignment.RIGHT);
        pen.text(row.bestText(), bestRight, baseline, Pen.TEXT, true, best, TextAlignment.RIGHT);
    }

    /** The own bar is hatched; the best one is a thin outlined bar under it. */
    private static void paintBars(Pen pen, Row row, Axis axis, double top) {
        double x = axis.from();
        double own = axis.at(row.own()) - x;
        double best = axis.at(row.best()) - x;
        if (own > 0.5) {
            pen.box(x, top + 4, own, 11, pen.color(Token.OWN, 0.28));
            pen.hatchBox(x, top + 4, own, 11, 6, 1.75, pen.color(Token.OWN));
            pen.frame(x, top + 4, own, 11, 1.25, pen.color(Token.OWN));
        }
        if (best > 0.5) {
            double shown = Math.max(3, best);
            pen.box(x, top + 16, shown, 6, pen.color(Token.BEST, 0.22));
            pen.frame(x, top + 16, shown, 6, 1.25, pen.color(Token.BEST));
        }
    }
}
