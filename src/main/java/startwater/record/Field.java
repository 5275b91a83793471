package startwater.record;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/** Fields of a line, each read strictly. */
final class Field {
    private Field() {}

    /** A line does not say what its kind must say. */
    static final class Missing extends RuntimeException {
        private static final long serialVersionUID = 1L;

        Missing(String field) {
            super(field);
        }
    }

    static String text(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isString()) {
            throw new Missing(field);
        }
        return value.asString();
    }

    static @Nullable String textOrNull(JsonNode node, String field) {
        return node.hasNonNull(field) ? text(node, field) : null;
    }

    static int whole(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToInt()) {
            throw new Missing(field);
        }
        return value.asInt();
    }

    static long big(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isIntegralNumber() || !value.canConvertToLong()) {
            throw new Missing(field);
        }
        return value.asLong();
    }

    static double number(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isNumber()) {
            throw new Missing(field);
        }
        return value.asDouble();
    }

    static @Nullable Double numberOrNull(JsonNode node, String field) {
        return node.hasNonNull(field) ? (Double) number(node, field) : null;
    }

    static boolean flag(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isBoolean()) {
            throw new Missing(field);
        }
        return value.asBoolean();
    }

    static @Nullable Boolean flagOrNull(JsonNode node, String field) {
        return node.hasNonNull(field) ? (Boolean) flag(node, field) : null;
    }

    static <E extends Enum<E>> E name(JsonNode node, String field, Class<E> of) {
        try {
            return Enum.valueOf(of, text(node, field).toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException unknown) {
            throw new Missing(field);
        }
    }

    static <E extends Enum<E>> @Nullable E nameOrNull(JsonNode node, String field, Class<E> of) {
        return node.hasNonNull(field) ? name(node, field, of) : null;
    }

    static List<String> texts(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isArray()) {
            throw new Missing(field);
        }
        List<String> all = new ArrayList<>();
        for (JsonNode one : value) {
            if (!one.isString()) {
                throw new Missing(field);
            }
            all.add(one.asString());
        }
        return all;
    }

    static JsonNode object(JsonNode node, String field) {
        JsonNode value = node.path(field);
        if (!value.isObject()) {
            throw new Missing(field);
        }
        return value;
    }

    static @Nullable JsonNode objectOrNull(JsonNode node, String field) {
        return node.hasNonNull(field) ? object(node, field) : null;
    }

    static Instant at(JsonNode node) {
        try {
            return Instant.parse(text(node, "at"));
        } catch (DateTimeException none) {
            throw new Missing("at");
        }
    }
}
