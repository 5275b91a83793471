package startwater.text;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * A number as a person types it, with or without a unit: {@code 0.04}, {@code 0,04}, {@code 20 %}, {@code 3 gal}. Either a
 * value or a reason, never both.
 *
 * @param value the number as typed, in its unit; NaN where refused
 * @param unit what followed it, in small letters, or empty
 * @param refusal why it was refused, or null
 */
public record NumberEntry(
        double value, String unit, @Nullable Refusal refusal) {
    private static final Pattern SHAPE = Pattern.compile("([+-]?)(\\d+(?:[.,]\\d*)?|[.,]\\d+)\\s*([^\\d\\s.,+-].*)?");
    /** One comma and three digits: a thousand to some, a decimal to others. */
    private static final Pattern TWO_MEANINGS = Pattern.compile("[1-9]\\d{0,2},\\d{3}");

    /** Reads what was typed. */
    public static NumberEntry of(String typed) {
        String text = typed.strip().replace('−', '-').replace('\u00a0', ' ');
        if (text.isEmpty()) {
            return refused("entry.empty");
        }
        Matcher m = SHAPE.matcher(text);
        if (!m.matches()) {
            return refused("entry.noNumber");
        }
        String digits = m.group(2);
        if (TWO_MEANINGS.matcher(digits).matches()) {
            return refused("entry.twoMeanings");
        }
        double value = Double.parseDouble(digits.replace(',', '.'));
        if (m.group(1).equals("-") && value != 0) {
            return refused("entry.negative");
        }
        String unit = m.group(3) == null ? "" : m.group(3).strip().toLowerCase(java.util.Locale.ROOT);
        return new NumberEntry(value, unit, null);
    }

    private static NumberEntry refused(String key) {
        return new NumberEntry(Double.NaN, "", Refusal.of(key));
    }

    public boolean ok() {
        return refusal == null;
    }
}
