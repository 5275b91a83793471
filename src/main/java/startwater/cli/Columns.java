package startwater.cli;

import java.util.ArrayList;
import java.util.List;

/** Rows of cells as lines of text: each column as wide as its widest cell, words to the left, numbers to the right. */
final class Columns {
    private static final String BETWEEN = "  ";

    private Columns() {}

    /**
     * The lines.
     *
     * @param rows all with as many cells
     * @param words how many columns hold words; those after them hold numbers
     */
    static List<String> lines(List<List<String>> rows, int words) {
        int[] widths = new int[rows.get(0).size()];
        for (List<String> row : rows) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.max(widths[i], row.get(i).length());
            }
        }
        List<String> lines = new ArrayList<>();
        for (List<String> row : rows) {
            StringBuilder line = new StringBuilder();
            for (int i = 0; i < widths.length; i++) {
                String room = " ".repeat(widths[i] - row.get(i).length());
                line.append(i == 0 ? "" : BETWEEN).append(i < words ? row.get(i) + room : room + row.get(i));
            }
            lines.add(line.toString());
        }
        return lines;
    }
}
