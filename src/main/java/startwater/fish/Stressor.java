package startwater.fish;

/** What can kill the fish; deaths split exactly by these causes. The order is the order in the tank's state. */
public enum Stressor {
    /** Un-ionised ammonia, mg N/L, corrected for the share of ammonium that counts at low pH. */
    AMMONIA,
    /** Nitrite counted against chloride, mg N/L. */
    NITRITE,
    /** Oxygen short of what the blood needs, mg/L. */
    LOW_OXYGEN,
    /** Total residual chlorine, mg/L. */
    CHLORINE,
    /** pH units outside 5-9.5. */
    PH,
    /** Degrees outside the range of the species. */
    TEMPERATURE;

    private static final Stressor[] ALL = values();

    public static final int COUNT = ALL.length;

    public static Stressor at(int index) {
        return ALL[index];
    }
}
