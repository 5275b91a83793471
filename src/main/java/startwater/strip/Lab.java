package startwater.strip;

/**
 * A colour in CIELAB (CIE 1976) under D65, the 2-degree observer.
 *
 * @param lightness L*, 0 black to 100 white
 * @param a green (-) to red (+)
 * @param b blue (-) to yellow (+)
 */
public record Lab(double lightness, double a, double b) {
    /** From lightness, chroma and hue angle in degrees. */
    public static Lab ofHue(double lightness, double chroma, double hueDegrees) {
        double hue = StrictMath.toRadians(hueDegrees);
        return new Lab(lightness, chroma * StrictMath.cos(hue), chroma * StrictMath.sin(hue));
    }

    public double chroma() {
        return StrictMath.sqrt(a * a + b * b);
    }

    /** The straight distance in CIELAB (the CIE 1976 colour difference). */
    public double distance(Lab other) {
        double dl = lightness - other.lightness;
        double da = a - other.a;
        double db = b - other.b;
        return StrictMath.sqrt(dl * dl + da * da + db * db);
    }
}
