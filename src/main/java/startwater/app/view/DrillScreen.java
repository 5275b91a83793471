package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.DrillModel;
import startwater.app.theme.Look;
import startwater.app.view.part.ScaleView;
import startwater.app.view.part.StripLook;
import startwater.app.view.part.StripView;
import startwater.drill.Decision;
import startwater.drill.DippedStrip;
import startwater.drill.DrillRun;
import startwater.drill.Prediction;
import startwater.drill.Scenario;
import startwater.drill.VisitRecord;
import startwater.drill.Written;
import startwater.score.Verdict;
import startwater.score.WorkingMark;
import startwater.strip.Pad;
import startwater.text.Amounts;
import startwater.text.DrillWords;
import startwater.text.Language;
import startwater.text.NumberEntry;
import startwater.text.ReadingEntry;
import startwater.text.Texts;
import startwater.text.VisitFacts;
import startwater.water.Dose;
import startwater.water.UnionisedAmmonia;

/** The drill: tank, bench and log side by side, and below them the decision, said back in words before it is done. */
public final class DrillScreen extends BorderPane {
    private static final double STACK_FROM = 1.45;

    private final DrillModel model;
    private final Navigator navigator;
    private final Texts texts;
    private final DrillWords words;
    private final TankPane tank;
    private final VBox bench = new VBox(6);
    private final VBox log = new VBox(8);
    private @Nullable ScaleView scale;
    private @Nullable TextField typed;
    private final Label statement = Ui.text("", "sw-statement");
    private final Label rest = Ui.text("", "sw-quiet");
    private final Label open = Ui.text("", "sw-strong");
    private final Button go = Ui.button("", "sw-primary", this::commit);

    public DrillScreen(DrillRun run, Language language, Navigator navigator) {
        this(new DrillModel(run), language, navigator);
    }

    public DrillScreen(DrillModel model, Language language, Navigator navigator) {
        this.model = model;
        this.navigator = navigator;
        this.texts = Texts.of(language, Texts.DRILL, "/startwater/app/text/window");
        this.words = new DrillWords(texts);
        this.tank = new TankPane(words, model.run().scenario());
        getStyleClass().add("sw-paper");
        model.changesProperty().addListener((p, was, is) -> refreshBench());
        model.inHandProperty().addListener((p, was, is) -> refreshBench());
        // Leaving the window is no visit: after the last decision its look back is shown first.
        sceneProperty().addListener((p, was, is) -> {
            if (is != null) {
                visit();
            }
        });
        visit();
    }

    /** Draws the open visit. */
    private void visit() {
        if (model.run().over()) {
            navigator.finished(model.run(), model.verdicts());
            return;
        }
        setTop(topBar());
        tank.show(model.run().now(), model.run());
        refreshBench();
        setCenter(columns());
        setBottom(decisionBar());
        refreshStatement();
    }

    private HBox topBar() {
        DrillRun run = model.run();
        HBox bar = Ui.row(
                16,
                Ui.text(words.clock(run.now().minute()), "sw-strong"),
                Ui.text(words.scenario(run.scenario()).title()),
                Ui.grow(),
                Ui.text(texts.text("win.practice"), "sw-quiet"),
                Ui.text(texts.text(
                        "win.visit", run.asked(), run.scenario().keeper().decisions())),
                Ui.link(texts.text("win.leave"), navigator::home));
        bar.getStyleClass().addAll("sw-panel", "sw-hairline-bottom");
        bar.setPadding(new Insets(12, 24, 12, 24));
        return bar;
    }

    private Region columns() {
        ScrollPane benchScroll = scroll(bench);
        ScrollPane logScroll = scroll(log);
        double scaleNow = Look.of(getScene()).scale();
        if (scaleNow >= STACK_FROM) {
            VBox stack = new VBox(24, tank, bench, log, decision());
            stack.setPadding(new Insets(16, 24, 16, 24));
            return scroll(stack);
        }
        GridPane grid = new GridPane();
        grid.setHgap(32);
        grid.setPadding(new Insets(16, 24, 8, 24));
        for (double percent : new double[] {29.5, 40, 30.5}) {
            ColumnConstraints c = new ColumnConstraints();
            c.setPercentWidth(percent);
            grid.getColumnConstraints().add(c);
        }
        ScrollPane tankScroll = scroll(tank);
        grid.add(tankScroll, 0, 0);
        grid.add(benchScroll, 1, 0);
        grid.add(logScroll, 2, 0);
        for (ScrollPane pane : List.of(tankScroll, benchScroll, logScroll)) {
            GridPane.setVgrow(pane, Priority.ALWAYS);
        }
        return grid;
    }

