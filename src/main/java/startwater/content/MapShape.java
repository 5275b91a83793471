package startwater.content;

import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** A block whose keys the author chooses. @param value shape of what stands under each, @param most most keys */
record MapShape(Shape value, int most) implements Shape {
    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (!(node instanceof MappingNode mapping)) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_BLOCK, "key", key);
        }
        Map<String, Entries.Entry> entries = Entries.of(mapping, faults);
        if (entries.size() > most) {
            faults.add(line, Complaint.LIST_TOO_LONG, "key", key, "count", entries.size(), "most", most);
            return Cell.broken(line);
        }
        Map<String, Cell> cells = new LinkedHashMap<>();
        entries.forEach((name, entry) -> cells.put(name, value.read(name, entry.line(), entry.value(), faults)));
        return Cell.ofGroup(new Fields(line, cells));
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("additionalProperties", value.schema());
        schema.put("maxProperties", most);
        return schema;
    }
}
