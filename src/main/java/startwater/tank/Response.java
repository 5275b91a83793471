package startwater.tank;

/**
 * How one quantity answers over one step: y' = N(t) - L y with L held and N a parabola, solved in closed form with a
 * rational exponential. {@code 1/p(x)} stands for exp(-x), p being its series to the sixth power: positive for every x of
 * 0 or more and without cancellation for small x. The weights of N hang together with p, so that a balance stays put. A
 * scratch pad: worked out once, used by every pass over the step.
 */
final class Response {
    private double keep;
    private double byEnd;
    private double byRise;
    private double byBend;

    /** Takes a loss of {@code loss} per day over {@code dt} days. */
    void over(double loss, double dt) {
        double x = loss * dt;
        double third =
                1.0 / 6 + x * (1.0 / 24 + x * (1.0 / 120 + x * (1.0 / 720 + x * (1.0 / 5040 + x * (1.0 / 40320)))));
        double second = 1.0 / 2 + x * third;
        double first = 1 + x * second;
        double left = 1 / (1 + x * first);
        double scale = dt * left;
        keep = left;
        byEnd = scale * first;
        byRise = scale * second;
        byBend = 2 * scale * third;
    }

    /**
     * y at the end of the step.
     *
     * @param end N there
     * @param rise how much N rises over the step
     * @param bend four times by how much the middle of N lies over the line from start to end
     */
    double end(double y, double end, double rise, double bend) {
        return keep * y + byEnd * end + byRise * (bend - rise) - byBend * bend;
    }

    /** The same with N a straight line. */
    double end(double y, double end, double rise) {
        return keep * y + byEnd * end - byRise * rise;
    }
}
