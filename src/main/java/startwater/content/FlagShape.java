package startwater.content;

import java.util.Map;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** {@code true} or {@code false}. */
record FlagShape() implements Shape {
    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (node instanceof ScalarNode scalar && scalar.isPlain()) {
            if (scalar.getValue().equals("true")) {
                return Cell.ofFlag(line, true);
            }
            if (scalar.getValue().equals("false")) {
                return Cell.ofFlag(line, false);
            }
        }
        return Shape.broken(key, line, node, faults, Complaint.WANT_FLAG, "key", key, "value", Shape.shown(node));
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("type", "boolean");
    }
}
