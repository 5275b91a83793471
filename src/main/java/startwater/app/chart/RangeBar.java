package startwater.app.chart;

import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import org.jspecify.annotations.Nullable;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * What could have been known: the range of plausible tanks as a grey bar, the truth as a thick tick, the learner's own
 * prediction as a triangle, on the steps of the scale.
 */
public final class RangeBar extends Painted {
    private static final double SIDE = 16;
    private static final double TRUTH_BASELINE = 13;
    private static final double BAR_TOP = 20;
    private static final double BAR = 13;
    private static final double AXIS = 56;

    /**
     * What to draw; places are in blocks of the scale.
     *
     * @param steps of the scale; the bar shows those around the data
     * @param low the tenth of a hundred plausible tanks
     * @param high the ninetieth
     * @param truth what this tank held; none where it is not shown
     * @param said what the learner foretold; none without a prediction
     * @param summary the picture in words, for screen readers
     */
    public record Data(
            List<Tick> steps,
            double low,
            double high,
            @Nullable Tick truth,
            @Nullable Tick said,
            String summary) {
        public Data {
            steps = List.copyOf(steps);
            Check.some("step", steps.size());
            Check.ordered("range", low, low, high);
            Objects.requireNonNull(summary, "summary");
        }
    }

    private final Data data;

    public RangeBar(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 368, 76);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double[] range = range();
        Axis axis = new Axis(range[0], range[1], SIDE, width - SIDE);
        for (Tick step : data.steps()) {
            if (step.at() >= range[0] - 1e-9 && step.at() <= range[1] + 1e-9) {
                double x = axis.at(step.at());
                pen.upright(x, AXIS, AXIS + 4, pen.color(Token.EDGE));
                Color color = pen.color(Token.QUIET);
                pen.text(step.text(), x, AXIS + 18, Pen.LABEL, false, color, TextAlignment.CENTER);
            }
        }
        pen.level(axis.from(), axis.to(), AXIS, pen.color(Token.EDGE));
        double left = axis.at(data.low());
        double wide = Math.max(3, axis.at(data.high()) - left);
        pen.box(left, BAR_TOP, wide, BAR, pen.color(Token.BAR));
        pen.frame(left, BAR_TOP, wide, BAR, 1, pen.color(Token.EDGE));
        Tick truth = data.truth();
        if (truth != null) {
            paintTruth(pen, axis, truth);
        }
        Tick said = data.said();
        if (said != null) {
            paintSaid(pen, axis, said, truth);
        }
    }

    private static void paintTruth(Pen pen, Axis axis, Tick truth) {
        double x = held(axis, truth);
        pen.line(x, BAR_TOP - 4, x, BAR_TOP + BAR + 4, 3, pen.color(Token.INK));
        double wide = pen.width(truth.text(), Pen.LABEL, true);
        double at = Math.max(0, Math.min(axis.to() + SIDE - wide, x - wide / 2));
        pen.text(truth.text(), at, TRUTH_BASELINE, Pen.LABEL, true, pen.color(Token.INK));
    }

    /** The triangle stands on the axis, its words beside it on the side away from the truth, where they fit. */
    private static void paintSaid(Pen pen, Axis axis, Tick said, @Nullable Tick truth) {
        double x = held(axis, said);
        pen.polygon(pen.color(Token.OWN), x, AXIS - 12, x + 7, AXIS - 0.5, x - 7, AXIS - 0.5);
        double wide = pen.width(said.text(), Pen.LABEL, true) + 12;
        boolean left = truth == null || said.at() <= truth.at();
        if (left && x - wide < 0) {
            left = false;
        } else if (!left && x + wide > axis.to() + SIDE) {
            left = true;
        }
        Color color = pen.color(Token.OWN_TEXT);
        TextAlignment align = left ? TextAlignment.RIGHT : TextAlignment.LEFT;
        pen.text(said.text(), left ? x - 11 : x + 11, AXIS - 4.5, Pen.LABEL, true, color, align);
    }

    private static double held(Axis axis, Tick tick) {
        return Math.max(axis.from(), Math.min(axis.to(), axis.at(tick.at())));
    }

    /** The steps around range, truth and prediction, with one to spare on both sides. */
    private double[] range() {
        double low = data.low();
        double high = data.high();
        for (Tick tick : new @Nullable Tick[] {data.truth(), data.said()}) {
            if (tick != null) {
                low = Math.min(low, tick.at());
                high = Math.max(high, tick.at());
            }
        }
        double last = data.steps().get(data.steps().size() - 1).at();
        double from = Math.max(0, Math.floor(low - 0.5));
        double to = Math.min(last, Math.max(Math.ceil(high + 0.5), from + 4));
        return new double[] {Math.max(0, Math.min(from, to - 4)), to};
    }
}
