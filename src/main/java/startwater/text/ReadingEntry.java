package startwater.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import startwater.strip.Pad;
import startwater.strip.Scale;

/**
 * A reading as a person types it: a block ({@code 0.5}), two neighbour blocks for a between ({@code 0.5-1}), or a number
 * that lies on the scale and goes to the nearest stop.
 *
 * @param stop stop of the pad's scale; -1 where refused
 * @param refusal why it was refused, or null
 */
public record ReadingEntry(int stop, @Nullable Refusal refusal) {
    private static final Pattern BETWEEN = Pattern.compile("([\\d.,]+)\\s*[-–]\\s*([\\d.,]+)");
    private static final double SAME = 1e-9;

    /**
     * Reads what was typed, as a value of the printed scale.
     *
     */
    public static ReadingEntry of(Pad pad, String typed) {
        Matcher between = BETWEEN.matcher(typed.strip());
        if (between.matches()) {
            return between(pad.scale(), NumberEntry.of(between.group(1)), NumberEntry.of(between.group(2)));
        }
        NumberEntry number = NumberEntry.of(typed);
        if (number.refusal() != null) {
            return new ReadingEntry(-1, number.refusal());
        }
        if (!number.unit().isEmpty()) {
            return refused("entry.noUnitHere");
        }
        Scale scale = pad.scale();
        if (number.value() > scale.blockValue(scale.blocks() - 1) + SAME) {
            return refused("entry.overScale", scale.blockValue(scale.blocks() - 1));
        }
        if (number.value() < scale.blockValue(0) - SAME) {
            return refused("entry.underScale", scale.blockValue(0));
        }
        return new ReadingEntry(scale.nearestStop(scale.position(number.value())), null);
    }

    private static ReadingEntry between(Scale scale, NumberEntry low, NumberEntry high) {
        if (!low.ok() || !high.ok()) {
            return refused("entry.noNumber");
        }
        for (int block = 0; block + 1 < scale.blocks(); block++) {
            if (Math.abs(scale.blockValue(block) - low.value()) < SAME
                    && Math.abs(scale.blockValue(block + 1) - high.value()) < SAME) {
                return new ReadingEntry(2 * block + 1, null);
            }
        }
        return refused("entry.noNeighbours");
    }

    private static ReadingEntry refused(String key, Object... parameters) {
        return new ReadingEntry(-1, Refusal.of(key, parameters));
    }

    public boolean ok() {
        return refusal == null;
    }
}
