package startwater.strip;

/**
 * The CIEDE2000 colour difference (CIE 142-2001), after Sharma, Wu and Dalal (2005), "The CIEDE2000 color-difference formula:
 * implementation notes, supplementary test data, and mathematical observations", equations 2 to 22, with kL = kC = kH = 1.
 */
public final class Ciede2000 {
    private static final double POW_25_7 = 6103515625.0;

    private Ciede2000() {}

    /** The difference of two colours; about 1 can just be seen. */
    public static double difference(Lab first, Lab second) {
        double g = 0.5 * (1.0 - saturation(0.5 * (first.chroma() + second.chroma())));
        double a1 = (1.0 + g) * first.a();
        double a2 = (1.0 + g) * second.a();
        double c1 = StrictMath.sqrt(a1 * a1 + first.b() * first.b());
        double c2 = StrictMath.sqrt(a2 * a2 + second.b() * second.b());
        double h1 = hue(a1, first.b());
        double h2 = hue(a2, second.b());
        double turn = hueStep(h1, h2, c1 * c2);

        double meanL = 0.5 * (first.lightness() + second.lightness());
        double meanC = 0.5 * (c1 + c2);
        double meanH = meanHue(h1, h2, c1 * c2);
        double dl = (second.lightness() - first.lightness()) / lightnessWeight(meanL);
        double dc = (c2 - c1) / (1.0 + 0.045 * meanC);
        double dh = 2.0 * StrictMath.sqrt(c1 * c2) * sin(0.5 * turn) / (1.0 + 0.015 * meanC * hueWeight(meanH));
        return StrictMath.sqrt(dl * dl + dc * dc + dh * dh + rotation(meanC, meanH) * dc * dh);
    }

    private static double saturation(double chroma) {
        double power = StrictMath.pow(chroma, 7.0);
        return StrictMath.sqrt(power / (power + POW_25_7));
    }

    private static double hue(double a, double b) {
        if (a == 0.0 && b == 0.0) {
            return 0.0;
        }
        double degrees = StrictMath.toDegrees(StrictMath.atan2(b, a));
        return degrees < 0.0 ? degrees + 360.0 : degrees;
    }

    private static double hueStep(double h1, double h2, double chromaProduct) {
        double step = h2 - h1;
        if (chromaProduct == 0.0) {
            return 0.0;
        }
        if (step > 180.0) {
            return step - 360.0;
        }
        return step < -180.0 ? step + 360.0 : step;
    }

    private static double meanHue(double h1, double h2, double chromaProduct) {
        double sum = h1 + h2;
        if (chromaProduct == 0.0) {
            return sum;
        }
        if (StrictMath.abs(h1 - h2) <= 180.0) {
            return 0.5 * sum;
        }
        return 0.5 * (sum < 360.0 ? sum + 360.0 : sum - 360.0);
    }

    private static double lightnessWeight(double meanL) {
        double square = (meanL - 50.0) * (meanL - 50.0);
        return 1.0 + 0.015 * square / StrictMath.sqrt(20.0 + square);
    }

    private static double hueWeight(double h) {
        return 1.0
                - 0.17 * cos(h - 30.0)
                + 0.24 * cos(2.0 * h)
                + 0.32 * cos(3.0 * h + 6.0)
                - 0.20 * cos(4.0 * h - 63.0);
    }

    private static double rotation(double meanC, double meanH) {
        double from275 = (meanH - 275.0) / 25.0;
        double turn = 30.0 * StrictMath.exp(-from275 * from275);
        return -sin(2.0 * turn) * 2.0 * saturation(meanC);
    }

    private static double sin(double degrees) {
        return StrictMath.sin(StrictMath.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return StrictMath.cos(StrictMath.toRadians(degrees));
    }
}
