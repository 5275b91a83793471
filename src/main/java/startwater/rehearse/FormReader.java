package startwater.rehearse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import startwater.drill.Scenario;
import startwater.text.NumberEntry;
import startwater.text.Refusal;

/** Reads one answer at a time; what cannot be read is refused with a reason, and counts as unknown. */
public final class FormReader {
    private static final Pattern SPAN = Pattern.compile("(\\d{1,3})(?:\\s*[-–]\\s*(\\d{1,3}))?");
    private static final int HOURS = 24;
    private static final int MOST_HOURS = 12;
    private static final int MOST_DAY = 400;

    private final Form form;

    FormReader(Form form) {
        this.form = form;
    }

    /** Why an answer cannot be taken; null where it can, or is blank. */
    public static @Nullable Refusal refusal(Form form, Entry entry) {
        String typed = form.answer(entry);
        if (typed.isEmpty()) {
            return null;
        }
        FormReader reader = new FormReader(form);
        return switch (entry.kind()) {
            case TEXT -> null;
            case NUMBER, WHOLE -> reader.refusedNumber(entry, typed);
            case CHOICE ->
                entry.options().contains(typed)
                        ? null
                        : Refusal.of("reh.entry.choice", typed, String.join(", ", entry.options()));
            case HOURS -> reader.hours(entry).isEmpty() ? Refusal.of("reh.entry.hours", typed) : null;
            case DAYS -> reader.spans(entry).isEmpty() ? Refusal.of("reh.entry.days", typed) : null;
        };
    }

    private @Nullable Refusal refusedNumber(Entry entry, String typed) {
        NumberEntry number = NumberEntry.of(typed);
        if (number.refusal() != null) {
            return number.refusal();
        }
        Double value = entry.measure().canonical(number.value(), number.unit(), form.units());
        if (value == null) {
            return Refusal.of("reh.entry.unit", number.unit(), entry.measure().unit(form.units()));
        }
        if (value < entry.low() || value > entry.high()) {
            return Refusal.of(
                    "reh.entry.range",
                    entry.measure().shown(entry.low(), form.units()),
                    entry.measure().shown(entry.high(), form.units()),
                    spaced(entry.measure().unit(form.units())));
        }
        return entry.kind() == Entry.Kind.WHOLE && value != Math.rint(value) ? Refusal.of("reh.entry.whole") : null;
    }

    private static String spaced(String unit) {
        return unit.isEmpty() ? "" : " " + unit;
    }

    /** The number, canonical; null where it is unknown or refused. */
    @Nullable
    Double number(Entry entry) {
        if (form.answer(entry).isEmpty() || refusal(form, entry) != null) {
            return null;
        }
        NumberEntry number = NumberEntry.of(form.answer(entry));
        return entry.measure().canonical(number.value(), number.unit(), form.units());
    }

    double number(Entry entry, double otherwise) {
        Double value = number(entry);
        return value == null ? otherwise : value;
    }

    /** The word chosen; empty where it is unknown or refused. */
    String choice(Entry entry) {
        return entry.options().contains(form.answer(entry)) ? form.answer(entry) : "";
    }

    boolean yes(Entry entry) {
        return choice(entry).equals("yes");
    }

    /** Hours of the day, rising; empty where none can be read. */
    List<Double> hours(Entry entry) {
        List<Double> hours = new ArrayList<>();
        for (String part : parts(entry)) {
            NumberEntry hour = NumberEntry.of(part.replace("h", "").replace(':', '.'));
            if (!hour.ok() || !hour.unit().isEmpty() || hour.value() >= HOURS) {
                return List.of();
            }
            hours.add(part.indexOf(':') < 0 ? hour.value() : clock(part));
        }
        List<Double> rising = hours.stream().distinct().sorted().toList();
        return rising.size() > MOST_HOURS ? List.of() : rising;
    }

    private static double clock(String part) {
        String[] both = part.strip().split(":", 2);
        return Double.parseDouble(both[0])
                + Math.min(
                                59,
                                Double.parseDouble(
                                        both[1].replaceAll("\\D", "").isEmpty() ? "0" : both[1].replaceAll("\\D", "")))
                        / 60;
    }

    /** Spans of days without a visit: from a day (inclusive) to a day (exclusive), merged and rising. */
    List<Scenario.Away> spans(Entry entry) {
        boolean[] away = new boolean[MOST_DAY + 2];
        for (String part : parts(entry)) {
            Matcher m = SPAN.matcher(part.strip());
            if (!m.matches()) {
                return List.of();
            }
            int from = Integer.parseInt(m.group(1));
            int to = m.group(2) == null ? from : Integer.parseInt(m.group(2));
            if (to < from || to > MOST_DAY) {
                return List.of();
            }
            Arrays.fill(away, from, to + 1, true);
        }
        List<Scenario.Away> spans = new ArrayList<>();
        for (int day = 0; day <= MOST_DAY; day++) {
            if (away[day] && (day == 0 || !away[day - 1])) {
                int end = day;
                while (away[end]) {
                    end++;
                }
                spans.add(new Scenario.Away(day, end));
            }
        }
        return spans;
    }

    private List<String> parts(Entry entry) {
        return Arrays.stream(form.answer(entry).split("[,;]|\\s+(?=\\d)", -1))
                .map(String::strip)
                .filter(part -> !part.isEmpty())
                .toList();
    }
}
