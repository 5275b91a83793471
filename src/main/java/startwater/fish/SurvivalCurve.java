package startwater.fish;

/**
 * How one stressor kills: scaled damage D follows exposure C, dD/dt = killRate (C - D), and the hazard is
 * {@code slope max(0, D - threshold) + lowSlope max(0, D - lowThreshold)} per day.
 *
 * <p>With {@code lowSlope} 0 this is the reduced stochastic-death model of the general unified threshold framework
 * (GUTS-RED-SD). The small second slope is ours: one threshold cannot meet both flat acute LC50s and chronic deaths.
 *
 * @param killRatePerDay dominant rate constant, 1/d
 * @param threshold in the unit of the stressor
 * @param slopePerDay 1/(unit d)
 * @param lowThreshold in the unit of the stressor
 * @param lowSlopePerDay 1/(unit d)
 */
public record SurvivalCurve(
        double killRatePerDay, double threshold, double slopePerDay, double lowThreshold, double lowSlopePerDay) {
    public SurvivalCurve {
        if (!(killRatePerDay > 0) || !(threshold >= 0) || !(slopePerDay >= 0) || !(lowSlopePerDay >= 0)) {
            throw new IllegalArgumentException("A survival curve needs a positive rate and no negative slopes: "
                    + killRatePerDay + ", " + threshold + ", " + slopePerDay + ", " + lowSlopePerDay);
        }
    }

    /** A plain curve with one threshold. */
    public static SurvivalCurve plain(double killRatePerDay, double threshold, double slopePerDay) {
        return new SurvivalCurve(killRatePerDay, threshold, slopePerDay, threshold, 0);
    }

    /** Hazard, 1/d, at scaled damage {@code damage}, with both thresholds multiplied by {@code scale}. */
    public double hazardPerDay(double damage, double scale) {
        double over = damage - threshold * scale;
        double overLow = damage - lowThreshold * scale;
        return (over > 0 ? slopePerDay * over : 0) + (overLow > 0 ? lowSlopePerDay * overLow : 0);
    }

    /**
     * Cumulative hazard after {@code days} at constant exposure from an unharmed start, in closed form.
     *
     * @param exposure constant exposure, unit of the stressor
     */
    public double cumulativeHazard(double exposure, double days) {
        return slopePerDay * excessIntegral(exposure, threshold, days)
                + (lowSlopePerDay > 0 ? lowSlopePerDay * excessIntegral(exposure, lowThreshold, days) : 0);
    }

    /** The integral of max(0, D - z) over {@code days} at constant exposure. */
    double excessIntegral(double exposure, double z, double days) {
        if (exposure <= z) {
            return 0;
        }
        double start = z <= 0 ? 0 : -StrictMath.log(1 - z / exposure) / killRatePerDay;
        if (days <= start) {
            return 0;
        }
        return (exposure - z) * (days - start)
                - exposure
                        * (StrictMath.exp(-killRatePerDay * start) - StrictMath.exp(-killRatePerDay * days))
                        / killRatePerDay;
    }

    /** The constant exposure that kills half in {@code days}, by bisection on the closed form. */
    public double lc50(double days) {
        double low = 0;
        double high = Math.max(1, threshold * 2);
        while (cumulativeHazard(high, days) < LN2) {
            high *= 2;
        }
        for (int i = 0; i < 200; i++) {
            double middle = (low + high) / 2;
            if (cumulativeHazard(middle, days) < LN2) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }

    /** The slope that makes {@code exposure} kill half in {@code days}; thresholds and the second slope are given. */
    public static double slopeForLc50(
            double killRatePerDay,
            double threshold,
            double lowThreshold,
            double lowSlopePerDay,
            double exposure,
            double days) {
        SurvivalCurve base = new SurvivalCurve(killRatePerDay, threshold, 1, lowThreshold, lowSlopePerDay);
        return (LN2 - lowSlopePerDay * base.excessIntegral(exposure, lowThreshold, days))
                / base.excessIntegral(exposure, threshold, days);
    }

    private static final double LN2 = StrictMath.log(2);
}
