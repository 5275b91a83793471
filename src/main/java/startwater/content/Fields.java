package startwater.content;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A cursor over the keys of one block. What is missing or unsound reads as NaN, as empty text, as an empty list or as a
 * block without keys.
 */
final class Fields {
    static final Fields NONE = new Fields(0, Map.of());

    private final int line;
    private final Map<String, Cell> cells;

    Fields(int line, Map<String, Cell> cells) {
        this.line = line;
        this.cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    /** The line where the block starts. */
    int line() {
        return line;
    }

    Set<String> keys() {
        return cells.keySet();
    }

    /** The line of a key, or of the block when the key is not there. */
    int line(String key) {
        return cells.containsKey(key) ? cell(key).line() : line;
    }

    /** Whether the key stands there, sound or not. */
    boolean has(String key) {
        return cells.containsKey(key);
    }

    boolean sound(String key) {
        return cell(key).sound();
    }

    double number(String key) {
        return cell(key).number();
    }

    double number(String key, double otherwise) {
        return has(key) ? number(key) : otherwise;
    }

    int whole(String key) {
        return (int) number(key);
    }

    String text(String key) {
        return cell(key).text();
    }

    boolean flag(String key) {
        return cell(key).flag();
    }

    Fields group(String key) {
        return cell(key).group();
    }

    List<Cell> items(String key) {
        return cell(key).items();
    }

    List<String> texts(String key) {
        return items(key).stream().map(Cell::text).toList();
    }

    List<Double> numbers(String key) {
        return items(key).stream().map(Cell::number).toList();
    }

    List<Integer> wholes(String key) {
        return items(key).stream().map(item -> (int) item.number()).toList();
    }

    List<Fields> groups(String key) {
        return items(key).stream().map(Cell::group).toList();
    }

    private Cell cell(String key) {
        Cell cell = cells.get(key);
        return cell != null ? cell : Cell.broken(line);
    }
}
