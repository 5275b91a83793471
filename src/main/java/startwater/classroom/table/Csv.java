package startwater.classroom.table;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows of cells as comma-separated text after RFC 4180: lines end in CR LF, cells with a separator, a quote or a line break
 * are quoted. Numbers keep the decimal point whatever the language.
 *
 * <p>A spreadsheet takes a cell that begins with {@code = + - @}, a tab or a line break for a formula and may run it, so an
 * apostrophe is put before such words; {@link #words} takes it off again. Numbers are left alone.
 */
public final class Csv {
    private static final String LINE_END = "\r\n";
    /** Those that begin a formula in one spreadsheet or another, full-width forms among them; and the mark itself. */
    private static final String HARMFUL = "=+-@\t\r\n'\uFF1D\uFF0B\uFF0D\uFF20";

    private static final int MOST_CELLS = 1_000_000;

    private final char separator;
    private final StringBuilder out = new StringBuilder();
    private boolean inRow;

    private Csv(char separator) {
        this.separator = separator;
    }

    /** Cells parted by commas. */
    public static Csv commas() {
        return new Csv(',');
    }

    /** Cells parted by semicolons, which spreadsheets in many languages open without asking. */
    public static Csv semicolons() {
        return new Csv(';');
    }

    /** A cell of words: what a spreadsheet might run is made harmless. */
    public Csv words(String words) {
        return cell(harmless(words));
    }

    /** A cell with a number, with so many decimals at most; empty for NaN. */
    public Csv number(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return cell("");
        }
        java.math.BigDecimal rounded =
                java.math.BigDecimal.valueOf(value).setScale(decimals, java.math.RoundingMode.HALF_UP);
        return cell(rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString());
    }

    public Csv number(long value) {
        return cell(Long.toString(value));
    }

    private Csv cell(String text) {
        if (inRow) {
            out.append(separator);
        }
        inRow = true;
        boolean quoted = text.indexOf(separator) >= 0
                || text.chars().anyMatch(c -> c == '"' || c == '\r' || c == '\n')
                || !text.equals(text.strip());
        out.append(quoted ? '"' + text.replace("\"", "\"\"") + '"' : text);
        return this;
    }

    public Csv endRow() {
        inRow = false;
        out.append(LINE_END);
        return this;
    }

    /** All rows so far. */
    public String text() {
        return out.toString();
    }

    private static String harmless(String words) {
        String bare = words.stripLeading();
        boolean harmful = (!words.isEmpty() && HARMFUL.indexOf(words.charAt(0)) >= 0)
                || (!bare.isEmpty() && HARMFUL.indexOf(bare.charAt(0)) >= 0);
        return harmful ? "'" + words : words;
    }

    /** The words of a cell as they were before an apostrophe was put before them. */
    public static String words(List<String> row, int cell) {
        String text = cell < row.size() ? row.get(cell) : "";
        return text.startsWith("'") ? text.substring(1) : text;
    }

    /**
     * Reads rows. Line ends may be CR LF, LF or CR; a byte order mark at the beginning is passed over.
     *
     * @throws IllegalArgumentException where a quote is not closed, or something follows it, with the number of the line
     */
    public static List<List<String>> rows(String text, char separator) {
        return new Reader(text, separator).rows();
    }

    private static final class Reader {
        private final String text;
        private final char separator;
        private final List<List<String>> rows = new ArrayList<>();
        private List<String> row = new ArrayList<>();
        private int at;
        private int line = 1;
        private int cells;

        Reader(String text, char separator) {
            this.text = text.startsWith("\uFEFF") ? text.substring(1) : text;
            this.separator = separator;
        }

        List<List<String>> rows() {
            while (at < text.length()) {
                row.add(text.charAt(at) == '"' ? quoted() : plain());
                if (++cells > MOST_CELLS) {
                    throw new IllegalArgumentException("Line " + line + ": more than " + MOST_CELLS + " cells");
                }
                endOfCell();
            }
            if (!row.isEmpty()) {
                rows.add(List.copyOf(row));
            }
            return List.copyOf(rows);
        }

        private String plain() {
            int from = at;
            while (at < text.length() && text.charAt(at) != separator && !lineEnds()) {
                at++;
            }
            return text.substring(from, at);
        }

        private String quoted() {
            int opened = line;
            StringBuilder cell = new StringBuilder();
            at++;
            while (at < text.length()) {
                char c = text.charAt(at++);
                if (c != '"') {
                    line += c == '\n' ? 1 : 0;
                    cell.append(c);
                } else if (at < text.length() && text.charAt(at) == '"') {
                    cell.append('"');
                    at++;
                } else {
                    return cell.toString();
                }
            }
            throw new IllegalArgumentException("Line " + opened + ": the quote is not closed");
        }

        private boolean lineEnds() {
            return text.charAt(at) == '\n' || text.charAt(at) == '\r';
        }

        private void endOfCell() {
            if (at >= text.length()) {
                return;
            }
            if (text.charAt(at) == separator) {
                at++;
                if (at >= text.length() || lineEnds()) {
                    row.add("");
                } else {
                    return;
                }
            }
            if (at < text.length() && !lineEnds()) {
                throw new IllegalArgumentException("Line " + line + ": something follows a closing quote");
            }
            if (at < text.length()) {
                at += text.startsWith("\r\n", at) ? 2 : 1;
            }
            line++;
            rows.add(List.copyOf(row));
            row = new ArrayList<>();
        }
    }
}
