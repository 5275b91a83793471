package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import startwater.bench.Given;
import startwater.bench.Measure;
import startwater.drill.Scenario;
import startwater.score.WhyText;
import startwater.strip.Pad;
import startwater.strip.Scale;

/**
 * Where the numbers of the lessons come from. A number in digits is computed by the tool, an input of the block or of a
 * named value, one that a taught rule tells, one that the lesson's own sources tell, or it stands with its source in
 * {@code lessons/numbers.csv} of the test resources.
 */
class LessonNumbersTest {
    private static final Pattern NUMBER = Pattern.compile("(?<![\\p{L}\\d.,])\\d+(?:[.,]\\d+)?(?![\\p{L}\\d])");
    private static final Pattern BY_NAME = Pattern.compile("(?iu)\\b(rules?|steps?|lessons?|days?|reglas?|pasos?|lecci[oó]n(es)?|d[ií]as?)"
            + "((,| and| to| y| a|,? or|,? o)? ?\\d+)+");
    private static final double EXACT = 1e-9;
    private static final List<Listed> LISTED = listed();

    /** A number with its source. @param rule constant of the standing rules that it is, or empty, @param times in its unit */
    private record Listed(int lesson, String number, String rule, double times, String from) {
        static Listed of(String line) {
            String[] cells = line.split(",", 5);
            return new Listed(
                    Integer.parseInt(cells[0]),
                    cells[1],
                    cells[2],
                    cells[3].isEmpty() ? 1 : Double.parseDouble(cells[3]),
                    cells[4]);
        }
    }

