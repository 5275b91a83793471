package startwater.app.view;

import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.DebriefModel;
import startwater.app.model.DrillModel;
import startwater.app.model.EndModel;
import startwater.app.theme.Look;
import startwater.drill.DrillRun;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.Texts;
import startwater.text.VisitFacts;

/** The drill: tank, bench and log side by side, and below them the decision, said back in words before it is done. */
public final class DrillScreen extends BorderPane {
    private static final double STACK_FROM = 1.45;
    private static final double[] COLUMNS = {29.5, 40, 30.5};
    private static final double STATEMENT_WIDTH = 376;
    private static final double HELP_WIDTH = 420;

    private final DrillModel model;
    private final Navigator navigator;
    private final Texts texts;
    private final DrillWords words;
    private final TankPane tank;
    private final BenchPane bench;
    private final LogPane log;
    private final HelpPane help;
    private @Nullable Node beforeHelp;
    private final Label statement = Ui.text("", "sw-statement");
    private final Label rest = Ui.text("", "sw-quiet");
    private final Label open = Ui.text("", "sw-strong");
    private final Button go = Ui.button("", "sw-primary", this::commit);

    public DrillScreen(DrillModel model, Language language, Navigator navigator) {
        this.model = model;
        this.navigator = navigator;
        this.texts = Texts.of(language, Texts.DRILL, "/startwater/app/text/window");
        this.words = new DrillWords(texts);
        this.tank = new TankPane(words, model.run().scenario());
        this.bench = new BenchPane(model, words);
        this.log = new LogPane(model, words);
        this.help = new HelpPane(texts, () -> help(false));
        help.setVisible(false);
        help.setManaged(false);
        getStyleClass().add("sw-paper");
        listen();
        visit();
    }

    private void listen() {
        model.changesProperty().addListener((p, was, is) -> refresh());
        model.inHandProperty().addListener((p, was, is) -> refresh());
        for (var amount : List.of(
                model.changeProperty(), model.saltProperty(), model.bufferProperty(), model.ammoniumProperty())) {
            amount.addListener((p, was, is) -> refreshStatement());
        }
        // Leaving the window is no visit: after the last decision its look back is shown first.
        sceneProperty().addListener((p, was, is) -> {
            if (is != null) {
                visit();
            }
        });
        addEventFilter(KeyEvent.KEY_PRESSED, this::keys);
        addEventFilter(KeyEvent.KEY_TYPED, e -> {
            if (e.getCharacter().equals("?") && !typing(e)) {
                help(!help.isVisible());
                e.consume();
            }
        });
    }

    /** Draws the open visit. */
    private void visit() {
        if (model.judging()) {
            // Made anew while a decision is judged: what follows is shown with the verdict.
            setTop(null);
            setCenter(Ui.text(texts.text("win.judging"), "sw-sentence", "sw-quiet"));
            setBottom(null);
            return;
        }
        if (model.run().over()) {
            navigator.finished(model.run(), model.verdicts());
            return;
        }
        setTop(topBar());
        tank.show(model.run().now(), model.run());
        refresh();
        StackPane beside = new StackPane(columns(), help);
        StackPane.setAlignment(help, Pos.TOP_RIGHT);
        help.setMaxWidth(HELP_WIDTH * Look.of(getScene()).scale());
        setCenter(beside);
        setBottom(decisionBar());
        refreshStatement();
    }

    private HBox topBar() {
        DrillRun run = model.run();
        Hyperlink helpLink = Ui.link(texts.text("win.help"), () -> help(!help.isVisible()));
        helpLink.setId("help-link");
        Hyperlink leave = Ui.link(texts.text("win.leave"), navigator::home);
        Label clock = Ui.text(words.clock(run.now().minute()), "sw-strong");
        Label visit = Ui.text(
                texts.text("win.visit", run.asked(), run.scenario().keeper().decisions()));
        Label title = Ui.text(words.scenario(run.scenario()).title());
        // The title gives way, nothing else does.
        title.setWrapText(false);
        title.setMinWidth(0);
        for (Labeled whole : List.of(helpLink, leave, clock, visit)) {
            whole.setMinWidth(Region.USE_PREF_SIZE);
        }
        HBox bar = Ui.row(16, clock, title, Ui.grow());
        if (Look.of(getScene()).scale() < STACK_FROM) {
            bar.getChildren().add(Ui.text(texts.text("win.practice"), "sw-quiet"));
        }
        bar.getChildren().addAll(visit, helpLink, leave);
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-bottom");
        bar.setPadding(new Insets(12, 24, 12, 24));
        return bar;
    }

    private Region columns() {
        if (Look.of(getScene()).scale() >= STACK_FROM) {
            VBox stack = new VBox(24, tank, bench, log, decision());
            stack.setPadding(new Insets(16, 24, 16, 24));
            return Ui.scroll(stack);
        }
        GridPane grid = new GridPane();
        grid.setHgap(32);
        grid.setPadding(new Insets(12, 24, 8, 24));
        for (double percent : COLUMNS) {
            ColumnConstraints c = new ColumnConstraints();
            c.setPercentWidth(percent);
            grid.getColumnConstraints().add(c);
        }
        RowConstraints row = new RowConstraints();
        row.setMinHeight(0);
        row.setVgrow(Priority.ALWAYS);
        grid.getRowConstraints().add(row);
        // The picture of the tank gives way, so that what is said below it stays in sight.
        tank.setMinHeight(0);
        ScrollPane benchScroll = Ui.scroll(bench);
        ScrollPane logScroll = Ui.scroll(log);
        grid.add(tank, 0, 0);
        grid.add(benchScroll, 1, 0);
        grid.add(logScroll, 2, 0);
        for (Region pane : List.of(tank, benchScroll, logScroll)) {
            GridPane.setVgrow(pane, Priority.ALWAYS);
        }
        return grid;
    }

