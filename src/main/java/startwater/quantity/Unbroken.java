package startwater.quantity;

import java.util.regex.Pattern;

/** Keeps a number and its unit on one line where a sentence is wrapped. */
public final class Unbroken {
    private static final Pattern BEFORE_UNIT = Pattern.compile(
            "(?<=[0-9]) (?=(?:%|°[CF]|m[²³]|(?:[mµ]?g|meq|mmol)/L|L/h|[km]?g|m?L|cm|h|min|W|gal|oz)(?!\\p{L}))");

    private Unbroken() {}

    /** The same words; the space between a number and the sign of its unit does not break. */
    public static String of(String words) {
        return BEFORE_UNIT.matcher(words).replaceAll("\u00a0");
    }
}