    private static ScrollPane scroll(Region content) {
        ScrollPane pane = new ScrollPane(content);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setStyle("-fx-background-color: transparent; -fx-background: transparent; -fx-padding: 0;");
        return pane;
    }

    private void refreshBench() {
        if (model.run().over()) {
            return;
        }
        boolean typedHadFocus = typed != null && typed.isFocused();
        boolean benchHadFocus = hasFocus(bench);
        bench.getChildren().setAll(benchHead(), dipRow());
        Pad inHand = model.inHandProperty().get();
        DippedStrip strip = inHand == null ? null : model.wet(inHand);
        if (inHand != null && strip != null) {
            bench.getChildren().addAll(strip(inHand), match(inHand, strip));
        } else {
            bench.getChildren().add(Ui.text(texts.text("win.dipFirst"), "sw-quiet"));
        }
        bench.getChildren().add(workOut());
        refreshLog();
        refreshStatement();
        keepFocus(benchHadFocus, typedHadFocus);
    }

    /** The bench is built anew after each reading; whoever works by keyboard goes on where they were. */
    private void keepFocus(boolean benchHadFocus, boolean typedHadFocus) {
        if (typedHadFocus && typed != null) {
            typed.requestFocus();
        } else if (benchHadFocus && scale != null) {
            scale.requestFocus();
        }
    }

    private static boolean hasFocus(Parent part) {
        Node at = part.getScene() == null ? null : part.getScene().getFocusOwner();
        while (at != null && at != part) {
            at = at.getParent();
        }
        return at != null;
    }

    private HBox benchHead() {
        return Ui.row(
                8,
                Ui.text(texts.text("win.bench"), "sw-strong"),
                Ui.grow(),
                Ui.text(
                        texts.text(
                                "win.stripsLeft",
                                model.run().stripsLeft(),
                                model.run().chlorideStripsLeft()),
                        "sw-label",
                        "sw-quiet"));
    }

    private FlowPane dipRow() {
        Button dip = Ui.button(texts.text("win.dip"), "sw-second", () -> model.dip(1));
        Button dilute = Ui.button(texts.text("win.dilute"), "", () -> model.dip(10));
        Button chloride = Ui.button(texts.text("win.dipChloride"), "", model::dipChloride);
        dip.setId("dip");
        dip.setDisable(model.run().stripsLeft() <= 0);
        dilute.setDisable(model.run().stripsLeft() <= 0);
        chloride.setDisable(model.run().chlorideStripsLeft() <= 0);
        return new FlowPane(8, 8, dip, dilute, chloride);
    }

    /** The wet pads, each with its colour as it lies, its name and what was written of it. */
    private StripView strip(Pad inHand) {
        List<Pad> shown = new ArrayList<>();
        List<StripLook.PadLook> looks = new ArrayList<>();
        for (Pad pad : Pad.values()) {
            DippedStrip wet = model.wet(pad);
            if (wet != null) {
                Written written = model.written(pad, wet);
                String said = written == null ? "…" : words.written(written);
                shown.add(pad);
                looks.add(new StripLook.PadLook(
                        words.pad(pad),
                        said,
                        written == null,
                        PadLooks.colour(pad, wet.position(pad)),
                        texts.text("win.padButton", words.pad(pad), said)));
            }
        }
        StripView view = new StripView(new StripLook(looks, texts.text("win.bench")));
        view.inHandProperty().set(shown.indexOf(inHand));
        view.inHandProperty().addListener((p, was, is) -> {
            if (is.intValue() >= 0 && is.intValue() < shown.size()) {
                model.inHandProperty().set(shown.get(is.intValue()));
            }
        });
        return view;
    }

