package startwater.app.chart;

import java.util.Objects;
import javafx.scene.AccessibleRole;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/** How far something has come, of all there is, with a tick at the aim: a skill, or the best mark of a drill. */
public final class LevelBar extends Painted {
    /**
     * What to draw.
     *
     * @param share 0 to 1
     * @param aim where the tick stands, 0 to 1
     * @param tone WATER for what comes next, SAFE for passed, else QUIET
     * @param summary the level in words, for screen readers
     */
    public record Data(double share, double aim, Tone tone, String summary) {
        public Data {
            if (!(share >= 0 && share <= 1 && aim >= 0 && aim <= 1)) {
                throw new IllegalArgumentException("chart: a level and its aim lie between 0 and 1");
            }
            Objects.requireNonNull(tone, "tone");
            Objects.requireNonNull(summary, "summary");
        }
    }

    private final Data data;

    public LevelBar(Data data) {
        super(AccessibleRole.PROGRESS_INDICATOR, 132, 14);
        this.data = data;
        setAccessibleText(data.summary());
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double top = Math.floor(height / 2) - 4;
        pen.box(0, top, width, 8, pen.color(Token.LINE, 0.75));
        pen.box(0, top, data.share() * width, 8, pen.color(data.tone().graphic()));
        double aim = Math.min(width - 1, data.aim() * width);
        pen.line(aim, top - 3, aim, top + 11, 4, pen.color(Token.PANEL));
        pen.line(aim, top - 3, aim, top + 11, 2, pen.color(Token.INK));
    }
}
