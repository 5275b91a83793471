package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import startwater.drill.Scenario;

/** Slips put into a good drill file: each is found, alone, on its line, by its rule. */
class ScenarioMistakesTest {
    private static final Edited GOOD = Edited.shipped("scenarios/hungry-second-week.yaml");

    /**
     * @param old what stands in the good file
     * @param replacement what stands there instead
     * @param marker text on the line on which the fault must be said
     */
    record Mistake(String old, String replacement, Complaint complaint, String marker) {}

    private static final String NURSERY =
            "nursery: {system: {volumeL: 600, media: sponge, mediaAreaM2: 10, airKlaPerHour: 2, su"
                    + "rfaceKlaPerHour: 0.1, carbonDioxideRatio: 0.4, roomCarbonDioxidePpm: 600, altitudeM: "
                    + "0, setPointC: 27, temperatureRatePerDay: 2}, fish: {species: channel-catfish, count: "
                    + "240, massG: 13, proteinPercent: 32, mealsAtHours: [8]}, feed: 0.5, changePerDay: 0.2,"
                    + " filterShare: 0.3}";

    static final List<Mistake> MISTAKES = List.of(
            // R02 well-formed
            new Mistake("  volumeL: 2400", "\tvolumeL: 2400", Complaint.TAB, "\tvolumeL"),
            new Mistake("    title: The hungry", "    title: Note: the hungry", Complaint.COLON_IN_TEXT, "title: Note"),
            new Mistake("  volumeL: 2400", "  volumeL 2400", Complaint.MISSING_COLON, "volumeL 2400"),
            new Mistake("title: The hungry second week", "title: \"The week", Complaint.UNCLOSED_QUOTE, "\"The week"),
            new Mistake("[7, 17]", "[7, 17", Complaint.NOT_YAML, "days: 14"),
            // R03 plain
            new Mistake("number: 2", "number: &a 2", Complaint.ANCHOR_OR_ALIAS, "&a"),
            new Mistake("number: 2", "number: *a", Complaint.ANCHOR_OR_ALIAS, "*a"),
            new Mistake("number: 2", "number: !!int 2", Complaint.TAG, "!!int"),
            new Mistake("events: []", "events: []\n---\nschema: 1", Complaint.MANY_DOCUMENTS, "---"),
            new Mistake("events: []", "events: [[[[[[[[[[[[[[]]]]]]]]]]]]]]", Complaint.TOO_DEEP, "[[["),
            // R04 once
            new Mistake("volumeL: 2400", "volumeL: 2400\n  volumeL: 2500", Complaint.DOUBLE_KEY, "volumeL: 2500"),
            new Mistake("number: 2", "number: 2\nnumber: 3", Complaint.DOUBLE_KEY, "number: 3"),
            // R05 known
            new Mistake("volumeL:", "volumel:", Complaint.UNKNOWN_KEY_NEAR, "volumel"),
            new Mistake("  volumeL:", "  colour: blue\n  volumeL:", Complaint.UNKNOWN_KEY, "colour"),
            new Mistake("aobSeedShare", "aobSeedShares", Complaint.UNKNOWN_KEY_NEAR, "aobSeedShares"),
            new Mistake("  volumeL:", "  [a]: 1\n  volumeL:", Complaint.KEY_NOT_TEXT, "[a]"),
            // R06 there
            new Mistake("  volumeL: 2400\n", "", Complaint.MISSING_KEY, "system:"),
            new Mistake(
                    "keeper:\n  visitsAtHours", "keepers:\n  visitsAtHours", Complaint.UNKNOWN_KEY_NEAR, "keepers:"),
            new Mistake("      feed: 0.5\n", "", Complaint.MISSING_KEY, "- fromDay"),
            new Mistake(
                    "    goal: Bring all the fish through two weeks, and let them grow.\n",
                    "",
                    Complaint.MISSING_KEY,
                    "  en:"),
            // R07 kind
            new Mistake("volumeL: 2400", "volumeL:", Complaint.NO_VALUE, "volumeL:"),
            new Mistake("volumeL: 2400", "volumeL: much", Complaint.WANT_NUMBER, "much"),
            new Mistake("volumeL: 2400", "volumeL: .5", Complaint.WANT_NUMBER, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: 0x1F", Complaint.WANT_NUMBER, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: 1_000", Complaint.WANT_NUMBER, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: .inf", Complaint.WANT_NUMBER, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: NaN", Complaint.WANT_NUMBER, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: 2,4", Complaint.DECIMAL_COMMA, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: \"2400\"", Complaint.QUOTED_NUMBER, "volumeL"),
            new Mistake("volumeL: 2400", "volumeL: [2400]", Complaint.WANT_NUMBER, "volumeL"),
            new Mistake("count: 240", "count: 240.5", Complaint.WANT_WHOLE, "240.5"),
            new Mistake("oxygenMeter: true", "oxygenMeter: yes", Complaint.WANT_FLAG, "oxygenMeter"),
            new Mistake("oxygenMeter: true", "oxygenMeter: NO", Complaint.WANT_FLAG, "oxygenMeter"),
            new Mistake("title: The hungry second week", "title: 12", Complaint.WANT_QUOTES, "title: 12"),
            new Mistake("title: The hungry second week", "title: true", Complaint.WANT_QUOTES, "title: true"),
            new Mistake("title: The hungry second week", "title: [a]", Complaint.WANT_TEXT, "title: [a]"),
            new Mistake("[7, 17]", "7", Complaint.WANT_LIST, "visitsAtHours"),
            new Mistake("events: []", "events: none", Complaint.WANT_LIST, "events"),
            new Mistake("{lognormal: {median: 0.003, sd: 0.8}}", "0.003", Complaint.WANT_ONE_OF, "aobSeedShare"),
            new Mistake("{lognormal: {median: 0.003, sd: 0.8}}", "{triangle: 1}", Complaint.WANT_ONE_OF, "triangle"),
            new Mistake("median: 0.003, ", "", Complaint.MISSING_KEY, "aobSeedShare"),
            // R08 range
            new Mistake("volumeL: 2400", "volumeL: 24", Complaint.OUT_OF_RANGE, "volumeL: 24"),
            new Mistake("volumeL: 2400", "volumeL: 1e999", Complaint.OUT_OF_RANGE, "1e999"),
            new Mistake("  ph: 7.6", "  ph: 11", Complaint.OUT_OF_RANGE, "ph: 11"),
            new Mistake(
                    "alkalinityMgPerL: 110", "alkalinityMgPerL: 600", Complaint.OUT_OF_RANGE, "alkalinityMgPerL: 600"),
            new Mistake("rules: [5, 3]", "rules: [5, 16]", Complaint.OUT_OF_RANGE, "rules"),
            // R09 lists
            new Mistake(
                    "skills: [nitrite-chloride, ration, read-strip, cycle-sense]",
                    "skills: []",
                    Complaint.LIST_TOO_SHORT,
                    "skills"),
            new Mistake(
                    "[0, 2, 4, 8, 14, 20]", "[0, 1, 2, 3, 4, 5, 6, 7, 8]", Complaint.LIST_TOO_LONG, "decisionVisits"),
            new Mistake("[nitrite-chloride, ration,", "[ration, ration,", Complaint.TWICE, "skills"),
            // R10 names
            new Mistake("channel-catfish", "chanel-catfish", Complaint.UNKNOWN_NAME_NEAR, "chanel"),
            new Mistake("channel-catfish", "goldfish", Complaint.UNKNOWN_NAME, "goldfish"),
            new Mistake("moving-bed", "moving_bed", Complaint.UNKNOWN_NAME_NEAR, "moving_bed"),
            new Mistake("[feeds-because-they-beg,", "[feeds-because-i-want,", Complaint.UNKNOWN_NAME, "exposes"),
            new Mistake("[nitrite-chloride,", "[nitrite-cloride,", Complaint.UNKNOWN_NAME_NEAR, "skills"),
            // R11, R12, R13, R14
            new Mistake("schema: 1", "schema: 2", Complaint.WRONG_SCHEMA, "schema: 2"),
            new Mistake("id: hungry-second-week", "id: Hungry_Week", Complaint.ID_NOT_KEBAB, "Hungry_Week"),
            new Mistake("id: hungry-second-week", "id: hungry-third-week", Complaint.ID_NOT_FILE_NAME, "third"),
            new Mistake("title: The hungry second week", "title: \" \"", Complaint.BLANK_TEXT, "title: \" \""),
            new Mistake("title: The hungry second week", "title: \"a\\eb\"", Complaint.CONTROL_CHARACTER, "\\eb"),
            new Mistake(
                    "title: The hungry second week",
                    "title: The very hungry second week of them",
                    Complaint.TEXT_TOO_LONG,
                    "of them"),
            // R15, R16
            new Mistake(
                    "goal: Bring all the fish through two weeks, and let them grow.",
                    "goal: Considerable deterioration necessitates environmental intervention by every operator.",
                    Complaint.HARD_ENGLISH,
                    "Considerable"),
            new Mistake(
                    "goal: Que todos los peces pasen dos semanas vivos y crezcan.",
                    "goal: El equilibrio ambiental necesita intervenciones inmediatas de los responsables.",
                    Complaint.HARD_SPANISH,
                    "ambiental"),
            new Mistake(
                    "goal: Bring all the fish through two weeks, and let them grow.",
                    "goal: Bring all of the fish through the two weeks and let them eat and grow.",
                    Complaint.LONG_SENTENCE,
                    "eat and grow"),
            // R17 hours
            new Mistake("visitsAtHours: [7, 17]", "visitsAtHours: [17, 7]", Complaint.HOURS_NOT_RISING, "[17, 7]"),
            new Mistake("[8, 12, 16]", "[8, 8, 16]", Complaint.HOURS_NOT_RISING, "[8, 8, 16]"),
            new Mistake("[7, 17]", "[7, 24]", Complaint.HOUR_AFTER_DAY, "[7, 24]"),
            new Mistake("[7, 17]", "[7, 25]", Complaint.OUT_OF_RANGE, "[7, 25]"),
            // R18 decisions
            new Mistake("[0, 2, 4, 8,", "[0, 4, 2, 8,", Complaint.DECISIONS_NOT_RISING, "decisionVisits"),
            new Mistake("[0, 2, 4, 8,", "[1, 2, 4, 8,", Complaint.DECISIONS_NOT_FROM_FIRST, "decisionVisits"),
            new Mistake("14, 20]", "14, 28]", Complaint.DECISION_AFTER_END, "decisionVisits"),
            new Mistake("decisions: 8", "decisions: 5", Complaint.MORE_DECISIONS_THAN_MOST, "decisionVisits"),
            // R19 absences
            away("{fromDay: 12, toDay: 12}", Complaint.AWAY_BACKWARDS),
            away("{fromDay: 20, toDay: 23}", Complaint.AWAY_OUTSIDE),
            away("{fromDay: 8.1, toDay: 10}", Complaint.AWAY_AT_FIRST_VISIT),
            away("{fromDay: 10, toDay: 12}, {fromDay: 11, toDay: 13}", Complaint.AWAY_OVERLAPS),
            // R20 before
            new Mistake("- fromDay: 0", "- fromDay: 1", Complaint.BEFORE_NOT_FROM_START, "- fromDay: 1"),
            new Mistake("  day: 8", "  day: 0", Complaint.BEFORE_TOO_LATE, "- fromDay: 0"),
            // R21 events
            event("{atDay: 22, kind: air-off, hours: 2}", Complaint.EVENT_OUTSIDE),
            event("{atDay: 9, kind: set-point}", Complaint.EVENT_NEEDS),
            event("{atDay: 9, kind: overfed, hours: 2, amount: 2}", Complaint.EVENT_HAS_NO),
            event("{atDay: 9, kind: overfed, amount: 20}", Complaint.OUT_OF_RANGE),
            event("{atDay: 9, kind: set-point, amount: 60}", Complaint.OUT_OF_RANGE),
            event("{atDay: 9, kind: air-off, hours: 1, amount: 1}", Complaint.EVENT_HAS_NO),
            event("{atDay: 9, kind: AIR_OFF, hours: 1}", Complaint.UNKNOWN_NAME_NEAR),
            event("{atDay: 9, kind: dried}", Complaint.EVENT_NEEDS),
            event("{atDay: 9, kind: scrubbed, amount: 1}", Complaint.EVENT_HAS_NO),
            event("{atDay: 9, kind: medicated, amount: 1}", Complaint.OUT_OF_RANGE),
            event("{atDay: 9, kind: room-temperature, hours: 12}", Complaint.EVENT_NEEDS),
            event("{atDay: 9, kind: source-temperature, hours: 12, amount: 8}", Complaint.EVENT_HAS_NO),
            // R22, R23
            new Mistake(
                    "\nfish:",
                    "\nplannedFish: {species: channel-catfish, count: 1, massG: 1, proteinPercent: 32, mealsAtHours: [8]}"
                            + "\nfish:",
                    Complaint.FISH_TWICE,
                    "plannedFish"),
            new Mistake("events: []", "events: []\n" + NURSERY, Complaint.NURSERY_NOT_PLANNED, "nursery:"),
            new Mistake("count: 240", "count: 24000", Complaint.STOCK_TOO_DENSE, "\nfish:"),
            new Mistake("airKlaPerHour: 2.0", "airKlaPerHour: 0", Complaint.STOCK_WITHOUT_AIR, "\nfish:"),
            // R24 water
            new Mistake("  ph: 7.6", "  ph: 5", Complaint.NO_SUCH_WATER, "ph: 5"),
            new Mistake(
                    "low: 60, high: 160",
                    "low: 0, high: 0.01",
                    Complaint.NO_SUCH_WATER_PRIOR,
                    "sourceAlkalinityMgPerL: {"),
            new Mistake(
                    "freeChlorineMgPerL: 0", "freeChlorineMgPerL: 1", Complaint.CHLORINE_OVER_STATED, "statedChlorine"),
            // R25 priors
            new Mistake("low: 12, high: 18", "low: 18, high: 12", Complaint.RANGE_BACKWARDS, "sourceChloride"),
            new Mistake("median: 0.003, sd: 0.8", "median: 0.3, sd: 0.8", Complaint.PRIOR_OUTSIDE, "aobSeedShare"),
            new Mistake(
                    "{uniform: {low: 12, high: 18}}",
                    "{normal: {mean: 15, sd: 10}}",
                    Complaint.PRIOR_OUTSIDE,
                    "sourceChlorideMgPerL"));

