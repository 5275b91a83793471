package startwater.app.view;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/** Values over the days of a run: lines told apart by dashes and labels at their ends, and the points that were written. */
final class TimeChart extends Painted {
    private static final double LEFT = 46;
    private static final double TOP = 12;
    private static final double BOTTOM = 46;
    private static final double LABELS = 150;

    private final Content content;

    /** How a line is drawn. */
    enum Kind {
        OWN(Token.INK, 2.5),
        RULES(Token.WATER, 2, 8, 4),
        NOTHING(Token.QUIET, 2, 2, 4);

        private final Token token;
        private final double thickness;
        private final double[] dashes;

        Kind(Token token, double thickness, double... dashes) {
            this.token = token;
            this.thickness = thickness;
            this.dashes = dashes;
        }
    }

    /** @param days rising @param values one a day entry @param label printed at its end */
    record Line(Kind kind, double[] days, double[] values, String label) {}

    /** @param high upper end of the reading; equal to {@code low} for a block, over it for a between */
    record Point(double day, double low, double high) {}

    /** @param mark printed at the decision, or empty */
    record Mark(double day, String mark, boolean harm) {}

    /**
     * @param lines drawn in order
     * @param points what was written, may be empty
     * @param marks decisions, on the axis
     * @param fromZero whether the axis begins at 0
     * @param dayWord prefix of the axis labels
     */
    record Content(List<Line> lines, List<Point> points, List<Mark> marks, boolean fromZero, String dayWord) {}

    TimeChart(Content content, String spoken) {
        super(AccessibleRole.IMAGE_VIEW, 900, 300);
        this.content = content;
        setAccessibleText(spoken);
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        Axes at = axes(width - LABELS, height - BOTTOM);
        for (double value = at.low; value <= at.high + at.step / 2; value += at.step) {
            pen.level(LEFT, at.right, at.y(value), pen.color(Token.LINE));
            pen.text(
                    tick(value),
                    LEFT - 6,
                    at.y(value) + 4,
                    Pen.LABEL,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.RIGHT);
        }
        double dayStep = Math.max(1, Math.ceil((at.end - at.start) / 10));
        for (double day = Math.ceil(at.start); day <= at.end; day += dayStep) {
            pen.upright(at.x(day), at.floor, at.floor + 4, pen.color(Token.EDGE));
            pen.text(
                    content.dayWord() + " " + (int) day,
                    at.x(day),
                    at.floor + 17,
                    Pen.LABEL,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.CENTER);
        }
        content.lines().forEach(line -> line(pen, at, line));
        labels(pen, at);
        for (Point p : content.points()) {
            double middle = (at.y(p.low()) + at.y(p.high())) / 2;
            pen.upright(at.x(p.day()), at.y(p.high()), at.y(p.low()), pen.color(Token.OWN));
            pen.square(at.x(p.day()), middle, 4, pen.color(Token.OWN));
        }
        marks(pen, at, height);
    }

    private Axes axes(double right, double floor) {
        double start = Double.MAX_VALUE;
        double end = 0;
        double least = content.fromZero() ? 0 : Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (Line line : content.lines()) {
            start = Math.min(start, line.days()[0]);
            end = Math.max(end, line.days()[line.days().length - 1]);
            for (double v : line.values()) {
                least = Math.min(least, v);
                most = Math.max(most, v);
            }
        }
        for (Point p : content.points()) {
            least = Math.min(least, p.low());
            most = Math.max(most, p.high());
        }
        double step = OptionBars.step(Math.max(1e-6, most - least));
        double low = Math.floor(least / step) * step;
        return new Axes(right, floor, start, end, low, Math.max(low + step, Math.ceil(most / step) * step), step);
    }

    private void line(Pen pen, Axes at, Line line) {
        double[] points = new double[2 * line.days().length];
        for (int i = 0; i < line.days().length; i++) {
            points[2 * i] = at.x(line.days()[i]);
            points[2 * i + 1] = at.y(line.values()[i]);
        }
        pen.gc().setLineDashes(line.kind().dashes);
        pen.polyline(line.kind().thickness, pen.color(line.kind().token), points);
        pen.gc().setLineDashes();
    }

    /** Each line is named where it ends; names that would touch are moved apart. */
    private void labels(Pen pen, Axes at) {
        List<Line> byHeight = content.lines().stream()
                .sorted(java.util.Comparator.comparingDouble(l -> at.y(l.values()[l.values().length - 1])))
                .toList();
        double free = TOP;
        for (int i = 0; i < byHeight.size(); i++) {
            Line line = byHeight.get(i);
            double wanted = at.y(line.values()[line.values().length - 1]) + 4;
            double lowest = at.floor - 17 * (byHeight.size() - 1 - i);
            double y = Math.max(free, Math.min(lowest, wanted));
            free = y + 17;
            pen.text(
                    pen.fitted(line.label(), LABELS - 14, Pen.LABEL, true),
                    at.right + 8,
                    y,
                    Pen.LABEL,
                    true,
                    pen.color(line.kind().token));
        }
    }

    private void marks(Pen pen, Axes at, double height) {
        double last = -100;
        for (Mark m : content.marks()) {
            double x = at.x(m.day());
            pen.polygon(pen.color(Token.OWN), x - 5, at.floor, x + 5, at.floor, x, at.floor - 8);
            if (!m.mark().isEmpty() && x - last > 24) {
                pen.text(
                        m.mark(),
                        x,
                        height - 8,
                        Pen.LABEL,
                        true,
                        pen.color(m.harm() ? Token.DANGER : Token.INK),
                        TextAlignment.CENTER);
                last = x;
            }
        }
    }

    private static String tick(double value) {
        return value == Math.rint(value)
                ? String.valueOf((long) value)
                : String.valueOf(Math.rint(value * 1000) / 1000);
    }

    private record Axes(double right, double floor, double start, double end, double low, double high, double step) {
        double x(double day) {
            return LEFT + (right - LEFT) * (day - start) / Math.max(1e-9, end - start);
        }

        double y(double value) {
            return floor - (floor - TOP) * Math.max(0, Math.min(1, (value - low) / (high - low)));
        }
    }
}
