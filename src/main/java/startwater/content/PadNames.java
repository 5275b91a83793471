package startwater.content;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import startwater.strip.Pad;

/** The pads of the strip by the names that lessons use. */
final class PadNames {
    private PadNames() {}

    static List<String> all() {
        return Arrays.stream(Pad.values()).map(PadNames::of).toList();
    }

    static String of(Pad pad) {
        return pad.name().toLowerCase(Locale.ROOT);
    }

    /** @throws IllegalArgumentException when there is no such pad */
    static Pad pad(String name) {
        return Pad.valueOf(name.toUpperCase(Locale.ROOT));
    }
}
