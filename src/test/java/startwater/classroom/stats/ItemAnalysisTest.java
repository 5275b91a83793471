package startwater.classroom.stats;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.ReferenceTable;

/** Item statistics against a worked class, and where they must say that they cannot know. */
class ItemAnalysisTest {
    private static final ReferenceTable TABLE = ReferenceTable.read("classroom/item-analysis.csv");
    private static final double HALF_DIGIT = 0.5e-6;

    private static double[][] matrix(String rows) {
        String[] each = rows.split(" ");
        double[][] m = new double[each.length][];
        for (int i = 0; i < each.length; i++) {
            m[i] = each[i].chars()
                    .mapToDouble(c -> c == '-' ? Double.NaN : c - '0')
                    .toArray();
        }
        return m;
    }

    @Tag("outside")
    @Test
    void theWorkedClassComesOut() {
        ItemAnalysis a = ItemAnalysis.of(matrix("11111 11110 11100 11010 10100 11000 01000 10001 00000 10100"));
        for (ReferenceTable.Row row : TABLE.rows()) {
            String what = row.text("quantity");
            String[] words = what.split(" ");
            int last = words.length - 1;
            int item = words[last].matches("\\d") ? Integer.parseInt(words[last]) - 1 : -1;
            String name = item < 0 ? what : what.substring(0, what.length() - 2);
            double value =
                    switch (name) {
                        case "facility" -> a.items().get(item).facility();
                        case "facility low" ->
                            a.items().get(item).facilityWithin().low();
                        case "facility high" ->
                            a.items().get(item).facilityWithin().high();
                        case "corrected r" -> a.items().get(item).discrimination();
                        case "corrected r low" ->
                            a.items().get(item).discriminationWithin().low();
                        case "corrected r high" ->
                            a.items().get(item).discriminationWithin().high();
                        case "KR-20" -> a.reliability();
                        case "KR-20 low" -> a.reliabilityWithin().low();
                        case "KR-20 high" -> a.reliabilityWithin().high();
                        case "r low" -> Interval.ofCorrelation(0.3, 15).low();
                        case "r high" -> Interval.ofCorrelation(0.3, 15).high();
                        default -> throw new AssertionError(what);
                    };
            TABLE.check(row.text("case") + ", " + what, row.number("value"), value, HALF_DIGIT);
        }
    }

    @Test
    void gradedScoresGiveTheSameWhereTheyAreScaledAlike() {
        double[][] whole = matrix("11111 11110 11100 11010 10100 11000 01000 10001 00000 10100");
        double[][] half = matrix("11111 11110 11100 11010 10100 11000 01000 10001 00000 10100");
        for (double[] row : half) {
            for (int i = 0; i < row.length; i++) {
                row[i] = 0.25 + row[i] / 2;
            }
        }
        ItemAnalysis a = ItemAnalysis.of(whole);
        ItemAnalysis b = ItemAnalysis.of(half);
        assertThat(b.reliability()).isCloseTo(a.reliability(), org.assertj.core.data.Offset.offset(1e-12));
        assertThat(b.items().get(3).discrimination())
                .isCloseTo(a.items().get(3).discrimination(), org.assertj.core.data.Offset.offset(1e-12));
    }

    @Test
    void learnersWithoutAnItemCountForTheOthersFacilityOnly() {
        ItemAnalysis a = ItemAnalysis.of(matrix("11 10 0- 01"));
        assertThat(a.complete()).isEqualTo(3);
        assertThat(a.items().get(0).learners()).isEqualTo(4);
        assertThat(a.items().get(0).facility()).isEqualTo(0.5);
        assertThat(a.items().get(1).learners()).isEqualTo(3);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1", "11", "11 11 11", "1 0 1", "- -"})
    void whereNothingCanBeSaidNothingIsSaid(String rows) {
        ItemAnalysis a = ItemAnalysis.of(matrix(rows));
        assertThat(a.reliability()).isNaN();
        assertThat(a.reliabilityWithin().known()).isFalse();
        assertThat(a.items()).allSatisfy(i -> {
            assertThat(i.discrimination()).isNaN();
            assertThat(i.signs()).doesNotContain(ItemAnalysis.Sign.TELLS_LITTLE);
        });
    }

    @Test
    void nobodyAtAllIsNoClass() {
        assertThat(ItemAnalysis.of(new double[0][0]).items()).isEmpty();
    }

    @Test
    void oddItemsAreSigned() {
        ItemAnalysis a = ItemAnalysis.of(matrix("1101 1001 1101 1011 1101 1010"));
        assertThat(a.items().get(0).signs()).containsExactly(ItemAnalysis.Sign.EASY);
        assertThat(a.items().get(2).signs()).contains(ItemAnalysis.Sign.TELLS_LITTLE);
        ItemAnalysis hard = ItemAnalysis.of(matrix("10 00 00 00 01 00"));
        assertThat(hard.items().get(0).signs()).contains(ItemAnalysis.Sign.HARD);
    }

    @Test
    void scoresOutsideAreRefused() {
        assertThatThrownBy(() -> ItemAnalysis.of(new double[][] {{1.2}})).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ItemAnalysis.of(new double[][] {{1}, {1, 0}}))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theSpreadOfMarksLeavesOutThoseThatAreNotThere() {
        assertThat(Spread.of(new double[] {1, Double.NaN, 3})).isEqualTo(new Spread(2, 2, Math.sqrt(2), 1, 3));
        assertThat(Spread.of(new double[0]).mean()).isNaN();
    }
}
