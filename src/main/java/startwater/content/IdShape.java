package startwater.content;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.nodes.Node;

/** An id: small letters and digits, parts joined by hyphens. @param most most characters */
record IdShape(int most) implements Shape {
    private static final Pattern KEBAB = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        Cell cell = TextShape.text(most).read(key, line, node, faults);
        if (cell.sound() && !KEBAB.matcher(cell.text()).matches()) {
            faults.add(line, Complaint.ID_NOT_KEBAB, "value", cell.text());
            return Cell.broken(line);
        }
        return cell;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "string");
        schema.put("pattern", "^" + KEBAB + "$");
        schema.put("maxLength", most);
        return schema;
    }
}