    private VBox match(Pad pad, DippedStrip strip) {
        int stop = model.stop(pad);
        ScaleView card = new ScaleView(PadLooks.scale(pad, strip.position(pad), words));
        card.stopProperty().set(stop);
        card.stopProperty().addListener((p, was, is) -> model.choose(is.intValue()));
        scale = card;
        Label head = Ui.text(texts.text("win.match", words.pad(pad), words.unit(pad)), "sw-strong");
        Label reading = Ui.text(readingSaid(pad, strip));
        card.stopProperty().addListener((p, was, is) -> reading.setText(readingSaid(pad, strip)));
        Button write = Ui.button(texts.text("win.write"), "sw-second", model::writeDown);
        Label refusal = Ui.text("", "sw-label", "sw-danger");
        refusal.setId("reading-refusal");
        refusal.managedProperty().bind(refusal.textProperty().isNotEmpty());
        TextField entry = readingField(pad, refusal);
        typed = entry;
        HBox line =
                Ui.row(8, reading, Ui.grow(), Ui.text(texts.text("win.typeIt"), "sw-label", "sw-quiet"), entry, write);
        VBox box = new VBox(6, head, card, line, refusal);
        box.getStyleClass().add("sw-card");
        box.setPadding(new Insets(8, 12, 8, 12));
        return box;
    }

    /** A reading typed instead of matched; what is none stays in the field, with the reason below. */
    private TextField readingField(Pad pad, Label refusal) {
        TextField field = new TextField();
        field.setId("reading");
        field.setPrefColumnCount(4);
        field.setAccessibleText(texts.text("win.typeSpoken", words.pad(pad)));
        field.setOnAction(e -> {
            ReadingEntry entry = ReadingEntry.of(pad, field.getText());
            if (entry.refusal() == null) {
                model.choose(entry.stop());
                model.writeDown();
            } else {
                refusal.setText(entry.refusal().say(texts));
            }
        });
        return field;
    }

    private String readingSaid(Pad pad, DippedStrip strip) {
        int stop = model.stop(pad);
        String read = words.stop(pad, stop, strip.dilution());
        return strip.dilution() > 1
                ? texts.text("win.readDiluted", read, strip.dilution())
                : texts.text(stop % 2 == 0 ? "win.read" : "win.readBetween", read);
    }

    /** Toxic ammonia at this pH and warmth: the numbers are laid out, the product is the learner's. */
    private VBox workOut() {
        VBox box = new VBox(6, Ui.text(texts.text("win.workOut"), "sw-strong"));
        VisitFacts facts = model.facts();
        double tan = facts.book().value(Pad.AMMONIA);
        double ph = facts.book().value(Pad.PH);
        if (Double.isNaN(tan) || Double.isNaN(ph)) {
            box.getChildren().add(Ui.text(texts.text("win.workOutNeeds"), "sw-quiet"));
            return box;
        }
        double share = UnionisedAmmonia.fraction(ph, facts.seen().temperatureC());
        TextField sum = new TextField();
        sum.setPrefColumnCount(6);
        sum.setAccessibleText(texts.text("win.yourSum"));
        Label answer = Ui.text("", "sw-label");
        sum.textProperty().addListener((p, was, is) -> answer.setText(checked(is, tan * share, tan)));
        box.getChildren()
                .addAll(
                        Ui.row(
                                10,
                                Ui.text(texts.number(tan), "sw-strong"),
                                Ui.text("×", "sw-quiet"),
                                Ui.text(texts.number(100 * share) + " %", "sw-strong"),
                                Ui.text("=", "sw-quiet"),
                                sum,
                                Ui.text(texts.text("unit.mgNPerL"), "sw-label", "sw-quiet")),
                        Ui.text(
                                texts.text(
                                        "win.sumNames",
                                        texts.decimals(ph, 1),
                                        texts.decimals(facts.seen().temperatureC(), 1)),
                                "sw-label",
                                "sw-quiet"),
                        answer);
        return box;
    }

