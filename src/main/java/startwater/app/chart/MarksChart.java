package startwater.app.chart;

import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/** Marks of drills in the order they were played: a dot each, joined by a thin line, with the pass line across. */
public final class MarksChart extends Painted {
    private static final double TOP = 18;
    private static final double FOOT = 26;
    private static final double LEFT = 34;
    private static final double MOST = 100;
    private static final double STEP = 25;

    /**
     * What to draw.
     *
     * @param marks 0 to 100, oldest first
     * @param passAt where the pass line stands, 0 to 100
     * @param passLabel what the pass line is
     * @param lastLabel beside the last dot
     * @param from under the first dot
     * @param to under the last
     * @param summary the chart in words, for screen readers
     */
    public record Data(
            List<Double> marks,
            double passAt,
            String passLabel,
            String lastLabel,
            String from,
            String to,
            String summary) {
        public Data {
            marks = List.copyOf(marks);
            Check.some("mark", marks.size());
            marks.forEach(m -> Check.finite("mark", m));
            Objects.requireNonNull(summary, "summary");
        }
    }

    private final Data data;

    public MarksChart(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 440, 200);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        Axis y = new Axis(0, MOST, height - FOOT, TOP);
        double right = width - pen.width(data.lastLabel(), Pen.LABEL, true) - 18;
        Color quiet = pen.color(Token.QUIET);
        for (double mark = 0; mark <= MOST; mark += STEP) {
            pen.level(LEFT, right, y.at(mark), pen.color(Token.LINE));
            pen.text(
                    Integer.toString((int) mark),
                    LEFT - 8,
                    y.at(mark) + 4.5,
                    Pen.LABEL,
                    false,
                    quiet,
                    TextAlignment.RIGHT);
        }
        pen.dashed(LEFT, y.at(data.passAt()), right, y.at(data.passAt()), 1.5, pen.color(Token.EDGE), 5, 4);
        pen.text(data.passLabel(), LEFT + 4, y.at(data.passAt()) + 15, Pen.LABEL, false, quiet);
        int last = data.marks().size() - 1;
        Axis x = new Axis(0, Math.max(1, last), LEFT + 12, right - 12);
        double[] points = new double[2 * data.marks().size()];
        for (int i = 0; i <= last; i++) {
            points[2 * i] = x.at(i);
            points[2 * i + 1] = y.at(data.marks().get(i));
        }
        if (last > 0) {
            pen.polyline(1.25, pen.color(Token.EDGE), points);
        }
        for (int i = 0; i <= last; i++) {
            pen.dot(points[2 * i], points[2 * i + 1], 5.5, pen.color(Token.PAPER));
            pen.dot(points[2 * i], points[2 * i + 1], 4, pen.color(Token.WATER));
        }
        double beside = Math.max(TOP, points[2 * last + 1]) + 4.5;
        pen.text(data.lastLabel(), points[2 * last] + 10, beside, Pen.LABEL, true, pen.color(Token.WATER));
        pen.text(data.from(), LEFT, height - 6, Pen.LABEL, false, quiet);
        if (last > 0) {
            pen.text(data.to(), right, height - 6, Pen.LABEL, false, quiet, TextAlignment.RIGHT);
        }
    }
}
