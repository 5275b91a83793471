package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import startwater.bench.Given;
import startwater.bench.SumKind;
import startwater.strip.Pad;

class LessonReaderTest {
    private static final Edited GOOD = Edited.shipped("lessons/01-toxic-ammonia.md");
    private static final Set<String> DRILLS = Set.of("first-strips", "hungry-second-week");

    private static Parsed<Lesson> read(Edited edited) {
        return LessonReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8), DRILLS);
    }

    private static <T extends Block> List<T> blocks(Lesson lesson, Class<T> kind) {
        return lesson.blocks().stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    @Test
    void theFrontBlockArrives() {
        Lesson lesson = LessonReader.read(Path.of("lessons/01-toxic-ammonia.es.md"), DRILLS)
                .get();
        assertThat(lesson.id()).isEqualTo("01-toxic-ammonia");
        assertThat(lesson.language()).isEqualTo("es");
        assertThat(lesson.number()).isEqualTo(1);
        assertThat(lesson.title()).isEqualTo("Qué es el amoníaco tóxico");
        assertThat(lesson.minutes()).isEqualTo(10);
        assertThat(lesson.skills()).containsExactly("toxic-ammonia");
        assertThat(lesson.rules()).containsExactly(1, 2, 3, 4);
        assertThat(lesson.sources()).hasSize(3);
    }

    @Test
    void proseKeepsItsStylesAndOrder() {
        Lesson lesson = read(GOOD).get();
        assertThat(lesson.blocks().get(0))
                .isEqualTo(new Block.Heading(2, List.of(new Inline.Words("Two kinds of ammonia", Inline.Style.PLAIN))));
        assertThat(blocks(lesson, Block.Paragraph.class)).anySatisfy(paragraph -> assertThat(paragraph.words())
                .contains(new Inline.Words("toxic ammonia", Inline.Style.STRONG)));
        assertThat(blocks(lesson, Block.Items.class))
                .extracting(Block.Items::numbered)
                .containsExactly(false, true);
    }

    /** The share at pH 8.0 and 26 °C is .0574 in the table of UF/IFAS fact sheet FA16. */
    @Test
    void numbersInProseAreComputed() {
        Lesson lesson = read(GOOD).get();
        Inline.Computed share = blocks(lesson, Block.Items.class).get(0).items().stream()
                .flatMap(List::stream)
                .filter(Inline.Computed.class::isInstance)
                .map(Inline.Computed.class::cast)
                .filter(number -> number.name().equals("shareAt8"))
                .findFirst()
                .orElseThrow();
        assertThat(share.value()).isCloseTo(5.74, within(0.01));
        assertThat(share.unit()).isEqualTo("%");
        assertThat(share.decimals()).isEqualTo(1);
    }

    /** The same share in the explanation of a question, written for its reader; a unit is in the reader's language too. */
    @Test
    void numbersInBlocksAreComputedAndWrittenAsTheLanguageDoes() {
        Lesson english = read(GOOD).get();
        assertThat(blocks(english, Block.NumberQuestion.class).get(0).because()).contains("at this pH 15 % of it");
        Lesson spanish = LessonReader.read(Path.of("lessons/01-toxic-ammonia.es.md"), DRILLS)
                .get();
        assertThat(blocks(spanish, Block.Choice.class).get(0).options().get(0).reason())
                .contains("0,012 mg N/L");
        Lesson ready = LessonReader.read(Path.of("lessons/19-ready-for-how-many.es.md"), null)
                .get();
        assertThat(blocks(ready, Block.Paragraph.class).stream().flatMap(p -> p.words().stream()))
                .anyMatch(word ->
                        word instanceof Inline.Computed number && number.unit().equals("g/día"));
    }

    @Test
    void aNumberThatIsNotNamedIsAFaultInABlockToo() {
        Edited edited = GOOD.with("`=shareAt84` of it is toxic", "`=shareAt9` of it is toxic");
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .contains(tuple(Complaint.VALUE_UNKNOWN, edited.lineOf("`=shareAt9` of it")));
    }

    /** Two times 5 over 4, plus 1, less 0.5 is 3. */
    @Test
    void plainArithmeticIsThereForWhatNoSumWorks() {
        Reckoning plain = Reckoning.byId("plain").orElseThrow();
        Given given = Given.of(Map.of("of", 2.0, "times", 5.0, "over", 4.0, "plus", 1.0, "less", 0.5));
        assertThat(plain.result(given, "number").value()).isEqualTo(3);
        assertThat(plain.result(Given.of(Map.of("of", 7.0)), "number").value()).isEqualTo(7);
    }

    @Test
    void theFigureHasItsSliders() {
        Block.Figure figure = blocks(read(GOOD).get(), Block.Figure.class).get(0);
        assertThat(figure.kind()).isEqualTo(FigureKind.TOXIC_SHARE);
        assertThat(figure.sliders()).containsOnlyKeys("tan", "ph", "temperature");
        assertThat(figure.sliders()).containsEntry("ph", new Block.Slider(6.4, 9, 0.1, 8));
    }

    /**
     * FA16, figure 3: 1.0 mg/L at 24 °C and pH 8.0 gives 0.0502 mg/L. SRAC 463: 3 mg/L at 30 °C and pH 8.6 gives 0.73 mg/L.
     */
    @Test
    void workedSumsFadeAndArriveAtThePublishedAnswers() {
        List<Block.Worked> worked = blocks(read(GOOD).get(), Block.Worked.class);
        assertThat(worked).extracting(Block.Worked::blank).containsExactly(0, 1, 2);
        Block.Worked first = worked.get(0);
        assertThat(first.sum()).isEqualTo(new Reckoning.OfBench(SumKind.TOXIC_AMMONIA));
        assertThat(first.value(first.steps().get(0)).value()).isCloseTo(0.0502, within(5e-5));
        assertThat(first.value(first.steps().get(1)).value()).isCloseTo(0.0502, within(5e-5));
        Block.Worked last = worked.get(2);
        assertThat(last.value(last.steps().get(1)).value()).isCloseTo(0.73, within(0.005));
    }

    @Test
    void questionsKnowTheirAnswers() {
        Lesson lesson = read(GOOD).get();
        Block.NumberQuestion number = blocks(lesson, Block.NumberQuestion.class).get(0);
        // FA16 prints .1495 for pH 8.4 and 28 °C.
        assertThat(number.answer().value()).isCloseTo(0.5 * 0.1495, within(1e-4));
        assertThat(number.accepts(0.075)).isTrue();
        assertThat(number.accepts(0.0748 * 1.216)).as("the slip from N to NH3").isFalse();
        Block.Choice choice = blocks(lesson, Block.Choice.class).get(0);
        assertThat(choice.options()).filteredOn(Block.Option::right).hasSize(1);
        assertThat(choice.options())
                .allSatisfy(option -> assertThat(option.reason()).isNotBlank());
        assertThat(blocks(lesson, Block.DrillLink.class))
                .extracting(Block.DrillLink::id)
                .containsExactly("hungry-second-week");
        assertThat(blocks(lesson, Block.Caution.class)).hasSize(1);
    }

    @Test
    void anEstimateIsRightWithinItsFactor() {
        Lesson lesson = read(GOOD.with("kind: number", "kind: estimate").with("tolerancePercent: 10", "factor: 2"))
                .get();
        Block.NumberQuestion estimate =
                blocks(lesson, Block.NumberQuestion.class).get(0);
        assertThat(estimate.accepts(0.04)).isTrue();
        assertThat(estimate.accepts(0.14)).isTrue();
        assertThat(estimate.accepts(0.03)).isFalse();
        assertThat(estimate.accepts(0.2)).isFalse();
    }

    @Test
    void aSumThatAsksForASpeciesGetsIt() {
        String block = """
                ```worked
                sum: ration
                inputs: {fish: 240, mass: 15, temperature: 27}
                species: channel-catfish
                ask: How much do they get?
                steps:
                  - say: Look it up.
                    find: %s
                blank: 0
                ```

                """;
        String find = SumKind.RATION
                .work(new startwater.bench.Given(
                        java.util.Map.of("fish", 240.0, "mass", 15.0, "temperature", 27.0), "channel-catfish"))
                .answer()
                .name();
        assertThat(read(GOOD.with("```caution", block.formatted(find) + "```caution"))
                        .faults())
                .isEmpty();
        assertThat(read(GOOD.with(
                                "```caution",
                                block.formatted(find).replace("species: channel-catfish\n", "") + "```caution"))
                        .faults())
                .extracting(Fault::complaint)
                .containsExactly(Complaint.SUM_INPUT_MISSING);
    }

    private static final String STRIP = """
            ```strip
            ask: Match both pads. What do they read?
            water: {nitrite: 2, nitrate: 8}
            seed: 4
            because: >-
              The nitrate pad counts the nitrite too. So the true nitrate is what it reads less what nitrite reads.
            ```

            """;

    private static final String PREDICT = """
            ```predict
            ask: You dosed 2 mg/L into a new filter. What will the nitrite pad read on day 20?
            pad: nitrite
            sum: start-up
            inputs: {ammonia: 2, day: 20}
            find: nitrite
            because: >-
              The first group turns ammonia into nitrite. The second group is slower, so nitrite piles up first.
            ```

            """;

    @Test
    void theNitratePadOfAStripCountsNitriteAndOneBlockOffIsHuman() {
        Block.StripReading strip = blocks(
                        read(GOOD.with("```caution", STRIP + "```caution")).get(), Block.StripReading.class)
                .get(0);
        assertThat(strip.value(Pad.NITRATE)).isEqualTo(10);
        assertThat(strip.value(Pad.NITRITE)).isEqualTo(2);
        int right = Pad.NITRITE.scale().nearestStop(strip.position(Pad.NITRITE));
        assertThat(strip.accepts(Pad.NITRITE, right)).isTrue();
        assertThat(strip.accepts(Pad.NITRITE, right + 1)).as("half a block").isTrue();
        assertThat(strip.accepts(Pad.NITRITE, right + 4)).as("two blocks").isFalse();
    }

    @Test
    void aPredictionHasItsAnswerFromTheTankModel() {
        Block.Predict predict = blocks(
                        read(GOOD.with("```caution", PREDICT + "```caution")).get(), Block.Predict.class)
                .get(0);
        // Nitrogen is neither made nor lost: what was dosed is an upper bound for nitrite.
        assertThat(predict.answer().value()).isBetween(0.1, 2.0);
        double nearest = Pad.NITRITE.scale().blockValue(predict.block());
        assertThat(nearest).isBetween(0.1, 2.0);
    }

    @Test
    void slipsInStripsAndPredictionsAreFoundOnTheirLines() {
        slip(STRIP, "water: {nitrite: 2, nitrate: 8}", "water: {}", Complaint.LIST_TOO_SHORT, "water: {}");
        slip(STRIP, "nitrite: 2,", "nitrites: 2,", Complaint.UNKNOWN_KEY_NEAR, "nitrites");
        slip(STRIP, "nitrite: 2,", "ph: 12,", Complaint.OUT_OF_RANGE, "ph: 12,");
        slip(STRIP, "seed: 4", "seed: 4.5", Complaint.WANT_WHOLE, "seed: 4.5");
        slip(PREDICT, "pad: nitrite", "pad: nitrit", Complaint.UNKNOWN_NAME_NEAR, "pad: nitrit\n");
        slip(PREDICT, "find: nitrite", "find: no2", Complaint.SUM_RESULT_UNKNOWN, "find: no2");
        slip(PREDICT, "day: 20}", "day: 90}", Complaint.SUM_INPUT_RANGE, "day: 90}");
    }

    private static void slip(String block, String old, String now, Complaint complaint, String marker) {
        assertThat(block).contains(old);
        Edited edited = GOOD.with("```caution", block.replace(old, now) + "```caution");
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .contains(tuple(complaint, edited.lineOf(marker)));
    }

    private static final List<ScenarioMistakesTest.Mistake> MISTAKES = List.of(
            mistake("---\ntitle", "title", Complaint.NO_FRONT, "title"),
            mistake("title: What", "titel: What", Complaint.UNKNOWN_KEY_NEAR, "titel"),
            mistake("minutes: 10\n", "", Complaint.MISSING_KEY, "title:"),
            mistake("minutes: 10", "minutes: 100", Complaint.OUT_OF_RANGE, "minutes"),
            mistake("skills: [toxic-ammonia]", "skills: [toxic]", Complaint.UNKNOWN_NAME, "skills"),
            mistake("tan: 1, ph: 7,", "tan: 1, ph: 17,", Complaint.SUM_INPUT_RANGE, "shareAt7:"),
            mistake("find: fraction, percent", "find: share, percent", Complaint.SUM_RESULT_UNKNOWN, "shareAt7:"),
            mistake("## Two kinds", "# Two kinds", Complaint.STRAY_HEADING, "# Two kinds"),
            mistake("## Two kinds", "#### Two kinds", Complaint.STRAY_HEADING, "#### Two"),
            mistake("Fish give off", "Fish <b>give</b> off", Complaint.RAW_HTML, "<b>"),
            mistake("Fish give off", "<div>\n\nFish give off", Complaint.RAW_HTML, "<div>"),
            mistake("Fish give off", "![fish](a.png) Fish give off", Complaint.PICTURE_OR_LINK, "![fish]"),
            mistake("Fish give off", "[Fish](http://x.org) give off", Complaint.PICTURE_OR_LINK, "[Fish]"),
            mistake("Fish give off", "> Fish give off", Complaint.PLAIN_CODE, "> Fish"),
            mistake("Fish give off", "***\n\nFish give off", Complaint.NOT_PLAIN_PROSE, "***\n"),
            mistake("- At pH 7 and", "- At pH\n  - At pH 7 and", Complaint.NOT_PLAIN_PROSE, "- At pH\n"),
            mistake(
                    "Fish give off ammonia all day.",
                    "Fish give off ammonia all day and all night and then again all of the next day.",
                    Complaint.LONG_SENTENCE,
                    "Fish give"),
            mistake(
                    "Fish give off ammonia all day.",
                    "Physiological deterioration necessitates environmental intervention. Considerable "
                            + "consequences materialise instantaneously.",
                    Complaint.HARD_ENGLISH,
                    "Physiological"),
            mistake("`=shareAt75`", "`=shareAt76`", Complaint.VALUE_UNKNOWN, "shareAt76"),
            mistake("```figure", "```figur", Complaint.UNKNOWN_BLOCK_NEAR, "```figur"),
            mistake("```figure", "```python", Complaint.UNKNOWN_BLOCK, "```python"),
            mistake("```figure", "```", Complaint.NO_BLOCK_KIND, "```\nkind: toxic-share"),
            mistake("kind: toxic-share", "kind: toxic-shares", Complaint.UNKNOWN_NAME_NEAR, "toxic-shares"),
            mistake("caption: Move pH", "caption: Move it: pH", Complaint.COLON_IN_TEXT, "caption:"),
            mistake("low: 6.4, high: 9", "low: 9, high: 6.4", Complaint.SLIDER_BACKWARDS, "  ph: {low"),
            mistake("low: 6.4, high: 9", "low: 6.4, high: 19", Complaint.SUM_INPUT_RANGE, "  ph: {low"),
            mistake("  ph: {low", "  pH: {low", Complaint.SUM_INPUT_MISSING, "sliders:"),
            mistake("caption: Move", "fixed: {ph: 8}\ncaption: Move", Complaint.SLIDER_AND_FIXED, "fixed:"),
            mistake(
                    "sum: toxic-ammonia\ninputs: {tan: 1",
                    "sum: toxic\ninputs: {tan: 1",
                    Complaint.UNKNOWN_NAME,
                    "sum: toxic\n"),
            mistake(
                    "inputs: {tan: 1, ph: 8, temperature: 24}",
                    "inputs: {tan: 1, ph: 8}",
                    Complaint.SUM_INPUT_MISSING,
                    "inputs: {tan: 1, ph: 8}"),
            mistake(
                    "inputs: {tan: 1, ph: 8, temperature: 24}",
                    "inputs: {tan: 1, ph: 8, temperature: 24, salt: 1}",
                    Complaint.SUM_INPUT_UNKNOWN,
                    "salt"),
            mistake(
                    "sum: toxic-ammonia\ninputs: {tan: 1",
                    "sum: toxic-ammonia\nspecies: nile-tilapia\ninputs: {tan: 1",
                    Complaint.SUM_NEEDS_NO_SPECIES,
                    "species:"),
            mistake("    find: nh3_n\nblank: 0", "    find: nh3n\nblank: 0", Complaint.SUM_RESULT_UNKNOWN, "nh3n"),
            mistake("blank: 0", "blank: 1", Complaint.FADE_FIRST, "blank: 1"),
            mistake("blank: 2", "blank: 0\ntolerancePercent: 3", Complaint.FADE_BACK, "blank: 0\ntol"),
            mistake("blank: 2", "blank: 3", Complaint.FADE_TOO_MANY, "blank: 3"),
            mistake("kind: choice", "kind: quiz", Complaint.UNKNOWN_NAME, "kind: quiz"),
            mistake("kind: choice\n", "", Complaint.MISSING_KEY, "```question\nask:"),
            mistake("    right: true", "    right: false", Complaint.NOT_ONE_RIGHT, "options:"),
            mistake(
                    "    reason: >-\n      The total looks",
                    "    reason: No.\n    says: >-\n      The total looks",
                    Complaint.DOUBLE_KEY,
                    "    says: >-"),
            mistake("id: hungry-second-week", "id: hungry-second-weak", Complaint.DEAD_DRILL_NEAR, "weak"),
            mistake("id: hungry-second-week", "id: moon-landing", Complaint.DEAD_DRILL, "moon"));

    private static ScenarioMistakesTest.Mistake mistake(
            String old, String replacement, Complaint complaint, String marker) {
        return new ScenarioMistakesTest.Mistake(old, replacement, complaint, marker);
    }

    @TestFactory
    Stream<DynamicTest> eachSlipIsFoundOnItsLine() {
        return MISTAKES.stream()
                .map(mistake -> DynamicTest.dynamicTest(
                        mistake.complaint() + " " + mistake.replacement().strip(), () -> {
                            Edited edited = GOOD.with(mistake.old(), mistake.replacement());
                            assertThat(read(edited).faults())
                                    .extracting(Fault::complaint, Fault::line)
                                    .contains(tuple(mistake.complaint(), edited.lineOf(mistake.marker())));
                        }));
    }

    @Test
    void aNumberThatNobodyUsesIsSaid() {
        Edited edited = GOOD.with("`=shareCold`", "small");
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.VALUE_UNUSED, edited.lineOf("shareCold:")));
    }

    @Test
    void aThinReasonIsSaid() {
        Edited edited = GOOD.with(
                "reason: >-\n      The total looks high, but only `=twoAt7` is toxic. "
                        + "The change costs water and work, and saves no fish.",
                "reason: Wrong.");
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.THIN_REASON, edited.lineOf("reason: Wrong.")));
    }

    @Test
    void blocksAndFrontsThatStayOpenAreSaid() {
        String text = GOOD.text();
        Edited open = new Edited(GOOD.file(), text.substring(0, text.lastIndexOf("```")));
        assertThat(read(open).faults())
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.OPEN_BLOCK, open.lineOf("```drill")));
        assertThat(read(new Edited(GOOD.file(), "---\ntitle: A\n")).faults())
                .extracting(Fault::complaint)
                .containsExactly(Complaint.OPEN_FRONT);
    }

    @Test
    void namesOfLessonsAreChecked() {
        for (String name : List.of("toxic.md", "1-toxic.md", "01-Toxic.md", "01-toxic.fr.md", "01_toxic.md")) {
            assertThat(read(new Edited("lessons/" + name, GOOD.text())).faults())
                    .as(name)
                    .extracting(Fault::complaint)
                    .containsExactly(Complaint.LESSON_NAME);
        }
    }

    @Test
    void aHardSpanishTextIsSaid() {
        Edited good = Edited.shipped("lessons/01-toxic-ammonia.es.md");
        Edited edited = good.with(
                "Los peces sueltan amoníaco todo el día.",
                "La caracterización fisicoquímica posibilita intervenciones inmediatas. "
                        + "Consecuentemente disminuyen las enfermedades características.");
        assertThat(read(edited).faults())
                .extracting(Fault::complaint, Fault::line)
                .containsExactly(tuple(Complaint.HARD_SPANISH, edited.lineOf("La caracterización")));
    }
}
