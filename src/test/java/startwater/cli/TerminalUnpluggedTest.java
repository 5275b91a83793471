package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.content.Library;
import startwater.drill.Scenario;
import startwater.record.Attempts;
import startwater.record.Entry;
import startwater.record.LearnerFile;
import startwater.record.Learners;
import startwater.record.Means;
import startwater.text.DrillWords;
import startwater.text.Language;

/** A drill in the terminal whose stick is taken out and put back, or whose answers cannot be read. */
class TerminalUnpluggedTest {
    @TempDir
    private Path folder;

    /** Empty answers, one after another; at some of them something happens. */
    private final class Hands extends BufferedReader {
        private int asked;

        Hands() {
            super(new StringReader(""));
        }

        @Override
        public @Nullable String readLine() {
            asked++;
            try {
                if (asked == 2) {
                    Files.move(folder.resolve("stick"), folder.resolve("pocket"));
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return asked > 60 ? null : "";
        }
    }

    @Test
    void theStickThatIsTakenOutIsToldAtOnceAndOnce() throws IOException {
        Scenario drill = Library.shipped().scenario("first-strips").get();
        StringWriter out = new StringWriter();
        DrillWords words = new DrillWords(CliTexts.of(Language.EN));
        try (LearnerFile file = new Learners(folder.resolve("stick"), Means.USUAL).open("Ana")) {
            TerminalDrill talk = new TerminalDrill(
                            new Terminal(new Hands(), new PrintWriter(out, true), false),
                            words,
                            new Attempts(file).goOnOrBegin(drill, Entry.Mode.PRACTICE, "en"))
                    .watching(() -> file.trouble()
                            .map(n -> Notices.say(n, words.texts()))
                            .orElse(null));
            try {
                talk.play();
            } catch (Terminal.EndOfInput end) {
                // Far enough.
            }
        }
        assertThat(out.toString()).containsOnlyOnce("is not there any more. What you do now waits here");
        assertThat(folder.resolve("stick")).doesNotExist();
    }

    @Test
    void answersThatAreNoTextAreOneSentence() throws IOException {
        Path answers = Files.write(folder.resolve("answers"), "½\n".getBytes(StandardCharsets.ISO_8859_1));
        StringWriter err = new StringWriter();
        int exit = Startwater.run(
                List.of("play", "first-strips", "--answers", answers.toString(), "--lang", "en")
                        .toArray(String[]::new),
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true),
                wishes -> 77);
        assertThat(exit).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains(answers.toString());
    }

    @Test
    void aFolderThatIsAwayIsOneSentenceForTheTeacher() {
        StringWriter err = new StringWriter();
        int exit = Startwater.run(
                new String[] {"grade", folder.resolve("stick").toString(), "--lang", "en"},
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true),
                wishes -> 77);
        assertThat(exit).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("stick");
    }

    @Test
    void aHandOutCannotBeSavedToAStickThatIsAway() {
        StringWriter err = new StringWriter();
        Path out = folder.resolve("stick").resolve("monday");
        int exit = Startwater.run(
                new String[] {"handout", "first-strips", "--out", out.toString(), "--lang", "en"},
                new PrintWriter(new StringWriter()),
                new PrintWriter(err, true),
                wishes -> 77);
        assertThat(exit).isEqualTo(2);
        assertThat(err.toString()).hasLineCount(1).contains("stick");
    }
}
