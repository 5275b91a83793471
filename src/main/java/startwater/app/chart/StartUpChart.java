package startwater.app.chart;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import startwater.app.chart.LabelPlacer.Box;
import startwater.app.chart.LabelPlacer.Place;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * A start-up that is still to come: ammonia and nitrite over the days, each with the band of eight tanks in ten, and the days
 * between which the filter is ready. Ammonia is a plain line, nitrite a broken one; both are named.
 */
public final class StartUpChart extends Painted {
    private static final double BOTTOM = 40;
    private static final double TOP = 24;
    private static final double LINE = 16;
    private static final double FEWEST_PIXELS_A_DAY_LABEL = 56;

    /**
     * What to draw.
     *
     * @param ammonia its path, mg N/L by day
     * @param nitrite its path, mg N/L by day
     * @param ready when the filter is ready; null where it is not within these days
     * @param unit of the upright axis
     * @param days name of the level axis
     * @param locale of the figures
     * @param summary the chart in words, for screen readers
     */
    public record Data(
            FanChart.Path ammonia,
            FanChart.Path nitrite,
            @Nullable Window ready,
            String unit,
            String days,
            Locale locale,
            String summary) {
        public Data {
            Objects.requireNonNull(ammonia, "ammonia");
            Objects.requireNonNull(nitrite, "nitrite");
            Objects.requireNonNull(summary, "summary");
        }
    }

    /** From the first to the last likely day, and the middle one. @param label printed over it */
    public record Window(double low, double middle, double high, String label) {
        public Window {
            Check.ordered("window", low, middle, high);
            Objects.requireNonNull(label, "label");
        }
    }

    private final Data data;

    public StartUpChart(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 600, 300);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double high = Math.max(highest(data.ammonia()), highest(data.nitrite()));
        double step = Axis.step(Math.max(high, 0.1), (int) Math.max(2, (height - TOP - BOTTOM) / 44));
        double end = Math.ceil(high / step - 1e-9) * step;
        double left = 8;
        for (double tick : Axis.ticks(0, end, step)) {
            left = Math.max(left, pen.width(Axis.text(tick, step, data.locale()), Pen.LABEL, false) + 10);
        }
        List<FanChart.Point> points = data.ammonia().points();
        Axis x = new Axis(0, points.get(points.size() - 1).day(), left, width - 12);
        Axis y = new Axis(0, end, height - BOTTOM, TOP);
        window(pen, x, y);
        ground(pen, x, y, step, height);
        FanBand.paintBand(pen, data.ammonia(), x, y, Tone.WATER);
        FanBand.paintBand(pen, data.nitrite(), x, y, Tone.INK);
        FanBand.paintLine(pen, data.ammonia(), x, y, Tone.WATER);
        pen.gc().setLineDashes(6, 4);
        FanBand.paintLine(pen, data.nitrite(), x, y, Tone.INK);
        pen.gc().setLineDashes();
        labels(pen, x, y);
    }

    private static double highest(FanChart.Path path) {
        return path.points().stream().mapToDouble(FanChart.Point::high).max().orElse(0);
    }

    private void window(Pen pen, Axis x, Axis y) {
        Window ready = data.ready();
        if (ready == null) {
            return;
        }
        double from = x.at(ready.low());
        double to = x.at(Math.min(x.high(), ready.high()));
        pen.box(from, y.to(), to - from, y.from() - y.to(), pen.color(Token.BAR, 0.6));
        pen.upright(from, y.to(), y.from(), pen.color(Token.EDGE));
        pen.upright(to, y.to(), y.from(), pen.color(Token.EDGE));
        double middle = Pen.crisp(x.at(Math.min(x.high(), ready.middle())));
        pen.line(middle, y.to(), middle, y.from(), 2, pen.color(Token.INK));
        double half = pen.width(ready.label(), Pen.LABEL, true) / 2;
        double at = Math.max(x.from() + half, Math.min(x.to() - half, (from + to) / 2));
        pen.text(ready.label(), at, y.to() - 8, Pen.LABEL, true, pen.color(Token.INK), TextAlignment.CENTER);
    }

    private void ground(Pen pen, Axis x, Axis y, double step, double height) {
        Color quiet = pen.color(Token.QUIET);
        for (double tick : Axis.ticks(0, y.high(), step)) {
            pen.level(x.from(), x.to(), y.at(tick), pen.color(tick == 0 ? Token.EDGE : Token.LINE));
            String figure = Axis.text(tick, step, data.locale());
            pen.text(figure, x.from() - 8, y.at(tick) + 4.5, Pen.LABEL, false, quiet, TextAlignment.RIGHT);
        }
        if (data.ready() == null || x.at(data.ready().low()) > x.from() + pen.width(data.unit(), Pen.LABEL, false)) {
            pen.text(data.unit(), 0, TOP - 8, Pen.LABEL, false, quiet);
        }
        double days = Math.max(1, Axis.step(x.high(), (int) ((x.to() - x.from()) / FEWEST_PIXELS_A_DAY_LABEL)));
        for (double day : Axis.ticks(0, x.high(), days)) {
            pen.upright(x.at(day), y.from(), y.from() + 4, pen.color(Token.EDGE));
            String figure = Axis.text(day, days, data.locale());
            pen.text(figure, x.at(day), y.from() + 18, Pen.LABEL, false, quiet, TextAlignment.CENTER);
        }
        pen.text(data.days(), (x.from() + x.to()) / 2, height - 4, Pen.LABEL, false, quiet, TextAlignment.CENTER);
    }

    private void labels(Pen pen, Axis x, Axis y) {
        LabelPlacer placer =
                new LabelPlacer(new Box(x.from() + 4, y.to() + 1, x.to() - x.from() - 6, y.from() - y.to() - 3));
        for (FanChart.Path path : List.of(data.ammonia(), data.nitrite())) {
            placer.avoid(FanBand.line(path, x, y));
            FanBand.edges(path, x, y).forEach(placer::avoid);
        }
        label(pen, placer, data.nitrite(), x, y, Tone.INK);
        label(pen, placer, data.ammonia(), x, y, Tone.WATER);
    }

    private static void label(Pen pen, LabelPlacer placer, FanChart.Path path, Axis x, Axis y, Tone tone) {
        if (path.label().isEmpty()) {
            return;
        }
        String words = path.label().get(0);
        FanChart.Point peak = path.points().stream()
                .max(java.util.Comparator.comparingDouble(FanChart.Point::middle))
                .orElseThrow();
        double px = x.at(peak.day());
        double py = y.at(peak.middle());
        Place place = placer.place(pen.width(words, Pen.LABEL, true), LINE, px, py);
        Box box = place.box();
        double[] near = box.grown(2).nearest(place.anchorX(), place.anchorY());
        pen.line(near[0], near[1], place.anchorX(), place.anchorY(), 1, pen.color(tone.graphic()));
        pen.box(box.x() - 2, box.y(), box.width() + 4, box.height(), pen.color(Token.PAPER, 0.85));
        pen.text(words, box.x(), box.y() + 12.5, Pen.LABEL, true, pen.color(tone.text()));
    }
}
