package startwater.app.chart;

import java.util.ArrayList;
import java.util.List;
import startwater.app.theme.Pen;

/** Draws one path of the fan and knows where its lines run. */
final class FanBand {
    private FanBand() {}

    /** The own band is tinted and hatched, the best one outlined. */
    static void paintBand(Pen pen, FanChart.Path path, Axis x, Axis y, Tone tone) {
        double[] band = band(path, x, y);
        if (tone == Tone.OWN) {
            pen.polygon(pen.color(tone.graphic(), 0.16), band);
            pen.hatch(7, 1, pen.color(tone.graphic(), 0.55), band);
        } else {
            pen.polygon(pen.color(tone.graphic(), 0.14), band);
            for (double[] edge : edges(path, x, y)) {
                pen.polyline(1, pen.color(tone.graphic()), edge);
            }
        }
    }

    static void paintLine(Pen pen, FanChart.Path path, Axis x, Axis y, Tone tone) {
        pen.polyline(2.5, pen.color(tone.graphic()), line(path, x, y));
    }

    /** The middle of the path; x and y in turn. */
    static double[] line(FanChart.Path path, Axis x, Axis y) {
        List<FanChart.Point> points = path.points();
        double[] line = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            line[2 * i] = x.at(points.get(i).day());
            line[2 * i + 1] = y.at(points.get(i).middle());
        }
        return line;
    }

    /** The low and the high edge of the band. */
    static List<double[]> edges(FanChart.Path path, Axis x, Axis y) {
        List<FanChart.Point> points = path.points();
        double[] low = new double[2 * points.size()];
        double[] high = new double[2 * points.size()];
        for (int i = 0; i < points.size(); i++) {
            low[2 * i] = x.at(points.get(i).day());
            high[2 * i] = low[2 * i];
            low[2 * i + 1] = y.at(points.get(i).low());
            high[2 * i + 1] = y.at(points.get(i).high());
        }
        return List.of(low, high);
    }

    /** Places on the path a label may point to, from its most telling part outwards; x and y in turn. */
    static double[] anchors(FanChart.Path path, Axis x, Axis y) {
        double[] line = line(path, x, y);
        List<Double> anchors = new ArrayList<>();
        for (double share : new double[] {0.42, 0.34, 0.5, 0.26, 0.58, 0.66, 0.18, 0.75, 0.85}) {
            double at = x.from() + share * (x.to() - x.from());
            for (int i = 0; i + 3 < line.length; i += 2) {
                if (line[i] <= at && at <= line[i + 2] && line[i + 2] > line[i]) {
                    double part = (at - line[i]) / (line[i + 2] - line[i]);
                    anchors.add(at);
                    anchors.add(line[i + 1] + part * (line[i + 3] - line[i + 1]));
                    break;
                }
            }
        }
        return anchors.isEmpty()
                ? new double[] {line[0], line[1]}
                : anchors.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double[] band(FanChart.Path path, Axis x, Axis y) {
        List<double[]> edges = edges(path, x, y);
        double[] low = edges.get(0);
        double[] high = edges.get(1);
        double[] band = new double[low.length + high.length];
        System.arraycopy(low, 0, band, 0, low.length);
        for (int i = 0; i < high.length; i += 2) {
            band[low.length + i] = high[high.length - 2 - i];
            band[low.length + i + 1] = high[high.length - 1 - i];
        }
        return band;
    }
}
