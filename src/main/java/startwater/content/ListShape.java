package startwater.content;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * A list.
 *
 * @param item shape of its entries
 * @param least fewest entries
 * @param most most entries
 * @param distinct whether no entry may stand twice
 */
record ListShape(Shape item, int least, int most, boolean distinct) implements Shape {
    static ListShape list(Shape item, int least, int most) {
        return new ListShape(item, least, most, false);
    }

    static ListShape set(Shape item, int least, int most) {
        return new ListShape(item, least, most, true);
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (!(node instanceof SequenceNode sequence)) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_LIST, "key", key);
        }
        List<Node> nodes = sequence.getValue();
        if (nodes.size() < least) {
            faults.add(line, Complaint.LIST_TOO_SHORT, "key", key, "count", nodes.size(), "least", least);
            return Cell.broken(line);
        }
        if (nodes.size() > most) {
            faults.add(line, Complaint.LIST_TOO_LONG, "key", key, "count", nodes.size(), "most", most);
            return Cell.broken(line);
        }
        List<Cell> items = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (Node entry : nodes) {
            int at = YamlTree.line(entry.getStartMark());
            items.add(item.read(key, at, entry, faults));
            if (distinct && entry instanceof ScalarNode scalar && !seen.add(scalar.getValue())) {
                faults.add(at, Complaint.TWICE, "key", key, "value", scalar.getValue());
            }
        }
        return Cell.ofItems(line, items);
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "array");
        schema.put("items", item.schema());
        schema.put("minItems", least);
        schema.put("maxItems", most);
        if (distinct) {
            schema.put("uniqueItems", true);
        }
        return schema;
    }
}
