package startwater.strip;

import startwater.quantity.Normal;

/** placeholder until the painted scale lands */
public final class ReadingModel {
    private ReadingModel() {}

    public static double padPosition(Pad pad, double v, double bias, double spread, double normal) {
        return Math.max(0, Math.min(pad.scale().blocks() - 1, pad.scale().position(v) + bias + spread * normal));
    }

    public static double readingSigmaBlocks(Pad pad, double lab) {
        return lab / 9;
    }

    public static double probabilityOfStop(Pad pad, int stop, double pos, double sigma) {
        int n = pad.scale().stops();
        double lo = stop == 0 ? 0 : Normal.cdf((stop / 2.0 - 0.25 - pos) / sigma);
        double hi = stop == n - 1 ? 1 : Normal.cdf((stop / 2.0 + 0.25 - pos) / sigma);
        return 0.98 * (hi - lo) + 0.02 / n;
    }

    public static int readStop(Pad pad, double pos, double sigma, double normal) {
        return pad.scale().nearestStop(pos + sigma * normal);
    }
}
