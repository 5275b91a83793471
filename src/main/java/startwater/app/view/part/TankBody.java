package startwater.app.view.part;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Stop;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;

/**
 * The round tank, cut through the middle: behind the cut one sees the far half of the water's surface and of the rim. The floor
 * falls to a drain in the middle.
 *
 * @param left of the water, in design pixels
 * @param surface the water's level at the cut
 * @param floor where the wall meets the floor
 * @param bulge how far the far half of a level circle rises above the cut
 */
record TankBody(double left, double right, double rim, double surface, double floor, double drain, double bulge) {
    private static final double WALL = 3;
    private static final double FREEBOARD = 0.09;

    static TankBody within(double width, double height, double waterFraction) {
        double bulge = Math.max(4, 0.032 * width);
        double rim = bulge + 3;
        double drain = height - 6;
        double floor = drain - Math.max(5, 0.045 * height);
        double full = rim + FREEBOARD * (floor - rim);
        double surface = floor - waterFraction * (floor - full);
        return new TankBody(8 + WALL, width - 8 - WALL, rim, surface, floor, drain, bulge);
    }

    double middle() {
        return (left + right) / 2;
    }

    double width() {
        return right - left;
    }

    double depth() {
        return floor - surface;
    }

    /** The colour of the water half way down, into which far things fade. */
    static Color waterColor(Pen pen) {
        return Pen.mix(pen.color(Token.WATER_TOP), pen.color(Token.WATER_DEEP), 0.5);
    }

    void paintBack(Pen pen, double haze) {
        GraphicsContext gc = pen.gc();
        gc.beginPath();
        gc.moveTo(left, surface);
        gc.lineTo(left, rim);
        farHalf(gc, rim);
        gc.lineTo(right, surface);
        gc.closePath();
        gc.setFill(Pen.mix(pen.color(Token.PAPER), pen.color(Token.WASH), 0.9));
        gc.fill();
        gc.beginPath();
        gc.moveTo(left, rim);
        farHalf(gc, rim);
        gc.setStroke(pen.color(Token.TANK_WALL, 0.75));
        gc.setLineWidth(1.25);
        gc.stroke();
        paintWater(pen, haze);
    }

    private void paintWater(Pen pen, double haze) {
        GraphicsContext gc = pen.gc();
        waterPath(gc);
        gc.setFill(new LinearGradient(
                0,
                surface,
                0,
                drain,
                false,
                CycleMethod.NO_CYCLE,
                new Stop(0, pen.color(Token.WATER_TOP)),
                new Stop(1, pen.color(Token.WATER_DEEP))));
        gc.fill();
        gc.beginPath();
        gc.moveTo(left, floor);
        farHalf(gc, floor);
        gc.lineTo(middle() + 10, drain);
        gc.lineTo(middle() - 10, drain);
        gc.closePath();
        gc.setFill(pen.color(Token.TANK_WALL, 0.16 * (1 - haze)));
        gc.fill();
        gc.beginPath();
        gc.moveTo(left, floor);
        farHalf(gc, floor);
        gc.setStroke(pen.color(Token.TANK_WALL, 0.45 * (1 - haze)));
        gc.setLineWidth(1);
        gc.stroke();
    }

    /** The far half of the surface and the line where the cut meets it. */
    void paintSurface(Pen pen, double seconds) {
        GraphicsContext gc = pen.gc();
        gc.beginPath();
        gc.moveTo(left, surface);
        farHalf(gc, surface);
        gc.closePath();
        gc.setFill(pen.color(Token.WATER_SKIN));
        gc.fill();
        gc.beginPath();
        gc.moveTo(left, surface);
        farHalf(gc, surface);
        gc.setStroke(pen.color(Token.RIPPLE, 0.6));
        gc.setLineWidth(1);
        gc.stroke();
        gc.beginPath();
        for (double x = left; x <= right; x += 4) {
            double y = surface + 0.7 * Math.sin(x / 9.0 + 2.1 * seconds) + 0.5 * Math.sin(x / 23.0 - 1.3 * seconds);
            if (x == left) {
                gc.moveTo(x, y);
            } else {
                gc.lineTo(x, y);
            }
        }
        gc.lineTo(right, surface);
        gc.setStroke(pen.color(Token.RIPPLE));
        gc.setLineWidth(1.25);
        gc.stroke();
    }

    void paintWall(Pen pen) {
        GraphicsContext gc = pen.gc();
        double half = WALL / 2;
        gc.beginPath();
        gc.moveTo(left - half - 5, rim);
        gc.lineTo(left - half, rim);
        gc.lineTo(left - half, floor + 1);
        gc.lineTo(middle() - 11, drain + half);
        gc.lineTo(middle() + 11, drain + half);
        gc.lineTo(right + half, floor + 1);
        gc.lineTo(right + half, rim);
        gc.lineTo(right + half + 5, rim);
        gc.setStroke(pen.color(Token.TANK_WALL));
        gc.setLineWidth(WALL);
        gc.stroke();
        for (double x = middle() - 8; x <= middle() + 8; x += 4) {
            pen.line(x, drain - 1, x, drain - 4, 1.25, pen.color(Token.TANK_WALL, 0.8));
        }
    }

    /** The outline of the cut water. */
    void waterPath(GraphicsContext gc) {
        gc.beginPath();
        gc.moveTo(left, surface);
        gc.lineTo(left, floor);
        gc.lineTo(middle() - 10, drain);
        gc.lineTo(middle() + 10, drain);
        gc.lineTo(right, floor);
        gc.lineTo(right, surface);
        gc.closePath();
    }

    private void farHalf(GraphicsContext gc, double level) {
        double handle = 0.5523 * width() / 2;
        gc.bezierCurveTo(left, level - 0.5523 * bulge, middle() - handle, level - bulge, middle(), level - bulge);
        gc.bezierCurveTo(middle() + handle, level - bulge, right, level - 0.5523 * bulge, right, level);
    }
}
