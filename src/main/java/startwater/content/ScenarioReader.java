package startwater.content;

import java.nio.file.Path;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.nodes.Node;
import startwater.drill.Scenario;

/** Reads one drill file. Every fault it finds carries the line on which it stands. */
public final class ScenarioReader {
    public static final String ENDING = ".yaml";

    private ScenarioReader() {}

    /** A drill with the lines of its keys, for the rules that need all drills or play them. */
    record Placed(Scenario scenario, Fields root) {}

    /** Reads a file; never throws for what stands in it. Faults name the path as given. */
    public static Parsed<Scenario> read(Path path) {
        return bare(parse(Loaded.of(path)));
    }

    /** Reads the bytes of a file. @param file the path to name in faults; its last part must match the id */
    public static Parsed<Scenario> read(String file, byte[] bytes) {
        return bare(parse(Loaded.of(file, bytes)));
    }

    private static Parsed<Scenario> bare(Parsed<Placed> placed) {
        Placed value = placed.value();
        return value != null ? Parsed.of(value.scenario()) : new Parsed<>(null, placed.faults());
    }

    static Parsed<Placed> parse(Loaded file) {
        return parse(file.text(), FileNames.base(file.file(), ENDING), file.faults());
    }

    private static Parsed<Placed> parse(@Nullable String text, String name, Faults faults) {
        Node tree = text == null ? null : YamlTree.of(text, faults);
        if (tree == null) {
            return Parsed.failed(faults);
        }
        int first = YamlTree.line(tree.getStartMark());
        Fields root = ScenarioShape.FILE.read(name, first, tree, faults).group();
        if (root != Fields.NONE) {
            ScenarioRules.check(root, name, faults);
        }
        return faults.none() ? Parsed.of(new Placed(ScenarioBinder.scenario(root), root)) : Parsed.failed(faults);
    }
}
