package startwater.app.view;

import java.util.List;
import javafx.collections.MapChangeListener;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import startwater.app.model.DebriefModel;
import startwater.app.theme.Look;
import startwater.score.Verdict;
import startwater.text.DrillWords;
import startwater.text.Texts;

/**
 * One decision looked back on: three sentences, the marks and one chart first, all in sight; the rest unfolds beside the
 * chart, one at a time.
 */
public final class DebriefScreen extends BorderPane {
    private static final double STACK_FROM = 1.45;

    private final DebriefModel model;
    private final DrillWords words;
    private final Texts texts;
    /** Another text size may ask for another arrangement. */
    private final MapChangeListener<Object, Object> onLook = change -> {
        if (Look.isKey(change.getKey())) {
            setCenter(body());
        }
    };

    DebriefScreen(DebriefModel model, DrillWords words, Runnable goOn) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        setTop(topBar());
        setBottom(bottom(goOn));
        sceneProperty().addListener((p, was, is) -> {
            if (was != null) {
                was.getProperties().removeListener(onLook);
            }
            if (is != null) {
                is.getProperties().addListener(onLook);
                setCenter(body());
            }
        });
        setCenter(body());
    }

    private HBox topBar() {
        HBox bar = Ui.row(
                16,
                Ui.text(words.clock(model.decided().minute()), "sw-strong"),
                Ui.text(words.scenario(model.run().scenario()).title()),
                Ui.grow(),
                Ui.text(texts.text("win.lookedBack"), "sw-quiet"));
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-bottom");
        bar.setPadding(new Insets(12, 24, 12, 24));
        return bar;
    }

    private Region body() {
        Look look = Look.of(getScene());
        boolean stack = look.scale() >= STACK_FROM;
        VBox sentences = sentences();
        DebriefMarks marks = new DebriefMarks(model, words, look);
        DebriefCharts charts = new DebriefCharts(model, words);
        List<Fold> folds = new DebriefDetails(model, words, charts).all();
        VBox rest = new VBox(folds.toArray(Fold[]::new));
        if (stack) {
            VBox page = new VBox(16, sentences, marks, charts.options(), rest);
            page.setPadding(new Insets(16, 24, 16, 24));
            return Ui.scroll(page);
        }
        oneAtATime(folds);
        ScrollPane details = Ui.scroll(rest);
        details.setId("details");
        GridPane grid = new GridPane();
        grid.setHgap(32);
        grid.setPadding(new Insets(16, 24, 8, 24));
        for (double share : new double[] {52, 48}) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(share);
            grid.getColumnConstraints().add(column);
        }
        RowConstraints row = new RowConstraints();
        row.setMinHeight(0);
        row.setVgrow(Priority.ALWAYS);
        grid.getRowConstraints().add(row);
        VBox.setVgrow(details, Priority.ALWAYS);
        VBox left = new VBox(12, sentences, charts.options());
        VBox right = new VBox(12, marks, details);
        left.setMinHeight(0);
        right.setMinHeight(0);
        grid.add(left, 0, 0);
        grid.add(right, 1, 0);
        return grid;
    }

    private static void oneAtATime(List<Fold> folds) {
        for (Fold fold : folds) {
            fold.openProperty().addListener((p, was, is) -> {
                if (is) {
                    folds.stream().filter(f -> f != fold).forEach(f -> f.openProperty()
                            .set(false));
                }
            });
        }
    }

    /** What was done, and the three sentences that weigh most. */
    private VBox sentences() {
        VBox box = new VBox(4);
        box.getChildren()
                .add(Ui.text(
                        texts.text(
                                "win.youDid",
                                words.option(model.verdict().chosen().decision(), model.fishIn())),
                        "sw-statement"));
        for (Verdict.Line line : model.leading()) {
            box.getChildren().add(Ui.text(words.why().format(line), "sw-sentence", tone(line)));
        }
        return box;
    }

    private static String tone(Verdict.Line line) {
        return switch (line.severity()) {
            case OWN -> "sw-own";
            case BEST -> "sw-best";
            case FACT, HARM, RULE -> "sw-ink";
        };
    }

    private HBox bottom(Runnable goOn) {
        Button on = Ui.button(texts.text("win.goOn"), "sw-primary", goOn);
        on.setId("go-on");
        on.setMinWidth(Region.USE_PREF_SIZE);
        on.setDefaultButton(true);
        HBox bar = Ui.row(16, Ui.text(texts.text("caution"), "sw-label", "sw-quiet"), Ui.grow(), on);
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-top");
        bar.setPadding(new Insets(10, 24, 10, 24));
        return bar;
    }
}
