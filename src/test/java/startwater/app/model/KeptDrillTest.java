package startwater.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.app.Desk;
import startwater.app.Desks;
import startwater.content.Library;
import startwater.drill.DippedStrip;
import startwater.drill.Prediction.Sureness;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.record.Observed;
import startwater.score.WorkingMark;
import startwater.strip.Pad;
import tools.jackson.databind.json.JsonMapper;

/** What is done in the window's drill reaches the learner's file at once, and lies there again after a start. */
class KeptDrillTest {
    private static final Scenario DRILL =
            Library.shipped().scenario("chloramine-town").get();

    @TempDir
    private Path folder;

    private static DrillModel model(Desk desk) {
        return new DrillModel(new Attempts(desk.learner()).goOnOrBegin(DRILL, Entry.Mode.PRACTICE, "en"), 1, null);
    }

    private List<String> kinds() throws IOException {
        return Files.readAllLines(folder.resolve("learners/learner.jsonl")).stream()
                .map(l -> JsonMapper.shared().readTree(l).path("kind").asString())
                .toList();
    }

    @Test
    void eachStepIsInTheFileBeforeAnythingMovesOn() throws IOException {
        try (Desk desk = Desks.nameless(folder)) {
            DrillModel model = model(desk);
            model.dip(10);
            assertThat(kinds()).containsExactly("learner", "begun", "dipped");
            model.writeDown();
            assertThat(kinds()).endsWith("wrote");
            model.takeBack();
            assertThat(kinds()).endsWith("erased");
            model.workingProperty().set(WorkingMark.of(0.1, 0.05));
            model.workingProperty().set(WorkingMark.of(0.05, 0.05));
            assertThat(kinds()).as("not each key that is typed").doesNotContain("worked");
            model.keepSum();
            model.keepSum();
            assertThat(kinds()).endsWith("worked").containsOnlyOnce("worked");
            model.foreseenProperty().set(3);
            var judging = model.commit();
            assertThat(kinds()).endsWith("decided").containsOnlyOnce("worked");
            model.judged(judging.join());
            assertThat(kinds()).endsWith("marked");
            Observed.Visit visit =
                    (Observed.Visit) desk.learner().history().observed().get(0);
            assertThat(visit.marks().working()).isEqualTo(new Entry.Working("toxic-ammonia", 100, false));
            assertThat(visit.marks().foresight()).matches(f -> f != null && f.sureness() == Sureness.FAIRLY_SURE);
        }
    }

    @Test
    void afterAStartTheStripLiesThereTheReadingIsWrittenAndTheSumStands() {
        double nitrite;
        try (Desk desk = Desks.nameless(folder)) {
            DrillModel model = model(desk);
            model.dip(10);
            nitrite = Objects.requireNonNull(model.wet(Pad.NITRITE)).position(Pad.NITRITE);
            model.choose(7);
            model.writeDown();
            model.workingProperty().set(WorkingMark.of(0.1, 0.05));
            model.keepSum();
        }
        try (Desk desk = Desks.nameless(folder)) {
            DrillModel model = model(desk);
            DippedStrip wet = Objects.requireNonNull(model.wet(Pad.NITRITE));
            assertThat(wet.position(Pad.NITRITE)).isEqualTo(nitrite);
            assertThat(wet.dilution()).isEqualTo(10);
            assertThat(model.stop(Pad.AMMONIA)).isEqualTo(7);
            assertThat(model.inHandProperty().get()).isEqualTo(Pad.NITRITE);
            assertThat(model.workingProperty().get()).isEqualTo(WorkingMark.of(0.1, 0.05));
            model.takeBack();
            assertThat(model.inHandProperty().get()).isEqualTo(Pad.AMMONIA);
        }
    }

    @Test
    void aDrillTakenUpElsewhereIsWrittenThereOnly() throws IOException {
        try (Desk desk = Desks.nameless(folder)) {
            DrillModel before = model(desk);
            before.dip(1);
            DrillModel now = model(desk);
            before.dip(1);
            now.dipChloride();
            assertThat(kinds()).containsExactly("learner", "begun", "dipped", "dipped");
        }
        try (Desk desk = Desks.nameless(folder)) {
            assertThat(model(desk).wet(Pad.CHLORIDE)).isNotNull();
        }
    }
}
