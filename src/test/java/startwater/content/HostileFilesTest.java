package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are broken, huge or meant to harm: a sentence each, never an exception, never an endless wait. */
class HostileFilesTest {
    private static final Edited DRILL = Edited.shipped("scenarios/first-strips.yaml");
    private static final Edited LESSON = Edited.shipped("lessons/01-toxic-ammonia.md");

    @TempDir
    Path folder;

    private List<Fault> drill(String text) {
        return drill(text.getBytes(StandardCharsets.UTF_8));
    }

    private List<Fault> drill(byte[] bytes) {
        return ScenarioReader.read(DRILL.file(), bytes).faults();
    }

    private static List<Fault> lesson(String text) {
        return LessonReader.read(LESSON.file(), text.getBytes(StandardCharsets.UTF_8), null)
                .faults();
    }

    private static void only(List<Fault> faults, Complaint complaint, int line) {
        assertThat(faults).singleElement().satisfies(fault -> {
            assertThat(fault.complaint()).isEqualTo(complaint);
            assertThat(fault.line()).isEqualTo(line);
        });
    }

    @Test
    void byteOrderMarksAndWindowsLineEndsDoNotMatter() {
        assertThat(drill("\uFEFF" + DRILL.text().replace("\n", "\r\n"))).isEmpty();
        assertThat(drill(DRILL.text().replace("\n", "\r"))).isEmpty();
        assertThat(lesson("\uFEFF" + LESSON.text().replace("\n", "\r\n"))).isEmpty();
    }

    @Test
    void linesAreCountedWhateverEndsThem() {
        String broken = DRILL.with("volumeL: 400", "volumeL: 1").text();
        int line = new Edited("", broken).lineOf("volumeL: 1");
        only(drill(broken.replace("\n", "\r\n")), Complaint.OUT_OF_RANGE, line);
        only(drill(broken.replace("\n", "\r")), Complaint.OUT_OF_RANGE, line);
    }

    @Test
    void whatIsNoUtf8IsRefusedWithItsLine() {
        byte[] latin = DRILL.text().getBytes(StandardCharsets.ISO_8859_1);
        only(drill(latin), Complaint.NOT_UTF8, DRILL.lineOf("m³"));
        only(drill(DRILL.text().getBytes(StandardCharsets.UTF_16)), Complaint.NOT_UTF8, 1);
    }

    @Test
    void controlCharactersAreRefusedWithTheirLine() {
        only(drill(DRILL.with("number: 1", "number: 1\u0000").text()), Complaint.NOT_TEXT, DRILL.lineOf("number: 1"));
        only(lesson(LESSON.with("minutes", "minutes\u0007").text()), Complaint.NOT_TEXT, 3);
    }

    @Test
    void emptyFilesAreRefused() {
        only(drill(""), Complaint.EMPTY_FILE, 1);
        only(drill("\n\n  \n"), Complaint.EMPTY_FILE, 1);
        only(drill("# nothing but a comment\n"), Complaint.EMPTY_FILE, 1);
        only(lesson(""), Complaint.EMPTY_FILE, 1);
    }

    @Test
    void aFileThatIsNoBlockIsRefused() {
        only(drill("just words\n"), Complaint.WANT_BLOCK, 1);
        only(drill("- a\n- b\n"), Complaint.WANT_BLOCK, 1);
    }

    @Test
    void aliasBombsDoNotGoOff() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
        }
        only(drill(bomb.toString()), Complaint.ANCHOR_OR_ALIAS, 1);
        only(drill("a: &a [*a]\n"), Complaint.ANCHOR_OR_ALIAS, 1);
    }

    @Test
    void deepNestingIsRefusedBeforeItIsBuilt() {
        int deep = 400_000;
        only(drill("[".repeat(deep)), Complaint.TOO_DEEP, 1);
        only(drill("{a: ".repeat(deep / 2)), Complaint.TOO_DEEP, 1);
        only(drill("- ".repeat(deep)), Complaint.TOO_DEEP, 1);
        only(drill("? ".repeat(deep)), Complaint.TOO_DEEP, 1);
    }

    @Test
    void endlessListsAreRefused() {
        only(drill("a: [" + "1,".repeat(300_000) + "]"), Complaint.TOO_MANY_PARTS, 1);
    }

    @Test
    void thousandsOfUnknownKeysAreCutShort() {
        StringBuilder many = new StringBuilder();
        for (int i = 0; i < 9_000; i++) {
            many.append("key").append(i).append(": 1\n");
        }
        assertThat(drill(many.toString())).hasSize(Faults.MOST + 1);
    }

    @Test
    void hugeNumbersAndWordsDoNotHoldUp() {
        assertThat(drill(DRILL.with("volumeL: 400", "volumeL: " + "9".repeat(500_000))
                        .text()))
                .extracting(Fault::complaint)
                .containsExactly(Complaint.WANT_NUMBER);
        assertThat(drill(DRILL.with("media: sponge", "media: " + "s".repeat(500_000))
                        .text()))
                .singleElement()
                .satisfies(fault -> assertThat(fault.line("en")).hasSizeLessThan(300));
    }

    @Test
    void aFileOfFiftyMegabytesIsRefusedWithoutReadingIt() throws IOException {
        Path huge = folder.resolve("huge.yaml");
        Files.write(huge, new byte[50_000_000]);
        only(ScenarioReader.read(huge).faults(), Complaint.TOO_BIG, 1);
    }

    @Test
    void foldersAndMissingFilesAreNoDrills() {
        only(ScenarioReader.read(folder).faults(), Complaint.NOT_A_FILE, 1);
        only(ScenarioReader.read(folder.resolve("none.yaml")).faults(), Complaint.UNREADABLE, 1);
    }

    @Test
    void whatMayNotBeReadIsSaid() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret.yaml"), DRILL.text());
        assumeThat(secret.toFile().setReadable(false)).isTrue();
        assumeThat(Files.isReadable(secret)).as("root reads everything").isFalse();
        only(ScenarioReader.read(secret).faults(), Complaint.UNREADABLE, 1);
    }

    @Test
    void markdownMadeToBeSlowIsRefused() {
        String front = LESSON.text().substring(0, LESSON.text().indexOf("## Two kinds"));
        for (String slow : List.of(">", "- ", "*a **b ", "[", "`", "a", "abcde ", "é.\n\n", "1. ")) {
            assertThat(lesson(front + slow.repeat(150_000 / slow.length()) + "\n"))
                    .as(slow)
                    .isNotEmpty();
        }
        only(lesson(front + "a ".repeat(200_000)), Complaint.TOO_BIG, 1);
    }

    /** Random damage, seeded: it is a value or faults with lines inside the file. Thousands come in by the doors in DamagedFilesTest. */
    @Test
    void randomDamageNeverThrows() {
        for (int round = 0; round < 200; round++) {
            boolean yaml = round % 2 == 0;
            byte[] whole = (yaml ? DRILL : LESSON).text().getBytes(StandardCharsets.UTF_8);
            byte[] damaged = Damage.any(whole, new Random(20_240_517 + round));
            List<Fault> faults = yaml
                    ? drill(damaged)
                    : LessonReader.read(LESSON.file(), damaged, null).faults();
            int lines = new String(damaged, StandardCharsets.UTF_8).split("\r\n|\r|\n", -1).length;
            assertThat(faults).allSatisfy(fault -> {
                assertThat(fault.line()).isBetween(1, lines);
                assertThat(fault.line("es")).doesNotContain("\n");
            });
        }
    }
}
