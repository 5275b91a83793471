package startwater.app.view.part;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * Draws one fish from a few measures of its kind. Along the body s runs from 0 at the snout to 1 at the tips of the tail; all
 * measures are shares of the length. Our own drawing.
 */
final class FishFigure {
    private static final double[] PLACES = {0, 0.035, 0.09, 0.17, 0.28, 0.41, 0.54, 0.67, 0.79};

    private final GraphicsContext gc;
    private final Kind kind;
    private final boolean clamped;
    private final double bend;
    private final double phase;
    private final Color back;
    private final Color flank;
    private final Color belly;
    private final Color line;
    private final double hair;

    private enum Kind {
        CATFISH(
                new double[] {0.012, 0.034, 0.056, 0.078, 0.092, 0.086, 0.070, 0.050, 0.034},
                new double[] {0.012, 0.032, 0.048, 0.064, 0.080, 0.076, 0.060, 0.043, 0.032}),
        TILAPIA(
                new double[] {0.012, 0.052, 0.100, 0.150, 0.182, 0.176, 0.142, 0.092, 0.056},
                new double[] {0.012, 0.044, 0.076, 0.112, 0.142, 0.136, 0.106, 0.070, 0.050});

        private final double[] upper;
        private final double[] lower;

        Kind(double[] upper, double[] lower) {
            this.upper = upper;
            this.lower = lower;
        }
    }

    private FishFigure(
            Pen pen, Swimmer swimmer, TankLook.Shape shape, boolean clamped, double phase, double fade, double pallor) {
        this.gc = pen.gc();
        this.kind = shape == TankLook.Shape.TILAPIA ? Kind.TILAPIA : Kind.CATFISH;
        this.clamped = clamped;
        this.bend = clamped ? 0.018 : 0.040;
        this.phase = phase;
        Color water = TankBody.waterColor(pen);
        Color pale = pen.color(Token.FISH_BELLY);
        this.back = Pen.mix(Pen.mix(pen.color(Token.FISH_BACK), pale, 0.7 * pallor), water, fade);
        this.flank = Pen.mix(Pen.mix(pen.color(Token.FISH_FLANK), pale, pallor), water, fade);
        this.belly = Pen.mix(pale, water, fade);
        this.line = Pen.mix(pen.color(Token.FISH_LINE), water, fade);
        this.hair = 0.9 / swimmer.length();
    }

    /** A living fish; {@code fade} is the share of water colour mixed in. */
    static void paint(Pen pen, Swimmer swimmer, TankLook.Shape shape, boolean clamped, double phase, double fade) {
        GraphicsContext gc = pen.gc();
        gc.save();
        gc.translate(swimmer.x(), swimmer.y());
        gc.rotate(-swimmer.direction() * swimmer.noseUpDegrees());
        gc.scale(swimmer.direction() * swimmer.length(), swimmer.length());
        new FishFigure(pen, swimmer, shape, clamped, phase, fade, 0.0).draw(true);
        gc.restore();
    }

    /** A dead fish, belly up. */
    static void paintDead(Pen pen, Swimmer swimmer, TankLook.Shape shape) {
        GraphicsContext gc = pen.gc();
        gc.save();
        gc.translate(swimmer.x(), swimmer.y());
        gc.rotate(-swimmer.direction() * swimmer.noseUpDegrees());
        gc.scale(swimmer.direction() * swimmer.length(), -swimmer.length());
        new FishFigure(pen, swimmer, shape, true, swimmer.phase(), 0.0, 0.75).draw(false);
        gc.restore();
    }

    private void draw(boolean alive) {
        if (kind == Kind.CATFISH) {
            catfishFins();
        } else {
            tilapiaFins();
        }
        body();
        if (kind == Kind.TILAPIA) {
            bars();
        }
        head(alive);
        pectoral();
        if (kind == Kind.CATFISH) {
            barbels();
        }
    }

