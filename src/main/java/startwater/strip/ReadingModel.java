package startwater.strip;

import startwater.quantity.Normal;

/**
 * How a reading comes about: what the pad shows for a true value, and which stop a reader picks for what the pad shows.
 *
 * <p>A reader sees the pad's CIELAB colour with normal noise of {@code labSigma} on each axis and picks the nearest stop. Along
 * the colour path this is normal noise in position with standard deviation {@code labSigma / speed}. A labSigma of 1.5 to 2.0
 * gives the agreement of two readers that was published for dipsticks (Cohen's kappa 0.68 and 0.79, every miss one block;
 * PMID 29578638); take 3 for bad light.
 */
public final class ReadingModel {
    /** Chance that a written stop is a slip rather than a look; keeps every likelihood above zero. Tuned, no source. */
    public static final double LAPSE = 0.02;

    private static final int LAPSE_REACH_STOPS = 4;
    /** Share of a slip's weight that a stop farther off than two blocks has. */
    private static final double FAR_SLIP_WEIGHT = 0.01;
    /** Reading error of the chloride column's edge, in blocks for one unit of labSigma. Tuned, no source. */
    private static final double COLUMN_BLOCKS_PER_LAB = 0.1;

    private ReadingModel() {}

    /**
     * What the pad shows, in blocks: the true value's place, plus a bias, plus spread, held within the scale.
     *
     * @param trueValue in the unit of the pad; for nitrate add nitrite, both as nitrogen
     * @param biasBlocks steady error of the pad (age, glare, late reading), in blocks
     * @param spreadBlocks standard deviation from dip to dip, in blocks
     * @param standardNormal one standard normal number
     */
    public static double padPosition(
            Pad pad, double trueValue, double biasBlocks, double spreadBlocks, double standardNormal) {
        requireFinite("bias", biasBlocks);
        requireNotNegative("spread", spreadBlocks);
        requireFinite("standard normal number", standardNormal);
        double shown = pad.scale().position(trueValue) + biasBlocks + spreadBlocks * standardNormal;
        return StrictMath.max(0.0, StrictMath.min(pad.scale().blocks() - 1, shown));
    }

    /** Standard deviation of a reading in blocks, over the whole pad, from noise in CIELAB units per axis. */
    public static double readingSigmaBlocks(Pad pad, double labSigma) {
        requireNotNegative("labSigma", labSigma);
        return pad.matchedByColour() ? labSigma / PadColours.of(pad).meanSpeed() : COLUMN_BLOCKS_PER_LAB * labSigma;
    }

    /** The same at one position, in blocks. */
    public static double readingSigmaBlocks(Pad pad, double position, double labSigma) {
        requireNotNegative("labSigma", labSigma);
        return pad.matchedByColour() ? labSigma / PadColours.of(pad).speed(position) : COLUMN_BLOCKS_PER_LAB * labSigma;
    }

    /**
     * The chance that a reader writes this stop for a pad that shows this position. The chances of all stops add to 1 and none
     * is 0: two in a hundred readings are slips, nearly all within two blocks.
     */
    public static double probabilityOfStop(Pad pad, int stop, double truePadPosition, double sigmaBlocks) {
        requireNotNegative("sigma", sigmaBlocks);
        Scale scale = pad.scale();
        double stopPosition = scale.stopPosition(stop);
        double look = stop == scale.stops() - 1 ? 1.0 : below(stopPosition + 0.25, truePadPosition, sigmaBlocks);
        look -= stop == 0 ? 0.0 : below(stopPosition - 0.25, truePadPosition, sigmaBlocks);
        return (1.0 - LAPSE) * look + LAPSE * slip(scale, stop, scale.nearestStop(truePadPosition));
    }

    /** The stop a careful reader picks, without slips; one standard normal number decides. */
    public static int readStop(Pad pad, double padPosition, double sigmaBlocks, double normal) {
        requireNotNegative("sigma", sigmaBlocks);
        requireFinite("standard normal number", normal);
        return pad.scale().nearestStop(padPosition + sigmaBlocks * normal);
    }

    private static double below(double edge, double centre, double sigma) {
        if (sigma == 0.0) {
            return centre < edge ? 1.0 : 0.0;
        }
        return Normal.cdf((edge - centre) / sigma);
    }

    private static double slip(Scale scale, int stop, int nearest) {
        int last = scale.stops() - 1;
        int near =
                StrictMath.min(last, nearest + LAPSE_REACH_STOPS) - StrictMath.max(0, nearest - LAPSE_REACH_STOPS) + 1;
        double total = near + FAR_SLIP_WEIGHT * (scale.stops() - near);
        return slipWeight(stop, nearest) / total;
    }

    private static double slipWeight(int stop, int nearest) {
        return StrictMath.abs(stop - nearest) <= LAPSE_REACH_STOPS ? 1.0 : FAR_SLIP_WEIGHT;
    }

    private static void requireFinite(String what, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("reading: " + what + " must be a finite number, was " + value);
        }
    }

    private static void requireNotNegative(String what, double value) {
        requireFinite(what, value);
        if (value < 0.0) {
            throw new IllegalArgumentException("reading: " + what + " must not be negative, was " + value);
        }
    }
}
