package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;

/** Drills kept for a learner from the terminal, taken up again, replayed; learners listed, copied, renamed, deleted. */
class LearnersCommandTest {
    @TempDir
    private Path folder;

    private record Ran(int exit, String out, String err) {}

    private Ran run(String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        List<String> args =
                new ArrayList<>(List.of("--data", folder.resolve("data").toString(), "--lang", "en"));
        args.addAll(List.of(words));
        int exit = Startwater.run(
                args.toArray(String[]::new), new PrintWriter(out, true), new PrintWriter(err, true), wishes -> 77);
        return new Ran(exit, out.toString(), err.toString());
    }

    private Ran play(String... answers) throws IOException {
        Path file = Files.write(folder.resolve("answers"), List.of(answers));
        return run("play", "chloramine-town", "--learner", "Ana", "--answers", file.toString());
    }

    private Path file() {
        return new Learners(folder.resolve("data"), Means.USUAL).file("ana");
    }

    @Test
    void aDrillIsLeftWithAWetStripAndGoesOnWithItAndReplaysTheSame() throws IOException {
        Ran left = play("ammonia nitrite", "1");
        assertThat(left.exit()).isZero();
        assertThat(left.out()).contains("The input has ended").doesNotContain("goes on where it was left");
        assertThat(Files.readString(file())).contains("\"dipped\"").containsOnlyOnce("\"wrote\"");
        Ran again = play("2");
        assertThat(again.out()).contains("goes on where it was left: visit 1.", "still lies there wet");
        assertThat(Files.readString(file())).containsOnlyOnce("\"dipped\"").contains("\"pad\":\"nitrite\"");

        Ran same = run("replay", file().toString());
        assertThat(same.out()).contains("chloramine-town, tank 1,", "(half way): same", "1 attempts: 1 the same");
        assertThat(same.exit()).isZero();

        String text = Files.readString(file());
        Files.writeString(file(), text.replaceFirst("\"strip\":0", "\"strip\":5"));
        Ran other = run("replay", file().toString(), "--fast");
        assertThat(other.exit()).isEqualTo(1);
        assertThat(other.out()).contains("different at visit 1: the number of the strip is 5 in the file and 0 now");
        Files.writeString(file(), text.replaceFirst("\"engine\":\"...", "\"engine\":\"xyz"));
        assertThat(run("replay", file().toString()).out()).contains("made by another version (xyz");
        Files.writeString(file(), text.replaceFirst("\"content\":\"...", "\"content\":\"xyz"));
        assertThat(run("replay", file().toString()).out()).contains("the drill has changed since");
        Files.writeString(file(), text.replaceFirst("\"scenario\":\"chlo", "\"scenario\":\"flo"));
        Ran unknown = run("replay", file().toString());
        assertThat(unknown.out()).contains("there is no drill of this name here");
        assertThat(unknown.exit()).isZero();
    }

    @Test
    void learnersAreListedCopiedRenamedAndDeleted() throws IOException {
        assertThat(run("learners").out()).contains("No learners are kept");
        play();
        assertThat(run("learners", "list").out()).isEqualTo("Ana: 0 finished, 1 half way\n");
        Path to = folder.resolve("mine.jsonl");
        assertThat(run("learners", "export", "ana", to.toString()).exit()).isZero();
        assertThat(to).hasSameBinaryContentAs(file());
        assertThat(run("learners", "export", "ana", to.toString()).err()).contains("is there already");
        assertThat(run("learners", "rename", "ana", "Ana B").out()).contains("Ana is now called Ana B");
        assertThat(run("learners").out()).startsWith("Ana B:");
        Ran asked = run("learners", "delete", "Ana B");
        assertThat(asked.exit()).isEqualTo(2);
        assertThat(asked.err()).contains("ana.jsonl", "--yes");
        assertThat(file()).exists();
        assertThat(run("learners", "delete", "Ana B", "--yes").out()).contains("Deleted: ", "ana.jsonl");
        assertThat(file()).doesNotExist();
    }

    @Test
    void aLearnerInUseElsewhereIsSaidAndTheDrillGoesOnUnkept() throws IOException {
        play();
        byte[] before = Files.readAllBytes(file());
        try (LearnerFile elsewhere = new Learners(folder.resolve("data"), Means.USUAL).openKey("ana")) {
            assertThat(elsewhere.trouble()).isEmpty();
            assertThat(play("ammonia", "1").out()).contains("is open in another window or terminal");
            assertThat(run("learners", "delete", "ana", "--yes").exit()).isEqualTo(2);
        }
        assertThat(file()).hasBinaryContent(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "replay",
                "replay no-such-file",
                "learners dance",
                "learners export",
                "learners export ana",
                "learners delete nobody --yes",
                "learners rename nobody x"
            })
    void wrongUseIsOneSentence(String line) {
        Ran ran = run(line.split(" "));
        assertThat(ran.exit()).isEqualTo(2);
        assertThat(ran.err().strip()).isNotEmpty().doesNotContain("Exception:").doesNotContain("\n");
    }
}
