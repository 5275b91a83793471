package startwater.content;

import java.util.LinkedHashMap;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The keys of one block with their lines and values, each key once. */
final class Entries {
    /** A value and the line of its key. */
    record Entry(int line, Node value) {}

    private Entries() {}

    /** The entries in the order of the file; a key that comes again is noted and passed over. */
    static Map<String, Entry> of(MappingNode mapping, Faults faults) {
        Map<String, Entry> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            int line = YamlTree.line(tuple.getKeyNode().getStartMark());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                faults.add(line, Complaint.KEY_NOT_TEXT);
                continue;
            }
            Entry first = entries.putIfAbsent(key.getValue(), new Entry(line, tuple.getValueNode()));
            if (first != null) {
                faults.add(line, Complaint.DOUBLE_KEY, "key", key.getValue(), "line", first.line());
            }
        }
        return entries;
    }
}
