package startwater.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * A number of a lesson with its source.
 *
 * @param rule constant of the standing rules that it is, or the pad that has it on its scale, or empty
 * @param times what the constant is taken times, for the unit of the lesson
 * @param from where it comes from
 */
record ListedNumber(int lesson, String number, String rule, double times, String from) {
    static List<ListedNumber> all() {
        try {
            return Files.readAllLines(Path.of("src/test/resources/lessons/numbers.csv")).stream()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(ListedNumber::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static ListedNumber of(String line) {
        String[] cells = line.split(",", 5);
        return new ListedNumber(
                Integer.parseInt(cells[0]),
                cells[1],
                cells[2],
                cells[3].isEmpty() ? 1 : Double.parseDouble(cells[3]),
                cells[4]);
    }
}
