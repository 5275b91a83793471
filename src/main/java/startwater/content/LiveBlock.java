package startwater.content;

import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads the body of one fenced block. */
final class LiveBlock {
    private LiveBlock() {}

    /**
     * The block, or nothing with the faults noted.
     *
     * @param info what stands after the opening fence
     * @param line line of the opening fence
     */
    static Optional<Block> read(String info, String body, int line, LessonRules rules, Faults faults) {
        Optional<BlockKind> kind = kind(info.strip(), line, faults);
        if (kind.isEmpty()) {
            return Optional.empty();
        }
        int before = faults.count();
        Faults part = faults.below(line);
        Node tree = body.isBlank() ? null : YamlTree.of(body, part);
        if (body.isBlank()) {
            faults.add(line, Complaint.NO_VALUE, "key", kind.get().id());
        }
        if (tree == null) {
            return Optional.empty();
        }
        Fields fields = kind.get().shape().read(kind.get().id(), 0, tree, part).group();
        rules.in(part);
        kind.get().check(rules, fields);
        return faults.count() == before ? Optional.of(kind.get().bind(fields)) : Optional.empty();
    }

    private static Optional<BlockKind> kind(String name, int line, Faults faults) {
        Optional<BlockKind> kind = BlockKind.byId(name);
        Optional<String> near = Near.to(name, BlockKind.ids());
        if (kind.isPresent()) {
            return kind;
        }
        if (name.isEmpty()) {
            faults.add(line, Complaint.NO_BLOCK_KIND);
        } else if (near.isPresent()) {
            faults.add(line, Complaint.UNKNOWN_BLOCK_NEAR, "kind", name, "near", near.get());
        } else {
            faults.add(line, Complaint.UNKNOWN_BLOCK, "kind", name, "known", Shown.list(BlockKind.ids()));
        }
        return Optional.empty();
    }
}
