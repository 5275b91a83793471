package startwater.rehearse;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import startwater.bench.UnitSystem;
import startwater.text.Refusal;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * The form on disk: JSON with {@code schema}, {@code units} ({@code metric} or {@code us}) and {@code answers}, an object of
 * texts by the keys of {@link Entry}. Answers may carry their unit: {@code "volume": "55 gal"}. {@code src/docs/rehearsal.md}
 * tells more.
 */
public final class FormFile {
    /** What the name of a form ends in, beside the scenario of the same name. */
    public static final String ENDING = ".form.json";

    private static final int SCHEMA = 1;
    private static final long MOST_BYTES = 200_000;
    private static final JsonMapper JSON =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();

    private FormFile() {}

    /** A form could not be read. */
    public static final class Unreadable extends Exception {
        private static final long serialVersionUID = 1L;
        private final transient Refusal reason;

        Unreadable(String key, Object... values) {
            super(key);
            reason = Refusal.of(key, values);
        }

        /** Why, as words of the rehearsal. */
        public Refusal reason() {
            return reason;
        }
    }

    /** The form as JSON. */
    public static String write(Form form) {
        ObjectNode root = JSON.createObjectNode();
        root.put("schema", SCHEMA);
        root.put("units", form.units() == UnitSystem.US ? "us" : "metric");
        ObjectNode answers = root.putObject("answers");
        form.answers().forEach((entry, typed) -> answers.put(entry.key(), typed));
        return JSON.writeValueAsString(root) + "\n";
    }

    /** Reads a form from a file. @throws Unreadable with the reason, where it is none */
    public static Form read(Path file) throws Unreadable {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new Unreadable("reh.form.large", file.toString());
            }
            return parse(Files.readString(file, StandardCharsets.UTF_8), file.toString());
        } catch (IOException e) {
            throw new Unreadable("reh.form.noFile", file.toString());
        }
    }

    /** Reads a form from its text. @param name said in a refusal */
    public static Form parse(String text, String name) throws Unreadable {
        JsonNode root;
        try {
            root = JSON.readTree(text);
        } catch (JacksonException e) {
            int line = e.getLocation() == null ? 0 : e.getLocation().getLineNr();
            throw new Unreadable("reh.form.noJson", name, line);
        }
        if (!root.isObject() || !root.path("answers").isObject()) {
            throw new Unreadable("reh.form.noAnswers", name);
        }
        if (root.path("schema").asInt(0) != SCHEMA) {
            throw new Unreadable("reh.form.schema", name, SCHEMA);
        }
        Map<Entry, String> answers = new EnumMap<>(Entry.class);
        for (Map.Entry<String, JsonNode> field : root.path("answers").properties()) {
            Entry entry = Entry.of(field.getKey())
                    .orElseThrow(() -> new Unreadable("reh.form.unknownKey", name, field.getKey()));
            if (!field.getValue().isValueNode()) {
                throw new Unreadable("reh.form.noText", name, field.getKey());
            }
            answers.put(entry, field.getValue().asString(""));
        }
        boolean us = root.path("units").asString("metric").equals("us");
        return new Form(us ? UnitSystem.US : UnitSystem.METRIC, answers);
    }
}
