package startwater.app.chart;

/** Refuses what cannot be drawn. */
final class Check {
    private Check() {}

    static void finite(String what, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("chart: " + what + " must be a finite number, was " + value);
        }
    }

    static void ordered(String what, double low, double middle, double high) {
        finite(what, low);
        finite(what, middle);
        finite(what, high);
        if (low > high) {
            throw new IllegalArgumentException(
                    "chart: " + what + " has its low end " + low + " above its high " + high);
        }
    }

    static void some(String what, int count) {
        if (count == 0) {
            throw new IllegalArgumentException("chart: needs at least one " + what);
        }
    }
}
