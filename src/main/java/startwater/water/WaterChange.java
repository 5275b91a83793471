package startwater.water;

import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/** Mixing by a water change: a conservative value (a concentration, alkalinity, DIC, heat) moves by shares of volume. */
public final class WaterChange {
    /** Shares of the volume that can be replaced. */
    public static final Validity FRACTION =
            new Validity("water change", "share of the volume", 0, 1, "conservation of mass");

    private WaterChange() {}

    /**
     * Value after a share of the water is replaced, in the unit of the inputs.
     *
     * @param fraction share of the volume replaced, 0 to 1
     * @throws OutOfRangeException outside that range
     */
    public static double after(double now, double source, double fraction) {
        FRACTION.check(fraction);
        return now * (1 - fraction) + source * fraction;
    }

    /**
     * Share of the volume to replace so that the value becomes the target.
     *
     * @throws OutOfRangeException when the target does not lie between the water now and the source
     */
    public static double fractionFor(double now, double source, double target) {
        OutOfRangeException.check(
                "water change", "target", target, StrictMath.min(now, source), StrictMath.max(now, source));
        return now == target ? 0 : (now - target) / (now - source);
    }
}
