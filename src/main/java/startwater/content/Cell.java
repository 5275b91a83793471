package startwater.content;

import java.util.List;

/**
 * A value read from a file, with its line. A cell that could not be read is not sound; it then holds values with which
 * no comparison comes out true, so that a later rule passes it over in silence.
 *
 * @param line the line of its key, or of itself in a list
 * @param sound whether it was read without fault
 * @param number NaN where it is none
 * @param text empty where it is none
 * @param flag false where it is none
 * @param items empty where it is no list
 * @param group without keys where it is no block
 */
record Cell(int line, boolean sound, double number, String text, boolean flag, List<Cell> items, Fields group) {
    Cell {
        items = List.copyOf(items);
    }

    static Cell broken(int line) {
        return new Cell(line, false, Double.NaN, "", false, List.of(), Fields.NONE);
    }

    static Cell ofNumber(int line, double number) {
        return new Cell(line, true, number, "", false, List.of(), Fields.NONE);
    }

    static Cell ofText(int line, String text) {
        return new Cell(line, true, Double.NaN, text, false, List.of(), Fields.NONE);
    }

    static Cell ofFlag(int line, boolean flag) {
        return new Cell(line, true, Double.NaN, "", flag, List.of(), Fields.NONE);
    }

    static Cell ofItems(int line, List<Cell> items) {
        return new Cell(line, true, Double.NaN, "", false, items, Fields.NONE);
    }

    static Cell ofGroup(Fields group) {
        return new Cell(group.line(), true, Double.NaN, "", false, List.of(), group);
    }
}
