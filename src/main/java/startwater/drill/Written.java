package startwater.drill;

import startwater.strip.Pad;

/**
 * One reading as the learner wrote it down.
 *
 * @param pad which pad
 * @param stop stop of the pad's scale: even stops are blocks, odd ones lie between two blocks
 * @param dilution how many times the sample was diluted before dipping, 1 for none; the value is the stop's times this
 * @param strip which strip of the run it was read from, counted from 0; the same strip has one pad of each kind
 */
public record Written(Pad pad, int stop, int dilution, int strip) {
    /** In place of the strip's number: read with a kit that is not from this shelf. */
    public static final int OWN_KIT = -1;

    /** Read by somebody who knows, with a kit of their own: no lasting error of this bottle, and no misreading. */
    public boolean byKit() {
        return strip == OWN_KIT;
    }

    /** The value as read, in the unit of the pad. */
    public double value() {
        return pad.scale().stopValue(stop) * (pad == Pad.PH ? 1 : dilution);
    }
}
