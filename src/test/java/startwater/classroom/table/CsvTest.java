package startwater.classroom.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tables out and in again, and nothing in them that a spreadsheet would run. */
class CsvTest {
    @Test
    void linesEndAsTheStandardSaysAndNumbersKeepThePoint() {
        String text = Csv.commas()
                .words("name")
                .words("mark")
                .endRow()
                .words("p-1")
                .number(-0.125, 3)
                .endRow()
                .text();
        assertThat(text).isEqualTo("name,mark\r\np-1,-0.125\r\n");
        assertThat(Csv.semicolons()
                        .words("a;b")
                        .number(Double.NaN, 2)
                        .number(3)
                        .endRow()
                        .text())
                .isEqualTo("\"a;b\";;3\r\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+1",
                "-1",
                "@SUM(A1)",
                "\t=1",
                "\r=1",
                "\n=1",
                " =1",
                "＝1",
                "=HYPERLINK(\"http://a.example\")",
                "-2+3+cmd|' /C calc'!A0"
            })
    void wordsThatASpreadsheetWouldRunAreMadeHarmless(String words) {
        String text = Csv.commas().words(words).endRow().text();
        List<String> row = Csv.rows(text, ',').get(0);
        assertThat(row.get(0)).startsWith("'");
        assertThat(Csv.words(row, 0)).isEqualTo(words);
    }

    @Test
    void whateverGoesInComesOut() {
        Random random = new Random(11);
        String letters = "ab ,;\"\r\n'=+-@\tñ水";
        for (int round = 0; round < 2_000; round++) {
            char separator = round % 2 == 0 ? ',' : ';';
            List<List<String>> in = new ArrayList<>();
            Csv csv = separator == ',' ? Csv.commas() : Csv.semicolons();
            int columns = 1 + random.nextInt(4);
            for (int r = 0; r < 1 + random.nextInt(4); r++) {
                List<String> row = new ArrayList<>();
                for (int c = 0; c < columns; c++) {
                    StringBuilder cell = new StringBuilder(c == 0 ? "x" : "");
                    random.ints(random.nextInt(6), 0, letters.length()).forEach(i -> cell.append(letters.charAt(i)));
                    String words = cell.toString();
                    if (c == 0 && random.nextBoolean() && words.length() > 1) {
                        words = words.substring(1);
                    }
                    row.add(words);
                    csv.words(words);
                }
                csv.endRow();
                in.add(row);
            }
            List<List<String>> out = new ArrayList<>();
            for (List<String> row : Csv.rows(csv.text(), separator)) {
                List<String> words = new ArrayList<>();
                for (int c = 0; c < row.size(); c++) {
                    words.add(Csv.words(row, c));
                }
                out.add(words);
            }
            assertThat(out).as(csv.text()).isEqualTo(in);
        }
    }

    @Test
    void othersLineEndsAndMarksAreRead() {
        assertThat(Csv.rows("\uFEFFa,b\nc,\rd", ','))
                .containsExactly(List.of("a", "b"), List.of("c", ""), List.of("d"));
        assertThat(Csv.rows("", ',')).isEmpty();
    }

    @Test
    void brokenQuotesAreSaidWithTheirLine() {
        assertThatThrownBy(() -> Csv.rows("a\n\"b", ',')).hasMessageContaining("Line 2");
        assertThatThrownBy(() -> Csv.rows("\"a\"b,c", ',')).hasMessageContaining("Line 1");
    }
}
