package startwater.app.theme;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Draws on a canvas in design pixels with the colours and the type of a {@link Look}. */
public final class Pen {
    /** Sizes of type in design pixels. */
    public static final double LABEL = 13;

    public static final double TEXT = 15;
    public static final double SENTENCE = 18;

    private final GraphicsContext gc;
    private final Look look;

    private Pen(GraphicsContext gc, Look look) {
        this.gc = gc;
        this.look = look;
    }

    /** A pen on a cleaned canvas. */
    static Pen on(Canvas canvas, Look look) {
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.setTransform(1, 0, 0, 1, 0, 0);
        gc.clearRect(0, 0, canvas.getWidth(), canvas.getHeight());
        gc.scale(look.scale(), look.scale());
        gc.setTextBaseline(VPos.BASELINE);
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineJoin(StrokeLineJoin.ROUND);
        gc.setGlobalAlpha(1);
        return new Pen(gc, look);
    }

    /** The drawing surface itself, for paths. */
    public GraphicsContext gc() {
        return gc;
    }

    public Color color(Token token) {
        return look.color(token);
    }

    /** A token's colour, thinned to an opacity of 0 to 1. */
    public Color color(Token token, double opacity) {
        return look.color(token).deriveColor(0, 1, 1, opacity);
    }

    public Theme theme() {
        return look.theme();
    }

    /** How wide a text is, in design pixels. */
    public double width(String text, double size, boolean strong) {
        return measure(text, look.font(size, strong));
    }

    /** Text on its base line, from {@code x} to the right. */
    public void text(String text, double x, double baseline, double size, boolean strong, Color color) {
        text(text, x, baseline, size, strong, color, TextAlignment.LEFT);
    }

    /** Text on its base line, aligned at {@code x}. */
    public void text(
            String text, double x, double baseline, double size, boolean strong, Color color, TextAlignment align) {
        gc.setFont(look.font(size, strong));
        gc.setFill(color);
        gc.setTextAlign(align);
        gc.fillText(text, x, baseline);
    }

    /** The text broken into lines no wider than {@code width}; a word is never broken. */
    public List<String> wrap(String text, double width, double size, boolean strong) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.strip().split("\\s+")) {
            if (line.length() > 0 && width(line + " " + word, size, strong) > width) {
                lines.add(line.toString());
                line.setLength(0);
            }
            line.append(line.length() > 0 ? " " : "").append(word);
        }
        lines.add(line.toString());
        return lines;
    }

    /** The text if it fits, else as much as fits with an ellipsis. */
    public String fitted(String text, double width, double size, boolean strong) {
        if (width(text, size, strong) <= width) {
            return text;
        }
        int end = text.length();
        while (end > 1 && width(text.substring(0, end).stripTrailing() + "…", size, strong) > width) {
            end--;
        }
        return text.substring(0, end).stripTrailing() + "…";
    }

    /** A straight line. */
    public void line(double x1, double y1, double x2, double y2, double thickness, Color color) {
        gc.setStroke(color);
        gc.setLineWidth(thickness);
        gc.strokeLine(x1, y1, x2, y2);
    }

    /** A broken line. */
    public void dashed(double x1, double y1, double x2, double y2, double thickness, Color color, double... dashes) {
        gc.setLineDashes(dashes);
        line(x1, y1, x2, y2, thickness, color);
        gc.setLineDashes();
    }

    /** A level line one unit thick, on whole pixels. */
    public void level(double x1, double x2, double y, Color color) {
        line(x1, crisp(y), x2, crisp(y), 1, color);
    }

    /** An upright line one unit thick, on whole pixels. */
    public void upright(double x, double y1, double y2, Color color) {
        line(crisp(x), y1, crisp(x), y2, 1, color);
    }

    public void box(double x, double y, double width, double height, Color color) {
        gc.setFill(color);
        gc.fillRect(x, y, width, height);
    }

    /** An outline of the given thickness, inside the box. */
    public void frame(double x, double y, double width, double height, double thickness, Color color) {
        gc.setStroke(color);
        gc.setLineWidth(thickness);
        gc.strokeRect(x + thickness / 2, y + thickness / 2, width - thickness, height - thickness);
    }

    public void dot(double x, double y, double radius, Color color) {
        gc.setFill(color);
        gc.fillOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    public void ring(double x, double y, double radius, double thickness, Color color) {
        gc.setStroke(color);
        gc.setLineWidth(thickness);
        gc.strokeOval(x - radius, y - radius, 2 * radius, 2 * radius);
    }

    public void square(double x, double y, double half, Color color) {
        box(x - half, y - half, 2 * half, 2 * half, color);
    }

    /** A filled shape of straight sides; x and y in turn. */
    public void polygon(Color color, double... points) {
        path(points);
        gc.closePath();
        gc.setFill(color);
        gc.fill();
    }

    /** A line through points; x and y in turn. */
    public void polyline(double thickness, Color color, double... points) {
        path(points);
        gc.setStroke(color);
        gc.setLineWidth(thickness);
        gc.stroke();
    }

    /**
     * Slanting lines every {@code gap} units inside an area of straight sides; x and y in turn. Each line is cut at the sides
     * rather than clipped, which would be dear without a graphics card.
     */
    public void hatch(double gap, double thickness, Color color, double... points) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int i = 0; i + 1 < points.length; i += 2) {
            low = Math.min(low, points[i] + points[i + 1]);
            high = Math.max(high, points[i] + points[i + 1]);
        }
        for (double sum = Math.ceil(low / gap) * gap; sum < high; sum += gap) {
            double[] xs = crossings(sum, points);
            for (int i = 0; i + 1 < xs.length; i += 2) {
                line(xs[i], sum - xs[i], xs[i + 1], sum - xs[i + 1], thickness, color);
            }
        }
    }

    /** Where the line x + y = sum crosses the sides of an area, from left to right. */
    static double[] crossings(double sum, double... points) {
        double[] xs = new double[points.length / 2];
        int count = 0;
        for (int i = 0; i + 1 < points.length; i += 2) {
            int next = (i + 2) % points.length;
            double here = points[i] + points[i + 1] - sum;
            double there = points[next] + points[next + 1] - sum;
            if ((here < 0) != (there < 0)) {
                xs[count++] = points[i] + here / (here - there) * (points[next] - points[i]);
            }
        }
        double[] found = Arrays.copyOf(xs, count);
        Arrays.sort(found);
        return found;
    }

    /** The same inside a box. */
    public void hatchBox(double x, double y, double width, double height, double gap, double thickness, Color color) {
        hatch(gap, thickness, color, x, y, x + width, y, x + width, y + height, x, y + height);
    }

    /** The middle of the whole pixel that holds {@code at}. */
    public static double crisp(double at) {
        return Math.floor(at) + 0.5;
    }

    /** Two colours mixed; {@code share} of the second. */
    public static Color mix(Color first, Color second, double share) {
        return first.interpolate(second, share);
    }

    private void path(double... points) {
        gc.beginPath();
        gc.moveTo(points[0], points[1]);
        for (int i = 2; i + 1 < points.length; i += 2) {
            gc.lineTo(points[i], points[i + 1]);
        }
    }

    private static double measure(String text, Font font) {
        Text probe = new Text(text);
        probe.setFont(font);
        return probe.getLayoutBounds().getWidth();
    }
}
