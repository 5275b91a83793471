package startwater.app.chart;

import java.text.NumberFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import startwater.quantity.RoundStep;

/**
 * A linear axis from one value to another, with ticks in steps of 1, 2 or 5.
 *
 * @param low value at {@code from}
 * @param high value at {@code to}
 * @param from place of the low end, in design pixels
 * @param to place of the high end
 */
record Axis(double low, double high, double from, double to) {
    double at(double value) {
        return high == low ? from : from + (value - low) / (high - low) * (to - from);
    }

    /** The step of 1, 2 or 5 times a power of ten that gives at most {@code most} steps over a range. */
    static double step(double range, int most) {
        return RoundStep.of(Math.max(range, 1e-9) / most);
    }

    /** Multiples of the step from the low end to the high end. */
    static List<Double> ticks(double low, double high, double step) {
        List<Double> ticks = new ArrayList<>();
        for (long i = (long) Math.ceil(low / step - 1e-9); i * step <= high + 1e-9 * step; i++) {
            ticks.add(i * step);
        }
        return ticks;
    }

    /** A tick as text: as many decimals as the step needs. */
    static String text(double value, double step, Locale locale) {
        NumberFormat format = NumberFormat.getNumberInstance(locale);
        int decimals = (int) Math.max(0, Math.ceil(-Math.log10(step) - 1e-9));
        format.setMinimumFractionDigits(decimals);
        format.setMaximumFractionDigits(decimals);
        return format.format(value == 0 ? 0.0 : value);
    }
}