    private static List<Listed> listed() {
        try {
            return Files.readAllLines(Path.of("src/test/resources/lessons/numbers.csv")).stream()
                    .filter(line -> !line.startsWith("#"))
                    .skip(1)
                    .map(Listed::of)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Numbers that may be told: as they stand, or to the digits that are printed. */
    private record Told(Set<Double> exact, Set<Double> worked) {
        Told() {
            this(new HashSet<>(), new HashSet<>());
        }

        Told and(Told other) {
            Told both = new Told(new HashSet<>(exact), new HashSet<>(worked));
            both.exact.addAll(other.exact);
            both.worked.addAll(other.worked);
            return both;
        }

        /** Nothing is nothing, wherever it stands. */
        boolean holds(String number) {
            if (Double.parseDouble(number) == 0) {
                return true;
            }
            BigDecimal told = new BigDecimal(number);
            double half = 0.5 * Math.pow(10, -told.scale()) + EXACT;
            return exact.stream().anyMatch(v -> Math.abs(v - told.doubleValue()) < EXACT)
                    || worked.stream().anyMatch(v -> Math.abs(v - told.doubleValue()) <= half);
        }
    }

    static Stream<String> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("lessons"))) {
            return files.map(Path::toString).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyNumberIsComputedGivenTaughtOrHasItsSource(String file) throws IOException {
        assertThat(strays(file, Files.readString(Path.of(file)))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aNumberOfUnknownOriginIsFound(String old, String slip, String stray) {
        String file = "lessons/01-toxic-ammonia.md";
        assertThat(strays(file, Edited.shipped(file).with(old, slip).text()))
                .anyMatch(found -> found.startsWith(stray + " "));
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                Arguments.of("The reading is small.", "The reading is 0.7.", "0.7"),
                Arguments.of("From 0.06 to 0.15", "From 0.06 to 0.16", "0.16"),
                Arguments.of("inputs: {tan: 2, ph: 7.8", "inputs: {tan: 2, ph: 7.9", "7.8"),
                Arguments.of("begins near 0.05", "begins near 0.08", "0.08"));
    }

    @ParameterizedTest
    @MethodSource("rules")
    void aListedNumberOfARuleIsWhatTheToolPlays(String number, String place, double times) throws Exception {
        if (place.startsWith("Pad.")) {
            Scale scale = Pad.valueOf(place.substring("Pad.".length())).scale();
            assertThat(IntStream.range(0, scale.blocks()).mapToObj(scale::blockValue))
                    .anyMatch(block -> Math.abs(block - Double.parseDouble(number)) < EXACT);
            return;
        }
        Class<?> type = Class.forName("startwater." + place.substring(0, place.indexOf('#')));
        Field field = type.getDeclaredField(place.substring(place.indexOf('#') + 1));
        field.setAccessible(true);
        double played = ((Number) field.get(null)).doubleValue();
        assertThat(Math.abs(played * times - Double.parseDouble(number))).isLessThan(EXACT);
    }

    static Stream<Arguments> rules() {
        return LISTED.stream()
                .filter(row -> !row.rule().isEmpty())
                .map(row -> Arguments.of(row.number(), row.rule(), row.times()));
    }

    /** Each listed number is still told somewhere, so that the list stays short. */
    @Test
    void aListedNumberStillStandsInItsLessonAndSaysWhereItIsFrom() throws IOException {
        for (Listed row : LISTED) {
            String id = Library.shipped().lessons("en").stream()
                    .filter(lesson -> lesson.number() == row.lesson())
                    .findFirst()
                    .orElseThrow()
                    .id();
            assertThat(numbers(Files.readString(Path.of("lessons", id + ".md")))).as(id).contains(row.number());
            assertThat(row.from()).hasSizeGreaterThan(20);
        }
    }

    /** Numbers of a lesson that come from nowhere, each with where it stands. */
    private static List<String> strays(String file, String text) {
        Faults faults = Faults.of(file);
        LessonFront front = LessonFront.of(text, Path.of(file).getFileName().toString(), faults);
        Parsed<Lesson> read = LessonReader.read(file, text.getBytes(StandardCharsets.UTF_8), null);
        assertThat(read.faults()).as(file).isEmpty();
        Lesson lesson = read.get();
        Told always = sources(lesson).and(rules(lesson)).and(listed(lesson)).and(named(front));
        Told inProse = always.and(namedInputs(front));
        List<String> strays = new ArrayList<>();
        for (int i = 0; i < lesson.blocks().size(); i++) {
            Block block = lesson.blocks().get(i);
            Told prose = inProse.and(section(lesson.blocks(), i));
            block.match(new Reader(always, inProse, prose, strays));
        }
        return strays;
    }

    private static Told sources(Lesson lesson) {
        Told told = new Told();
        lesson.sources().forEach(source -> numbers(source).forEach(n -> told.exact.add(Double.valueOf(n))));
        return told;
    }

    /** What the taught rules say, for fish of warm water and for trout. */
    private static Told rules(Lesson lesson) {
        Told told = new Told();
        WhyText words = WhyText.in(Locale.ENGLISH);
        for (String drill : List.of("hungry-second-week", "soft-water")) {
            Scenario scenario = Library.shipped().drill(drill).orElseThrow();
            for (int rule : lesson.rules()) {
                numbers(words.rule(rule, scenario)).forEach(n -> told.exact.add(Double.valueOf(n)));
            }
        }
        return told;
    }

    private static Told listed(Lesson lesson) {
        Told told = new Told();
        LISTED.stream()
                .filter(row -> row.lesson() == lesson.number())
                .forEach(row -> told.exact.add(Double.valueOf(row.number())));
        return told;
    }

    private static Told named(LessonFront front) {
        Told told = new Told();
        front.numbers().values().forEach(number -> told.worked.add(Math.abs(number.value())));
        return told;
    }

    private static Told namedInputs(LessonFront front) {
        Told told = new Told();
        Fields values = front.fields().group("values");
        for (String name : values.keys()) {
            Fields inputs = values.group(name).group("inputs");
            inputs.keys().forEach(key -> told.exact.add(inputs.number(key)));
        }
        return told;
    }

    /** The inputs of the live blocks between the headings around a place. */
    private static Told section(List<Block> blocks, int at) {
        int from = at;
        while (from > 0 && !(blocks.get(from) instanceof Block.Heading)) {
            from--;
        }
        int to = at + 1;
        while (to < blocks.size() && !(blocks.get(to) instanceof Block.Heading)) {
            to++;
        }
        Told told = new Told();
        for (Block block : blocks.subList(from, to)) {
            if (block instanceof Block.Worked worked) {
                told.exact.addAll(worked.given().numbers().values());
            }
        }
        return told;
    }

    /** The numbers of a text, with a decimal point. */
    private static List<String> numbers(String text) {
        String plain = BY_NAME.matcher(text).replaceAll(" ");
        List<String> numbers = new ArrayList<>();
        Matcher number = NUMBER.matcher(plain);
        while (number.find()) {
            numbers.add(number.group().replace(',', '.'));
        }
        return numbers;
    }

    private record Reader(Told always, Told explained, Told prose, List<String> strays) implements Block.Cases<Void> {
        private @Nullable Void look(String text, Told told) {
            for (String number : new TreeSet<>(numbers(text))) {
                if (!told.holds(number)) {
                    strays.add(number + " in: " + text);
                }
            }
            return null;
        }

        private static Told inputs(Given given) {
            Told told = new Told();
            for (double v : given.numbers().values()) {
                told.exact.addAll(List.of(v, v / 100, 100 * v));
            }
            return told;
        }

        private static Told results(List<Measure> results) {
            Told told = new Told();
            results.forEach(result -> told.worked.add(result.value()));
            return told;
        }

        private static String said(List<Inline> words) {
            StringBuilder out = new StringBuilder();
            for (Inline word : words) {
                out.append(word instanceof Inline.Words run ? run.text() : " ");
            }
            return out.toString();
        }

        @Override
        public Void heading(Block.Heading heading) {
            return look(said(heading.words()), prose);
        }

        @Override
        public Void paragraph(Block.Paragraph paragraph) {
            return look(said(paragraph.words()), prose);
        }

        @Override
        public Void items(Block.Items items) {
            items.items().forEach(item -> look(said(item), prose));
            return null;
        }

        @Override
        public Void figure(Block.Figure figure) {
            Told told = inputs(new Given(figure.atFirst(), figure.species()));
            figure.sliders().values().forEach(s -> IntStream.rangeClosed(0, (int) Math.rint((s.high() - s.low()) / s.step()))
                    .forEach(step -> told.exact.add(s.low() + step * s.step())));
            return look(figure.caption(), always.and(told));
        }

        @Override
        public Void worked(Block.Worked worked) {
            Told told = always.and(inputs(worked.given())).and(results(worked.sum().work(worked.given())));
            look(worked.ask(), told);
            worked.steps().forEach(step -> look(step.say(), told));
            return null;
        }

        @Override
        public Void choice(Block.Choice choice) {
            Told told = new Told();
            numbers(choice.ask()).forEach(n -> told.exact.add(Double.valueOf(n)));
            choice.options().forEach(option -> numbers(option.says()).forEach(n -> told.exact.add(Double.valueOf(n))));
            choice.options().forEach(option -> look(option.reason(), explained.and(told)));
            return null;
        }

        @Override
        public Void number(Block.NumberQuestion question) {
            Told told = always.and(inputs(question.given())).and(results(question.sum().work(question.given())));
            look(question.ask(), told);
            return look(question.because(), explained.and(told));
        }

        /** What the pads show: the blocks around each, in the sample and in the tank. */
        @Override
        public Void strip(Block.StripReading strip) {
            Told told = new Told();
            for (Map.Entry<Pad, Double> in : strip.water().entrySet()) {
                double position = in.getKey().scale().position(strip.value(in.getKey()));
                IntStream.of((int) Math.floor(position), (int) Math.ceil(position))
                        .mapToDouble(block -> in.getKey().scale().blockValue(block))
                        .flatMap(v -> DoubleStream.of(v, v * strip.dilution()))
                        .forEach(told.exact::add);
                told.exact.add(in.getValue());
            }
            look(strip.ask(), always.and(told));
            return look(strip.because(), always.and(told));
        }

        @Override
        public Void predict(Block.Predict predict) {
            Told told = always.and(inputs(predict.given())).and(results(predict.sum().work(predict.given())));
            told.exact.add(predict.pad().scale().blockValue(predict.block()));
            look(predict.ask(), told);
            return look(predict.because(), explained.and(told));
        }

        @Override
        public Void drill(Block.DrillLink link) {
            return look(link.say(), always);
        }

        @Override
        public Void caution(Block.Caution caution) {
            return look(caution.say(), always);
        }
    }
}
