package startwater.content;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import startwater.bench.Input;
import startwater.text.Language;
import startwater.text.Texts;

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
                          change: {low: 5, high: 50, step: 5, at: 25}
                        fixed: {now: 4, source: 0}
                        """,
                """
                        kind: days-left
                        sliders:
                          per-day: {low: 2, high: 40, step: 2, at: 10}
                        fixed: {now: 120, limit: 80}
                        """,
                """
                        kind: oxygen-minutes
                        sliders:
                          stock: {low: 1, high: 40, step: 1, at: 10}
                        fixed: {volume: 1000, oxygen: 7, limit: 2, use: 400}
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
                kind: ration
                sliders:
                  fish: {low: 1, high: 9, step: 0.5, at: 2.5}
                species: nile-tilapia
                fixed: {mass: 20, temperature: 27}
                caption: Move it.
                ```

                ```caution""");
        assertThat(LessonReader.read(edited.file(), edited.text().getBytes(StandardCharsets.UTF_8), null)
                        .faults())
                .extracting(Fault::complaint)
                .containsExactly(Complaint.SUM_REFUSED);
    }

    @Test
    void everySliderHasItsName() {
        for (Language language : Language.values()) {
            Texts texts = Texts.of(language, Texts.LESSON);
            for (FigureKind kind : FigureKind.values()) {
                for (Input input : kind.sum().inputs()) {
                    assertThat(texts.text("slider." + input.name())).isNotBlank();
                }
            }
        }
    }
}
