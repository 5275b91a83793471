package startwater.record;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.content.Library;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Scenario;

class AttemptsTest {
    private static final Scenario DRILL =
            Library.shipped().scenario("hungry-second-week").get();

    @TempDir
    private Path folder;

    private final Means means = Script.means();

    private Path path() {
        return folder.resolve("ana.jsonl");
    }

    private LearnerFile open() throws IOException {
        LearnerFile file = LearnerFile.open(path(), means);
        if (file.history().learner() == null) {
            file.name("Ana");
        }
        return file;
    }

    private static Resumed go(LearnerFile file) {
        return new Attempts(file).goOnOrBegin(DRILL, Entry.Mode.PRACTICE, "en");
    }

    /** So many visits, then what is done before the next decision; the strips of that visit. */
    private DrillRun left(int visits) throws IOException {
        try (LearnerFile file = open()) {
            Resumed at = go(file);
            Script script = new Script(3, at);
            script.play(visits, false);
            script.look();
            return at.run();
        }
    }

    @Test
    void anAttemptIsTakenUpWhereItWasLeftToTheLastBit() throws IOException {
        DrillRun left = left(2);
        try (LearnerFile file = open()) {
            Resumed taken = go(file);
            assertThat(taken.notice()).isNull();
            assertThat(taken.run().log()).isEqualTo(left.log());
            assertThat(taken.run().now().written()).isNotEmpty();
            assertThat(taken.run().truth()).isEqualTo(left.truth());
            assertThat(taken.run().stripsLeft()).isEqualTo(left.stripsLeft());
            assertThat(taken.run().chlorideStripsLeft()).isEqualTo(left.chlorideStripsLeft());
            assertThat(taken.run().saltLeftG()).isEqualTo(left.saltLeftG());
            assertThat(taken.run().hidden().state()).isEqualTo(left.hidden().state());
            assertThat(taken.verdicts()).as("both decisions are judged").hasSize(2);
        }
    }

    @Test
    void aStripThatWasDippedLiesThereAgainWithItsColours() throws IOException {
        DippedStrip strip;
        try (LearnerFile file = open()) {
            Resumed at = go(file);
            strip = at.run().dip(10);
            at.steps().dipped(strip, false);
            at.steps().dipped(at.run().dipChloride(), true);
        }
        try (LearnerFile file = open()) {
            assertThat(go(file).wet()).hasSize(2).contains(strip);
        }
    }

    @Test
    void aDecisionThatWasNotJudgedYetIsMarkedWhenTheAttemptGoesOn() throws IOException {
        left(1);
        assertThat(kinds()).doesNotContain("marked");
        try (LearnerFile file = open()) {
            go(file);
        }
        try (LearnerFile file = open()) {
            go(file);
            assertThat(file.history().observed()).hasSize(1);
        }
        assertThat(kinds()).containsOnlyOnce("marked").containsOnlyOnce("begun");
    }

    private List<String> kinds() throws IOException {
        try (Stream<String> lines = Files.lines(path())) {
            return lines.map(l -> EntryText.JSON.readTree(l).path("kind").asString())
                    .toList();
        }
    }

    @Test
    void whatHasChangedIsSaidAndTheDrillBeginsAnewOnAnotherTank() throws IOException {
        String[][] changes = {
            {"\"content\":\"....", "\"content\":\"none", "DRILL_CHANGED"},
            {"\"engine\":\"....", "\"engine\":\"none", "ENGINE_CHANGED"},
            {"\"n\":2,", "\"n\":3,", "ATTEMPT_BROKEN"},
            {"\"kind\":\"dipped\"(.*?)\"strip\":\\d+", "\"kind\":\"dipped\"$1\"strip\":17", "ATTEMPT_BROKEN"}
        };
        for (String[] change : changes) {
            left(0);
            String before = Files.readString(path());
            String after = before.replaceFirst(change[0], change[1]);
            assertThat(after).as(change[2]).isNotEqualTo(before);
            Files.writeString(path(), after);
            try (LearnerFile file = open()) {
                Resumed anew = go(file);
                assertThat(anew.notice()).isEqualTo(Notice.of(Notice.Kind.valueOf(change[2])));
                assertThat(anew.run().past().size()).isZero();
                assertThat(anew.run().variant()).isEqualTo(2);
            }
            assertThat(kinds()).endsWith("abandoned", "begun");
            Files.delete(path());
        }
    }

    @Test
    void severalDrillsMayBeOpenAtOnce() throws IOException {
        Scenario other = Library.shipped().scenario("first-strips").get();
        left(0);
        try (LearnerFile file = open()) {
            new Attempts(file).goOnOrBegin(other, Entry.Mode.PRACTICE, "en");
            assertThat(file.history().open()).hasSize(2);
            assertThat(go(file).run().now().written()).isNotEmpty();
        }
    }

    @Test
    void anAttemptOnAFullDiskIsPlayedOnAndNotClaimedToBeKept() throws IOException {
        SmallDisk disk = new SmallDisk(900);
        try (LearnerFile file = LearnerFile.open(path(), Script.means(disk))) {
            Resumed at = go(file);
            assertThat(at.steps().kept()).isTrue();
            new Script(3, at).play(2, false);
            assertThat(at.steps().kept()).isFalse();
            assertThat(Marking.decided(at.run())).hasSize(2);
        }
        try (LearnerFile file = open()) {
            Resumed taken = go(file);
            assertThat(taken.notice()).as("what was kept is a whole beginning").isNull();
            assertThat(Marking.decided(taken.run())).isEmpty();
        }
    }
}