    private void refresh() {
        if (model.run().over() || model.judging()) {
            return;
        }
        bench.refresh();
        log.refresh();
        refreshStatement();
    }

    private void help(boolean show) {
        if (show == help.isVisible()) {
            return;
        }
        Node before = getScene() == null ? null : getScene().getFocusOwner();
        help.setVisible(show);
        help.setManaged(show);
        if (show) {
            beforeHelp = before;
            help.focusIn();
        } else if (beforeHelp != null) {
            beforeHelp.requestFocus();
        }
    }

    private void keys(KeyEvent e) {
        if (e.getCode() == KeyCode.F1) {
            help(!help.isVisible());
            e.consume();
        } else if (e.getCode() == KeyCode.Z && e.isShortcutDown() && !typing(e)) {
            if (!model.judging()) {
                model.takeBack();
            }
            e.consume();
        }
    }

    private static boolean typing(KeyEvent e) {
        return e.getTarget() instanceof TextInputControl;
    }

    /** At large type the decision stands at the end of the page, and only what will happen stays in view. */
    private DecisionPane decision() {
        return new DecisionPane(model, words, this::refreshStatement);
    }

    private VBox decisionBar() {
        VisitFacts facts = model.facts();
        boolean stacked = Look.of(getScene()).scale() >= STACK_FROM;
        go.setText(texts.text(
                "win.go", words.when(facts.nextMinute(), model.run().now().minute())));
        go.setAccessibleText(go.getText());
        go.setId("go");
        go.setWrapText(true);
        go.setMaxWidth(Double.MAX_VALUE);
        go.setDisable(false);
        VBox bar = new VBox(stacked ? compact() : beside());
        bar.getStyleClass().addAll("sw-panel", "sw-water-rule");
        return bar;
    }

    private HBox beside() {
        VBox right = new VBox(
                8, Ui.text(texts.text("win.willHappen"), "sw-label", "sw-quiet"), statement, rest, Ui.grow(), open, go);
        right.getStyleClass().add("sw-wash");
        right.setPadding(new Insets(10, 24, 12, 24));
        DecisionPane left = decision();
        left.setPadding(new Insets(10, 24, 8, 24));
        HBox.setHgrow(left, Priority.ALWAYS);
        double width = STATEMENT_WIDTH * Look.of(getScene()).scale();
        right.setPrefWidth(width);
        right.setMinWidth(width);
        return new HBox(left, right);
    }

    /** The statement and the button alone, side by side. */
    private HBox compact() {
        VBox said = new VBox(2, statement, rest, open);
        HBox.setHgrow(said, Priority.ALWAYS);
        go.setMinWidth(Region.USE_PREF_SIZE);
        HBox bar = Ui.row(24, said, go);
        bar.getStyleClass().add("sw-wash");
        bar.setPadding(new Insets(12, 24, 12, 24));
        return bar;
    }

    private void refreshStatement() {
        if (model.run().over() || model.judging()) {
            return;
        }
        VisitFacts facts = model.facts();
        DrillWords.Statement said = words.statement(model.decision(), facts);
        statement.setText(said.main());
        rest.setText(said.rest());
        String missing = facts.visit().written().isEmpty()
                ? texts.text("win.nothingWritten")
                : model.foreseenProperty().get() < 0 ? texts.text("win.nothingForeseen") : "";
        open.setText(missing);
        open.setManaged(!missing.isEmpty());
        open.setVisible(!missing.isEmpty());
    }

    private void commit() {
        go.setDisable(true);
        go.setText(texts.text("win.judging"));
        // The model stands at the next visit already: what is still seen here belongs to the last.
        for (Node part : List.of(getCenter(), getBottom())) {
            part.setDisable(true);
        }
        boolean fishIn = model.facts().fishIn();
        WorkingMark working = model.workingProperty().get();
        var judging = model.commit();
        navigator.committed(model.run());
        var unused = judging.whenComplete((verdict, fault) -> Platform.runLater(() -> {
            if (fault != null) {
                // Judging is pure; a fault here is ours. The run itself is safe and goes on.
                model.unjudged();
                Background.report(fault);
                if (navigator.plays(model.run())) {
                    next();
                }
                return;
            }
            judged(verdict, working, fishIn);
        }));
    }

    private void judged(Verdict verdict, @Nullable WorkingMark working, boolean fishIn) {
        model.judged(verdict);
        if (!navigator.plays(model.run())) {
            // Left meanwhile: the mark is kept, the page stays as it is.
            return;
        }
        if (model.steps().exam()) {
            next();
            return;
        }
        DebriefModel debrief =
                new DebriefModel(model.run(), new EndModel(model.run(), model.verdicts()).steps(), working, fishIn);
        navigator.show(new DebriefScreen(debrief, words, this::next));
    }

    private void next() {
        if (model.run().over()) {
            navigator.finished(model.run(), model.verdicts());
        } else {
            navigator.show(this);
            visit();
        }
    }
}
