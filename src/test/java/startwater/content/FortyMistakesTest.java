package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * Forty things that authors get wrong, each put into a small course of two drills and two lessons. Each is said in one clear
 * sentence with its file and line, in both languages, and the rest of the course stays usable.
 */
class FortyMistakesTest {
    private static final String DRILL = "scenarios/hungry-second-week.yaml";
    private static final String OTHER = "scenarios/first-strips.yaml";
    private static final String LESSON = "lessons/01-toxic-ammonia.md";
    private static final String TWIN = "lessons/01-toxic-ammonia.es.md";
    private static final int LONGEST_LINE = 600;

    @TempDir
    Path folder;

    /**
     * @param what the mistake in words
     * @param file in which file
     * @param edit makes it
     * @param complaint what is said first
     * @param marker text on the line that is named; empty for the first line
     */
    private record Mistake(String what, String file, UnaryOperator<String> edit, Complaint complaint, String marker) {}

    private static Mistake in(String file, String what, String old, String now, Complaint complaint, String marker) {
        return new Mistake(
                what,
                file,
                text -> {
                    assertThat(text).as(what).contains(old);
                    int at = text.indexOf(old);
                    return text.substring(0, at) + now + text.substring(at + old.length());
                },
                complaint,
                marker);
    }

    private static Mistake drill(String what, String old, String now, Complaint complaint, String marker) {
        return in(DRILL, what, old, now, complaint, marker);
    }

    private static Mistake lesson(String what, String old, String now, Complaint complaint, String marker) {
        return in(LESSON, what, old, now, complaint, marker);
    }

