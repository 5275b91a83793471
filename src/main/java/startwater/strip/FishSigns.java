package startwater.strip;

import static startwater.tank.TankLayout.DAMAGE;
import static startwater.tank.TankLayout.ORGANIC_N;
import static startwater.tank.TankLayout.OXYGEN;
import static startwater.tank.TankLayout.STOCKED;

import org.jspecify.annotations.Nullable;
import startwater.fish.Species;
import startwater.fish.Stressor;
import startwater.fish.SurvivalCurve;
import startwater.tank.TankParameters;
import startwater.tank.TankReadings;

/** What a keeper sees without a strip. Only what can be seen: no computed ammonia here. */
public final class FishSigns {
    /** Bound blood over this share shows as brown gills when a fish is held. */
    private static final double BROWN = 0.4;
    /** Nitrogen lying about, mg N/L, at which the far wall is half hidden (tuned). */
    private static final double HALF_HAZE_MG_PER_L = 4;

    private static final double OFF_FEED_BELOW = 0.35;
    private static final double CALM_BELOW = 0.75;

    private FishSigns() {}

    /** What the fish show, or null without fish. */
    public static @Nullable FishMood mood(double[] y, TankParameters p) {
        Species species = p.species();
        if (species == null || !(y[STOCKED] > 0)) {
            return null;
        }
        double bound = TankReadings.methaemoglobin(y, species);
        if (y[OXYGEN] < 1.5 / (1 - Math.min(0.75, bound)) || y[DAMAGE + Stressor.LOW_OXYGEN.ordinal()] > 0.05) {
            return FishMood.GASPING;
        }
        double worst = worstShare(y, species, p);
        if (worst > 0.7) {
            return FishMood.SLOW;
        }
        double appetite = TankReadings.appetite(y, p);
        if (appetite < OFF_FEED_BELOW) {
            return FishMood.OFF_FEED;
        }
        return appetite < CALM_BELOW || worst > 0.4 ? FishMood.CALM : FishMood.BEGGING;
    }

    /** The largest share of a deadly threshold that any damage has reached. */
    private static double worstShare(double[] y, Species species, TankParameters p) {
        double size = species.ammoniaThresholdFactor(Math.max(0.01, TankReadings.massG(y, p.strata())));
        double worst = 0;
        for (Stressor stressor : Stressor.values()) {
            SurvivalCurve curve = species.curve(stressor);
            double threshold = curve.threshold() * (stressor == Stressor.AMMONIA ? size : 1);
            double damage = y[DAMAGE + stressor.ordinal()];
            worst = Math.max(worst, threshold > 0 ? damage / threshold : damage > 0.2 ? 1 : 0);
        }
        return worst;
    }

    /** Whether gills look brown when a fish is held. */
    public static boolean brownGills(double[] y, TankParameters p) {
        return y[STOCKED] > 0 && TankReadings.methaemoglobin(y, p.species()) > BROWN;
    }

    /** How clouded the water is by solids, 0..1. */
    public static double haze(double[] y) {
        return y[ORGANIC_N] / (y[ORGANIC_N] + HALF_HAZE_MG_PER_L);
    }
}
