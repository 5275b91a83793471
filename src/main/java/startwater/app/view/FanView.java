package startwater.app.view;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.text.TextAlignment;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;
import startwater.score.Verdict;
import startwater.score.Verdict.Band;

/** How the deciding variable goes on: own choice and best, each with the band of eight tanks in ten, and where harm begins. */
final class FanView extends Painted {
    private static final double LEFT = 40;
    private static final double TOP = 10;
    private static final double BOTTOM = 28;

    private final Verdict.Path path;
    private final Words words;

    /** What is printed on the chart. @param days labels of the days from the visit on */
    record Words(String own, String best, String harm, String returns, List<String> days) {}

    FanView(Verdict.Path path, Words words, String spoken) {
        super(AccessibleRole.IMAGE_VIEW, 592, 280);
        this.path = path;
        this.words = words;
        setAccessibleText(spoken);
    }

    @Override
    protected void paint(Pen pen, double width, double height) {
        double right = width - 12;
        double floor = height - BOTTOM;
        double end = path.hours().get(path.hours().size() - 1);
        double most = path.guidance() * 1.25;
        for (int i = 0; i < path.hours().size(); i++) {
            most = Math.max(
                    most, Math.max(path.own().get(i).high(), path.best().get(i).middle()));
        }
        double step = OptionBars.step(most);
        double top = Math.ceil(most * 1.05 / step) * step;
        Scale at = new Scale(LEFT, right, TOP, floor, end, top);
        var g = pen.gc();
        boolean downwards = path.variable() == Verdict.Variable.OXYGEN;
        double harm = at.y(Math.min(top, path.guidance()));
        g.setFill(pen.color(Token.DANGER, 0.08));
        g.fillRect(LEFT, downwards ? harm : TOP, right - LEFT, downwards ? floor - harm : harm - TOP);
        for (double tick = 0; tick <= top + step / 2; tick += step) {
            g.setStroke(pen.color(Token.LINE));
            g.strokeLine(LEFT, at.y(tick), right, at.y(tick));
            pen.text(tick(tick), LEFT - 6, at.y(tick) + 4, 13, false, pen.color(Token.QUIET), TextAlignment.RIGHT);
        }
        for (int day = 0; day < words.days().size() && day * 24 <= end; day++) {
            pen.text(
                    words.days().get(day),
                    at.x(day * 24),
                    floor + 18,
                    13,
                    false,
                    pen.color(Token.QUIET),
                    day == 0 ? TextAlignment.LEFT : TextAlignment.CENTER);
        }
        g.setStroke(pen.color(Token.DANGER));
        g.strokeLine(LEFT, harm, right, harm);
        band(pen, at, path.best(), Token.BEST, false);
        band(pen, at, path.own(), Token.OWN, true);
        line(pen, at, path.best(), Token.BEST);
        line(pen, at, path.own(), Token.OWN);
        g.setStroke(pen.color(Token.INK));
        g.setLineDashes(2, 4);
        g.strokeLine(at.x(path.returnHours()), TOP, at.x(path.returnHours()), floor);
        g.setLineDashes();
        labels(pen, at, right, harm, downwards);
    }

    private void labels(Pen pen, Scale at, double right, double harm, boolean downwards) {
        pen.text(
                words.harm(),
                right - 6,
                harm + (downwards ? 16 : -5),
                13,
                true,
                pen.color(Token.DANGER),
                TextAlignment.RIGHT);
        pen.text(words.returns(), at.x(path.returnHours()) + 6, TOP + 14, 13, false, pen.color(Token.QUIET));
        int third = path.hours().size() / 4;
        double own = at.y(path.own().get(third).middle());
        double best = at.y(path.best().get(third).middle());
        boolean ownAbove = own <= best;
        double ownY = clear(own + (ownAbove ? -10 : 20));
        double bestY = clear(best + (ownAbove ? 20 : -10));
        if (Math.abs(ownY - bestY) < 17) {
            bestY = ownY + (ownAbove ? 17 : -17);
        }
        double x = at.x(path.hours().get(third));
        pen.text(words.own(), x, ownY, 13, true, pen.color(Token.OWN_TEXT));
        pen.text(words.best(), x, bestY, 13, true, pen.color(Token.BEST));
    }

    private double clear(double y) {
        double height = getHeight() / scale();
        return Math.max(TOP + 32, Math.min(height - BOTTOM - 6, y));
    }

    private void band(Pen pen, Scale at, List<Band> bands, Token token, boolean filled) {
        int n = bands.size();
        double[] x = new double[2 * n];
        double[] y = new double[2 * n];
        for (int i = 0; i < n; i++) {
            x[i] = at.x(path.hours().get(i));
            y[i] = at.y(bands.get(i).high());
            x[2 * n - 1 - i] = x[i];
            y[2 * n - 1 - i] = at.y(bands.get(i).low());
        }
        var g = pen.gc();
        if (filled) {
            g.setFill(pen.color(token, 0.16));
            g.fillPolygon(x, y, 2 * n);
        } else {
            g.setStroke(pen.color(token, 0.6));
            g.strokePolygon(x, y, 2 * n);
        }
    }

    private void line(Pen pen, Scale at, List<Band> bands, Token token) {
        var g = pen.gc();
        g.setStroke(pen.color(token));
        g.setLineWidth(2.5);
        g.beginPath();
        for (int i = 0; i < bands.size(); i++) {
            double x = at.x(path.hours().get(i));
            double y = at.y(bands.get(i).middle());
            if (i == 0) {
                g.moveTo(x, y);
            } else {
                g.lineTo(x, y);
            }
        }
        g.stroke();
        g.setLineWidth(1);
    }

    private static String tick(double value) {
        return String.valueOf(Math.rint(value * 1000) / 1000);
    }

    private record Scale(double left, double right, double top, double floor, double end, double most) {
        double x(double hours) {
            return left + (right - left) * Math.min(1, hours / end);
        }

        double y(double value) {
            return floor - (floor - top) * Math.max(0, Math.min(1, value / most));
        }
    }
}
