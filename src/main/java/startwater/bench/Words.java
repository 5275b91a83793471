package startwater.bench;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The sentences of the bench in one language, and how its numbers are written. */
public final class Words {
    /** Codes of the languages there are; the first is the one taken when none fits. */
    public static final List<String> LANGUAGES = List.of("en", "es");

    private static final String BUNDLE = "startwater.bench.Bench";
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-z0-9_.-]+)}");
    private static final int ANSWER_FIGURES = 4;

    private final ResourceBundle bundle;
    private final char decimalMark;

    private Words(ResourceBundle bundle, char decimalMark) {
        this.bundle = bundle;
        this.decimalMark = decimalMark;
    }

    /**
     * The words of a language.
     *
     * @param language one of {@link #LANGUAGES}
     */
    public static Words of(String language) {
        if (!LANGUAGES.contains(language)) {
            throw new IllegalArgumentException("Language '" + language + "' is not one of " + LANGUAGES);
        }
        // Without this control Java would answer a request for English with the computer's own language.
        ResourceBundle.Control control =
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES);
        return new Words(
                ResourceBundle.getBundle(BUNDLE, Locale.forLanguageTag(language), control),
                DecimalFormatSymbols.getInstance(Locale.forLanguageTag(language))
                        .getDecimalSeparator());
    }

    /** The sentence at a key. */
    public String text(String key) {
        return bundle.getString(key);
    }

    /**
     * The sentence at a key with each {@code {name}} replaced.
     *
     * @throws IllegalStateException when the sentence asks for a name that is not given: a fault of the language file
     */
    public String text(String key, Map<String, String> filled) {
        Matcher matcher = PLACEHOLDER.matcher(text(key));
        StringBuilder sentence = new StringBuilder();
        while (matcher.find()) {
            String value = filled.get(matcher.group(1));
            if (value == null) {
                throw new IllegalStateException(
                        key + " asks for {" + matcher.group(1) + "}, known: " + filled.keySet());
            }
            matcher.appendReplacement(sentence, Matcher.quoteReplacement(value));
        }
        return matcher.appendTail(sentence).toString();
    }

    /** Symbol of a unit as shown; empty where the number stands alone. */
    public String unit(Unit unit) {
        return switch (unit) {
            case PH, NONE -> "";
            case GRAM_PER_DAY, OUNCE_PER_DAY, PERCENT_PER_DAY, MG_N_PER_L_DAY ->
                unit.symbol().replace("day", text("unit.day"));
            default -> unit.symbol();
        };
    }

    /** An answer with its unit, for example {@code 12.5 g}, to four figures. */
    public String amount(Measure measure) {
        return amount(measure, ANSWER_FIGURES);
    }

    /** Number and unit to so many figures. */
    public String amount(Measure measure, int figures) {
        String unit = unit(measure.unit());
        String number = number(measure.value(), figures);
        return unit.isEmpty() ? number : number + " " + unit;
    }

    /** So many figures, never fewer than the whole part needs, with the decimal mark of the language. */
    public String number(double value, int figures) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal exact = new BigDecimal(value);
        int whole = exact.precision() - exact.scale();
        BigDecimal rounded = exact.round(new MathContext(Math.max(figures, whole), RoundingMode.HALF_UP));
        return rounded.signum() == 0 ? "0" : digits(rounded.stripTrailingZeros());
    }

    /** All digits of a number, with the decimal mark of the language. */
    public String digits(BigDecimal number) {
        return number.toPlainString().replace('.', decimalMark);
    }
}
