package startwater.content;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collection;

/** How values from a file are shown in a fault: short, and harmless on a terminal. */
final class Shown {
    private static final int MOST = 60;

    private Shown() {}

    static String value(Object value) {
        if (value instanceof Double number) {
            return number(number);
        }
        return value instanceof Names names ? names.all() : cut(safe(String.valueOf(value)));
    }

    /** A number with at most six figures and no idle zeros. */
    static String number(double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            return String.valueOf(value);
        }
        BigDecimal plain = new BigDecimal(value).round(new MathContext(6));
        return plain.signum() == 0 ? "0" : plain.stripTrailingZeros().toPlainString();
    }

    /** Without control characters, which could move the cursor or colour the screen. */
    static String safe(String text) {
        StringBuilder safe = new StringBuilder(text.length());
        text.codePoints().map(c -> Character.isISOControl(c) ? '?' : c).forEach(safe::appendCodePoint);
        return safe.toString();
    }

    /** Names one after the other, in full. */
    static Names list(Collection<String> names) {
        return new Names(String.join(", ", names));
    }

    /** A list of our own names: safe as it is, and useless when cut. */
    record Names(String all) {
        @Override
        public String toString() {
            return all;
        }
    }

    private static String cut(String text) {
        return text.codePointCount(0, text.length()) <= MOST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, MOST - 1)) + "…";
    }
}
