package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.chart.CalibrationChart;
import startwater.app.chart.MarksChart;
import startwater.app.model.ProgressModel;
import startwater.course.Calibration;
import startwater.course.Past;
import startwater.text.Texts;

/** The two charts of the progress page, each under its sentence. */
final class ProgressCharts {
    private static final double PASS = 70;
    private static final int QUARTERS = 4;

    private ProgressCharts() {}

    /** How sure against how often right. */
    static Region calibration(ProgressModel model, CoachWords words) {
        Texts texts = words.texts();
        Calibration c = model.calibration();
        String finding = texts.text(
                "progress.calibration." + c.finding(), c.score().count(), percent(c.stated()), percent(c.came()));
        VBox all =
                new VBox(8, Ui.text(texts.text("progress.calibration"), "sw-sentence", "sw-strong"), Ui.text(finding));
        if (!c.bins().isEmpty()) {
            all.getChildren()
                    .addAll(
                            new Tabled(
                                    texts,
                                    "calibration",
                                    new CalibrationChart(chart(c, texts, finding)),
                                    () -> numbers(c, texts)),
                            Ui.text(texts.text("progress.calibrationHow"), "sw-label", "sw-quiet"));
        }
        all.setId("progress-calibration");
        return all;
    }

    private static CalibrationChart.Data chart(Calibration c, Texts texts, String finding) {
        List<CalibrationChart.Column> columns = new ArrayList<>();
        StringBuilder spoken = new StringBuilder(finding);
        for (Calibration.Bin b : c.bins()) {
            String word = texts.text("progress.sureness." + b.word());
            columns.add(new CalibrationChart.Column(
                    word,
                    b.stated(),
                    b.came(),
                    b.low(),
                    b.high(),
                    texts.text("progress.cameOne", percent(b.came()), b.count())));
            spoken.append(' ')
                    .append(texts.text("progress.binSpoken", word, percent(b.stated()), percent(b.came()), b.count()));
        }
        List<String> percents = IntStream.rangeClosed(0, QUARTERS)
                .mapToObj(i -> texts.text("progress.percent", 100 / QUARTERS * i))
                .toList();
        return new CalibrationChart.Data(columns, percents, spoken.toString());
    }

    private static Tabled.Rows numbers(Calibration c, Texts texts) {
        return new Tabled.Rows(
                List.of(
                        texts.text("progress.said"),
                        texts.text("progress.standsFor"),
                        texts.text("progress.came"),
                        texts.text("progress.times")),
                c.bins().stream()
                        .map(b -> List.of(
                                texts.text("progress.sureness." + b.word()),
                                texts.text("progress.percent", percent(b.stated())),
                                texts.text("progress.percent", percent(b.came())),
                                texts.number(b.count())))
                        .toList());
    }

    private static double percent(double share) {
        return Double.isNaN(share) ? 0 : Math.rint(100 * share);
    }

    /** Marks over time. */
    static Region marks(ProgressModel model, CoachWords words) {
        Texts texts = words.texts();
        List<Past.Mark> marks = model.marks();
        VBox all = new VBox(8, Ui.text(texts.text("progress.marks"), "sw-sentence", "sw-strong"));
        all.setId("progress-marks");
        if (marks.isEmpty()) {
            all.getChildren().add(Ui.text(texts.text("progress.marksNone")));
            return all;
        }
        List<Double> values = marks.stream().map(Past.Mark::mark).toList();
        double last = Math.rint(values.get(values.size() - 1));
        double best = Math.rint(values.stream().mapToDouble(d -> d).max().orElse(last));
        String spoken = texts.text("progress.marksSpoken", values.size(), Math.rint(values.get(0)), last, best);
        all.getChildren()
                .addAll(
                        Ui.text(spoken),
                        new Tabled(
                                texts,
                                "marks",
                                new MarksChart(new MarksChart.Data(
                                        values,
                                        PASS,
                                        texts.text("progress.pass"),
                                        texts.number(last),
                                        texts.text("progress.day", model.daysSince(marks.get(0))),
                                        texts.text("progress.day", model.daysSince(marks.get(marks.size() - 1))),
                                        spoken)),
                                () -> new Tabled.Rows(
                                        List.of(texts.text("progress.when"), texts.text("progress.marks")),
                                        marks.stream()
                                                .map(m -> List.of(
                                                        texts.text("progress.day", model.daysSince(m)),
                                                        texts.number(Math.rint(m.mark()))))
                                                .toList())));
        return all;
    }
}