    private void body() {
        double deep = max(kind.upper);
        outline();
        gc.setFill(new LinearGradient(
                0,
                -deep,
                0,
                max(kind.lower),
                false,
                CycleMethod.NO_CYCLE,
                new Stop(0, back),
                new Stop(0.38, Pen.mix(back, flank, 0.55)),
                new Stop(0.62, Pen.mix(flank, belly, 0.35)),
                new Stop(0.8, belly),
                new Stop(1, belly)));
        gc.fill();
        gc.setStroke(Pen.mix(back, flank, 0.2));
        gc.setLineWidth(0.7 * hair);
        gc.stroke();
    }

    private void outline() {
        int n = PLACES.length;
        double[] xs = new double[2 * n];
        double[] ys = new double[2 * n];
        for (int i = 0; i < n; i++) {
            xs[i] = x(PLACES[i]);
            ys[i] = spine(PLACES[i]) - kind.upper[i];
            xs[2 * n - 1 - i] = xs[i];
            ys[2 * n - 1 - i] = spine(PLACES[i]) + kind.lower[i];
        }
        smooth(xs, ys);
    }

    /** A closed curve that rounds the corners of a many-sided figure. */
    private void smooth(double[] xs, double[] ys) {
        int n = xs.length;
        gc.beginPath();
        gc.moveTo((xs[n - 1] + xs[0]) / 2, (ys[n - 1] + ys[0]) / 2);
        for (int i = 0; i < n; i++) {
            int next = (i + 1) % n;
            gc.quadraticCurveTo(xs[i], ys[i], (xs[i] + xs[next]) / 2, (ys[i] + ys[next]) / 2);
        }
        gc.closePath();
    }

    private void catfishFins() {
        double spread = clamped ? 0.045 : 0.115;
        double root = spine(0.78);
        double tail = spine(1.0);
        fin(0.80, root - 0.030, 0.99, tail - spread, 0.905, tail, 0.99, tail + spread, 0.80, root + 0.030);
        double high = clamped ? 0.035 : 0.125;
        double top = spine(0.33) - 0.086;
        fin(0.29, top, 0.345, top - high, 0.385, top - high, 0.405, top + 0.01, 0.36, top + 0.02);
        double adipose = spine(0.67) - 0.046;
        fin(0.64, adipose, 0.70, adipose - 0.034, 0.725, adipose - 0.012, 0.70, adipose + 0.012, 0.66, adipose + 0.01);
        double anal = clamped ? 0.015 : 0.05;
        double under = spine(0.62) + 0.044;
        fin(
                0.53,
                under + 0.008,
                0.57,
                under + anal,
                0.70,
                under + 0.75 * anal,
                0.735,
                under - 0.006,
                0.63,
                under - 0.01);
        double pelvic = spine(0.47) + 0.068;
        fin(0.44, pelvic, 0.50, pelvic + (clamped ? 0.008 : 0.055), 0.52, pelvic + 0.004, 0.48, pelvic - 0.01);
    }

    private void tilapiaFins() {
        double spread = clamped ? 0.06 : 0.115;
        double root = spine(0.79);
        double tail = spine(1.0);
        fin(0.79, root - 0.05, 0.97, tail - spread, 0.995, tail, 0.97, tail + spread, 0.79, root + 0.045);
        double high = clamped ? 0.02 : 0.062;
        fin(
                0.25, spine(0.25) - 0.165,
                0.31, spine(0.31) - 0.178 - high,
                0.52, spine(0.52) - 0.146 - high,
                0.70, spine(0.70) - 0.082 - 1.5 * high,
                0.735, spine(0.73) - 0.07,
                0.5, spine(0.5) - 0.12);
        double anal = clamped ? 0.02 : 0.075;
        fin(
                0.55, spine(0.55) + 0.09,
                0.62, spine(0.62) + 0.085 + anal,
                0.725, spine(0.72) + 0.052 + anal,
                0.735, spine(0.73) + 0.05,
                0.62, spine(0.62) + 0.07);
        double pelvic = spine(0.36) + 0.13;
        fin(0.32, pelvic - 0.005, 0.43, pelvic + (clamped ? 0.012 : 0.075), 0.45, pelvic + 0.01, 0.38, pelvic - 0.02);
    }

