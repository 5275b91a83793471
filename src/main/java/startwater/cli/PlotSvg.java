package startwater.cli;

import java.util.Locale;
import startwater.content.Plot;
import startwater.page.Html;
import startwater.text.Texts;

/** Draws a plot for paper: lines told apart by their dashes and their names, not by colour alone. */
final class PlotSvg {
    private static final double WIDTH = 640;
    private static final double HEIGHT = 260;
    /** Fits into a card on A4 and on Letter. */
    private static final double PRINTED = 600;

    private static final double LEFT = 54;
    private static final double RIGHT = WIDTH - 16;
    private static final double TOP = 26;
    private static final double FLOOR = HEIGHT - 44;
    private static final String[] INKS = {"#0E5A73", "#B4640A", "#5A6B74"};
    private static final String[] DASHES = {"", " stroke-dasharray=\"9 4\"", " stroke-dasharray=\"3 3\""};

    private final Plot plot;
    private final Texts texts;
    private final StringBuilder out = new StringBuilder();

    private PlotSvg(Plot plot, Texts texts) {
        this.plot = plot;
        this.texts = texts;
    }

    /** The plot as an svg element, with its sentence for those who do not see it. */
    static String of(Plot plot, Texts texts) {
        return new PlotSvg(plot, texts).draw();
    }

    private String draw() {
        String said = texts.text(plot.said(), plot.numbers().toArray());
        out.append(String.format(
                Locale.ROOT,
                "<svg viewBox=\"0 0 %.0f %.0f\" width=\"%.0f\" role=\"img\" font-size=\"13\"><title>%s</title>",
                WIDTH,
                HEIGHT,
                PRINTED,
                Html.text(said)));
        axes();
        for (Plot.Level level : plot.levels()) {
            double at = y(level.value());
            line(LEFT, at, RIGHT, at, "#A3271F", " stroke-dasharray=\"5 4\"");
            words(texts.text(level.key()), RIGHT, at - 5, "end", "#A3271F");
        }
        for (int i = 0; i < plot.lines().size(); i++) {
            line(plot.lines().get(i), i);
        }
        for (Plot.Point at : plot.at()) {
            out.append(String.format(Locale.ROOT, "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"5\"/>", x(at.x()), y(at.y())));
        }
        return out.append("</svg>").toString();
    }

    private void axes() {
        for (double tick : plot.y().ticks()) {
            line(LEFT, y(tick), RIGHT, y(tick), "#D8DDD9", "");
            words(number(plot.y(), tick), LEFT - 6, y(tick) + 4, "end", "#5A6B74");
        }
        for (double tick : plot.x().ticks()) {
            words(number(plot.x(), tick), x(tick), FLOOR + 17, "middle", "#5A6B74");
        }
        words(texts.text(plot.y().key()), 0, 14, "start", "#5A6B74");
        words(texts.text(plot.x().key()), RIGHT, FLOOR + 36, "end", "#5A6B74");
    }

    private String number(Plot.Axis axis, double tick) {
        return axis.logarithmic() ? texts.number(tick) : texts.decimals(tick, axis.decimals());
    }

    private void line(Plot.Line line, int number) {
        String ink = INKS[number % INKS.length];
        StringBuilder points = new StringBuilder();
        Plot.Point highest = line.points().get(0);
        for (Plot.Point point : line.points()) {
            points.append(String.format(Locale.ROOT, "%.1f,%.1f ", x(point.x()), y(point.y())));
            highest = point.y() > highest.y() ? point : highest;
            if (line.dots()) {
                out.append(String.format(
                        Locale.ROOT,
                        "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"3.5\" fill=\"%s\"/>",
                        x(point.x()),
                        y(point.y()),
                        ink));
            }
        }
        out.append("<polyline fill=\"none\" stroke-width=\"2.5\" stroke=\"")
                .append(ink)
                .append('"')
                .append(DASHES[number % DASHES.length])
                .append(" points=\"")
                .append(points.toString().strip())
                .append("\"/>");
        if (!line.key().isEmpty()) {
            double near = Math.max(LEFT + 30, Math.min(RIGHT - 30, x(highest.x())));
            words(texts.text(line.key()), near, Math.max(TOP + 8, y(highest.y()) - 7), "middle", ink);
        }
    }

    private void line(double x1, double y1, double x2, double y2, String ink, String dash) {
        out.append(String.format(
                Locale.ROOT,
                "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" stroke=\"%s\"%s/>",
                x1,
                y1,
                x2,
                y2,
                ink,
                dash));
    }

    private void words(String words, double x, double y, String anchor, String ink) {
        out.append(String.format(
                Locale.ROOT,
                "<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\" fill=\"%s\">%s</text>",
                x,
                y,
                anchor,
                ink,
                Html.text(words)));
    }

    private double x(double value) {
        return LEFT + (RIGHT - LEFT) * plot.x().part(value);
    }

    private double y(double value) {
        return FLOOR - (FLOOR - TOP) * plot.y().part(value);
    }
}
