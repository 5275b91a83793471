package startwater.fish;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

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
    private static final String EQUATION = "GUTS-RED-SD";
    private static final String SOURCE =
            "Jager and Ashauer 2018; EFSA 2018, doi:10.2903/j.efsa.2018.5377: parameters are not negative";
    /** A finite number that stands for "no bound" in the unit of a stressor. */
    private static final double LARGE = 1e9;
    /** Dominant rate constants, 1/d; under the least, damage would not follow exposure within ten thousand days. */
    public static final Validity KILL_RATE_PER_DAY = new Validity(EQUATION, "kill rate per day", 1e-4, LARGE, SOURCE);
    /** Thresholds, in the unit of the stressor. */
    public static final Validity THRESHOLD = new Validity(EQUATION, "threshold", 0, LARGE, SOURCE);
    /** Slopes, 1/(unit d). */
    public static final Validity SLOPE_PER_DAY = new Validity(EQUATION, "slope per day", 0, LARGE, SOURCE);
    /** Constant exposures, in the unit of the stressor. */
    public static final Validity EXPOSURE = new Validity(EQUATION, "exposure", 0, LARGE, SOURCE);
    /** Days of exposure; ten years at the most. */
    public static final Validity DAYS = new Validity(EQUATION, "days of exposure", 0, 3650, SOURCE);

    /** @throws OutOfRangeException for a rate that is not positive, or a negative threshold or slope */
    public SurvivalCurve {
        KILL_RATE_PER_DAY.check(killRatePerDay);
        THRESHOLD.check(threshold);
        SLOPE_PER_DAY.check(slopePerDay);
        THRESHOLD.check(lowThreshold);
        SLOPE_PER_DAY.check(lowSlopePerDay);
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
     * @param exposure constant exposure, unit of the stressor, 0 or more
     * @param days 0 to 3650
     * @throws OutOfRangeException outside those ranges
     */
    public double cumulativeHazard(double exposure, double days) {
        EXPOSURE.check(exposure);
        DAYS.check(days);
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

    /**
     * The constant exposure that kills half in {@code days}, by bisection on the closed form.
     *
     * @throws OutOfRangeException when no exposure does: without days, or without a slope
     */
    public double lc50(double days) {
        OutOfRangeException.check(EQUATION, "days of exposure", days, LEAST_DAYS, DAYS.high());
        OutOfRangeException.check(
                EQUATION, "slope per day", slopePerDay + lowSlopePerDay, LEAST_SLOPE, SLOPE_PER_DAY.high());
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

    /**
     * The slope that makes {@code exposure} kill half in {@code days}; thresholds and the second slope are given.
     *
     * @throws OutOfRangeException when the damage does not pass the threshold in that time, or the second slope alone
     *     kills more than half
     */
    public static double slopeForLc50(
            double killRatePerDay,
            double threshold,
            double lowThreshold,
            double lowSlopePerDay,
            double exposure,
            double days) {
        SurvivalCurve base = new SurvivalCurve(killRatePerDay, threshold, 1, lowThreshold, lowSlopePerDay);
        EXPOSURE.check(exposure);
        DAYS.check(days);
        double reached = exposure * -StrictMath.expm1(-killRatePerDay * days);
        if (!(reached > threshold)) {
            throw new OutOfRangeException(EQUATION, "threshold", threshold, 0, reached);
        }
        double byLow = lowSlopePerDay * base.excessIntegral(exposure, lowThreshold, days);
        OutOfRangeException.check(EQUATION, "hazard of the second slope", byLow, 0, LN2);
        return (LN2 - byLow) / base.excessIntegral(exposure, threshold, days);
    }

    private static final double LEAST_DAYS = 1e-6;
    private static final double LEAST_SLOPE = 1e-9;

    private static final double LN2 = StrictMath.log(2);
}
