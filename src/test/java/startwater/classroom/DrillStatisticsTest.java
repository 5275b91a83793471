package startwater.classroom;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import startwater.classroom.table.Csv;
import startwater.classroom.table.Gradebook;
import startwater.drill.Skill;
import startwater.record.Entry;

/** A small class with made-up marks: what the tables must say of it. */
class DrillStatisticsTest {
    private static final String DRILL = "hungry-second-week";
    private static final List<Attempt> CLASS = new ArrayList<>();

    @BeforeAll
    static void play() {
        for (int i = 1; i <= 6; i++) {
            String policy = i % 3 == 0 ? "careful" : "feeds-because-they-beg";
            CLASS.add(Pupils.attempt("p" + i, DRILL, policy, i, Entry.Mode.EXAM));
        }
        CLASS.add(Pupils.attempt("p1", "first-strips", "careful", 2, Entry.Mode.PRACTICE));
    }

    private static DrillStatistics drill() {
        return DrillStatistics.all(CLASS).stream()
                .filter(s -> s.scenario().id().equals(DRILL))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void everyDrillHasItsStatisticsInTheOrderOfTheShelf() {
        assertThat(DrillStatistics.all(CLASS))
                .extracting(s -> s.scenario().id())
                .containsExactly("first-strips", DRILL);
        assertThat(drill().learners()).hasSize(6);
    }

    @Test
    void theFirstFinishedAttemptOfALearnerCounts() {
        List<Attempt> more = new ArrayList<>(CLASS);
        Attempt again = Pupils.attempt("p1", DRILL, "careful", 2, Entry.Mode.EXAM);
        more.add(
                0,
                new Attempt(
                        again.id(),
                        "p1",
                        "",
                        again.scenario(),
                        2,
                        again.mode(),
                        "en",
                        "1",
                        again.begun().plusSeconds(5),
                        again.finished(),
                        again.steps()));
        Attempt open = Pupils.attempt("p7", DRILL, "careful", 2, Entry.Mode.EXAM);
        more.add(new Attempt(
                open.id(), "p7", "", open.scenario(), 2, open.mode(), "en", "1", open.begun(), null, open.steps()));
        DrillStatistics s = DrillStatistics.all(more).get(1);
        assertThat(s.attempts()).extracting(Attempt::variant).containsExactly(1L, 2L, 3L, 4L, 5L, 6L);
    }

    @Test
    void decisionsThatCountedForNobodyAreNoItems() {
        assertThat(drill().items())
                .extracting(DecisionItem::number)
                .doesNotContain(1)
                .contains(2, 3);
    }

    @Test
    void marksFacilityAndActsBelongTogether() {
        DecisionItem second = drill().items().get(0);
        double mean = CLASS.subList(0, 6).stream()
                .mapToDouble(
                        a -> java.util.Objects.requireNonNull(a.steps().get(1).marks())
                                .decision())
                .average()
                .orElseThrow();
        assertThat(second.marks().n()).isEqualTo(6);
        assertThat(second.marks().mean()).isEqualTo(mean);
        assertThat(100 * second.item().facility()).isCloseTo(mean, org.assertj.core.data.Offset.offset(1e-9));
        assertThat(second.chosen().stream().mapToInt(DecisionItem.Chosen::count).sum())
                .isEqualTo(6);
        assertThat(second.chosen().get(0).count())
                .isGreaterThanOrEqualTo(second.chosen().get(1).count());
    }

    @Test
    void aWideSpreadIsWorthDiscussing() {
        assertThat(drill().toDiscuss()).isNotEmpty().allSatisfy(i -> assertThat(i.reasons())
                .isNotEmpty());
        assertThat(drill().items().get(0).reasons()).contains(DecisionItem.Reason.SPREAD);
    }

    @Test
    void whatWentWrongFirstIsCountedOncePerLearner() {
        int wrong = drill().firstWrong().stream().mapToInt(FirstWrong::count).sum();
        assertThat(wrong).isEqualTo(3);
    }

    @Test
    void readingsAreCountedByPad() {
        int written = (int) CLASS.subList(0, 6).stream()
                .flatMap(a -> a.steps().stream())
                .mapToLong(s -> s.readings().size())
                .sum();
        assertThat(drill().readings().stream().mapToInt(PadReadings::written).sum())
                .isEqualTo(written)
                .isPositive();
    }

    @Test
    void theTableHasALearnerARowAndASkillAColumn() {
        ClassTable table = ClassTable.of(CLASS, ZoneOffset.UTC);
        assertThat(table.rows())
                .extracting(ClassTable.Row::learner)
                .containsExactly("p1", "p2", "p3", "p4", "p5", "p6");
        assertThat(table.rows().get(0).attempts()).isEqualTo(2);
        assertThat(table.skills()).contains(Skill.READ_STRIP, Skill.NITRITE_CHLORIDE);
        int nitrite = table.skills().indexOf(Skill.NITRITE_CHLORIDE);
        // Learner 2 has marks over 75 throughout, learner 1 mostly under 50.
        assertThat(table.rows().get(1).cells().get(nitrite).known())
                .isGreaterThan(table.rows().get(0).cells().get(nitrite).known());
    }

    @Test
    void theGradebookComesBackAsItWentOut() {
        List<Attempt> odd = new ArrayList<>(CLASS);
        odd.add(Pupils.attempt("=cmd|' /C calc'!A0", DRILL, "careful", 4, Entry.Mode.EXAM));
        for (char separator : new char[] {',', ';'}) {
            String text = Gradebook.marks(
                    odd,
                    separator == ',' ? Csv::commas : Csv::semicolons,
                    p -> p.equals("p2") ? "Ana, la de al lado" : "");
            List<List<String>> rows = Csv.rows(text, separator);
            assertThat(rows.get(0)).containsExactly("student_id", "name", "first-strips", DRILL);
            assertThat(rows.get(1)).containsExactly("points possible", "", "100", "100");
            assertThat(rows).hasSize(2 + 7);
            assertThat(rows.get(2).get(0)).startsWith("'=");
            assertThat(Csv.words(rows.get(2), 0)).isEqualTo("=cmd|' /C calc'!A0");
            List<String> second = rows.get(4);
            assertThat(second.get(1)).isEqualTo("Ana, la de al lado");
            assertThat(Double.parseDouble(second.get(3)))
                    .isCloseTo(CLASS.get(1).mark(), org.assertj.core.data.Offset.offset(0.05));
            assertThat(second.get(2)).isEmpty();
        }
    }

    @Test
    void theFileOfDecisionsHasARowADecisionAndAllItsCells() {
        List<List<String>> rows = Csv.rows(Gradebook.decisions(CLASS, Csv::commas), ',');
        int decisions = CLASS.stream().mapToInt(a -> a.steps().size()).sum();
        assertThat(rows).hasSize(1 + decisions);
        assertThat(rows).allSatisfy(row -> assertThat(row).hasSameSizeAs(rows.get(0)));
        assertThat(rows.get(1).get(7)).isEqualTo("2026-03-02T08:01:30.120Z");
        List<Integer> numbers = IntStream.range(1, rows.size())
                .mapToObj(i -> Integer.parseInt(rows.get(i).get(5)))
                .toList();
        assertThat(numbers).startsWith(1, 2, 3);
    }
}
