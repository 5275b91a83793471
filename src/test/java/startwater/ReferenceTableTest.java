package startwater;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class ReferenceTableTest {
    private static final String SOURCE = "# Source: a table somebody printed\n";
    private static final String TOLERANCE = "# Tolerance: 0.5 relative\n";
    private static final String BODY = "x,y\n1,4\n";

    @Test
    void everyTableHasItsSourceAndTolerance() throws IOException, URISyntaxException {
        Path folder = Path.of(Objects.requireNonNull(ReferenceTableTest.class.getResource("/reference"))
                .toURI());
        try (Stream<Path> files = Files.list(folder)) {
            List<String> names = files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".csv"))
                    .toList();
            assertThat(names).hasSizeGreaterThan(10);
            names.forEach(ReferenceTable::read);
        }
    }

    @Test
    void readsCellsAndTolerance() {
        ReferenceTable table = ReferenceTable.parse("t", SOURCE + TOLERANCE + BODY);
        assertThat(table.rows()).singleElement().satisfies(row -> {
            assertThat(row.number("x")).isEqualTo(1);
            assertThat(table.allowed(row.number("y"))).isEqualTo(2);
        });
    }

    @Test
    void refusesATableWithoutSource() {
        assertThatThrownBy(() -> ReferenceTable.parse("t", TOLERANCE + BODY)).isInstanceOf(AssertionError.class);
    }

    @Test
    void refusesATableWithoutTolerance() {
        assertThatThrownBy(() -> ReferenceTable.parse("t", SOURCE + BODY)).isInstanceOf(AssertionError.class);
    }

    @Test
    void refusesATableWithoutRows() {
        assertThatThrownBy(() -> ReferenceTable.parse("t", SOURCE + TOLERANCE + "x,y\n"))
                .isInstanceOf(AssertionError.class);
    }

    @Test
    void refusesALineWithACellTooFew() {
        assertThatThrownBy(() -> ReferenceTable.parse("t", SOURCE + TOLERANCE + "x,y\n1\n"))
                .isInstanceOf(AssertionError.class);
    }
}
