package startwater.content;

import java.util.Map;
import org.snakeyaml.engine.v2.nodes.Node;

/** The number of the schema for which a file was written. @param known the one that this program reads */
record VersionShape(int known) implements Shape {
    @Override
    public Cell read(String key, int line, Node node, Faults faults) {
        Cell cell = NumberShape.whole(0, 1_000_000).read(key, line, node, faults);
        if (cell.sound() && cell.number() != known) {
            faults.add(line, Complaint.WRONG_SCHEMA, "value", cell.number(), "known", known);
            return Cell.broken(line);
        }
        return cell;
    }

    @Override
    public Map<String, Object> schema() {
        return Map.of("const", known);
    }
}
