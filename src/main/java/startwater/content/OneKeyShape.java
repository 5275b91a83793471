package startwater.content;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** A block with exactly one key, which says what kind of thing it is. @param choices shape of the value by key */
record OneKeyShape(Map<String, Shape> choices) implements Shape {
    OneKeyShape {
        choices = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        Map<String, Entries.Entry> entries =
                node instanceof MappingNode mapping ? Entries.of(mapping, faults) : Map.of();
        String kind = entries.keySet().stream().findFirst().orElse("");
        Shape shape = choices.get(kind);
        Entries.Entry entry = entries.get(kind);
        if (entries.size() != 1 || shape == null || entry == null) {
            return Shape.broken(
                    key, line, node, faults, Complaint.WANT_ONE_OF, "key", key, "known", Shown.list(choices.keySet()));
        }
        Cell value = shape.read(kind, entry.line(), entry.value(), faults);
        return value.sound() ? Cell.ofGroup(new Fields(line, Map.of(kind, value))) : Cell.broken(line);
    }

    @Override
    public Map<String, Object> schema() {
        List<Object> kinds = choices.entrySet().stream()
                .map(choice -> (Object) kindSchema(choice.getKey(), choice.getValue()))
                .toList();
        return Map.of("oneOf", kinds);
    }

    private static Map<String, Object> kindSchema(String kind, Shape shape) {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", Map.of(kind, shape.schema()));
        schema.put("required", List.of(kind));
        schema.put("additionalProperties", false);
        return schema;
    }
}
