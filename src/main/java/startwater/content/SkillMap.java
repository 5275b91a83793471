package startwater.content;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;

/** Which published units of competency the skills cover; a data file with its source at the head. */
public final class SkillMap {
    private static final String FILE = "skill-units.csv";
    private static final int COLUMNS = 5;

    private SkillMap() {}

    /**
     * One skill against one unit.
     *
     * @param skill id of the skill
     * @param code of the unit as published
     * @param title of the unit as published
     * @param english what of it the skill covers, in our own words
     * @param spanish the same
     */
    public record Row(String skill, String code, String title, String english, String spanish) {
        /** The part covered in a language. @param language {@code en} or {@code es} */
        public String part(String language) {
            return language.equals(Languages.SPANISH) ? spanish : english;
        }

        /** Code and title, as lessons name a unit. */
        public String unit() {
            return code + " " + title;
        }
    }

    private static final class Read {
        static final List<Row> ROWS = rows();
    }

    /** All rows, in the order of the file. */
    public static List<Row> all() {
        return Read.ROWS;
    }

    /** The units that a skill covers. */
    public static List<Row> of(String skill) {
        return all().stream().filter(row -> row.skill().equals(skill)).toList();
    }

    private static List<Row> rows() {
        InputStream in = Objects.requireNonNull(SkillMap.class.getResourceAsStream(FILE), FILE);
        try (BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            return reader.lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .map(SkillMap::row)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Row row(String line) {
        String[] cells = line.split(";", -1);
        if (cells.length != COLUMNS) {
            throw new IllegalStateException(
                    FILE + ": a row has " + COLUMNS + " cells, not " + cells.length + ": " + line);
        }
        return new Row(cells[0], cells[1], cells[2], cells[3], cells[4]);
    }
}
