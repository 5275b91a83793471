package startwater.content;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A number as JSON writes it, without quotes.
 *
 * @param low least value allowed
 * @param high greatest value allowed
 * @param whole whether it must be a whole number
 */
record NumberShape(double low, double high, boolean whole) implements Shape {
    private static final Pattern JSON_NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?([eE][+-]?[0-9]+)?");
    private static final Pattern COMMA_NUMBER = Pattern.compile("-?[0-9]+,[0-9]+");
    private static final Pattern CLOCK = Pattern.compile("[0-9]{1,2}:[0-9]{2}");
    private static final Pattern WITH_UNIT = Pattern.compile("-?[0-9]+([.,][0-9]+)? ?[A-Za-z%µ°³/]+");
    private static final int LONGEST = 40;

    static NumberShape number(double low, double high) {
        return new NumberShape(low, high, false);
    }

    static NumberShape whole(int low, int high) {
        return new NumberShape(low, high, true);
    }

    /** Whether a plain scalar with this text is a number. */
    static boolean isNumber(String text) {
        return text.length() <= LONGEST && JSON_NUMBER.matcher(text).matches();
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        String text = node instanceof ScalarNode scalar ? scalar.getValue() : "";
        boolean plain = node instanceof ScalarNode scalar && scalar.isPlain();
        if (!plain || !isNumber(text)) {
            return Shape.broken(
                    key, line, node, faults, complaint(plain, text), "key", key, "value", Shape.shown(node));
        }
        double value = Double.parseDouble(text) + 0.0;
        if (whole && value != StrictMath.rint(value)) {
            faults.add(line, Complaint.WANT_WHOLE, "key", key, "value", text);
            return Cell.broken(line);
        }
        if (!(value >= low && value <= high)) {
            faults.add(line, Complaint.OUT_OF_RANGE, "key", key, "value", text, "low", low, "high", high);
            return Cell.broken(line);
        }
        return Cell.ofNumber(line, value);
    }

    private Complaint complaint(boolean plain, String text) {
        if (!plain && isNumber(text)) {
            return Complaint.QUOTED_NUMBER;
        }
        if (COMMA_NUMBER.matcher(text).matches()) {
            return Complaint.DECIMAL_COMMA;
        }
        if (CLOCK.matcher(text).matches()) {
            return Complaint.CLOCK_TIME;
        }
        if (text.length() <= LONGEST && WITH_UNIT.matcher(text).matches()) {
            return Complaint.UNIT_IN_NUMBER;
        }
        return whole ? Complaint.WANT_WHOLE : Complaint.WANT_NUMBER;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", whole ? "integer" : "number");
        schema.put("minimum", jsonNumber(low));
        schema.put("maximum", jsonNumber(high));
        return schema;
    }

    private static Number jsonNumber(double value) {
        if (value == StrictMath.rint(value)) {
            return (long) value;
        }
        return value;
    }
}
