package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import startwater.strip.Pad;
import startwater.strip.Scale;

/**
 * Where the numbers of the lessons come from. A number in digits is computed by the tool, an input of the block or of a
 * named value, one that a taught rule tells, one that the lesson's own sources tell, or it stands with its source in
 * {@code lessons/numbers.csv} of the test resources.
 */
class LessonNumbersTest {
    private static final double EXACT = 1e-9;

    static Stream<String> files() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("lessons"))) {
            return files.map(Path::toString).sorted().toList().stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void everyNumberIsComputedGivenTaughtOrHasItsSource(String file) throws IOException {
        assertThat(StrayNumbers.in(file, Files.readString(Path.of(file)))).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("slips")
    void aNumberOfUnknownOriginIsFound(String old, String slip, String stray) {
        String file = "lessons/01-toxic-ammonia.md";
        assertThat(StrayNumbers.in(file, Edited.shipped(file).with(old, slip).text()))
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
        return ListedNumber.all().stream()
                .filter(row -> !row.rule().isEmpty())
                .map(row -> Arguments.of(row.number(), row.rule(), row.times()));
    }

    /** Each listed number is still told somewhere, so that the list stays short. */
    @Test
    void aListedNumberStillStandsInItsLessonAndSaysWhereItIsFrom() throws IOException {
        for (ListedNumber row : ListedNumber.all()) {
            String id = Library.shipped().lessons("en").stream()
                    .filter(lesson -> lesson.number() == row.lesson())
                    .findFirst()
                    .orElseThrow()
                    .id();
            assertThat(ToldNumbers.in(Files.readString(Path.of("lessons", id + ".md"))))
                    .as(id)
                    .contains(row.number());
            assertThat(row.from()).hasSizeGreaterThan(20);
        }
    }
}
