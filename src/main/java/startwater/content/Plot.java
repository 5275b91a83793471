package startwater.content;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import startwater.quantity.RoundStep;

/**
 * What a figure shows for one set of inputs: numbers and keys of words, drawn alike on a screen and on paper.
 *
 * @param x the axis along the bottom
 * @param y the axis up the side
 * @param lines what is drawn, the most important first
 * @param levels level lines to hold the others against
 * @param at where the inputs stand
 * @param said key of the sentence that says it
 * @param numbers what the sentence is filled with
 */
public record Plot(
        Axis x, Axis y, List<Line> lines, List<Level> levels, List<Point> at, String said, List<Double> numbers) {
    public Plot {
        lines = List.copyOf(lines);
        levels = List.copyOf(levels);
        at = List.copyOf(at);
        numbers = List.copyOf(numbers);
    }

    /**
     * An axis.
     *
     * @param key of its name
     * @param low its value at the start
     * @param high its value at the end
     * @param logarithmic whether equal steps are equal factors
     * @param ticks where numbers stand
     */
    public record Axis(String key, double low, double high, boolean logarithmic, List<Double> ticks) {
        public Axis {
            ticks = List.copyOf(ticks);
        }

        /** From {@code low} to {@code high} with round numbers between. */
        static Axis even(String key, double low, double high) {
            double step = RoundStep.of((high - low) / MOST_STEPS);
            List<Double> ticks = new ArrayList<>();
            for (double n = StrictMath.ceil(low / step - 1e-9); n * step <= high + 1e-9 * step; n++) {
                ticks.add(n * step);
            }
            return new Axis(key, low, high, false, ticks);
        }

        /** From zero up to a round number that holds {@code highest}. */
        static Axis fromZero(String key, double highest) {
            double most = Math.max(highest, 1e-6);
            double step = RoundStep.of(most / MOST_STEPS);
            return even(key, 0, step * StrictMath.ceil(most / step - 1e-9));
        }

        /** A logarithmic axis with the numbers 1-2-5. */
        static Axis logarithmic(String key, double low, double high) {
            List<Double> ticks = new ArrayList<>();
            for (double ten = StrictMath.pow(10, StrictMath.floor(StrictMath.log10(low))); ten <= high; ten *= 10) {
                for (int step : new int[] {1, 2, 5}) {
                    if (step * ten >= low * (1 - 1e-9) && step * ten <= high * (1 + 1e-9)) {
                        ticks.add(step * ten);
                    }
                }
            }
            return new Axis(key, low, high, true, ticks);
        }

        /** Where a value lies, 0 at the start and 1 at the end, held within. */
        public double part(double value) {
            double part = logarithmic
                    ? StrictMath.log(Math.max(value, low) / low) / StrictMath.log(high / low)
                    : (value - low) / (high - low);
            return Math.max(0, Math.min(1, part));
        }

        /** Decimals that the numbers need. */
        public int decimals() {
            double least = ticks.size() < 2 ? 1 : ticks.get(1) - ticks.get(0);
            return least >= 1 ? 0 : (int) StrictMath.ceil(-StrictMath.log10(least) - 1e-9);
        }
    }

    private static final double MOST_STEPS = 6;

    /**
     * A line.
     *
     * @param key of its name; empty where it needs none
     * @param points from left to right
     * @param dots whether each point is marked
     */
    public record Line(String key, List<Point> points, boolean dots) {
        public Line {
            points = List.copyOf(points);
        }

        /** Its height over a place of the axis below, straight between its points; empty beyond its ends. */
        public OptionalDouble at(double x) {
            for (int i = 1; i < points.size(); i++) {
                Point from = points.get(i - 1);
                Point to = points.get(i);
                if (from.x() <= x && x <= to.x()) {
                    double part = to.x() > from.x() ? (x - from.x()) / (to.x() - from.x()) : 0;
                    return OptionalDouble.of(from.y() + part * (to.y() - from.y()));
                }
            }
            return OptionalDouble.empty();
        }
    }

    /** @param key of its name, @param value on the axis up the side */
    public record Level(String key, double value) {}

    public record Point(double x, double y) {}
}
