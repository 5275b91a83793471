package startwater.app.chart;

import java.util.ArrayList;
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
 * The decisive value ahead, under the own choice and under the best one, each with the band of eight plausible tanks in ten.
 * Where it harms the ground is tinted; the return is a dotted line; labels stand on short leaders and avoid the lines.
 */
public final class FanChart extends Painted {
    private static final double BOTTOM = 22;
    private static final double TOP = 8;
    private static final double LINE = 16;

    /**
     * What to draw.
     *
     * @param days labels along the time
     * @param own path of the learner's choice
     * @param best path of the best choice; none where the own choice is the best
     * @param harm where harm begins; none where nothing harms
     * @param back when the keeper is back; none where nobody is away
     * @param today the value now; none where it is not known
     * @param locale of the axis' figures
     * @param summary the chart in words, for screen readers
     */
    public record Data(
            List<Tick> days,
            Path own,
            @Nullable Path best,
            @Nullable Level harm,
            @Nullable Moment back,
            @Nullable Level today,
            Locale locale,
            String summary) {
        public Data {
            days = List.copyOf(days);
            Objects.requireNonNull(own, "own");
            Objects.requireNonNull(locale, "locale");
            Objects.requireNonNull(summary, "summary");
        }
    }

    /**
     * A path with its band.
     *
     * @param label lines printed beside it
     * @param points in order of time; a sudden change is two points on the same day
     */
    public record Path(List<String> label, List<Point> points) {
        public Path {
            label = List.copyOf(label);
            points = List.copyOf(points);
            Check.some("point", points.size());
        }
    }

    /** The tenth, the middle and the ninetieth of a hundred plausible tanks, at a time in days. */
    public record Point(double day, double low, double middle, double high) {
        public Point {
            Check.finite("day", day);
            Check.ordered("band", low, middle, high);
        }
    }

    /** A named value. */
    public record Level(double value, String label) {
        public Level {
            Check.finite("level", value);
            Objects.requireNonNull(label, "label");
        }
    }

    /** A named time, in days; the first line is strong. */
    public record Moment(double day, List<String> label) {
        public Moment {
            Check.finite("day", day);
            label = List.copyOf(label);
        }
    }

    private final Data data;

