package startwater.content;

import java.util.Map;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** What a place in a file may hold. The reader and the JSON Schema are made from the same shapes. */
sealed interface Shape
        permits NumberShape,
                TextShape,
                WordShape,
                FlagShape,
                ListShape,
                GroupShape,
                OneKeyShape,
                KindShape,
                MapShape,
                RefShape,
                VersionShape,
                IdShape {
    /**
     * Reads a node of this shape.
     *
     * @param key the name under which it stands, for the sentence of a fault
     * @param line the line of that key, or of the node itself in a list
     * @return the value; not sound, with the faults noted, where the node is of another shape
     */
    Cell read(String key, int line, Node node, Faults faults);

    /** The same as JSON Schema, draft 2020-12. */
    Map<String, Object> schema();

    /** Whether nothing stands there: an empty place, {@code null} or {@code ~}. */
    static boolean nothing(Node node) {
        return node instanceof ScalarNode scalar
                && scalar.isPlain()
                && (scalar.getValue().isEmpty()
                        || scalar.getValue().equals("null")
                        || scalar.getValue().equals("~"));
    }

    /** What stands there, short, for a sentence. */
    static String shown(Node node) {
        return switch (node.getNodeType()) {
            case SCALAR -> ((ScalarNode) node).getValue();
            case SEQUENCE -> "[…]";
            case MAPPING -> "{…}";
            case ANCHOR -> "&…";
        };
    }

    /** Notes a fault unless the place is empty, which is a fault of its own. */
    static Cell broken(String key, int line, Node node, Faults faults, Complaint complaint, Object... values) {
        if (nothing(node)) {
            faults.add(line, Complaint.NO_VALUE, "key", key);
        } else {
            faults.add(line, complaint, values);
        }
        return Cell.broken(line);
    }
}
