package startwater.strip;

/** What the fish show, from well to worst. It is no safety meter: fish beg at ammonia that already harms. */
public enum FishMood {
    /** They crowd to the keeper and take food at once. */
    BEGGING,
    /** Level, spread out, interested in food. */
    CALM,
    /** They turn away from food. */
    OFF_FEED,
    /** Fins clamped, low in the water, slow. */
    SLOW,
    /** At the surface, gulping. */
    GASPING
}
