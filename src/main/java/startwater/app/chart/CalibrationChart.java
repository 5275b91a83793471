package startwater.app.chart;

import java.util.List;
import java.util.Objects;
import javafx.scene.AccessibleRole;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * How often it came, against how sure the learner was: one column a word, a tick where the word itself stands, a dot where it
 * came, and the interval of the dot. Dots on the ticks are as they should be.
 */
public final class CalibrationChart extends Painted {
    private static final double TOP = 10;
    private static final double FOOT = 42;
    private static final double LEFT = 46;
    private static final int STEP = 25;

    /**
     * What to draw.
     *
     * @param columns one a word, the least sure first
     * @param percents the labels 0, 25, 50, 75 and 100 percent in words
     * @param summary the chart in words, for screen readers
     */
    public record Data(List<Column> columns, List<String> percents, String summary) {
        public Data {
            columns = List.copyOf(columns);
            percents = List.copyOf(percents);
            Check.some("column", columns.size());
            if (percents.size() != 100 / STEP + 1) {
                throw new IllegalArgumentException("chart: needs five labels from 0 to 100 percent");
            }
            Objects.requireNonNull(summary, "summary");
        }
    }

    /**
     * One word of sureness.
     *
     * @param word under the column
     * @param stated what the word stands for, 0 to 1
     * @param came share that came, 0 to 1
     * @param low end of its interval
     * @param high end of it
     * @param label beside the dot
     */
    public record Column(String word, double stated, double came, double low, double high, String label) {
        public Column {
            Check.ordered("share that came", low, came, high);
            Check.finite("stated chance", stated);
        }
    }

    private final Data data;

    public CalibrationChart(Data data) {
        super(AccessibleRole.IMAGE_VIEW, 440, 230);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        Axis y = new Axis(0, 1, height - FOOT, TOP);
        for (int i = 0; i < data.percents().size(); i++) {
            double at = y.at(i * STEP / 100.0);
            pen.level(LEFT, width, at, pen.color(Token.LINE));
            pen.text(
                    data.percents().get(i),
                    LEFT - 8,
                    at + 4.5,
                    Pen.LABEL,
                    false,
                    pen.color(Token.QUIET),
                    TextAlignment.RIGHT);
        }
        double wide = (width - LEFT) / data.columns().size();
        for (int i = 0; i < data.columns().size(); i++) {
            paintColumn(pen, data.columns().get(i), LEFT + i * wide, wide, y, height);
        }
    }

    private static void paintColumn(Pen pen, Column c, double left, double wide, Axis y, double height) {
        double x = left + 0.32 * wide;
        double tick = Math.min(26, 0.22 * wide);
        Color ink = pen.color(Token.INK);
        pen.line(x - tick, y.at(c.stated()), x + tick, y.at(c.stated()), 2, ink);
        Color water = pen.color(Token.WATER);
        pen.line(x, y.at(c.low()), x, y.at(c.high()), 1.5, water);
        pen.line(x - 4, y.at(c.low()), x + 4, y.at(c.low()), 1.5, water);
        pen.line(x - 4, y.at(c.high()), x + 4, y.at(c.high()), 1.5, water);
        pen.dot(x, y.at(c.came()), 6.5, pen.color(Token.PAPER));
        pen.dot(x, y.at(c.came()), 5, water);
        double room = left + wide - x - 14;
        List<String> lines = pen.wrap(c.label(), room, Pen.LABEL, true);
        double text = y.at(c.came()) + 4.5 - 8 * (lines.size() - 1);
        for (String line : lines) {
            pen.text(pen.fitted(line, room, Pen.LABEL, true), x + 12, text, Pen.LABEL, true, water);
            text += 16;
        }
        List<String> words = pen.wrap(c.word(), wide - 6, Pen.LABEL, false);
        double baseline = height - FOOT + 19;
        for (String word : words.subList(0, Math.min(2, words.size()))) {
            String shown = pen.fitted(word, wide - 6, Pen.LABEL, false);
            double at = Math.max(left, x - pen.width(shown, Pen.LABEL, false) / 2);
            pen.text(shown, at, baseline, Pen.LABEL, false, ink);
            baseline += 16;
        }
    }
}
