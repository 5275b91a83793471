package startwater.strip;

import java.text.NumberFormat;
import java.util.Locale;

/**
 * The printed scale of a pad: blocks with a value each, and the betweens half way from block to block.
 *
 * <p>A position is counted in blocks, 0 at the first and {@code blocks() - 1} at the last, and may lie anywhere between. A stop
 * is what can be written down: stop 2n is block n, stop 2n+1 the between above it. Values are in the unit of the pad.
 */
public final class Scale {
    private final double[] values;
    private final boolean logarithmic;
    private final int leastDecimals;

    private Scale(double[] values, boolean logarithmic, int leastDecimals) {
        if (values.length < 2) {
            throw new IllegalArgumentException("scale: needs at least two blocks, has " + values.length);
        }
        for (int i = 1; i < values.length; i++) {
            if (!(values[i] > values[i - 1])) {
                throw new IllegalArgumentException("scale: block " + i + " must be above the one before it");
            }
        }
        this.values = values.clone();
        this.logarithmic = logarithmic;
        this.leastDecimals = leastDecimals;
    }

    /** Blocks from zero in preferred numbers; between blocks the scale is logarithmic, below the first step linear. */
    static Scale preferred(double... values) {
        if (values.length > 0 && values[0] != 0.0) {
            throw new IllegalArgumentException("scale: a preferred-number scale starts at 0, not " + values[0]);
        }
        return new Scale(values, true, 0);
    }

    /** Evenly spaced blocks with a linear scale, printed to one decimal. */
    static Scale even(double first, double last, int blocks) {
        double[] values = new double[blocks];
        for (int i = 0; i < blocks; i++) {
            values[i] = StrictMath.rint(10.0 * (first + (last - first) * i / (blocks - 1))) / 10.0;
        }
        return new Scale(values, false, 1);
    }

    public int blocks() {
        return values.length;
    }

    /** How many different readings can be written down: every block and every between. */
    public int stops() {
        return 2 * values.length - 1;
    }

    public double blockValue(int block) {
        if (block < 0 || block >= values.length) {
            throw new IllegalArgumentException("scale: block " + block + " is not in 0.." + (values.length - 1));
        }
        return values[block];
    }

    /** Where a value lies, in blocks, held within the scale's ends. */
    public double position(double value) {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException("scale: value is not a number");
        }
        if (value <= values[0]) {
            return 0.0;
        }
        int last = values.length - 1;
        if (value >= values[last]) {
            return last;
        }
        int below = 0;
        while (values[below + 1] <= value) {
            below++;
        }
        return below + fraction(below, value);
    }

    /** The value at a position; the inverse of {@link #position}. */
    public double value(double position) {
        double held = held(position);
        int below = (int) StrictMath.min(StrictMath.floor(held), values.length - 2);
        double part = held - below;
        double low = values[below];
        double high = values[below + 1];
        if (part == 0.0 || part == 1.0) {
            return part == 0.0 ? low : high;
        }
        return isLogarithmic(below) ? low * StrictMath.pow(high / low, part) : low + part * (high - low);
    }

    /** The stop nearest to a position. */
    public int nearestStop(double position) {
        return (int) StrictMath.floor(2.0 * held(position) + 0.5);
    }

    /** The position of a stop, in blocks. */
    public double stopPosition(int stop) {
        if (stop < 0 || stop >= stops()) {
            throw new IllegalArgumentException("scale: stop " + stop + " is not in 0.." + (stops() - 1));
        }
        return stop / 2.0;
    }

    /** The value a stop stands for; a between sits half way in position. */
    public double stopValue(int stop) {
        return value(stopPosition(stop));
    }

    /** The stop as it is written down: "1", or "1–2" for a between. */
    public String stopText(int stop, Locale locale) {
        stopPosition(stop);
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        format.setGroupingUsed(false);
        format.setMinimumFractionDigits(leastDecimals);
        String lower = format.format(values[stop / 2]);
        return stop % 2 == 0 ? lower : lower + "–" + format.format(values[stop / 2 + 1]);
    }

    private double fraction(int below, double value) {
        double low = values[below];
        double high = values[below + 1];
        return isLogarithmic(below)
                ? StrictMath.log(value / low) / StrictMath.log(high / low)
                : (value - low) / (high - low);
    }

    private boolean isLogarithmic(int below) {
        return logarithmic && values[below] > 0.0;
    }

    private double held(double position) {
        if (Double.isNaN(position)) {
            throw new IllegalArgumentException("scale: position is not a number");
        }
        return StrictMath.max(0.0, StrictMath.min(values.length - 1, position));
    }
}
