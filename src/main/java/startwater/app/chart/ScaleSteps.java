package startwater.app.chart;

import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/** The steps of a pad's scale up the side of a chart: those around the data, at least a few. */
record ScaleSteps(List<Tick> steps, Axis y) {
    /** Room for the numbers left of the chart. */
    static final double LABELS = 34;

    private static final int LEAST = 4;
    /** Numbers closer than this run into each other. */
    private static final double APART = 14;

    /**
     * The steps around data from {@code low} to {@code high}, in blocks; a low above the high stands for no data.
     *
     * @param bottom place of the low end, in design pixels
     * @param top place of the high end
     */
    static ScaleSteps around(List<Tick> steps, double low, double high, double bottom, double top) {
        double last = steps.get(steps.size() - 1).at();
        double from = low > high ? 0 : Math.floor(low);
        double to = Math.min(last, Math.max(Math.ceil(high), from + LEAST));
        return new ScaleSteps(steps, new Axis(Math.max(0, Math.min(from, to - LEAST)), to, bottom, top));
    }

    /** Draws them as lines up to {@code right}, numbered where there is room. */
    void paint(Pen pen, double right) {
        double last = Double.MAX_VALUE;
        for (Tick step : steps) {
            if (step.at() < y.low() - 1e-9 || step.at() > y.high() + 1e-9) {
                continue;
            }
            double at = y.at(step.at());
            pen.level(LABELS + 6, right, at, pen.color(Token.LINE));
            if (last - at >= APART) {
                Color color = pen.color(Token.QUIET);
                pen.text(step.text(), LABELS - 2, at + 4.5, Pen.LABEL, false, color, TextAlignment.RIGHT);
                last = at;
            }
        }
    }
}
