package startwater.app.view;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.TableView;
import org.junit.jupiter.api.Test;
import startwater.app.Fx;
import startwater.app.chart.FanChart;
import startwater.app.chart.StartUpChart;
import startwater.content.Plot;
import startwater.text.Language;
import startwater.text.Texts;

/** The numbers of a chart can be read one by one. */
class TabledTest {
    private static final Texts TEXTS = Shell.words(Language.ES).texts();

    private static FanChart.Path path(String name, double... middles) {
        List<FanChart.Point> points = new java.util.ArrayList<>();
        for (int i = 0; i < middles.length; i++) {
            points.add(new FanChart.Point(i + 0.5, middles[i] / 2, middles[i], middles[i] * 2));
        }
        return new FanChart.Path(List.of(name), points);
    }

    @Test
    void aLinkTurnsTheChartIntoItsNumbersAndBack() {
        Fx.run(() -> {
            FanChart.Path ammonia = path("amoníaco", 1.25, 2);
            FanChart.Path nitrite = path("nitrito", 0.5, 4);
            StartUpChart chart = new StartUpChart(
                    new StartUpChart.Data(ammonia, nitrite, null, "mg/L", "día", Locale.ROOT, "en palabras"));
            Tabled tabled = new Tabled(TEXTS, "x", chart, () -> BandTable.of(TEXTS, List.of(ammonia, nitrite)));
            Hyperlink turn = (Hyperlink) tabled.getChildren().get(1);
            assertThat(tabled.getChildren().get(0)).isSameAs(chart);
            assertThat(turn.getText()).isEqualTo("Ver como tabla");

            turn.fire();
            TableView<?> table = (TableView<?>) tabled.getChildren().get(0);
            assertThat(table.getAccessibleText()).isEqualTo("en palabras");
            assertThat(table.getColumns())
                    .extracting(c -> c.getText())
                    .containsExactly(
                            "Día",
                            "amoníaco, bajo",
                            "amoníaco, medio",
                            "amoníaco, alto",
                            "nitrito, bajo",
                            "nitrito, medio",
                            "nitrito, alto");
            assertThat(table.getColumns().get(2).getCellData(0)).isEqualTo("1,25");
            assertThat(table.getColumns().get(6).getCellData(1)).isEqualTo("8");

            turn.fire();
            assertThat(tabled.getChildren().get(0)).isSameAs(chart);
        });
    }

    @Test
    void aRowFitsUnderItsHeads() {
        assertThatThrownBy(() -> new Tabled.Rows(List.of("a"), List.of(List.of("1", "2"))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aLineIsReadBetweenItsPointsAndNotBeyond() {
        Plot.Line line = new Plot.Line("", List.of(new Plot.Point(1, 10), new Plot.Point(3, 20)), false);
        assertThat(line.at(2)).hasValue(15);
        assertThat(line.at(3)).hasValue(20);
        assertThat(line.at(3.1)).isEmpty();
    }
}
