package startwater.app.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * What was written down over the days, on the steps of the scale: lines join written values only, a reading that is not yet
 * written is an open ring on a broken line. Labels stand beside the last value.
 */
public final class LogTrend extends Painted {
    private static final double BOTTOM = 22;
    private static final double TOP = 8;
    private static final double LINE = 16;

    /**
     * What to draw.
     *
     * @param steps of the scale, by position in blocks; the chart shows those around the data
     * @param days labels along the time, in days
     * @param summary the trend in words, for screen readers
     */
    public record Data(List<Tick> steps, List<Tick> days, List<Series> series, String summary) {
        public Data {
            steps = List.copyOf(steps);
            days = List.copyOf(days);
            series = List.copyOf(series);
            Objects.requireNonNull(summary, "summary");
            Check.some("step", steps.size());
        }
    }

    /** The mark of a series. */
    public enum Mark {
        SQUARE,
        DOT
    }

    /**
     * One pad over the days.
     *
     * @param label lines printed beside the last value, the first one strong
     */
    public record Series(List<String> label, Mark mark, Tone tone, List<Point> points) {
        public Series {
            label = List.copyOf(label);
            points = List.copyOf(points);
        }
    }

    /**
     * One reading.
     *
     * @param day when
     * @param position on the scale, in blocks
     * @param open whether it is not yet written down
     */
    public record Point(double day, double position, boolean open) {
        public Point {
            Check.finite("day", day);
            Check.finite("position", position);
        }
    }

    private final Data data;

    public LogTrend(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 352, 152);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double labels = 14;
        for (Series series : data.series()) {
            for (int i = 0; i < series.label().size(); i++) {
                labels = Math.max(labels, 26 + pen.width(series.label().get(i), Pen.LABEL, i == 0));
            }
        }
        double right = width - Math.min(labels, 0.45 * width);
        ScaleSteps steps = steps(height);
        Axis y = steps.y();
        Axis x = days(right);
        steps.paint(pen, right);
        for (Tick day : data.days()) {
            Color color = pen.color(day.strong() ? Token.INK : Token.QUIET);
            pen.text(day.text(), x.at(day.at()), height - 4, Pen.LABEL, day.strong(), color, TextAlignment.CENTER);
        }
        for (Series series : data.series()) {
            paintLine(pen, series, x, y);
        }
        for (Series series : data.series()) {
            paintMarks(pen, series, x, y);
        }
        paintLabels(pen, y, right, height);
    }

    private Axis days(double right) {
        double first = Double.MAX_VALUE;
        double last = -Double.MAX_VALUE;
        for (Tick day : data.days()) {
            first = Math.min(first, day.at());
            last = Math.max(last, day.at());
        }
        for (Series series : data.series()) {
            for (Point point : series.points()) {
                first = Math.min(first, point.day());
                last = Math.max(last, point.day());
            }
        }
        if (first == last) {
            first -= 1;
        }
        return first > last
                ? new Axis(0, 1, ScaleSteps.LABELS, right)
                : new Axis(first, last, ScaleSteps.LABELS + 14, right - 14);
    }

    private ScaleSteps steps(double height) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (Series series : data.series()) {
            for (Point point : series.points()) {
                low = Math.min(low, point.position());
                high = Math.max(high, point.position());
            }
        }
        return ScaleSteps.around(data.steps(), low, high, height - BOTTOM, TOP);
    }

    private static void paintLine(Pen pen, Series series, Axis x, Axis y) {
        Color color = pen.color(series.tone().graphic());
        List<Point> points = series.points();
        for (int i = 1; i < points.size(); i++) {
            Point a = points.get(i - 1);
            Point b = points.get(i);
            double[] ends = {x.at(a.day()), y.at(a.position()), x.at(b.day()), y.at(b.position())};
            if (b.open()) {
                pen.dashed(ends[0], ends[1], ends[2], ends[3], 1.5, color, 4, 3);
            } else {
                pen.line(ends[0], ends[1], ends[2], ends[3], 2, color);
            }
        }
    }

    private static void paintMarks(Pen pen, Series series, Axis x, Axis y) {
        Color color = pen.color(series.tone().graphic());
        for (Point point : series.points()) {
            double px = x.at(point.day());
            double py = y.at(point.position());
            if (point.open()) {
                pen.ring(px, py, 6, 2, color);
            } else if (series.mark() == Mark.SQUARE) {
                pen.square(px, py, 3.5, color);
            } else {
                pen.dot(px, py, 4, color);
            }
        }
    }

    private void paintLabels(Pen pen, Axis y, double right, double height) {
        List<Series> named = new ArrayList<>();
        for (Series series : data.series()) {
            if (!series.points().isEmpty() && !series.label().isEmpty()) {
                named.add(series);
            }
        }
        double[] wanted = new double[named.size()];
        double[] heights = new double[named.size()];
        for (int i = 0; i < named.size(); i++) {
            List<Point> points = named.get(i).points();
            wanted[i] = y.at(points.get(points.size() - 1).position());
            heights[i] = LINE * named.get(i).label().size() + 2;
        }
        double[] placed = LabelPlacer.column(wanted, heights, 0, height - BOTTOM + 6);
        for (int i = 0; i < named.size(); i++) {
            double baseline = placed[i] - heights[i] / 2 + 13;
            List<String> lines = named.get(i).label();
            for (int k = 0; k < lines.size(); k++) {
                Color color = pen.color(k == 0 ? named.get(i).tone().text() : Token.QUIET);
                pen.text(lines.get(k), right + 8, baseline + LINE * k, Pen.LABEL, k == 0, color);
            }
        }
    }
}
