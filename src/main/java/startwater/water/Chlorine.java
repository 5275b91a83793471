package startwater.water;

import startwater.quantity.Molar;
import startwater.quantity.OutOfRangeException;
import startwater.quantity.Validity;

/** Facts about the disinfectant in mains water, measured as Cl2. Sources stand beside each constant. */
public final class Chlorine {
    /**
     * mg of sodium thiosulfate pentahydrate that take up 1 mg of Cl2, free or combined: 2 Na2S2O3 + Cl2 gives
     * tetrathionate, 2 x 248.18 / 70.90 = 7.00; reagent makers print 7.0.
     */
    public static final double THIOSULFATE_MG_PER_MG = 7.0;

    /** mg N that monochloramine leaves as ammonia per mg of it as Cl2: one N for one Cl2. */
    public static final double NITROGEN_MG_PER_MG_CHLORAMINE = Molar.N / Molar.CL2;

    /** First-order loss of free chlorine from a bubbled barrel, per hour. Tuned; no source. */
    public static final double FREE_LOSS_PER_HOUR = 0.5;

    /** First-order loss of combined chlorine from a bubbled barrel, per hour, at most. Tuned; no source. */
    public static final double COMBINED_LOSS_PER_HOUR = 0.01;

    /** Hours of standing, to thirty days: chlorine in a barrel is not followed longer. */
    public static final Validity HOURS =
            new Validity("loss of chlorine from a barrel", "hours", 0, 720, "tuned; no source");

    private Chlorine() {}

    /**
     * What is left of 1 mg/L of free chlorine after so many hours of bubbling.
     *
     * @throws OutOfRangeException under 0 or over 720 hours
     */
    public static double freeShareLeft(double hours) {
        return StrictMath.exp(-FREE_LOSS_PER_HOUR * HOURS.check(hours));
    }

    /**
     * What is left of 1 mg/L of combined chlorine after so many hours of bubbling.
     *
     * @throws OutOfRangeException under 0 or over 720 hours
     */
    public static double combinedShareLeft(double hours) {
        return StrictMath.exp(-COMBINED_LOSS_PER_HOUR * HOURS.check(hours));
    }
}
