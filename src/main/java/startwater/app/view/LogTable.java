package startwater.app.view;

import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import startwater.drill.DrillLog;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.strip.Pad;
import startwater.text.DrillWords;

/** The log as the learner wrote it, newest first. */
final class LogTable {
    private static final List<Pad> COLUMNS = List.of(Pad.AMMONIA, Pad.NITRITE, Pad.PH, Pad.ALKALINITY, Pad.CHLORIDE);

    private LogTable() {}

    static VBox of(DrillLog log, DrillWords words) {
        VBox rows = new VBox(4);
        GridPane head = grid();
        for (int c = 0; c < COLUMNS.size(); c++) {
            head.add(
                    Ui.text(words.texts().text("win.short." + ScreenKeys.of(COLUMNS.get(c))), "sw-label", "sw-quiet"),
                    c + 1,
                    0);
        }
        rows.getChildren().add(head);
        for (int i = log.size() - 1; i >= 0; i--) {
            VisitRecord v = log.visits().get(i);
            if (!v.asked() && !v.actor().standsIn() && v.seen().found() == 0) {
                continue;
            }
            GridPane line = grid();
            line.add(
                    Ui.text(words.shortDay(v.minute()) + " " + DrillWords.hour(v.minute()), "sw-label", "sw-strong"),
                    0,
                    0);
            for (int c = 0; c < COLUMNS.size(); c++) {
                Label value = Ui.text(last(v, COLUMNS.get(c), words), "sw-strong");
                line.add(value, c + 1, 0);
            }
            VBox entry = new VBox(line);
            String did = v.decision() == null
                    ? ""
                    : v.actor().standsIn()
                            ? words.stoodIn(v)
                            : words.option(v.decision(), v.seen().alive() > 0);
            String dead = v.seen().found() > 0
                    ? words.texts().text("seen.found", v.seen().found()) + " "
                    : "";
            if (!(did + dead).isEmpty()) {
                entry.getChildren().add(Ui.text(dead + did, "sw-label", "sw-quiet"));
            }
            entry.getStyleClass().add("sw-hairline-top");
            entry.setStyle("-fx-padding: 4 0 2 0;");
            rows.getChildren().add(entry);
        }
        return rows;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.setHgap(6);
        ColumnConstraints first = new ColumnConstraints();
        first.setPercentWidth(24);
        grid.getColumnConstraints().add(first);
        for (int c = 0; c < COLUMNS.size(); c++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(76.0 / COLUMNS.size());
            column.setHalignment(HPos.RIGHT);
            column.setHgrow(Priority.ALWAYS);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }

    private static String last(VisitRecord v, Pad pad, DrillWords words) {
        Written last = v.lastWritten(pad);
        return last == null ? "" : words.written(last);
    }
}
