package startwater.content;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Writes the JSON Schema of a drill file, for editors that can use one. Made from the same shapes as the reader. */
public final class ScenarioSchema {
    private ScenarioSchema() {}

    /** The schema, draft 2020-12, as indented JSON with a line feed at its end. */
    public static String json() {
        Map<String, Object> schema = new LinkedHashMap<>();
        schema.put("$schema", "https://json-schema.org/draft/2020-12/schema");
        schema.put("title", "A drill: one file in scenarios/");
        schema.putAll(ScenarioShape.FILE.schema());
        Map<String, Object> shared = new TreeMap<>();
        ScenarioShape.SHARED.forEach((name, shape) -> shared.put(name, shape.schema()));
        schema.put("$defs", shared);
        JsonMapper mapper =
                JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
        return mapper.writeValueAsString(schema).replace("\r\n", "\n") + "\n";
    }
}
