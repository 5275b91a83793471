package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import startwater.app.chart.FanChart;
import startwater.text.Texts;

/** Paths with their bands as a table: a row a day, and for each path the tenth, the middle and the ninetieth of a hundred tanks. */
final class BandTable {
    private static final int DIGITS = 3;

    private BandTable() {}

    /** @param paths with the same days, each with a name of its own */
    static Tabled.Rows of(Texts texts, List<FanChart.Path> paths) {
        List<String> heads = new ArrayList<>(List.of(texts.text("chart.day")));
        for (FanChart.Path path : paths) {
            String name = String.join(" ", path.label());
            heads.add(texts.text("chart.low", name));
            heads.add(texts.text("chart.middle", name));
            heads.add(texts.text("chart.high", name));
        }
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < paths.get(0).points().size(); i++) {
            List<String> row = new ArrayList<>(
                    List.of(texts.number(paths.get(0).points().get(i).day(), DIGITS)));
            for (FanChart.Path path : paths) {
                FanChart.Point point = path.points().get(i);
                row.add(texts.number(point.low(), DIGITS));
                row.add(texts.number(point.middle(), DIGITS));
                row.add(texts.number(point.high(), DIGITS));
            }
            rows.add(row);
        }
        return new Tabled.Rows(heads, rows);
    }
}
