package startwater.strip;

import java.util.EnumMap;
import java.util.Map;

/**
 * The colours of a pad along its scale: our own path through CIELAB.
 *
 * <p>Lightness falls evenly from the first block to the last, so the order can be told without hue. Hue and chroma glide from
 * start to end; chroma bulges by ten in the middle and is lowered wherever sRGB could not show it.
 */
public final class PadColours {
    private static final double BULGE = 10.0;
    private static final Map<Pad, PadColours> ALL = all();

    private final int lastBlock;
    private final Lab first;
    private final Path path;
    private final double meanSpeed;

    private record Path(
            double lightnessStart,
            double lightnessEnd,
            double hueStart,
            double hueEnd,
            double chromaStart,
            double chromaEnd) {
        Lab at(double part) {
            double lightness = glide(lightnessStart, lightnessEnd, part);
            double hue = glide(hueStart, hueEnd, part);
            double chroma = glide(chromaStart, chromaEnd, part) + BULGE * 4.0 * part * (1.0 - part);
            return Srgb.of(Lab.ofHue(lightness, chroma, hue)).inGamut()
                    ? Lab.ofHue(lightness, chroma, hue)
                    : Lab.ofHue(lightness, largestChroma(lightness, chroma, hue), hue);
        }

        private static double glide(double start, double end, double part) {
            return start + part * (end - start);
        }

        private static double largestChroma(double lightness, double wanted, double hue) {
            double inside = 0.0;
            double outside = wanted;
            for (int i = 0; i < 40; i++) {
                double middle = 0.5 * (inside + outside);
                if (Srgb.of(Lab.ofHue(lightness, middle, hue)).inGamut()) {
                    inside = middle;
                } else {
                    outside = middle;
                }
            }
            return inside;
        }
    }

    private PadColours(Pad pad, Path path) {
        this.lastBlock = pad.scale().blocks() - 1;
        this.path = path;
        this.first = path.at(0.0);
        this.meanSpeed = lengthOf(path) / lastBlock;
    }

    /**
     * The colours of a pad.
     *
     * @throws IllegalArgumentException for chloride, which is read by length
     */
    public static PadColours of(Pad pad) {
        PadColours colours = ALL.get(pad);
        if (colours == null) {
            throw new IllegalArgumentException("pad colours: " + pad + " is read by length and has no colours");
        }
        return colours;
    }

    /** The colour at a position in blocks, held within the scale's ends. */
    public Lab lab(double position) {
        double held = StrictMath.max(0.0, StrictMath.min(lastBlock, position));
        return held == 0.0 ? first : path.at(held / lastBlock);
    }

    /** The colour at a position as a screen shows it. */
    public Srgb srgb(double position) {
        return Srgb.of(lab(position)).clipped();
    }

    /** How far the colour moves at a position, in CIELAB units a block. */
    public double speed(double position) {
        double low = StrictMath.max(0.0, StrictMath.min(lastBlock - 0.25, position - 0.125));
        return lab(low).distance(lab(low + 0.25)) / 0.25;
    }

    /** The length of the path over the number of steps, in CIELAB units a block. */
    public double meanSpeed() {
        return meanSpeed;
    }

    private static double lengthOf(Path path) {
        double length = 0.0;
        int pieces = 200;
        for (int i = 0; i < pieces; i++) {
            length += path.at(i / (double) pieces).distance(path.at((i + 1) / (double) pieces));
        }
        return length;
    }

    private static Map<Pad, PadColours> all() {
        Map<Pad, PadColours> all = new EnumMap<>(Pad.class);
        put(all, Pad.AMMONIA, new Path(94, 36, 88, 38, 12, 44));
        put(all, Pad.NITRITE, new Path(94, 33, 105, 262, 10, 40));
        put(all, Pad.NITRATE, new Path(95, 33, 250, 318, 6, 40));
        put(all, Pad.PH, new Path(94, 36, 24, -8, 10, 42));
        put(all, Pad.ALKALINITY, new Path(95, 38, 150, 128, 8, 38));
        put(all, Pad.CHLORINE, new Path(95, 38, 190, 232, 4, 16));
        return all;
    }

    private static void put(Map<Pad, PadColours> all, Pad pad, Path path) {
        all.put(pad, new PadColours(pad, path));
    }
}
