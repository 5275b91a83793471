package startwater.app.chart;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/** Draws the three bands of the time line on one axis of time. */
final class TimeLinePanels {
    private static final double LINE = 16;

    private final Pen pen;
    private final TimeLine.Data data;
    private final Axis x;

    TimeLinePanels(Pen pen, TimeLine.Data data, Axis x) {
        this.pen = pen;
        this.data = data;
        this.x = x;
    }

    void paintWater(Axis y) {
        double last = Double.MAX_VALUE;
        for (Tick step : data.steps()) {
            if (step.at() <= y.high() + 1e-9) {
                double at = y.at(step.at());
                pen.level(x.from(), x.to(), at, pen.color(step.at() == 0 ? Token.EDGE : Token.LINE));
                if (last - at >= 14) {
                    figure(step.text(), at);
                    last = at;
                }
            }
        }
        for (TimeLine.Trace trace : data.traces()) {
            pen.polyline(2, pen.color(trace.tone().graphic()), points(trace.truth(), y));
        }
        for (TimeLine.Trace trace : data.traces()) {
            paintWritten(trace, y);
        }
        paintTraceLabels(y);
    }

    /** Written values are marks with a light edge, so that they stand out on their own line. */
    private void paintWritten(TimeLine.Trace trace, Axis y) {
        Color color = pen.color(trace.tone().graphic());
        Color ground = pen.color(Token.PAPER);
        for (TimeLine.At at : trace.written()) {
            double px = x.at(at.day());
            double py = y.at(at.value());
            if (trace.mark() == LogTrend.Mark.SQUARE) {
                pen.square(px, py, 5, ground);
                pen.square(px, py, 3.5, color);
            } else {
                pen.dot(px, py, 5.5, ground);
                pen.dot(px, py, 4, color);
            }
        }
    }

    private void paintTraceLabels(Axis y) {
        List<TimeLine.Trace> named = new ArrayList<>();
        for (TimeLine.Trace trace : data.traces()) {
            if (!trace.truth().isEmpty() && !trace.label().isEmpty()) {
                named.add(trace);
            }
        }
        double[] wanted = new double[named.size()];
        double[] heights = new double[named.size()];
        for (int i = 0; i < named.size(); i++) {
            wanted[i] = y.at(last(named.get(i).truth()).value());
            heights[i] = LINE * named.get(i).label().size() + 2;
        }
        double[] placed = LabelPlacer.column(wanted, heights, y.to() - 8, y.from() + 10);
        for (int i = 0; i < named.size(); i++) {
            TimeLine.Trace trace = named.get(i);
            leader(x.at(last(trace.truth()).day()), wanted[i], placed[i], trace.tone());
            for (int k = 0; k < trace.label().size(); k++) {
                double baseline = placed[i] - heights[i] / 2 + 13 + LINE * k;
                Color color = pen.color(k == 0 ? trace.tone().text() : Token.QUIET);
                pen.text(trace.label().get(k), x.to() + 12, baseline, Pen.LABEL, k == 0, color);
            }
        }
    }

    /** Signs first for all; words for the worst first, where they have room. */
    void paintMarks(double top, double height) {
        double middle = top + 0.52 * height;
        for (TimeLine.Decision mark : data.marks()) {
            double px = x.at(mark.day());
            Color color = pen.color(text(mark.word()));
            pen.text(mark.figure(), px, middle - 12, Pen.LABEL, true, color, TextAlignment.CENTER);
            sign(mark.word(), px, middle);
        }
        List<double[]> taken = new ArrayList<>();
        for (TimeLine.Word word : List.of(TimeLine.Word.DANGEROUS, TimeLine.Word.COSTLY, TimeLine.Word.SOUND)) {
            for (TimeLine.Decision mark : data.marks()) {
                if (mark.word() == word) {
                    paintWord(mark, middle + 22, taken);
                }
            }
        }
    }

    private void paintWord(TimeLine.Decision mark, double baseline, List<double[]> taken) {
        double half = pen.width(mark.text(), Pen.LABEL, false) / 2 + 4;
        double px = x.at(mark.day());
        for (double[] other : taken) {
            if (px - half < other[1] && other[0] < px + half) {
                return;
            }
        }
        taken.add(new double[] {px - half, px + half});
        pen.text(mark.text(), px, baseline, Pen.LABEL, false, pen.color(text(mark.word())), TextAlignment.CENTER);
    }