    private String checked(String typed, double exact, double tan) {
        if (typed.isBlank()) {
            return "";
        }
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() != null) {
            return entry.refusal().say(texts);
        }
        WorkingMark mark = WorkingMark.of(entry.value(), exact);
        if (mark.right()) {
            return texts.text("win.sumRight", texts.number(exact, 2));
        }
        if (mark.slip() != null) {
            return words.why().slip(mark.slip(), texts.number(exact, 2) + " mg/L");
        }
        return texts.text(
                "win.sumOff",
                texts.number(100 * Math.abs(mark.relativeError()), 2),
                texts.number(tan),
                texts.number(exact, 2));
    }

    private void refreshLog() {
        log.getChildren()
                .setAll(
                        Ui.row(
                                8,
                                Ui.text(texts.text("win.log"), "sw-strong"),
                                Ui.grow(),
                                Ui.text(texts.text("win.asWritten"), "sw-label", "sw-quiet")),
                        LogTable.of(model.run().log(), words));
    }

    /** What is decided on. At large type it stands at the end of the page, and only what will happen stays in view. */
    private VBox decision() {
        VisitFacts facts = model.facts();
        Scenario s = model.run().scenario();
        FlowPane fields = new FlowPane(18, 8);
        if (facts.fishIn()) {
            Ui.Choice<Double> feed = new Ui.Choice<>(
                    texts.text("win.feed"),
                    List.of(0.0, 0.5, 1.0),
                    v -> texts.text(v == 0 ? "win.none" : v == 0.5 ? "win.half" : "win.full"),
                    v -> set(() -> model.feedProperty().set(v)));
            feed.select(nearestFeed());
            fields.getChildren()
                    .add(field("win.feed", feed, texts.text("win.feedMeans", words.grams(facts.rationG()))));
        }
        fields.getChildren()
                .add(field(
                        "win.change",
                        new Ui.Stepper(
                                texts.text("win.change"),
                                texts,
                                model.changeProperty(),
                                0.05,
                                0.95,
                                v -> texts.number(100 * v) + " %",
                                typed -> Amounts.change(typed, facts)),
                        texts.text(
                                "win.changeMeans",
                                texts.number(facts.volumeL()),
                                texts.decimals(s.source().temperatureC(), 0))));
        dose(fields, "win.salt", Dose.SODIUM_CHLORIDE, facts, s.shelf().saltG(), model.saltProperty());
        dose(fields, "win.buffer", Dose.SODIUM_BICARBONATE, facts, s.shelf().bicarbonateG(), model.bufferProperty());
        dose(
                fields,
                "win.ammonium",
                Dose.AMMONIUM_CHLORIDE,
                facts,
                s.shelf().ammoniumChlorideG(),
                model.ammoniumProperty());
        Ui.Choice<Boolean> air = new Ui.Choice<>(
                texts.text("win.air"),
                List.of(true, false),
                v -> texts.text(v ? "win.on" : "win.off"),
                v -> set(() -> model.airProperty().set(v)));
        air.select(model.airProperty().get());
        fields.getChildren().add(field("win.air", air, ""));
        for (var amount : List.of(
                model.changeProperty(), model.saltProperty(), model.bufferProperty(), model.ammoniumProperty())) {
            amount.addListener((p, was, is) -> refreshStatement());
        }
        VBox left = new VBox(
                10,
                Ui.row(
                        12,
                        Ui.text(texts.text("win.decide"), "sw-sentence", "sw-strong"),
                        Ui.text(texts.text(
                                "win.next",
                                words.when(facts.nextMinute(), model.run().now().minute())))),
                fields,
                foresight(facts),
                Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
        return left;
    }

    private VBox decisionBar() {
        VisitFacts facts = model.facts();
        boolean stacked = Look.of(getScene()).scale() >= STACK_FROM;
        go.setText(texts.text(
                "win.go", words.when(facts.nextMinute(), model.run().now().minute())));
        go.setId("go");
        go.setWrapText(true);
        go.setMaxWidth(Double.MAX_VALUE);
        go.setDisable(false);
        VBox bar = new VBox(stacked ? compact() : beside());
        bar.getStyleClass().addAll("sw-panel", "sw-water-rule");
        return bar;
    }

    private HBox beside() {
        VBox right =
                new VBox(8, Ui.text(texts.text("win.willHappen"), "sw-label", "sw-quiet"), statement, rest, open, go);
        right.getStyleClass().add("sw-wash");
        right.setPadding(new Insets(12, 24, 12, 24));
        VBox left = decision();
        left.setPadding(new Insets(12, 24, 10, 24));
        HBox.setHgrow(left, Priority.ALWAYS);
        double width = 376 * Look.of(getScene()).scale();
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

    private double nearestFeed() {
        double feed = model.feedProperty().get();
        return feed < 0.25 ? 0 : feed < 0.75 ? 0.5 : 1;
    }

    private VBox field(String key, Region control, String meaning) {
        VBox box = new VBox(4, Ui.text(texts.text(key), "sw-label", "sw-strong"), control);
        if (!meaning.isEmpty()) {
            box.getChildren().add(Ui.text(meaning, "sw-label", "sw-quiet"));
        }
        return box;
    }

    private void dose(
            FlowPane fields,
            String key,
            Dose compound,
            VisitFacts facts,
            double shelfG,
            javafx.beans.property.DoubleProperty grams) {
        if (shelfG <= 0) {
            return;
        }
        double step = compound == Dose.AMMONIUM_CHLORIDE ? 0.5 : Math.max(5, Math.rint(facts.volumeL() / 240) * 5);
        Label meaning = Ui.text("", "sw-label", "sw-quiet");
        Runnable means = () -> meaning.setText(texts.text(
                key + "Means",
                texts.number(facts.added(affected(compound), model.decision()), 2),
                words.grams(facts.leftG(compound))));
        grams.addListener((p, was, is) -> means.run());
        means.run();
        VBox box = field(
                key,
                new Ui.Stepper(
                        texts.text(key),
                        texts,
                        grams,
                        step,
                        facts.leftG(compound),
                        v -> words.grams(v) + " g",
                        typed -> Amounts.dose(compound, typed, facts)),
                "");
        box.getChildren().add(meaning);
        fields.getChildren().add(box);
    }

    private static Pad affected(Dose compound) {
        return switch (compound) {
            case SODIUM_CHLORIDE -> Pad.CHLORIDE;
            case AMMONIUM_CHLORIDE -> Pad.AMMONIA;
            default -> Pad.ALKALINITY;
        };
    }

    private FlowPane foresight(VisitFacts facts) {
        Pad pad = facts.padToForesee();
        List<Integer> blocks = new ArrayList<>();
        for (int b = 0; b < pad.scale().blocks(); b++) {
            blocks.add(b);
        }
        Ui.Choice<Integer> block = new Ui.Choice<>(
                texts.text("win.foresee", words.pad(pad)),
                blocks,
                b -> words.block(pad, b),
                b -> set(() -> model.foreseenProperty().set(b)));
        Ui.Choice<Prediction.Sureness> sure = new Ui.Choice<>(
                texts.text("win.iAm"),
                List.of(Prediction.Sureness.values()),
                words::sureness,
                v -> set(() -> model.surenessProperty().set(v)));
        sure.select(model.surenessProperty().get());
        return new FlowPane(
                12,
                8,
                Ui.text(texts.text("win.foresee", words.pad(pad)), "sw-strong"),
                block,
                Ui.text(texts.text("win.iAm"), "sw-strong"),
                sure);
    }

    private void set(Runnable change) {
        change.run();
        refreshStatement();
    }

    private void refreshStatement() {
        if (model.run().over()) {
            return;
        }
        VisitFacts facts = model.facts();
        Decision d = model.decision();
        DrillWords.Statement said = words.statement(d, facts);
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
        VisitRecord decided = model.run().now();
        boolean fishIn = model.facts().fishIn();

        var judging = model.commit();
        navigator.committed(model.run());
        var unused = judging.whenComplete((verdict, fault) -> Platform.runLater(() -> {
            if (fault != null) {
                // Judging is pure; a fault here is ours. The run itself is safe and goes on.
                visit();
                return;
            }
            judged(verdict, decided, fishIn);
        }));
    }

    private void judged(Verdict verdict, VisitRecord decided, boolean fishIn) {
        model.judged(verdict);
        navigator.show(new DebriefScreen(verdict, decided, model, words, fishIn, () -> {
            if (model.run().over()) {
                navigator.finished(model.run(), model.verdicts());
            } else {
                navigator.show(this);
                visit();
            }
        }));
    }
}
