package startwater.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import startwater.text.Language;
import startwater.text.Texts;

/** What is noted of a fault helps to mend it and tells nothing of a person. */
class CrashLogTest {
    private static final Instant NOON = Instant.parse("2026-05-04T12:00:00.5Z");

    @TempDir
    private Path folder;

    private CrashLog log() {
        return new CrashLog(folder.resolve("data"), () -> NOON);
    }

    private static Throwable fault(String message) {
        return new IllegalStateException(message, new IOException("/home/ana/learners/ana.jsonl"));
    }

    @Test
    void itTellsBuildSystemThreadScreenAndClassesAndNoMessage() throws IOException {
        CrashLog log = log();
        assertThat(log.note(fault("Ana wrote 2.5"), new Thread("look back"), "DRILL DrillScreen"))
                .isTrue();
        String text = Files.readString(log.file());
        assertThat(text)
                .contains("2026-05-04T12:00:00Z", "program 0.1.0", "Java " + System.getProperty("java.version"))
                .contains(System.getProperty("os.name"), "thread look back", "at DRILL DrillScreen")
                .contains("java.lang.IllegalStateException\n", "caused by java.io.IOException\n")
                .contains("  startwater.cli.CrashLogTest.fault:")
                .doesNotContainIgnoringCase("ana wrote", "2.5", "/home", "ana.jsonl");
    }

    @Test
    void theSameFaultComesInOnceAndTheFileStaysSmallWithTheLatestAtItsEnd() throws IOException {
        CrashLog log = log();
        Throwable once = fault("x");
        log.note(once, Thread.currentThread(), "HOME");
        long size = Files.size(log.file());
        log.note(once, Thread.currentThread(), "HOME");
        assertThat(Files.size(log.file())).isEqualTo(size);
        for (int i = 0; i < 200; i++) {
            Throwable other = new IllegalStateException("n");
            StackTraceElement[] frames = once.getStackTrace();
            frames[0] = new StackTraceElement("startwater.Made", "up", "Made.java", i);
            other.setStackTrace(frames);
            log.note(other, Thread.currentThread(), "HOME");
        }
        String text = Files.readString(log.file());
        assertThat(text).hasSizeBetween(CrashLog.MOST / 2, CrashLog.MOST).startsWith("== ");
        assertThat(text).contains("startwater.Made.up:199").doesNotContain("startwater.Made.up:0\n");
    }

    @Test
    void oneFaultWithoutEndIsCut() throws IOException {
        CrashLog log = log();
        Throwable deep = new StackOverflowError();
        StackTraceElement[] frames = new StackTraceElement[5_000];
        java.util.Arrays.fill(frames, new StackTraceElement("startwater." + "x".repeat(9_000), "up", null, 1));
        deep.setStackTrace(frames);
        log.note(deep, Thread.currentThread(), "HOME");
        assertThat(Files.readString(log.file())).hasSize(CrashLog.MOST);
    }

    @Test
    void whereItCannotBeWrittenItSaysSoAndDoesNotThrow() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where a folder should be");
        CrashLog log = log();
        boolean noted = log.note(fault("x"), Thread.currentThread(), "HOME");
        assertThat(noted).isFalse();
        for (Language language : Language.values()) {
            Texts texts = Texts.of(language, CrashLog.WORDS);
            assertThat(log.say(false, texts)).contains(log.file().toString()).doesNotContain("Exception");
            assertThat(log.say(true, texts)).isNotEqualTo(log.say(false, texts));
        }
    }

    @Test
    void aCommandThatFailsSaysOneSentenceAndNoTrace() throws IOException {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exit = Startwater.run(
                new String[] {"--data", folder.toString(), "--lang", "en"},
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                wishes -> {
                    throw new IllegalStateException("Ana");
                });
        assertThat(exit).isEqualTo(Startwater.FAULT_OF_THE_PROGRAM);
        assertThat(out.toString()).isEmpty();
        assertThat(err.toString())
                .hasLineCount(1)
                .contains("not lost", "crash-log.txt")
                .doesNotContain("Exception", "Ana", "\tat ");
        assertThat(Files.readString(folder.resolve("crash-log.txt")))
                .contains("java.lang.IllegalStateException", "at startwater\n");
    }
}
