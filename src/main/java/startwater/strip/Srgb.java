package startwater.strip;

/**
 * A colour in sRGB (IEC 61966-2-1), each channel 0 to 1, gamma-encoded.
 *
 * <p>Conversion goes through CIE XYZ with the D65 white of IEC 61966-2-1 (0.95047, 1, 1.08883).
 */
public record Srgb(double red, double green, double blue) {
    private static final double WHITE_X = 0.95047;
    private static final double WHITE_Z = 1.08883;
    private static final double EPSILON = 216.0 / 24389.0;
    private static final double KAPPA = 24389.0 / 27.0;

    /** From 8-bit channels, 0 to 255. */
    public static Srgb of8Bit(int red, int green, int blue) {
        return new Srgb(red / 255.0, green / 255.0, blue / 255.0);
    }

    /** The sRGB of a Lab colour; channels outside 0 to 1 mean that sRGB cannot show it. */
    public static Srgb of(Lab lab) {
        double fy = (lab.lightness() + 16.0) / 116.0;
        double x = WHITE_X * inverseF(fy + lab.a() / 500.0);
        double y = inverseF(fy);
        double z = WHITE_Z * inverseF(fy - lab.b() / 200.0);
        return ofLinear(
                3.2404542 * x - 1.5371385 * y - 0.4985314 * z,
                -0.9692660 * x + 1.8760108 * y + 0.0415560 * z,
                0.0556434 * x - 0.2040259 * y + 1.0572252 * z);
    }

    static Srgb ofLinear(double red, double green, double blue) {
        return new Srgb(encode(red), encode(green), encode(blue));
    }

    /** The same colour in CIELAB. */
    public Lab toLab() {
        double r = decode(red);
        double g = decode(green);
        double b = decode(blue);
        double fx = f((0.4124564 * r + 0.3575761 * g + 0.1804375 * b) / WHITE_X);
        double fy = f(0.2126729 * r + 0.7151522 * g + 0.0721750 * b);
        double fz = f((0.0193339 * r + 0.1191920 * g + 0.9503041 * b) / WHITE_Z);
        return new Lab(116.0 * fy - 16.0, 500.0 * (fx - fy), 200.0 * (fy - fz));
    }

    /** Whether a screen can show it. */
    public boolean inGamut() {
        return within(red) && within(green) && within(blue);
    }

    /** Each channel held within 0 to 1. */
    public Srgb clipped() {
        return new Srgb(clip(red), clip(green), clip(blue));
    }

    /** The colour as "#RRGGBB", rounded to 8 bits. */
    public String hex() {
        Srgb held = clipped();
        return String.format("#%02X%02X%02X", eightBit(held.red), eightBit(held.green), eightBit(held.blue));
    }

    static double decode(double channel) {
        return channel <= 0.04045 ? channel / 12.92 : StrictMath.pow((channel + 0.055) / 1.055, 2.4);
    }

    static double encode(double linear) {
        return linear <= 0.0031308 ? 12.92 * linear : 1.055 * StrictMath.pow(linear, 1.0 / 2.4) - 0.055;
    }

    private static double f(double t) {
        return t > EPSILON ? StrictMath.cbrt(t) : (KAPPA * t + 16.0) / 116.0;
    }

    private static double inverseF(double t) {
        double cube = t * t * t;
        return cube > EPSILON ? cube : (116.0 * t - 16.0) / KAPPA;
    }

    private static boolean within(double channel) {
        return channel >= 0.0 && channel <= 1.0;
    }

    private static double clip(double channel) {
        return StrictMath.max(0.0, StrictMath.min(1.0, channel));
    }

    private static int eightBit(double channel) {
        return (int) StrictMath.floor(channel * 255.0 + 0.5);
    }
}