    public FanChart(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 592, 256);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double top = highest();
        double step = Axis.step(top, (int) Math.max(2, (height - TOP - BOTTOM) / 44));
        double end = Math.ceil(top / step - 1e-9) * step;
        double left = 8;
        for (double tick : Axis.ticks(0, end, step)) {
            left = Math.max(left, pen.width(Axis.text(tick, step, data.locale()), Pen.LABEL, false) + 10);
        }
        Axis x = new Axis(firstDay(), lastDay(), left, width - 12);
        Axis y = new Axis(0, end, height - BOTTOM, TOP);
        paintGround(pen, x, y, step, height);
        FanBand.paintBand(pen, data.own(), x, y, Tone.OWN);
        Path best = data.best();
        if (best != null) {
            FanBand.paintBand(pen, best, x, y, Tone.BEST);
        }
        paintReturn(pen, x, y);
        FanBand.paintLine(pen, data.own(), x, y, Tone.OWN);
        if (best != null) {
            FanBand.paintLine(pen, best, x, y, Tone.BEST);
        }
        paintLabels(pen, x, y);
    }

    private double highest() {
        double highest = 0;
        for (Path path : paths()) {
            for (Point point : path.points()) {
                highest = Math.max(highest, point.high());
            }
        }
        if (data.harm() != null) {
            highest = Math.max(highest, 1.25 * data.harm().value());
        }
        if (data.today() != null) {
            highest = Math.max(highest, data.today().value());
        }
        return highest <= 0 ? 1 : highest;
    }

    private List<Path> paths() {
        Path best = data.best();
        return best == null ? List.of(data.own()) : List.of(data.own(), best);
    }

    private double firstDay() {
        double first = data.own().points().get(0).day();
        for (Tick tick : data.days()) {
            first = Math.min(first, tick.at());
        }
        return first;
    }

    private double lastDay() {
        double last = data.own().points().get(data.own().points().size() - 1).day();
        for (Tick tick : data.days()) {
            last = Math.max(last, tick.at());
        }
        return last;
    }

    private void paintGround(Pen pen, Axis x, Axis y, double step, double height) {
        if (data.harm() != null) {
            double harm = y.at(data.harm().value());
            pen.box(x.from(), y.to(), x.to() - x.from(), harm - y.to(), pen.color(Token.DANGER, 0.08));
        }
        for (double tick : Axis.ticks(0, y.high(), step)) {
            double at = y.at(tick);
            pen.level(x.from(), x.to(), at, pen.color(tick == 0 ? Token.EDGE : Token.LINE));
            String text = Axis.text(tick, step, data.locale());
            Color color = pen.color(Token.QUIET);
            pen.text(text, x.from() - 8, at + 4.5, Pen.LABEL, false, color, TextAlignment.RIGHT);
        }
        double lastRight = -100;
        for (Tick day : data.days()) {
            double half = pen.width(day.text(), Pen.LABEL, day.strong()) / 2;
            double at = Math.min(x.at(day.at()), x.to() + 12 - half);
            pen.upright(x.at(day.at()), y.from(), y.from() + 4, pen.color(Token.EDGE));
            if (at - half > lastRight + 4) {
                Color color = pen.color(day.strong() ? Token.INK : Token.QUIET);
                pen.text(day.text(), at, height - 4, Pen.LABEL, day.strong(), color, TextAlignment.CENTER);
                lastRight = at + half;
            }
        }
        if (data.harm() != null) {
            double harm = Pen.crisp(y.at(data.harm().value()));
            pen.line(x.from(), harm, x.to(), harm, 1.25, pen.color(Token.DANGER));
        }
    }

    private void paintReturn(Pen pen, Axis x, Axis y) {
        if (data.back() != null) {
            double at = Pen.crisp(x.at(data.back().day()));
            pen.dashed(at, y.to(), at, y.from(), 1.5, pen.color(Token.INK), 2, 3);
        }
    }

    private void paintLabels(Pen pen, Axis x, Axis y) {
        Box area = new Box(x.from() + 4, y.to() + 1, x.to() - x.from() - 6, y.from() - y.to() - 3);
        LabelPlacer placer = new LabelPlacer(area);
        for (Path path : paths()) {
            placer.avoid(FanBand.line(path, x, y));
            FanBand.edges(path, x, y).forEach(placer::avoid);
        }
        paintBackLabel(pen, placer, x, y);
        paintHarmLabel(pen, placer, x, y);
        paintToday(pen, placer, x, y);
        paintPathLabel(pen, placer, data.own(), x, y, Tone.OWN);
        Path best = data.best();
        if (best != null) {
            paintPathLabel(pen, placer, best, x, y, Tone.BEST);
        }
    }

    private void paintBackLabel(Pen pen, LabelPlacer placer, Axis x, Axis y) {
        if (data.back() == null) {
            return;
        }
        List<String> lines = data.back().label();
        double wide = widest(pen, lines);
        double at = x.at(data.back().day());
        double left = at + 10 + wide <= x.to() ? at + 10 : at - 10 - wide;
        placer.avoid(at, y.from(), at, y.to());
        placer.take(new Box(left, y.to() + 3, wide, LINE * lines.size()));
        for (int i = 0; i < lines.size(); i++) {
            Color color = pen.color(i == 0 ? Token.INK : Token.QUIET);
            pen.text(lines.get(i), left, y.to() + 16 + LINE * i, Pen.LABEL, i == 0, color);
        }
    }

    private void paintHarmLabel(Pen pen, LabelPlacer placer, Axis x, Axis y) {
        if (data.harm() == null) {
            return;
        }
        double harm = y.at(data.harm().value());
        placer.avoid(x.from(), harm, x.to(), harm);
        double wide = pen.width(data.harm().label(), Pen.LABEL, true);
        List<Double> anchors = new ArrayList<>();
        for (double right = x.to() - 8; right - wide > x.from() + 20; right -= 24) {
            anchors.add(right - wide / 2);
            anchors.add(harm);
        }
        double[] flat = anchors.stream().mapToDouble(Double::doubleValue).toArray();
        Place place = placer.placeAbove(wide, LINE, flat.length == 0 ? new double[] {x.to() - wide, harm} : flat);
        Box box = place.box();
        pen.text(data.harm().label(), box.x(), box.y() + 12.5, Pen.LABEL, true, pen.color(Token.DANGER));
    }

    private void paintToday(Pen pen, LabelPlacer placer, Axis x, Axis y) {
        if (data.today() == null) {
            return;
        }
        double px = x.from();
        double py = y.at(data.today().value());
        Place place = placer.place(pen.width(data.today().label(), Pen.LABEL, true), LINE, px, py);
        leader(pen, place, Token.INK);
        pen.dot(px, py, 4, pen.color(Token.INK));
        Box box = place.box();
        pen.text(data.today().label(), box.x(), box.y() + 12.5, Pen.LABEL, true, pen.color(Token.INK));
    }

    private static void paintPathLabel(Pen pen, LabelPlacer placer, Path path, Axis x, Axis y, Tone tone) {
        if (path.label().isEmpty()) {
            return;
        }
        double wide = widest(pen, path.label());
        Place place = placer.place(wide, LINE * path.label().size(), FanBand.anchors(path, x, y));
        leader(pen, place, tone.graphic());
        Box box = place.box();
        boolean toRight = place.anchorX() > box.x() + box.width();
        for (int i = 0; i < path.label().size(); i++) {
            double at = toRight ? box.x() + box.width() : box.x();
            TextAlignment align = toRight ? TextAlignment.RIGHT : TextAlignment.LEFT;
            double baseline = box.y() + 12.5 + LINE * i;
            pen.text(path.label().get(i), at, baseline, Pen.LABEL, true, pen.color(tone.text()), align);
        }
    }

    private static void leader(Pen pen, Place place, Token token) {
        if (!place.touches()) {
            double[] near = place.box().grown(2).nearest(place.anchorX(), place.anchorY());
            pen.line(near[0], near[1], place.anchorX(), place.anchorY(), 1, pen.color(token));
        }
    }

    private static double widest(Pen pen, List<String> lines) {
        double widest = 0;
        for (String line : lines) {
            widest = Math.max(widest, pen.width(line, Pen.LABEL, true));
        }
        return widest;
    }
}
