package startwater.classroom.xapi;

import java.util.List;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/** Statements as JSON lines: one statement a line, UTF-8, a line feed after each. */
public final class StatementFile {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private StatementFile() {}

    /** The text of the file. */
    public static String text(List<ObjectNode> statements) {
        StringBuilder out = new StringBuilder();
        statements.forEach(s -> out.append(JSON.writeValueAsString(s)).append('\n'));
        return out.toString();
    }
}
