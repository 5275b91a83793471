package startwater.rehearse;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import startwater.drill.Prior;

/** What the form needs to know beyond what is typed: {@code facts.csv}, each value with its spread and its source. */
public final class Facts {
    /**
     * One value.
     *
     * @param value in {@code unit}
     * @param sd standard deviation of the natural log (of pH: in pH units): what is not known about it
     * @param source where it comes from, or that there is no source
     */
    public record Fact(double value, double sd, String unit, String source) {
        /** As a prior, so many times over. */
        Prior.LogNormal times(double factor) {
            return new Prior.LogNormal(value * factor, sd);
        }
    }

    private static final Map<String, Fact> ALL = read();
    private static final int COLUMNS = 5;

    private Facts() {}

    /** The value of this key. @throws NullPointerException where there is none: a fault of the program */
    public static Fact of(String key) {
        return Objects.requireNonNull(ALL.get(key), key);
    }

    /** All of them, by key. */
    public static Map<String, Fact> all() {
        return ALL;
    }

    private static Map<String, Fact> read() {
        Map<String, Fact> all = new LinkedHashMap<>();
        try (InputStream in = Objects.requireNonNull(Facts.class.getResourceAsStream("facts.csv"));
                BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            lines.lines().filter(line -> !line.startsWith("#")).forEach(line -> {
                String[] cell = line.split(",", COLUMNS);
                Fact fact = new Fact(
                        Double.parseDouble(cell[1]),
                        Double.parseDouble(cell[2]),
                        cell[3],
                        cell[4].replaceAll("^\"|\"$", ""));
                all.put(cell[0], fact);
            });
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return java.util.Collections.unmodifiableMap(all);
    }
}
