package startwater.classroom;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import startwater.classroom.table.Csv;

/**
 * Who is behind a pseudonym: a CSV file with the columns pseudonym and name, kept on the teacher's computer and nowhere else.
 * It goes into no statement and no hand-out; only a gradebook that is asked for with a roster has names.
 */
public final class Roster {
    /** Nobody is named. */
    public static final Roster NONE = new Roster(Map.of());

    private static final int MOST_BYTES = 500_000;

    private final Map<String, String> names;

    private Roster(Map<String, String> names) {
        this.names = Map.copyOf(names);
    }

    /**
     * Reads a roster. The columns may be parted by commas or semicolons; a first row {@code pseudonym,name} is a heading.
     *
     * @throws IOException where it cannot be read or is no roster
     */
    public static Roster read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            byte[] bytes = in.readNBytes(MOST_BYTES + 1);
            if (bytes.length > MOST_BYTES) {
                throw new IOException("more than " + MOST_BYTES / 1000 + " kB");
            }
            return of(new String(bytes, StandardCharsets.UTF_8));
        }
    }

    static Roster of(String text) throws IOException {
        char separator = text.lines().findFirst().orElse("").contains(";") ? ';' : ',';
        Map<String, String> names = new HashMap<>();
        try {
            for (List<String> row : Csv.rows(text, separator)) {
                String pseudonym = PlainName.of(Csv.words(row, 0));
                if (!pseudonym.isEmpty() && !pseudonym.equals("pseudonym")) {
                    names.put(pseudonym, PlainName.of(Csv.words(row, 1)));
                }
            }
        } catch (IllegalArgumentException broken) {
            throw new IOException(broken.getMessage(), broken);
        }
        return new Roster(names);
    }

    /** The name behind a pseudonym, or empty. */
    public String name(String pseudonym) {
        return names.getOrDefault(pseudonym, "");
    }

    /** The name where there is one, else the pseudonym: for lists on the teacher's own screen. */
    public String shown(String pseudonym) {
        String name = name(pseudonym);
        return name.isEmpty() ? pseudonym : name;
    }
}