    private void pectoral() {
        double root = kind == Kind.CATFISH ? spine(0.2) + 0.046 : spine(0.27) + 0.035;
        double at = kind == Kind.CATFISH ? 0.19 : 0.26;
        double down = clamped ? 0.012 : 0.072;
        fin(at, root - 0.008, at + 0.115, root + down, at + 0.135, root + 0.55 * down, at + 0.03, root + 0.016);
    }

    /** A fin through points; s and y in turn. */
    private void fin(double... points) {
        gc.beginPath();
        gc.moveTo(x(points[0]), points[1]);
        for (int i = 2; i < points.length; i += 2) {
            gc.lineTo(x(points[i]), points[i + 1]);
        }
        gc.closePath();
        Color skin = Pen.mix(back, flank, 0.55);
        gc.setFill(skin);
        gc.fill();
        gc.setStroke(skin);
        gc.setLineWidth(1.4 * hair);
        gc.stroke();
    }

    /** Faint bars from the back to the middle of the flank. */
    private void bars() {
        gc.setStroke(back.deriveColor(0, 1, 1, 0.22));
        gc.setLineWidth(0.03);
        for (int i = 4; i < PLACES.length; i++) {
            bar(PLACES[i], kind.upper[i]);
            bar((PLACES[i - 1] + PLACES[i]) / 2, (kind.upper[i - 1] + kind.upper[i]) / 2);
        }
    }

    private void bar(double s, double upper) {
        gc.strokeLine(x(s), spine(s) - 0.88 * upper, x(s), spine(s) + 0.3 * upper);
    }

    private void head(boolean alive) {
        double eyeS = kind == Kind.CATFISH ? 0.095 : 0.115;
        double eyeY = spine(eyeS) - (kind == Kind.CATFISH ? 0.016 : 0.036);
        double radius = Math.max(kind == Kind.CATFISH ? 0.015 : 0.021, 0.85 * hair);
        oval(x(eyeS), eyeY, radius, belly);
        oval(x(eyeS), eyeY, 0.72 * radius, alive ? line : flank);
        double gill = kind == Kind.CATFISH ? 0.195 : 0.225;
        double tall = kind == Kind.CATFISH ? 0.046 : 0.085;
        gc.beginPath();
        gc.moveTo(x(gill - 0.015), spine(gill) - 0.7 * tall);
        gc.quadraticCurveTo(x(gill + 0.02), spine(gill), x(gill - 0.03), spine(gill) + tall);
        gc.setStroke(line.deriveColor(0, 1, 1, 0.5));
        gc.setLineWidth(hair);
        gc.stroke();
    }

    private void oval(double cx, double cy, double radius, Color color) {
        gc.setFill(color);
        gc.fillOval(cx - radius, cy - radius, 2 * radius, 2 * radius);
    }

    private void barbels() {
        double droop = clamped ? 0.4 : 1.0;
        gc.setStroke(back);
        gc.setLineWidth(hair);
        barbel(0.025, 0.004, -0.02, 0.05, 0.075, 0.10 * droop);
        barbel(0.05, 0.030, 0.035, 0.075, 0.085, 0.085 * droop + 0.02);
        barbel(0.02, -0.010, -0.035, -0.030, -0.055, -0.012);
    }

    private void barbel(double s, double y, double handleS, double handleY, double endS, double endY) {
        gc.beginPath();
        gc.moveTo(x(s), spine(s) + y);
        gc.quadraticCurveTo(x(handleS), spine(s) + handleY, x(endS), spine(s) + endY);
        gc.stroke();
    }

    private static double x(double s) {
        return 0.5 - s;
    }

    /** The body's own wave, larger towards the tail. */
    private double spine(double s) {
        return bend * s * s * Math.sin(phase - 5.2 * s);
    }

    private static double max(double[] values) {
        double max = 0;
        for (double value : values) {
            max = Math.max(max, value);
        }
        return max;
    }
}
