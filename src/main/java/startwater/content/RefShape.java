package startwater.content;

import java.util.Map;
import org.snakeyaml.engine.v2.nodes.Node;

/** A shape that stands in several places: the schema tells it once, under its name. */
record RefShape(String name, Shape shape) implements Shape {
    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        return shape.read(key, line, node, faults);
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("$ref", "#/$defs/" + name);
    }
}
