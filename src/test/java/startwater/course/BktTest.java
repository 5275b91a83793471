package startwater.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.ReferenceTable;
import startwater.ReferenceTable.Row;

@Tag("outside")
class BktTest {
    private static final double HALF_DIGIT = 0.5e-6 + 1e-12;

    @ParameterizedTest
    @ValueSource(strings = {"A", "B"})
    void tracesThePublishedAnswers(String name) {
        ReferenceTable table = ReferenceTable.read("course/knowledge-tracing.csv");
        double known = Double.NaN;
        for (Row row : table.rows()) {
            if (row.text("case").equals(name)) {
                Bkt bkt = new Bkt(row.number("start"), row.number("learn"), row.number("slip"), row.number("guess"));
                known = row.number("step") == 1 ? bkt.start() : known;
                String what = name + " step " + row.text("step");
                if (row.has("success")) {
                    table.check(what + " success", row.number("success"), bkt.success(known), HALF_DIGIT);
                }
                known = bkt.after(known, row.number("answer"));
                table.check(what + " known", row.number("known"), known, HALF_DIGIT);
            }
        }
        assertThat(known).isFinite();
    }

    @Test
    void aHalfRightAnswerLiesHalfWay() {
        Bkt b = Bkt.USUAL;
        for (double known : new double[] {0.05, 0.35, 0.9}) {
            double middle = (b.after(known, 1) + b.after(known, 0)) / 2;
            assertThat(b.after(known, 0.5)).isCloseTo(middle, within(1e-12));
            assertThat(b.after(known, 1)).isGreaterThan(b.after(known, 0.5));
            assertThat(b.after(known, 0.8, 0.5)).isCloseTo((known + b.after(known, 0.8)) / 2, within(1e-12));
        }
    }

    @Test
    void aLuckyPickOfThreeTellsLess() {
        Bkt b = Bkt.USUAL;
        assertThat(b.among(3).after(0.5, 1)).isLessThan(b.among(4).after(0.5, 1));
        assertThat(b.among(0)).isEqualTo(b);
    }

    @Test
    void startsWhereTheLearnerStandsOverall() {
        Bkt b = Bkt.USUAL;
        assertThat(b.prior(0, 0)).isEqualTo(0.35);
        // (2 + 3) / (4 + 4) = 0.625; (0.625 - 0.25) / 0.65 by hand.
        assertThat(b.prior(3, 4)).isCloseTo(0.576923, within(1e-6));
        assertThat(b.prior(0, 50)).isEqualTo(0.05);
        assertThat(b.prior(1000, 1000)).isEqualTo(0.9);
    }

    @Test
    void refusesWhatIsNoChance() {
        assertThatThrownBy(() -> new Bkt(0.3, 0.1, 0.6, 0.5)).hasMessageContaining("under 1");
        assertThatThrownBy(() -> Bkt.USUAL.after(0.3, 1.2)).hasMessageContaining("0 to 1");
    }
}
