package startwater.content;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * A block that says in a field of its own ({@link #KEY}) which other fields it has.
 *
 * @param kinds the other fields, by what that field says
 */
record KindShape(Map<String, GroupShape> kinds) implements Shape {
    static final String KEY = "kind";

    KindShape {
        kinds = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (!(node instanceof MappingNode mapping)) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_BLOCK, "key", key);
        }
        // A throw-away collection: the shape of the kind notes doubled keys itself.
        Entries.Entry kind = Entries.of(mapping, Faults.of(faults.file())).get(KEY);
        if (kind == null) {
            faults.add(line, Complaint.MISSING_KEY, "key", KEY);
            return Cell.broken(line);
        }
        Cell name = new WordShape(List.copyOf(kinds.keySet())).read(KEY, kind.line(), kind.value(), faults);
        GroupShape shape = kinds.get(name.text());
        return shape == null
                ? Cell.broken(line)
                : whole(((ScalarNode) kind.value()).getValue(), shape).read(key, line, node, faults);
    }

    /** The fields of a kind with the field that names it in front. */
    private static GroupShape whole(String kind, GroupShape shape) {
        List<GroupShape.Field> fields = new ArrayList<>();
        fields.add(GroupShape.need(KEY, WordShape.oneOf(kind), "which kind it is"));
        fields.addAll(shape.fields());
        return new GroupShape(fields, shape.missing());
    }

    @Override
    public Map<String, Object> schema() {
        List<Object> all = new ArrayList<>();
        kinds.forEach((kind, shape) -> all.add(whole(kind, shape).schema()));
        return Map.of("oneOf", all);
    }
}
