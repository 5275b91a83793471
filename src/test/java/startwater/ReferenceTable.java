package startwater;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Published values a test compares with: a CSV file under {@code src/test/resources/reference} that opens with comment
 * lines. One of them must begin {@code # Source:} and one {@code # Tolerance: <number> absolute|relative}; a file
 * without them cannot be read, so no number enters a test without saying where it comes from.
 */
public final class ReferenceTable {
    private static final String SOURCE = "# Source: ";
    private static final Pattern TOLERANCE = Pattern.compile("# Tolerance: (([0-9.]+) (absolute|relative).*)");

    private final String name;
    private final String source;
    private final String toleranceText;
    private final double tolerance;
    private final boolean relative;
    private final List<Row> rows;

    private ReferenceTable(String name, String source, Matcher tolerance, List<Row> rows) {
        this.name = name;
        this.source = source;
        this.toleranceText = tolerance.group(1);
        this.tolerance = Double.parseDouble(tolerance.group(2));
        this.relative = tolerance.group(3).equals("relative");
        this.rows = List.copyOf(rows);
    }

    /** One line of the table, by the names in its heading. */
    public record Row(Map<String, String> cells) {
        public Row {
            cells = Map.copyOf(cells);
        }

        public String text(String column) {
            String cell = cells.get(column);
            if (cell == null) {
                throw new AssertionError("no column '" + column + "' among " + cells.keySet());
            }
            return cell;
        }

        public double number(String column) {
            return Double.parseDouble(text(column));
        }

        /** Whether the cell holds anything. */
        public boolean has(String column) {
            return !text(column).isEmpty();
        }
    }

    /** Reads a table, for example {@code water/co2-phreeqc.csv}. */
    public static ReferenceTable read(String name) {
        try (InputStream in = ReferenceTable.class.getResourceAsStream("/reference/" + name)) {
            if (in == null) {
                throw new AssertionError("no reference table /reference/" + name);
            }
            return parse(name, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static ReferenceTable parse(String name, String text) {
        List<String> lines = text.lines().toList();
        List<String> head =
                lines.stream().takeWhile(line -> line.startsWith("#")).toList();
        String source = head.stream()
                .filter(line -> line.startsWith(SOURCE) && line.length() > 20)
                .findFirst()
                .orElseThrow(() ->
                        new AssertionError(name + ": the header names no source; begin a line with '" + SOURCE + "'"));
        Matcher matcher = head.stream()
                .map(TOLERANCE::matcher)
                .filter(Matcher::matches)
                .findFirst()
                .orElseThrow(() ->
                        new AssertionError(name + ": the header states no '# Tolerance: <number> absolute|relative'"));
        List<Row> rows = new ArrayList<>();
        String[] names = lines.get(head.size()).split(",");
        for (String line : lines.subList(head.size() + 1, lines.size())) {
            rows.add(row(name, names, line));
        }
        if (rows.isEmpty()) {
            throw new AssertionError(name + ": the table has no rows");
        }
        return new ReferenceTable(name, source.substring(SOURCE.length()), matcher, rows);
    }

    private static Row row(String name, String[] names, String line) {
        String[] cells = line.split(",", -1);
        if (cells.length != names.length) {
            throw new AssertionError(name + ": " + cells.length + " cells for " + names.length + " names in: " + line);
        }
        Map<String, String> byName = new LinkedHashMap<>();
        for (int i = 0; i < names.length; i++) {
            byName.put(names[i], cells[i]);
        }
        return new Row(byName);
    }

    public String name() {
        return name;
    }

    public String source() {
        return source;
    }

    public String toleranceText() {
        return toleranceText;
    }

    public List<Row> rows() {
        return rows;
    }

    /** How far a computed value may lie from the published one, in the unit of the value. */
    public double allowed(double published) {
        return relative ? tolerance * StrictMath.abs(published) : tolerance;
    }

    /** Compares one value with the published one and keeps the outcome for the list of outside checks. */
    public void check(String what, double published, double computed) {
        check(what, published, computed, 0);
    }

    /**
     * The same where something is allowed beside the tolerance of the table.
     *
     * @param beside for example half of the last printed digit, in the unit of the value
     */
    public void check(String what, double published, double computed, double beside) {
        double allowed = allowed(published) + beside;
        double off = StrictMath.abs(computed - published);
        OutsideChecks.keep(this, what, off, allowed);
        if (!(off <= allowed)) {
            throw new AssertionError(String.format(
                    java.util.Locale.ROOT,
                    "%s: %s is published as %s and computed as %s; %s may lie between them",
                    name,
                    what,
                    published,
                    computed,
                    allowed));
        }
    }

    /** Asks that a value lie in a published range, and keeps the outcome. */
    public void checkBetween(String what, double low, double high, double computed) {
        double middle = (low + high) / 2;
        OutsideChecks.keep(this, what, StrictMath.abs(computed - middle), (high - low) / 2);
        if (!(computed >= low && computed <= high)) {
            throw new AssertionError(String.format(
                    java.util.Locale.ROOT,
                    "%s: %s is published as %s to %s and computed as %s",
                    name,
                    what,
                    low,
                    high,
                    computed));
        }
    }
}
