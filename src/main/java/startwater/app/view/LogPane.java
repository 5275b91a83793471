package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.VBox;
import startwater.app.chart.LogTrend;
import startwater.app.chart.Tick;
import startwater.app.chart.Tone;
import startwater.app.model.DrillModel;
import startwater.drill.Calendar;
import startwater.drill.DippedStrip;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The learner's own log: its trend, drawn from what was written and nothing else, and its entries, newest first. */
final class LogPane extends VBox {
    private static final int MOST_DAYS = 6;

    private final DrillModel model;
    private final DrillWords words;
    private final Texts texts;

    LogPane(DrillModel model, DrillWords words) {
        super(8);
        this.model = model;
        this.words = words;
        this.texts = words.texts();
    }

    void refresh() {
        getChildren()
                .setAll(Ui.row(
                        8,
                        Ui.text(texts.text("win.log"), "sw-strong"),
                        Ui.grow(),
                        Ui.text(texts.text("win.asWritten"), "sw-label", "sw-quiet")));
        String note = model.note();
        if (note != null) {
            VBox box = new VBox(2, Ui.text(texts.text("win.note"), "sw-label", "sw-quiet"), Ui.text(note, "sw-strong"));
            box.getStyleClass().add("sw-wash");
            box.setStyle("-fx-padding: 6 10 6 10;");
            getChildren().add(box);
        }
        List<LogTrend.Series> series = new ArrayList<>();
        add(series, Pad.AMMONIA, LogTrend.Mark.SQUARE, Tone.QUIET);
        add(series, Pad.NITRITE, LogTrend.Mark.DOT, Tone.WATER);
        if (!series.isEmpty()) {
            LogTrend trend = new LogTrend(new LogTrend.Data(steps(), days(), series, spoken(series)));
            trend.setId("trend");
            getChildren().add(trend);
        }
        Written last = model.lastWritten();
        if (last != null) {
            Hyperlink back =
                    Ui.link(texts.text("win.takeBack", words.pad(last.pad()), words.written(last)), model::takeBack);
            back.setId("take-back");
            getChildren().add(back);
        }
        getChildren().add(LogTable.of(model.run().log(), words));
    }

    private void add(List<LogTrend.Series> all, Pad pad, LogTrend.Mark mark, Tone tone) {
        List<LogTrend.Point> points = new ArrayList<>();
        for (VisitRecord visit : model.run().log().visits()) {
            Written last = visit.lastWritten(pad);
            if (last != null) {
                points.add(new LogTrend.Point(visit.day(), pad.scale().position(last.value()), false));
            }
        }
        boolean open = inHand(pad);
        if (open) {
            points.add(new LogTrend.Point(model.run().now().day(), model.stop(pad) / 2.0, true));
        }
        if (!points.isEmpty()) {
            all.add(new LogTrend.Series(
                    open ? List.of(words.pad(pad), texts.text("win.onThePad")) : List.of(words.pad(pad)),
                    mark,
                    tone,
                    points));
        }
    }

    /** Whether the pad is in hand and its strip not written down yet. */
    private boolean inHand(Pad pad) {
        DippedStrip strip = model.wet(pad);
        return model.inHandProperty().get() == pad && strip != null && model.written(pad, strip) == null;
    }

    private List<Tick> steps() {
        List<Tick> steps = new ArrayList<>();
        for (int block = 0; block < Pad.NITRITE.scale().blocks(); block++) {
            steps.add(Tick.of(block, words.block(Pad.NITRITE, block)));
        }
        return steps;
    }

    /** A few days that were written on, today last and strong. */
    private List<Tick> days() {
        List<VisitRecord> visits = model.run().log().visits();
        int today = Math.floorDiv(model.run().now().minute(), Calendar.DAY);
        int first = Math.floorDiv(visits.get(0).minute(), Calendar.DAY);
        int stride = Math.max(1, (int) Math.ceil((today - first) / (double) MOST_DAYS));
        List<Tick> days = new ArrayList<>();
        for (int day = today; day >= first; day -= stride) {
            days.add(new Tick(
                    day == today
                            ? model.run().now().day()
                            : Math.max(day, visits.get(0).day()),
                    words.shortDay(day * Calendar.DAY),
                    day == today));
        }
        return days;
    }

    private String spoken(List<LogTrend.Series> series) {
        StringBuilder said = new StringBuilder();
        for (LogTrend.Series s : series) {
            said.append(s.label().get(0)).append(": ");
            for (LogTrend.Point p : s.points()) {
                said.append(words.stop(Pad.NITRITE, (int) Math.round(2 * p.position()), 1))
                        .append(", ");
            }
        }
        return said.toString();
    }
}
