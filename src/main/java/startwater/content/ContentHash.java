package startwater.content;

import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Collection;
import java.util.HexFormat;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import startwater.drill.DrillLog;
import startwater.drill.Scenario;

/**
 * Fingerprints of what a drill says, whatever its file looks like: spaces, comments and the order of keys do not count.
 * SHA-256 over a canonical form in which every number stands by its bits.
 */
public final class ContentHash {
    /** What a learner reads and where the card lies: it can be put better without changing a single mark. */
    private static final Set<String> ONLY_SHOWN = Set.of("number", "text", "skills", "exposes", "rules");

    private ContentHash() {}

    /** The fingerprint of everything in a drill, in hexadecimal. */
    public static String of(Scenario scenario) {
        return sha256(canonical(scenario, Set.of()));
    }

    /** The fingerprint of what decides how a drill plays and is marked: all but its words, place and tags. */
    public static String ofPlay(Scenario scenario) {
        return sha256(canonical(scenario, ONLY_SHOWN));
    }

    /** The fingerprint of a log, in hexadecimal. */
    public static String of(DrillLog log) {
        return sha256(canonical(log, Set.of()));
    }

    /** The fingerprint of the state of a tank, in hexadecimal: the same only where every number is, to the last bit. */
    public static String of(double[] state) {
        return sha256(canonical(Arrays.stream(state).boxed().toList(), Set.of()));
    }

    /** A text that two equal values share and no two different ones. Records, collections and plain values only. */
    static String canonical(Object value, Set<String> without) {
        StringBuilder out = new StringBuilder();
        write(value, without, out);
        return out.toString();
    }

    private static void write(@Nullable Object value, Set<String> without, StringBuilder out) {
        if (value == null) {
            out.append('~');
        } else if (value instanceof Record record) {
            writeRecord(record, without, out);
        } else if (value instanceof Map<?, ?> map) {
            TreeMap<String, Object> sorted = new TreeMap<>();
            map.forEach((key, inner) -> sorted.put(String.valueOf(key), inner));
            out.append('{');
            sorted.forEach((key, inner) -> {
                write(key, without, out);
                write(inner, without, out);
            });
            out.append('}');
        } else if (value instanceof Collection<?> list) {
            out.append('[');
            list.forEach(inner -> write(inner, without, out));
            out.append(']');
        } else if (value instanceof Double number) {
            // By its bits: how a number is printed differs between versions of Java. Minus nought is nought.
            out.append('d').append(HexFormat.of().toHexDigits(Double.doubleToLongBits(number + 0.0)));
        } else {
            String text = value.toString();
            out.append(value.getClass().getSimpleName())
                    .append(text.length())
                    .append(':')
                    .append(text);
        }
    }

    private static void writeRecord(Record record, Set<String> without, StringBuilder out) {
        out.append(record.getClass().getSimpleName()).append('(');
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            if (without.contains(component.getName())) {
                continue;
            }
            out.append(component.getName()).append('=');
            try {
                write(component.getAccessor().invoke(record), Set.of(), out);
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("No canonical form of " + component, e);
            }
        }
        out.append(')');
    }

    private static String sha256(String text) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(digest.digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("Every Java has SHA-256", e);
        }
    }
}
