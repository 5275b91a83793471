package startwater.rehearse;

import java.util.List;
import java.util.Locale;
import startwater.quantity.Stream;

/** Forms with anything in them, around the ends of each range too. */
final class RandomForm {
    private static final double LEFT_OUT = 0.3;
    private static final List<Entry> NEEDED =
            List.of(Entry.VOLUME, Entry.MEDIA, Entry.MEDIA_LITRES, Entry.ROOM, Entry.SPECIES, Entry.COUNT, Entry.MASS);

    private RandomForm() {}

    static Form of(Stream dice) {
        Form form = Form.EMPTY;
        for (Entry entry : Entry.values()) {
            boolean second = entry.section() == Entry.Section.SECOND;
            if (!second && (NEEDED.contains(entry) || dice.uniform() > LEFT_OUT)) {
                form = form.with(entry, answer(entry, dice));
            }
        }
        return form;
    }

    private static String answer(Entry entry, Stream dice) {
        return switch (entry.kind()) {
            case TEXT -> "Tank " + (int) (100 * dice.uniform());
            case CHOICE ->
                entry.options().get((int) (dice.uniform() * entry.options().size()));
            case HOURS -> (int) (12 * dice.uniform()) + ", " + (12 + (int) (12 * dice.uniform()));
            case DAYS -> String.valueOf(1 + (int) (100 * dice.uniform()));
            case NUMBER -> String.format(Locale.ROOT, "%.4f", number(entry, dice));
            case WHOLE -> String.valueOf((int) number(entry, dice));
        };
    }

    private static double number(Entry entry, Stream dice) {
        return switch (entry) {
            case VOLUME -> 40 * StrictMath.exp(8 * dice.uniform());
            case MEDIA_LITRES -> StrictMath.exp(7 * dice.uniform());
            case MEDIA_AREA -> StrictMath.exp(9 * dice.uniform() - 1);
            case COUNT -> StrictMath.exp(6 * dice.uniform());
            case MASS -> 0.02 * StrictMath.exp(9 * dice.uniform());
            case ROOM, SET_POINT -> 40 * dice.uniform();
            case TAP_ALKALINITY -> Math.max(0, 200 * dice.uniform() - 40);
            default -> {
                // A twelfth each lies at the very ends.
                double clipped = Math.max(0, Math.min(1, 1.2 * dice.uniform() - 0.1));
                yield entry.low() + clipped * (entry.high() - entry.low());
            }
        };
    }
}
