package startwater.app.view;

import java.util.List;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.text.Texts;

/**
 * A chart, and the numbers it is drawn from: a link turns one into the other. A chart says its gist to a screen reader; the
 * table says each number, cell by cell.
 */
final class Tabled extends VBox {
    private static final double ROW_EM = 2.4;
    private static final int MOST_ROWS_IN_SIGHT = 9;
    private static final double COLUMN_EM = 7;

    /**
     * The numbers of a chart.
     *
     * @param heads one for each column, with its unit
     * @param rows as many cells as heads
     */
    record Rows(List<String> heads, List<List<String>> rows) {
        Rows {
            heads = List.copyOf(heads);
            rows = rows.stream().map(List::copyOf).toList();
            for (List<String> row : rows) {
                if (row.size() != heads.size()) {
                    throw new IllegalArgumentException(row + " does not fit under " + heads);
                }
            }
        }
    }

    private final Texts texts;
    private final Region chart;
    private final Supplier<Rows> numbers;
    private final Hyperlink turn = new Hyperlink();
    private boolean table;

    /**
     * The chart at first.
     *
     * @param id of the link: {@code table-} and this
     * @param numbers asked for when the table is
     */
    Tabled(Texts texts, String id, Region chart, Supplier<Rows> numbers) {
        super(2);
        this.texts = texts;
        this.chart = chart;
        this.numbers = numbers;
        setMinWidth(0);
        turn.setId("table-" + id);
        turn.setOnAction(e -> {
            table = !table;
            show();
        });
        show();
    }

    private void show() {
        String name = texts.text(table ? "chart.asChart" : "chart.asTable");
        turn.setText(name);
        turn.setAccessibleText(name);
        getChildren().setAll(table ? table(numbers.get()) : chart, turn);
    }

    private Region table(Rows shown) {
        TableView<List<String>> view = new TableView<>();
        for (int i = 0; i < shown.heads().size(); i++) {
            int at = i;
            TableColumn<List<String>, String> column =
                    new TableColumn<>(shown.heads().get(i));
            column.setCellValueFactory(
                    row -> new ReadOnlyStringWrapper(row.getValue().get(at)));
            column.setSortable(false);
            column.setReorderable(false);
            column.setStyle("-fx-pref-width: " + COLUMN_EM + "em;" + (at == 0 ? "" : "-fx-alignment: center-right;"));
            view.getColumns().add(column);
        }
        view.getItems().addAll(shown.rows());
        view.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
        view.setAccessibleText(chart.getAccessibleText());
        double rows = Math.min(MOST_ROWS_IN_SIGHT, shown.rows().size()) + 1.3;
        view.setStyle("-fx-fixed-cell-size: " + ROW_EM + "em; -fx-pref-height: " + ROW_EM * rows + "em;");
        view.setMinWidth(0);
        return view;
    }
}
