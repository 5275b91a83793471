package startwater.app.chart;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * What could have been known over the visits: at each one the range of plausible tanks as a grey bar, the truth as a line
 * through them, what was written as a dot, all on the steps of the scale.
 */
public final class KnownChart extends Painted {
    private static final double BOTTOM = 22;
    private static final double TOP = 8;
    private static final double BAR = 12;
    private static final double LABEL_LINE = 17;

    /**
     * What to draw; places are in blocks of the scale.
     *
     * @param steps of the scale; the chart shows those around the data
     * @param days labels along the time, in days
     * @param ranges of plausible tanks, visit by visit
     * @param truth the hidden tank
     * @param written what was written down
     * @param rangeLabel what the bars are
     * @param truthLabel what the line is
     * @param writtenLabel what the dots are; printed where there are any
     * @param summary the chart in words, for screen readers
     */
    public record Data(
            List<Tick> steps,
            List<Tick> days,
            List<Range> ranges,
            List<At> truth,
            List<At> written,
            String rangeLabel,
            String truthLabel,
            String writtenLabel,
            String summary) {
        public Data {
            steps = List.copyOf(steps);
            days = List.copyOf(days);
            ranges = List.copyOf(ranges);
            truth = List.copyOf(truth);
            written = List.copyOf(written);
            Check.some("step", steps.size());
            Check.some("range", ranges.size());
            Objects.requireNonNull(summary, "summary");
        }
    }

    /** The tenth and ninetieth of a hundred plausible tanks at one visit. */
    public record Range(double day, double low, double high) {
        public Range {
            Check.finite("day", day);
            Check.ordered("range", low, low, high);
        }
    }

    /** A value at a time. */
    public record At(double day, double position) {
        public At {
            Check.finite("day", day);
            Check.finite("position", position);
        }
    }

    private final Data data;

    public KnownChart(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 520, 168);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double labels = pen.width(data.rangeLabel(), Pen.LABEL, false);
        labels = Math.max(labels, pen.width(data.truthLabel(), Pen.LABEL, true));
        labels = Math.max(labels, pen.width(data.writtenLabel(), Pen.LABEL, false)) + 30;
        double right = width - Math.min(labels, 0.4 * width);
        ScaleSteps steps = steps(height);
        Axis y = steps.y();
        Axis x = new Axis(firstDay(), lastDay(), ScaleSteps.LABELS + 18, right - 14);
        steps.paint(pen, right);
        double free = -Double.MAX_VALUE;
        for (Tick day : data.days()) {
            double half = pen.width(day.text(), Pen.LABEL, day.strong()) / 2;
            if (x.at(day.at()) - half >= free) {
                pen.text(
                        day.text(),
                        x.at(day.at()),
                        height - 4,
                        Pen.LABEL,
                        day.strong(),
                        pen.color(day.strong() ? Token.INK : Token.QUIET),
                        TextAlignment.CENTER);
                free = x.at(day.at()) + half + 6;
            }
        }
        for (Range range : data.ranges()) {
            double top = y.at(range.high());
            double tall = Math.max(3, y.at(range.low()) - top);
            pen.box(x.at(range.day()) - BAR / 2, top, BAR, tall, pen.color(Token.BAR));
            pen.frame(x.at(range.day()) - BAR / 2, top, BAR, tall, 1, pen.color(Token.EDGE));
        }
        paintTruth(pen, x, y);
        for (At at : data.written()) {
            pen.dot(x.at(at.day()), y.at(at.position()), 5.5, pen.color(Token.PANEL));
            pen.dot(x.at(at.day()), y.at(at.position()), 4, pen.color(Token.WATER));
        }
        paintLabels(pen, y, right, height);
    }

    private void paintTruth(Pen pen, Axis x, Axis y) {
        List<At> truth = data.truth();
        if (truth.size() == 1) {
            At only = truth.get(0);
            double at = y.at(only.position());
            pen.line(x.at(only.day()) - 10, at, x.at(only.day()) + 10, at, 3, pen.color(Token.INK));
            return;
        }
        double[] points = new double[2 * truth.size()];
        for (int i = 0; i < truth.size(); i++) {
            points[2 * i] = x.at(truth.get(i).day());
            points[2 * i + 1] = y.at(truth.get(i).position());
        }
        if (points.length > 0) {
            pen.polyline(2, pen.color(Token.INK), points);
        }
    }

    /** Direct labels, each with its own mark, beside the last visit. */
    private void paintLabels(Pen pen, Axis y, double right, double height) {
        Range range = data.ranges().get(data.ranges().size() - 1);
        List<Double> wanted = new ArrayList<>();
        wanted.add(y.at((range.low() + range.high()) / 2));
        wanted.add(
                data.truth().isEmpty()
                        ? 0
                        : y.at(data.truth().get(data.truth().size() - 1).position()));
        boolean dots = !data.written().isEmpty();
        if (dots) {
            wanted.add(y.at(data.written().get(data.written().size() - 1).position()));
        }
        double[] heights = new double[wanted.size()];
        Arrays.fill(heights, LABEL_LINE);
        double[] at =
                LabelPlacer.column(wanted.stream().mapToDouble(d -> d).toArray(), heights, 0, height - BOTTOM + 6);
        double mark = right + 6;
        double text = right + 24;
        pen.box(mark, at[0] - 5, 10, 10, pen.color(Token.BAR));
        pen.frame(mark, at[0] - 5, 10, 10, 1, pen.color(Token.EDGE));
        pen.text(data.rangeLabel(), text, at[0] + 4.5, Pen.LABEL, false, pen.color(Token.QUIET));
        pen.line(mark, at[1], mark + 11, at[1], 2, pen.color(Token.INK));
        pen.text(data.truthLabel(), text, at[1] + 4.5, Pen.LABEL, true, pen.color(Token.INK));
        if (dots) {
            pen.dot(mark + 5, at[2], 4, pen.color(Token.WATER));
            pen.text(data.writtenLabel(), text, at[2] + 4.5, Pen.LABEL, false, pen.color(Token.WATER));
        }
    }

    private double firstDay() {
        double first = data.ranges().get(0).day();
        return first == lastDay() ? first - 1 : first;
    }

    private double lastDay() {
        return data.ranges().get(data.ranges().size() - 1).day();
    }

    private ScaleSteps steps(double height) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (Range range : data.ranges()) {
            low = Math.min(low, range.low());
            high = Math.max(high, range.high());
        }
        for (List<At> some : List.of(data.truth(), data.written())) {
            for (At at : some) {
                low = Math.min(low, at.position());
                high = Math.max(high, at.position());
            }
        }
        return ScaleSteps.around(data.steps(), low, high, height - BOTTOM, TOP);
    }
}
