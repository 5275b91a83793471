package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The figures of lessons: every kind is checked, drawn and said from the same numbers. */
class PlotTest {
    private static final Edited LESSON = Edited.shipped("lessons/01-toxic-ammonia.md");

    private static Block.Figure figure(String body) {
        Edited edited = LESSON.with("```caution", "```figure\n" + body + "caption: Move it.\n```\n\n```caution");
        Lesson lesson = LessonReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8), null)
                .get();
        List<Block.Figure> figures = lesson.blocks().stream()
                .filter(Block.Figure.class::isInstance)
                .map(Block.Figure.class::cast)
                .toList();
        return figures.get(figures.size() - 1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                """
                        kind: chloride-nitrite
                        sliders:
                          nitrite: {low: 0, high: 8, step: 0.5, at: 2}
                        fixed: {volume: 1000, chloride: 20}
                        """,
                """
                        kind: repeated-changes
                        sliders:
                          times: {low: 0, high: 8, step: 1, at: 3}
                        fixed: {now: 4, source: 0, share: 25}
                        """,
                """
                        kind: alkalinity-days
                        sliders:
                          feed: {low: 10, high: 200, step: 10, at: 100}
                        fixed: {volume: 1000, protein: 35, alkalinity: 120}
                        """,
                """
                        kind: oxygen-minutes
                        sliders:
                          fish: {low: 100, high: 900, step: 50, at: 400}
                        species: nile-tilapia
                        fixed: {volume: 1000, mass: 20, temperature: 27, oxygen: 7}
                        """,
                "kind: start-up\nsliders:\n  seed: {low: 1, high: 12, step: 1, at: 1}\nfixed: {ammonia: 2, daily: 0.3}\n",
                "kind: two-groups\nsliders:\n  day: {low: 0, high: 60, step: 1, at: 10}\nfixed: {ammonia: 2}\n",
                """
                        kind: ration
                        sliders:
                          mass: {low: 1, high: 500, step: 1, at: 20}
                        species: rainbow-trout
                        fixed: {fish: 100, temperature: 14}
                        """
            })
    void everyKindIsDrawnWithinItsAxes(String body) {
        Block.Figure figure = figure(body);
        Plot plot = figure.plot(figure.atFirst());
        assertThat(plot.x().ticks()).hasSizeBetween(3, 14);
        assertThat(plot.y().ticks()).hasSizeBetween(3, 14);
        for (Plot.Line line : plot.lines()) {
            assertThat(line.points()).isNotEmpty().allSatisfy(point -> {
                assertThat(point.x()).isBetween(plot.x().low() - 1e-9, plot.x().high() + 1e-9);
                assertThat(point.y()).isNotNaN();
            });
        }
        assertThat(plot.numbers()).isNotEmpty().allSatisfy(number -> assertThat(number)
                .isFinite());
    }

    /** Durborow, Crosby and Brunson 1997, SRAC 462: 10 of chloride to 1 of nitrite, at least 100 mg/L. */
    @Test
    void chlorideIsTheGreaterOfTheRatioAndTheInsurance() {
        Block.Figure figure = figure("""
                        kind: chloride-nitrite
                        sliders:
                          nitrite: {low: 0, high: 8, step: 0.5, at: 2}
                        fixed: {volume: 1000, chloride: 20}
                        """);
        Plot low = figure.plot(figure.atFirst());
        assertThat(low.numbers().get(0)).isEqualTo(100);
        var high = figure.atFirst();
        high.put("nitrite", 6.0);
        assertThat(figure.plot(high).numbers().get(0)).isCloseTo(10 * 6 * 46.005 / 14.007, within(0.1));
        high.put("chloride", 300.0);
        assertThat(figure.plot(high).said()).isEqualTo("figure.chlorideEnough");
    }

    @Test
    void aFigureThatCannotBeDrawnIsAFault() {
        Edited edited = LESSON.with("```caution", """
                        ```figure
                        kind: repeated-changes
                        sliders:
                          times: {low: 0, high: 8, step: 0.5, at: 2.5}
                        fixed: {now: 4, source: 0, share: 25}
                        caption: Move it.
                        ```

                        ```caution""");
        assertThat(LessonReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8), null)
                        .faults())
                .extracting(Fault::complaint)
                .containsExactly(Complaint.SUM_REFUSED);
    }
}
