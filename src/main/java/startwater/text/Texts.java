package startwater.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.text.Format;
import java.text.MessageFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The words of one language, read from UTF-8 files. A sentence is a {@link MessageFormat} pattern; numbers in it are
 * written the way the language writes them. Immutable.
 */
public final class Texts {
    /** The sentences of a drill, for terminal and window. */
    public static final String DRILL = "/startwater/text/drill";

    /** The sentences about learner files, learners and replays. */
    public static final String RECORD = "/startwater/text/record";

    /** The sentences around a lesson, for window and paper. */
    public static final String LESSON = "/startwater/text/lesson";

    private static final int GROUP_FROM = 10_000;

    private final Language language;
    private final Map<String, String> words;

    private Texts(Language language, Map<String, String> words) {
        this.language = language;
        this.words = Map.copyOf(words);
    }

    /**
     * The words of a language.
     *
     * @param files resource paths without language and ending; a key stands in one of them only
     */
    public static Texts of(Language language, String... files) {
        Map<String, String> words = new LinkedHashMap<>();
        for (String file : files) {
            for (Map.Entry<Object, Object> entry : read(file, language).entrySet()) {
                if (words.put(entry.getKey().toString(), entry.getValue().toString()) != null) {
                    throw new IllegalStateException("The key '" + entry.getKey() + "' stands in two language files.");
                }
            }
        }
        return new Texts(language, words);
    }

    /** The words a drill needs. */
    public static Texts drill(Language language) {
        return of(language, DRILL);
    }

    private static Properties read(String file, Language language) {
        String path = file + "_" + language.code() + ".properties";
        Properties properties = new Properties();
        try (InputStream in = Texts.class.getResourceAsStream(path)) {
            if (in == null) {
                throw new IllegalStateException("The language file " + path + " is missing.");
            }
            properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return properties;
    }

    public Language language() {
        return language;
    }

    public Set<String> keys() {
        return words.keySet();
    }

    /**
     * The sentence at a key.
     *
     * @param parameters numbers and words in the order of the pattern
     * @throws IllegalArgumentException where the language has no such key: a fault of the program
     */
    public String text(String key, @Nullable Object... parameters) {
        String pattern = words.get(key);
        if (pattern == null) {
            throw new IllegalArgumentException("No words for the key '" + key + "' in " + language + ".");
        }
        MessageFormat message = new MessageFormat(pattern, language.locale());
        @Nullable Format[] formats = message.getFormatsByArgumentIndex();
        @Nullable Object[] shown = parameters.clone();
        for (int i = 0; i < shown.length; i++) {
            // A bare {0} gets our own way of writing numbers; a {0,choice,...} needs the number itself.
            if (shown[i] instanceof Number number && i < formats.length && formats[i] == null) {
                shown[i] = number(number.doubleValue());
            }
        }
        return message.format(shown);
    }

    /** A number to three figures, or as many as its whole part has. */
    public String number(double value) {
        return number(value, 3);
    }

    /** A number to so many figures, never fewer than its whole part has, without idle zeros. */
    public String number(double value, int figures) {
        if (!Double.isFinite(value)) {
            return "?";
        }
        BigDecimal exact = BigDecimal.valueOf(value);
        int whole = Math.max(1, exact.precision() - exact.scale());
        BigDecimal rounded = exact.round(new MathContext(Math.max(figures, whole), RoundingMode.HALF_UP));
        return written(
                rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }

    /** A number with so many decimals, zeros included: for columns that stand below each other. */
    public String decimals(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return "?";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return written(rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString());
    }

    /** Minus sign, grouping and decimal mark of the language. Spanish groups with a space, from five digits on. */
    private String written(String plain) {
        boolean negative = plain.startsWith("-");
        String digits = negative ? plain.substring(1) : plain;
        int point = digits.indexOf('.');
        String whole = point < 0 ? digits : digits.substring(0, point);
        String rest = point < 0 ? "" : (language == Language.ES ? "," : ".") + digits.substring(point + 1);
        return (negative ? "−" : "") + grouped(whole) + rest;
    }

    private String grouped(String whole) {
        boolean english = language == Language.EN;
        if (whole.length() <= 3 || (!english && Long.parseLong(whole) < GROUP_FROM)) {
            return whole;
        }
        StringBuilder out = new StringBuilder(whole);
        for (int i = whole.length() - 3; i > 0; i -= 3) {
            out.insert(i, english ? "," : "\u00a0");
        }
        return out.toString();
    }
}
