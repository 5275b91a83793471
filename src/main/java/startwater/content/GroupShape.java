package startwater.content;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * A block of named fields.
 *
 * @param fields in the order in which they are best written
 * @param missing what to say of a needed field that is not there
 */
record GroupShape(List<Field> fields, Complaint missing) implements Shape {
    /**
     * One field.
     *
     * @param key its name in the file
     * @param shape what it holds
     * @param needed whether it must be there
     * @param says what it is, with its unit, for the schema
     */
    record Field(String key, Shape shape, boolean needed, String says) {}

    GroupShape {
        fields = List.copyOf(fields);
    }

    static GroupShape group(Field... fields) {
        return new GroupShape(List.of(fields), Complaint.MISSING_KEY);
    }

    static Field need(String key, Shape shape, String says) {
        return new Field(key, shape, true, says);
    }

    static Field may(String key, Shape shape, String says) {
        return new Field(key, shape, false, says);
    }

    List<String> keys() {
        return fields.stream().map(Field::key).toList();
    }

    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        if (!(node instanceof MappingNode mapping)) {
            return Shape.broken(key, line, node, faults, Complaint.WANT_BLOCK, "key", key);
        }
        Map<String, Entries.Entry> entries = Entries.of(mapping, faults);
        Set<String> meant = noteUnknown(entries, faults);
        Map<String, Cell> cells = new LinkedHashMap<>();
        for (Field field : fields) {
            Entries.Entry entry = entries.get(field.key());
            if (entry != null) {
                cells.put(field.key(), field.shape().read(field.key(), entry.line(), entry.value(), faults));
            } else if (field.needed() && !meant.contains(field.key())) {
                faults.add(line, missing, "key", field.key());
            }
        }
        return Cell.ofGroup(new Fields(line, cells));
    }

    /** Notes the keys that are not known, and returns the known ones that were probably meant: they are not missing. */
    private Set<String> noteUnknown(Map<String, Entries.Entry> entries, Faults faults) {
        List<String> free = new ArrayList<>(keys());
        free.removeAll(entries.keySet());
        Set<String> meant = new HashSet<>();
        entries.forEach((key, entry) -> {
            if (keys().contains(key)) {
                return;
            }
            Optional<String> near = Near.to(key, free);
            if (near.isPresent()) {
                meant.add(near.get());
                faults.add(entry.line(), Complaint.UNKNOWN_KEY_NEAR, "key", key, "near", near.get());
            } else {
                faults.add(entry.line(), Complaint.UNKNOWN_KEY, "key", key, "known", Shown.list(keys()));
            }
        });
        return meant;
    }

    @Override
    public Map<String, Object> schema() {
        Map<String, Object> properties = new LinkedHashMap<>();
        for (Field field : fields) {
            Map<String, Object> property = new LinkedHashMap<>();
            property.put("description", field.says());
            property.putAll(field.shape().schema());
            properties.put(field.key(), property);
        }
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("type", "object");
        schema.put("properties", properties);
        schema.put(
                "required",
                fields.stream().filter(Field::needed).map(Field::key).toList());
        schema.put("additionalProperties", false);
        return schema;
    }
}
