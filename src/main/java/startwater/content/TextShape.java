package startwater.content;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** A text. Line breaks and runs of spaces count as one space. @param most most characters that fit its place */
record TextShape(int most) implements Shape {
    private static final Set<String> FLAGS = Set.of("true", "false");

    static TextShape text(int most) {
        return new TextShape(most);
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (!(node instanceof ScalarNode scalar)) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_TEXT, "key", key);
        }
        String value = scalar.getValue();
        if (scalar.isPlain() && (Shape.nothing(node) || NumberShape.isNumber(value) || FLAGS.contains(value))) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_QUOTES, "key", key, "value", value);
        }
        String text = value.strip().replaceAll("[ \\t\\n]+", " ");
        int length = text.codePointCount(0, text.length());
        if (length == 0) {
            faults.add(line, Complaint.BLANK_TEXT, "key", key);
        } else if (text.codePoints().anyMatch(Character::isISOControl)) {
            faults.add(line, Complaint.CONTROL_CHARACTER, "key", key);
        } else if (length > most) {
            faults.add(line, Complaint.TEXT_TOO_LONG, "key", key, "count", length, "most", most);
        } else {
            return Cell.ofText(line, text);
        }
        return Cell.broken(line);
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("minLength", 1);
        schema.put("maxLength", most);
        return schema;
    }
}
