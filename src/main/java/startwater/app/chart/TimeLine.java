package startwater.app.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * The whole run on one line of time: above, the truth as lines against what was written down as dots; between, every decision as
 * a mark with shape, colour and word; below, the stock under the learner, under the standing rules and under doing nothing.
 */
public final class TimeLine extends Painted {
    private static final double HEAD = 22;
    private static final double MARKS = 62;
    private static final double BOTTOM = 24;
    private static final double STOCK_SHARE = 0.36;

    /**
     * What to draw.
     *
     * @param waterHead over the upper panel
     * @param stockHead over the lower panel
     * @param steps of the scale, by position in blocks
     * @param days labels along the time
     * @param marks the decisions in order
     * @param stocks lines of the fish alive
     * @param locale of the axis' figures
     * @param summary the chart in words, for screen readers
     */
    public record Data(
            String waterHead,
            String stockHead,
            List<Tick> steps,
            List<Tick> days,
            List<Trace> traces,
            List<Decision> marks,
            List<Stock> stocks,
            Locale locale,
            String summary) {
        public Data {
            steps = List.copyOf(steps);
            days = List.copyOf(days);
            traces = List.copyOf(traces);
            marks = List.copyOf(marks);
            stocks = List.copyOf(stocks);
            Check.some("step", steps.size());
            Check.some("day", days.size());
            Objects.requireNonNull(waterHead, "waterHead");
            Objects.requireNonNull(stockHead, "stockHead");
            Objects.requireNonNull(locale, "locale");
            Objects.requireNonNull(summary, "summary");
        }
    }

    /**
     * One variable of the water.
     *
     * @param label lines printed beside its end, the first one strong
     * @param truth what the tank held
     * @param written what the learner wrote down
     */
    public record Trace(List<String> label, LogTrend.Mark mark, Tone tone, List<At> truth, List<At> written) {
        public Trace {
            label = List.copyOf(label);
            truth = List.copyOf(truth);
            written = List.copyOf(written);
        }
    }

    /** A place: time in days, and blocks of the scale or fish alive. */
    public record At(double day, double value) {
        public At {
            Check.finite("day", day);
            Check.finite("value", value);
        }
    }

    /** How good a decision was, which fixes colour and shape of its mark. */
    public enum Word {
        SOUND,
        COSTLY,
        DANGEROUS
    }

    /**
     * One decision.
     *
     * @param figure the mark, printed over the sign
     * @param text the word, printed under the sign
     */
    public record Decision(double day, Word word, String figure, String text) {
        public Decision {
            Check.finite("day", day);
            Objects.requireNonNull(figure, "figure");
            Objects.requireNonNull(text, "text");
        }
    }

    /**
     * The fish alive under one way of keeping.
     *
     * @param label printed beside the line's end
     * @param tone OWN for the learner, BEST for the standing rules, QUIET for doing nothing
     */
    public record Stock(String label, Tone tone, List<At> points) {
        public Stock {
            points = List.copyOf(points);
            Check.some("point", points.size());
        }
    }

    private final Data data;

    public TimeLine(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 1232, 460);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double room = height - 2 * HEAD - MARKS - BOTTOM;
        double waterTop = HEAD + 6;
        double waterBottom = HEAD + room * (1 - STOCK_SHARE);
        double stockTop = waterBottom + MARKS + HEAD + 6;
        Axis x = new Axis(firstDay(), lastDay(), 48, width - labelWidth(pen, width));
        TimeLinePanels panels = new TimeLinePanels(pen, data, x);
        Axis water = new Axis(0, highestStep(), waterBottom, waterTop);
        pen.text(data.waterHead(), 0, 13, Pen.LABEL, true, pen.color(Token.INK));
        paintDays(pen, x, new double[] {waterTop, waterBottom + MARKS, stockTop, height - BOTTOM}, height);
        panels.paintWater(water);
        panels.paintMarks(waterBottom + 4, MARKS);
        pen.text(data.stockHead(), 0, stockTop - 14, Pen.LABEL, true, pen.color(Token.INK));
        panels.paintStock(stockTop, height - BOTTOM);
    }

    private double labelWidth(Pen pen, double width) {
        double widest = 40;
        for (Trace trace : data.traces()) {
            for (int i = 0; i < trace.label().size(); i++) {
                widest = Math.max(widest, pen.width(trace.label().get(i), Pen.LABEL, i == 0));
            }
        }
        for (Stock stock : data.stocks()) {
            widest = Math.max(widest, pen.width(stock.label(), Pen.LABEL, true));
        }
        return Math.min(0.3 * width, widest + 16);
    }

    private double firstDay() {
        return data.days().get(0).at();
    }

    private double lastDay() {
        double last = data.days().get(data.days().size() - 1).at();
        for (Stock stock : data.stocks()) {
            last = Math.max(last, stock.points().get(stock.points().size() - 1).day());
        }
        return last > firstDay() ? last : firstDay() + 1;
    }

    private double highestStep() {
        double highest = 3;
        for (Trace trace : data.traces()) {
            List<At> all = new ArrayList<>(trace.truth());
            all.addAll(trace.written());
            for (At at : all) {
                highest = Math.max(highest, at.value());
            }
        }
        return Math.min(data.steps().get(data.steps().size() - 1).at(), Math.ceil(highest));
    }

    /** Day lines in both panels, but not behind their heads. */
    private void paintDays(Pen pen, Axis x, double[] spans, double height) {
        double lastRight = -100;
        for (Tick day : data.days()) {
            double at = x.at(day.at());
            pen.upright(at, spans[0], spans[1], pen.color(Token.LINE, 0.6));
            pen.upright(at, spans[2], spans[3], pen.color(Token.LINE, 0.6));
            double half = pen.width(day.text(), Pen.LABEL, day.strong()) / 2;
            if (at - half > lastRight + 8) {
                Color color = pen.color(day.strong() ? Token.INK : Token.QUIET);
                pen.text(day.text(), at, height - 4, Pen.LABEL, day.strong(), color, TextAlignment.CENTER);
                lastRight = at + half;
            }
        }
    }
}
