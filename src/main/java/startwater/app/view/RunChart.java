package startwater.app.view;

import java.util.List;
import java.util.function.ToDoubleFunction;
import javafx.scene.AccessibleRole;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;
import startwater.drill.DrillRun;
import startwater.drill.DrillRun.TruthPoint;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Verdict;
import startwater.strip.Pad;
import startwater.text.DrillWords;

/** Truth against what was written: ammonia and nitrite as lines, the log as dots, each decision a mark with its word. */
final class RunChart extends Painted {
    private static final double LEFT = 44;
    private static final double TOP = 14;
    private static final double BOTTOM = 60;
    private static final double RIGHT = 110;

    private final DrillRun run;
    private final List<Verdict> verdicts;
    private final DrillWords words;

    RunChart(DrillRun run, List<Verdict> verdicts, DrillWords words) {
        super(AccessibleRole.IMAGE_VIEW, 1000, 360);
        this.run = run;
        this.verdicts = List.copyOf(verdicts);
        this.words = words;
        setAccessibleText(
                words.texts().text("shell.endChart") + ". " + words.texts().text("shell.endChartHow"));
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        List<TruthPoint> truth = run.truth();
        double start = truth.get(0).day();
        double end = truth.get(truth.size() - 1).day();
        double most = 1;
        for (TruthPoint p : truth) {
            most = Math.max(most, Math.max(p.ammoniaMgPerL(), p.nitriteMgPerL()));
        }
        double step = OptionBars.step(most);
        double top = Math.ceil(most * 1.1 / step) * step;
        Frame at = new Frame(LEFT, width - RIGHT, TOP, height - BOTTOM, start, end, top);
        var g = pen.gc();
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            g.setStroke(pen.color(Token.LINE));
            g.strokeLine(LEFT, at.y(tick), width - RIGHT, at.y(tick));
            pen.text(
                    words.texts().number(tick),
                    LEFT - 8,
                    at.y(tick) + 4,
                    13,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.RIGHT);
        }
        for (int day = (int) Math.ceil(start); day <= end; day += 2) {
            pen.text(
                    String.valueOf(day),
                    at.x(day),
                    height - BOTTOM + 44,
                    13,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.CENTER);
        }
        line(pen, at, TruthPoint::ammoniaMgPerL, Token.QUIET, words.pad(Pad.AMMONIA), false);
        line(pen, at, TruthPoint::nitriteMgPerL, Token.WATER, words.pad(Pad.NITRITE), true);
        written(pen, at);
        decisions(pen, at, height);
    }

    private void line(Pen pen, Frame at, ToDoubleFunction<TruthPoint> value, Token token, String name, boolean above) {
        var g = pen.gc();
        g.setStroke(pen.color(token));
        g.setLineWidth(2);
        g.beginPath();
        List<TruthPoint> truth = run.truth();
        for (int i = 0; i < truth.size(); i++) {
            double x = at.x(truth.get(i).day());
            double y = at.y(value.applyAsDouble(truth.get(i)));
            if (i == 0) {
                g.moveTo(x, y);
            } else {
                g.lineTo(x, y);
            }
        }
        g.stroke();
        g.setLineWidth(1);
        double y = at.y(value.applyAsDouble(truth.get(truth.size() - 1)));
        pen.text(name, at.right() + 8, y + (above ? -2 : 13), 13, true, pen.color(token));
    }

    private void written(Pen pen, Frame at) {
        var g = pen.gc();
        for (VisitRecord v : run.past().visits()) {
            for (Written w : v.written()) {
                double x = at.x(v.day());
                double y = at.y(w.value());
                if (w.pad() == Pad.AMMONIA) {
                    g.setFill(pen.color(Token.QUIET));
                    g.fillRect(x - 4, y - 4, 8, 8);
                } else if (w.pad() == Pad.NITRITE) {
                    g.setFill(pen.color(Token.WATER));
                    g.fillOval(x - 5, y - 5, 10, 10);
                }
            }
        }
    }

    /** Each decision under the axis: a filled square is sound, a ring costly, a cross dangerous. */
    private void decisions(Pen pen, Frame at, double height) {
        var g = pen.gc();
        int n = 0;
        double y = height - BOTTOM + 20;
        for (VisitRecord v : run.past().visits()) {
            if (!v.asked() || v.decision() == null || n >= verdicts.size()) {
                continue;
            }
            Verdict verdict = verdicts.get(n++);
            double x = at.x(v.day());
            switch (verdict.word()) {
                case SOUND -> {
                    g.setFill(pen.color(Token.SAFE));
                    g.fillRect(x - 5, y - 5, 10, 10);
                }
                case COSTLY -> {
                    g.setStroke(pen.color(Token.INK));
                    g.setLineWidth(2);
                    g.strokeOval(x - 5, y - 5, 10, 10);
                }
                case DANGEROUS -> {
                    g.setStroke(pen.color(Token.DANGER));
                    g.setLineWidth(2.5);
                    g.strokeLine(x - 5, y - 5, x + 5, y + 5);
                    g.strokeLine(x - 5, y + 5, x + 5, y - 5);
                }
            }
            g.setLineWidth(1);
        }
        pen.text(words.texts().text("shell.decisions"), at.right() + 8, y + 5, 13, false, pen.color(Token.QUIET));
    }

    private record Frame(double left, double right, double top, double floor, double start, double end, double most) {
        double x(double day) {
            return left + (right - left) * (day - start) / Math.max(1e-9, end - start);
        }

        double y(double value) {
            return floor - (floor - top) * Math.max(0, Math.min(1, value / most));
        }
    }
}