    /** Sound is a disc, costly an open triangle, dangerous a filled square on its corner. */
    private void sign(TimeLine.Word word, double px, double py) {
        switch (word) {
            case SOUND -> pen.dot(px, py, 5.5, pen.color(Token.SAFE));
            case COSTLY -> {
                pen.polygon(pen.color(Token.PAPER), px, py - 6.5, px + 7, py + 5.5, px - 7, py + 5.5);
                pen.polyline(2, pen.color(Token.QUIET), px, py - 6.5, px + 7, py + 5.5, px - 7, py + 5.5, px, py - 6.5);
            }
            case DANGEROUS -> pen.polygon(pen.color(Token.DANGER), px, py - 8, px + 8, py, px, py + 8, px - 8, py);
        }
    }

    private static Token text(TimeLine.Word word) {
        return switch (word) {
            case SOUND -> Token.SAFE;
            case COSTLY -> Token.INK;
            case DANGEROUS -> Token.DANGER;
        };
    }

    void paintStock(double top, double bottom) {
        double low = Double.MAX_VALUE;
        double high = 1;
        for (TimeLine.Stock stock : data.stocks()) {
            for (TimeLine.At at : stock.points()) {
                low = Math.min(low, at.value());
                high = Math.max(high, at.value());
            }
        }
        // Where nobody dies there is no scale to see: the lines lie at the top of a whole one.
        double from = low > 0.6 * high && high - low >= 1 ? low : 0;
        double step = Math.max(1, Axis.step(high - from, (int) Math.max(2, (bottom - top) / 34)));
        from = Math.floor(from / step) * step;
        double to = Math.ceil(high / step - 1e-9) * step;
        Axis y = new Axis(from, to > from ? to : from + step, bottom, top);
        for (double tick : Axis.ticks(y.low(), y.high(), step)) {
            pen.level(x.from(), x.to(), y.at(tick), pen.color(tick == y.low() ? Token.EDGE : Token.LINE));
            figure(Axis.text(tick, step, data.locale()), y.at(tick));
        }
        for (int i = data.stocks().size() - 1; i >= 0; i--) {
            paintStockLine(data.stocks().get(i), y);
        }
        paintStockLabels(y);
    }

    /** The own line is thick, the rules' a plain line, doing nothing a broken one. */
    private void paintStockLine(TimeLine.Stock stock, Axis y) {
        if (stock.tone() == Tone.QUIET) {
            pen.gc().setLineDashes(5, 4);
        }
        double thickness = stock.tone() == Tone.OWN ? 3 : 2;
        pen.polyline(thickness, pen.color(stock.tone().graphic()), stairs(stock.points(), y));
        pen.gc().setLineDashes();
    }

    private void paintStockLabels(Axis y) {
        int count = data.stocks().size();
        double[] wanted = new double[count];
        double[] heights = new double[count];
        for (int i = 0; i < count; i++) {
            wanted[i] = y.at(last(data.stocks().get(i).points()).value());
            heights[i] = LINE + 1;
        }
        double[] placed = LabelPlacer.column(wanted, heights, y.to() - 10, y.from() + 10);
        for (int i = 0; i < count; i++) {
            TimeLine.Stock stock = data.stocks().get(i);
            leader(x.at(last(stock.points()).day()), wanted[i], placed[i], stock.tone());
            boolean own = stock.tone() == Tone.OWN;
            pen.text(
                    stock.label(),
                    x.to() + 12,
                    placed[i] + 4.5,
                    Pen.LABEL,
                    own,
                    pen.color(stock.tone().text()));
        }
    }

    /** Joins a line's end to its label where the label had to move. */
    private void leader(double endX, double endY, double labelY, Tone tone) {
        if (Math.abs(endY - labelY) > 3) {
            pen.line(endX + 2, endY, x.to() + 10, labelY, 1, pen.color(tone.graphic()));
        }
    }

    private void figure(String text, double at) {
        pen.text(text, x.from() - 8, at + 4.5, Pen.LABEL, false, pen.color(Token.QUIET), TextAlignment.RIGHT);
    }

    private double[] points(List<TimeLine.At> list, Axis y) {
        double[] points = new double[Math.max(2, 2 * list.size())];
        for (int i = 0; i < list.size(); i++) {
            points[2 * i] = x.at(list.get(i).day());
            points[2 * i + 1] = y.at(list.get(i).value());
        }
        return points;
    }

    /** Fish die one by one: level, then down. */
    private double[] stairs(List<TimeLine.At> list, Axis y) {
        double[] points = new double[4 * list.size() - 2];
        int k = 0;
        for (int i = 0; i < list.size(); i++) {
            double px = x.at(list.get(i).day());
            if (i > 0) {
                points[k++] = px;
                points[k++] = y.at(list.get(i - 1).value());
            }
            points[k++] = px;
            points[k++] = y.at(list.get(i).value());
        }
        return points;
    }

    private static TimeLine.At last(List<TimeLine.At> points) {
        return points.get(points.size() - 1);
    }
}
