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
        try (Stream<Path> files = Files.walk(folder)) {
            List<String> names = files.filter(file -> file.toString().endsWith(".csv"))
                    .map(file -> folder.relativize(file).toString().replace('\\', '/'))
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
    void lettingAValueBesideItsToleranceIsAFailure() {
        ReferenceTable table = ReferenceTable.parse("t", SOURCE + TOLERANCE + BODY);
        table.check("inside", 4, 5.9);
        table.check("inside with half a digit", 4, 6.4, 0.5);
        table.checkBetween("inside a range", 3, 5, 5);
        assertThatThrownBy(() -> table.check("outside", 4, 6.1)).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> table.check("nothing", 4, Double.NaN)).isInstanceOf(AssertionError.class);
        assertThatThrownBy(() -> table.checkBetween("outside a range", 3, 5, 5.1))
                .isInstanceOf(AssertionError.class);
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
