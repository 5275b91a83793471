package startwater.app.view;

import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;
import startwater.content.Plot;
import startwater.text.Texts;

/** Paints a plot: lines with their names at them, level lines to hold them against, a dot where the sliders stand. */
final class PlotView extends Painted {
    private static final double LEFT = 48;
    private static final double TOP = 26;
    private static final double BELOW = 40;
    private static final Token[] TONES = {Token.WATER, Token.OWN, Token.QUIET};
    private static final Token[] NAME_TONES = {Token.WATER, Token.OWN_TEXT, Token.QUIET};

    private final Texts texts;
    private Optional<Plot> plot = Optional.empty();
    private double right;
    private double floor;

    PlotView(Texts texts) {
        super(AccessibleRole.IMAGE_VIEW, 640, 250);
        this.texts = texts;
    }

    void show(Optional<Plot> next, String spoken) {
        plot = next;
        setAccessibleText(spoken);
        repaint();
    }

    private double x(Plot of, double value) {
        return LEFT + (right - LEFT) * of.x().part(value);
    }

    private double y(Plot of, double value) {
        return floor - (floor - TOP) * of.y().part(value);
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        right = width - 16;
        floor = height - BELOW;
        plot.ifPresent(it -> {
            axes(pen, it);
            for (Plot.Level level : it.levels()) {
                double at = y(it, level.value());
                pen.dashed(LEFT, at, right, at, 1.5, pen.color(Token.DANGER), 5, 4);
                pen.text(
                        texts.text(level.key()),
                        right,
                        at - 5,
                        Pen.LABEL,
                        false,
                        pen.color(Token.DANGER),
                        TextAlignment.RIGHT);
            }
            for (int i = it.lines().size() - 1; i >= 0; i--) {
                line(pen, it, it.lines().get(i), i);
            }
            for (Plot.Point at : it.at()) {
                pen.dashed(x(it, at.x()), y(it, at.y()), x(it, at.x()), floor, 1, pen.color(Token.EDGE), 3, 3);
                pen.dot(x(it, at.x()), y(it, at.y()), 5, pen.color(Token.INK));
            }
        });
    }

    private void axes(Pen pen, Plot it) {
        for (double tick : it.y().ticks()) {
            double at = y(it, tick);
            pen.level(LEFT, right, at, pen.color(Token.LINE));
            pen.text(
                    number(it.y(), tick),
                    LEFT - 6,
                    at + 4,
                    Pen.LABEL,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.RIGHT);
        }
        for (double tick : it.x().ticks()) {
            pen.text(
                    number(it.x(), tick),
                    x(it, tick),
                    floor + 17,
                    Pen.LABEL,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.CENTER);
        }
        pen.text(texts.text(it.y().key()), 0, 14, Pen.LABEL, false, pen.color(Token.QUIET));
        pen.text(
                texts.text(it.x().key()),
                right,
                floor + 34,
                Pen.LABEL,
                false,
                pen.color(Token.QUIET),
                TextAlignment.RIGHT);
    }

    private String number(Plot.Axis axis, double tick) {
        return axis.logarithmic() ? texts.number(tick) : texts.decimals(tick, axis.decimals());
    }

    private void line(Pen pen, Plot it, Plot.Line line, int number) {
        Color color = pen.color(TONES[number % TONES.length]);
        double[] at = new double[2 * line.points().size()];
        Plot.Point highest = line.points().get(0);
        for (int i = 0; i < line.points().size(); i++) {
            Plot.Point point = line.points().get(i);
            at[2 * i] = x(it, point.x());
            at[2 * i + 1] = y(it, point.y());
            highest = point.y() > highest.y() ? point : highest;
            if (line.dots()) {
                pen.dot(at[2 * i], at[2 * i + 1], 3.5, color);
            }
        }
        pen.polyline(2.5, color, at);
        if (!line.key().isEmpty()) {
            String name = texts.text(line.key());
            double wide = pen.width(name, Pen.LABEL, true);
            double near = Math.max(LEFT + 4, Math.min(right - wide, x(it, highest.x()) - wide / 2));
            pen.text(
                    name,
                    near,
                    Math.max(TOP + 8, y(it, highest.y()) - 7),
                    Pen.LABEL,
                    true,
                    pen.color(NAME_TONES[number % NAME_TONES.length]));
        }
    }
}