    private static String bomb(String text) {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 60; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d, *a%d]\n".formatted(i, i, i - 1, i - 1, i - 1));
        }
        return bomb + text;
    }

    private static final List<Mistake> FORTY = List.of(
            drill("a key with a typing slip", "volumeL:", "volumneL:", Complaint.UNKNOWN_KEY_NEAR, "volumneL"),
            drill("a key of one's own", "  volumeL:", "  wallpaper: 1\n  volumeL:", Complaint.UNKNOWN_KEY, "wallpaper"),
            drill("a key left out", "  volumeL: 2400\n", "", Complaint.MISSING_KEY, "system:"),
            drill("a key twice", "number: 2\n", "number: 2\nnumber: 3\n", Complaint.DOUBLE_KEY, "number: 3"),
            drill("a tab", "  volumeL:", "\tvolumeL:", Complaint.TAB, "\tvolumeL"),
            drill("a colon in a text", "title: The", "title: Note: the", Complaint.COLON_IN_TEXT, "title: Note"),
            drill("a colon left out", "volumeL: 2400", "volumeL 2400", Complaint.MISSING_COLON, "volumeL 2400"),
            drill("a quote left open", "title: The", "title: \"The", Complaint.UNCLOSED_QUOTE, "title: \""),
            drill("a clock time", "visitsAtHours: [7, 17]", "visitsAtHours: [7:00, 17]", Complaint.CLOCK_TIME, "[7:00"),
            drill(
                    "a decimal comma in a list",
                    "visitsAtHours: [7, 17]",
                    "visitsAtHours: [7,5, 17]",
                    Complaint.HOURS_NOT_RISING,
                    "[7,5"),
            drill("a decimal comma", "airKlaPerHour: 2.0", "airKlaPerHour: 2,0", Complaint.DECIMAL_COMMA, "2,0"),
            drill("a unit behind a number", "volumeL: 2400", "volumeL: 2400 L", Complaint.UNIT_IN_NUMBER, "2400 L"),
            drill("gallons in place of litres", "volumeL: 2400", "volumeL: 6", Complaint.OUT_OF_RANGE, "volumeL: 6"),
            drill("degrees Fahrenheit", "setPointC: 27", "setPointC: 80", Complaint.OUT_OF_RANGE, "setPointC: 80"),
            drill("kilograms in place of grams", "massG: 13.2", "massG: 0.0132", Complaint.OUT_OF_RANGE, "massG"),
            drill("a number in quotes", "count: 240", "count: \"240\"", Complaint.QUOTED_NUMBER, "count"),
            drill("half a fish", "count: 240", "count: 240.5", Complaint.WANT_WHOLE, "count"),
            drill("yes for true", "oxygenMeter: true", "oxygenMeter: yes", Complaint.WANT_FLAG, "oxygenMeter"),
            drill("an unknown species", "channel-catfish", "sea-horse", Complaint.UNKNOWN_NAME, "sea-horse"),
            drill("an unknown skill", "[nitrite-chloride,", "[nitrit-chloride,", Complaint.UNKNOWN_NAME_NEAR, "skills"),
            drill("an unknown habit", "[feeds-because-they-beg,", "[feeds-a-lot,", Complaint.UNKNOWN_NAME, "exposes"),
            drill("impossible water", "  ph: 7.6", "  ph: 5", Complaint.NO_SUCH_WATER, "ph: 5"),
            drill(
                    "more chlorine than stated",
                    "freeChlorineMgPerL: 0",
                    "freeChlorineMgPerL: 2",
                    Complaint.CHLORINE_OVER_STATED,
                    "statedChlorine"),
            drill("fish like sardines", "count: 240", "count: 240000", Complaint.STOCK_TOO_DENSE, "\nfish:"),
            drill(
                    "a prior upside down",
                    "low: 12, high: 18",
                    "low: 18, high: 12",
                    Complaint.RANGE_BACKWARDS,
                    "sourceChloride"),
            drill("a visit after the end", "14, 20]", "14, 99]", Complaint.DECISION_AFTER_END, "decisionVisits"),
            drill(
                    "away on the first day",
                    "away: []",
                    "away: [{fromDay: 8, toDay: 9}]",
                    Complaint.AWAY_AT_FIRST_VISIT,
                    "away:"),
            drill(
                    "an event that is over before it says how long",
                    "events: []",
                    "events: [{atDay: 9, kind: overfed}]",
                    Complaint.EVENT_NEEDS,
                    "events:"),
            drill(
                    "an id that leaves the folder",
                    "id: hungry-second-week",
                    "id: ../../secrets",
                    Complaint.ID_NOT_KEBAB,
                    "../../secrets"),
            in(OTHER, "a number that another drill has", "number: 1", "number: 2", Complaint.NUMBER_TWICE, "number: 2"),
            new Mistake(
                    "a missing translation",
                    DRILL,
                    text -> text.substring(0, text.indexOf("  es:\n")) + text.substring(text.indexOf("skills:")),
                    Complaint.LANGUAGE_MISSING,
                    "text:"),
            drill("a text left to fill in", "goal: Bring all", "goal: TODO. Bring all", Complaint.PLACEHOLDER, "TODO"),
            drill(
                    "a reading told by its colour",
                    "Feed by the strip.",
                    "Feed when the strip is green.",
                    Complaint.COLOUR,
                    "debrief: >-"),
            drill(
                    "hard words",
                    "goal: Bring all the fish through two weeks, and let them grow.",
                    "goal: Considerable deterioration necessitates environmental intervention by every operator.",
                    Complaint.HARD_ENGLISH,
                    "Considerable"),
            new Mistake("a YAML bomb", DRILL, FortyMistakesTest::bomb, Complaint.ANCHOR_OR_ALIAS, ""),
            new Mistake("brackets without end", DRILL, text -> "[".repeat(200_000), Complaint.TOO_DEEP, ""),
            lesson("no front block", "---\ntitle", "title", Complaint.NO_FRONT, ""),
            lesson(
                    "a circular prerequisite",
                    "rules: [1",
                    "after: [01-toxic-ammonia]\nrules: [1",
                    Complaint.AFTER_CIRCLE,
                    "after:"),
            lesson(
                    "a prerequisite that is not there",
                    "rules: [1",
                    "after: [01-toxic-amonia]\nrules: [1",
                    Complaint.NO_SUCH_LESSON_NEAR,
                    "after:"),
            lesson(
                    "a link to a drill that is not there",
                    "id: hungry-second-week",
                    "id: ../hungry-second-week",
                    Complaint.DEAD_DRILL_NEAR,
                    "id: ../"),
            lesson(
                    "a sum with a wrong unit",
                    "inputs: {tan: 1, ph: 8, temperature: 24}",
                    "inputs: {tan: 1, ph: 8, temperature: 75}",
                    Complaint.SUM_INPUT_RANGE,
                    "temperature: 75"),
            lesson("two right answers", "    right: false", "    right: true", Complaint.NOT_ONE_RIGHT, "options:"));

    @Test
    void thereAreForty() {
        assertThat(FORTY).hasSizeGreaterThanOrEqualTo(40);
        assertThat(FORTY.stream().map(Mistake::what)).doesNotHaveDuplicates();
    }

    @TestFactory
    Stream<DynamicTest> eachIsOneClearSentenceAndTheRestStaysUsable() {
        return FORTY.stream().map(mistake -> DynamicTest.dynamicTest(mistake.what(), () -> found(mistake)));
    }

    private static void found(Mistake mistake) throws IOException {
        String broken = mistake.edit().apply(Files.readString(Path.of(mistake.file())));
        List<Loaded> drills = new ArrayList<>();
        List<Loaded> lessons = new ArrayList<>();
        for (String file : List.of(DRILL, OTHER, LESSON, TWIN)) {
            String text = file.equals(mistake.file()) ? broken : Files.readString(Path.of(file));
            Loaded loaded = Loaded.of(file, text.getBytes(StandardCharsets.UTF_8));
            (file.startsWith("scenarios") ? drills : lessons).add(loaded);
        }
        ContentSet course = ContentSet.of(drills, lessons, java.util.Set.of(), ContentSet.UNPLAYED);
        Fault first = course.faults().stream()
                .filter(fault -> fault.complaint() == mistake.complaint())
                .findFirst()
                .orElseThrow(() -> new AssertionError(mistake.complaint() + " not among " + course.faults()));
        int line = mistake.marker().isEmpty()
                ? 1
                : new Edited(mistake.file(), broken).lineOf(mistake.marker())
                        + (mistake.marker().startsWith("\n") ? 1 : 0);
        assertThat(first.file()).isEqualTo(mistake.file());
        assertThat(first.line()).as(mistake.what()).isEqualTo(line);
        for (String language : Languages.ALL) {
            assertThat(first.line(language))
                    .startsWith(mistake.file() + ":" + line + ": R")
                    .hasSizeLessThan(LONGEST_LINE)
                    .doesNotContain("\n", "Exception", "java.", "{");
        }
        assertThat(course.faults())
                .as("nothing is said of the sound files")
                .allSatisfy(fault -> assertThat(fault.file()).isIn(mistake.file(), TWIN));
        assertThat(course.scenarios().size() + course.lessons().size())
                .as("the rest of the course")
                .isGreaterThanOrEqualTo(3);
    }

    @Test
    void aFileOfFiftyMegabytesAndALinkOutOfTheFolderLeaveTheRestUsable() throws IOException {
        Path course = Files.createDirectory(folder.resolve("course"));
        Files.copy(Path.of(OTHER), course.resolve("first-strips.yaml"));
        Files.write(course.resolve("huge.yaml"), new byte[50_000_000]);
        Path outside = Files.copy(Path.of(DRILL), folder.resolve("hungry-second-week.yaml"));
        try {
            Files.createSymbolicLink(course.resolve("hungry-second-week.yaml"), outside);
        } catch (IOException | UnsupportedOperationException e) {
            assumeThat(false).as("links can be made here").isTrue();
        }
        assertThat(ContentFiles.at(List.of(course)).check())
                .extracting(Fault::complaint)
                .containsExactlyInAnyOrder(Complaint.TOO_BIG, Complaint.LEAVES_FOLDER);
    }
}
