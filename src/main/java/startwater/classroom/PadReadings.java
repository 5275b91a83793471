package startwater.classroom;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import startwater.strip.Pad;

/**
 * How a pad was read.
 *
 * @param written readings
 * @param tooLow read low by more than a block
 * @param tooHigh read high by more than a block
 */
public record PadReadings(Pad pad, int written, int tooLow, int tooHigh) {
    public int wrong() {
        return tooLow + tooHigh;
    }

    /** How each pad was read in all attempts, worst first. */
    static List<PadReadings> of(List<Attempt> attempts) {
        Map<Pad, PadReadings> byPad = new EnumMap<>(Pad.class);
        attempts.stream()
                .flatMap(a -> a.steps().stream())
                .flatMap(s -> s.readings().stream())
                .map(PadReadings::of)
                .forEach(one -> byPad.merge(
                        one.pad(),
                        one,
                        (x, y) -> new PadReadings(
                                x.pad(), x.written() + 1, x.tooLow() + y.tooLow(), x.tooHigh() + y.tooHigh())));
        return byPad.values().stream()
                .sorted(Comparator.comparingInt(PadReadings::wrong).reversed().thenComparing(PadReadings::pad))
                .toList();
    }

    private static PadReadings of(Reading r) {
        return new PadReadings(
                r.written().pad(), 1, r.wrong() && r.offBlocks() < 0 ? 1 : 0, r.wrong() && r.offBlocks() > 0 ? 1 : 0);
    }
}