    private static Mistake away(String spans, Complaint complaint) {
        return new Mistake("away: []", "away: [" + spans + "]", complaint, "away:");
    }

    private static Mistake event(String event, Complaint complaint) {
        return new Mistake("events: []", "events: [" + event + "]", complaint, "events:");
    }

    static Parsed<Scenario> read(Edited edited) {
        return ScenarioReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8));
    }

    @TestFactory
    Stream<DynamicTest> eachSlipIsFoundAloneOnItsLine() {
        return MISTAKES.stream()
                .map(mistake -> DynamicTest.dynamicTest(
                        mistake.complaint() + " " + mistake.replacement().strip(), () -> {
                            Edited edited = GOOD.with(mistake.old(), mistake.replacement());
                            int skip = mistake.marker().startsWith("\n") ? 1 : 0;
                            Parsed<Scenario> parsed = read(edited);
                            assertThat(parsed.faults())
                                    .extracting(Fault::complaint, Fault::line)
                                    .containsExactly(
                                            tuple(mistake.complaint(), edited.lineOf(mistake.marker()) + skip));
                        }));
    }

    @Test
    void aMissingLanguageIsOneFault() {
        int from = GOOD.text().indexOf("  es:\n");
        int to = GOOD.text().indexOf("skills:");
        Edited edited = new Edited(
                GOOD.file(), GOOD.text().substring(0, from) + GOOD.text().substring(to));
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.LANGUAGE_MISSING, edited.lineOf("text:")));
    }

    @Test
    void neitherFishNorPlannedFishIsAFault() {
        int from = GOOD.text().indexOf("fish:\n  species");
        int to = GOOD.text().indexOf("source:\n");
        Edited edited = new Edited(
                GOOD.file(), GOOD.text().substring(0, from) + GOOD.text().substring(to));
        assertThat(read(edited).faults()).extracting(Fault::complaint).containsExactly(Complaint.NO_FISH);
    }

    @Test
    void daysBeforeTheVisitMustComeInOrder() {
        String again = "{fromDay: 0, feed: 1, changePerDay: 0, ammoniumChlorideG: 0, bicarbonateG: 0, saltG: 0}";
        Edited edited = GOOD.with("unknowns:", "    - " + again + "\nunknowns:");
        assertThat(read(edited).faults()).extracting(Fault::complaint).containsExactly(Complaint.BEFORE_NOT_RISING);
    }

    @Test
    void aTankThatHasRunForDaysNeedsItsStory() {
        int from = GOOD.text().indexOf("  before:");
        int to = GOOD.text().indexOf("unknowns:");
        Edited edited = new Edited(
                GOOD.file(),
                GOOD.text().substring(0, from) + "  before: []\n" + GOOD.text().substring(to));
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.BEFORE_MISSING, edited.lineOf("before:")));
    }

    @Test
    void allFaultsOfAFileAreSaidAtOnceInOrder() {
        Edited edited = GOOD.with("number: 2", "number: two")
                .with("volumeL: 2400", "volumel: 2400")
                .with("  ph: 7.6", "  ph: 12")
                .with("count: 240", "count: 0")
                .with("decisions: 8", "decisions: 9")
                .with("oxygenMeter: true", "oxygenMeter: 1");
        assertThat(read(edited).faults())
                .extracting(Fault::complaint)
                .containsExactly(
                        Complaint.WANT_WHOLE,
                        Complaint.UNKNOWN_KEY_NEAR,
                        Complaint.OUT_OF_RANGE,
                        Complaint.OUT_OF_RANGE,
                        Complaint.OUT_OF_RANGE,
                        Complaint.WANT_FLAG);
    }
}
