package startwater.strip;

/**
 * The pads of the dip strip, and the titration strip for chloride.
 *
 * <p>Ranges are our own, in preferred numbers 1-2-5. Ammonia is total ammonia nitrogen, nitrite and nitrate are counted as
 * nitrogen. The nitrate pad also colours with nitrite (it reduces nitrate first), so its true value is the sum of both; the
 * caller adds them.
 */
public enum Pad {
    AMMONIA("pad.ammonia", "unit.mgNPerL", Scale.preferred(0, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20)),
    NITRITE("pad.nitrite", "unit.mgNPerL", Scale.preferred(0, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20)),
    NITRATE("pad.nitrate", "unit.mgNPerL", Scale.preferred(0, 1, 2, 5, 10, 20, 50, 100, 200)),
    PH("pad.ph", "unit.ph", Scale.even(6.2, 9.0, 8)),
    ALKALINITY("pad.alkalinity", "unit.mgCaco3PerL", Scale.preferred(0, 10, 20, 50, 100, 200, 500)),
    /** Total chlorine: free and combined. */
    CHLORINE("pad.chlorine", "unit.mgPerL", Scale.preferred(0, 0.1, 0.2, 0.5, 1, 2, 5)),
    /** A titration strip: a numbered column that turns white from below; read by length, not by colour. */
    CHLORIDE("pad.chloride", "unit.mgPerL", Scale.preferred(0, 10, 20, 50, 100, 200, 500, 1000));

    private final String key;
    private final String unitKey;
    private final Scale scale;

    Pad(String key, String unitKey, Scale scale) {
        this.key = key;
        this.unitKey = unitKey;
        this.scale = scale;
    }

    /** The text key of the pad's name. */
    public String key() {
        return key;
    }

    /** The text key of the unit its scale is printed in. */
    public String unitKey() {
        return unitKey;
    }

    public Scale scale() {
        return scale;
    }

    /** Whether the pad is matched by colour; the chloride column is read by its length. */
    public boolean matchedByColour() {
        return this != CHLORIDE;
    }
}
