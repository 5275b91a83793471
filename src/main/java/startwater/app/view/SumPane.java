package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.model.DrillModel;
import startwater.app.model.Support;
import startwater.score.WorkingMark;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.NumberEntry;
import startwater.text.Texts;
import startwater.text.VisitFacts;
import startwater.water.UnionisedAmmonia;

/** Toxic ammonia at this pH and warmth, worked on paper: at first laid out whole, later step by step the learner's own. */
final class SumPane extends VBox {
    private static final double[] TABLE_STEPS = {-0.4, -0.2, 0, 0.2, 0.4};

    private final DrillModel model;
    private final DrillWords words;
    private final Texts texts;

    SumPane(DrillModel model, DrillWords words) {
        super(4);
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        setId("sum-pane");
    }

    void refresh() {
        VisitFacts facts = model.facts();
        double tan = facts.book().value(Pad.AMMONIA);
        double ph = facts.book().value(Pad.PH);
        getChildren().setAll(Ui.text(texts.text("win.workOut"), "sw-strong"));
        if (!facts.fishIn()) {
            setVisible(false);
            setManaged(false);
            return;
        }
        if (Double.isNaN(tan) || Double.isNaN(ph)) {
            getChildren().add(Ui.text(texts.text("win.workOutNeeds"), "sw-quiet"));
            return;
        }
        double temperatureC = facts.seen().temperatureC();
        double share = UnionisedAmmonia.fraction(ph, temperatureC);
        Support support = model.support();
        if (support == Support.WORKED) {
            worked(tan, share);
        } else {
            asked(support, tan, share);
        }
        if (support == Support.WITH_TABLE) {
            getChildren().add(table(ph, temperatureC));
        } else if (support == Support.ALONE) {
            getChildren()
                    .add(new Fold(texts, "shares", texts.text("win.shareTable"), "", () -> table(ph, temperatureC)));
        } else {
            getChildren()
                    .add(Ui.text(
                            texts.text("win.sumNames", texts.decimals(ph, 1), texts.decimals(temperatureC, 1)),
                            "sw-label",
                            "sw-quiet"));
        }
    }

    private void worked(double tan, double share) {
        getChildren()
                .addAll(
                        Ui.row(
                                10,
                                Ui.text(texts.number(tan), "sw-strong"),
                                Ui.text("×", "sw-quiet"),
                                Ui.text(texts.number(100 * share) + " %", "sw-strong"),
                                Ui.text("=", "sw-quiet"),
                                Ui.text(texts.number(tan * share, 2), "sw-strong", "sw-water"),
                                Ui.text(texts.text("unit.mgNPerL"), "sw-label", "sw-quiet")),
                        Ui.text(texts.text("win.sumWorked"), "sw-label", "sw-quiet"));
    }

    private void asked(Support support, double tan, double share) {
        TextField sum = new TextField();
        sum.setId("sum");
        sum.setPrefColumnCount(6);
        sum.setAccessibleText(texts.text("win.yourSum"));
        Label answer = Ui.text("", "sw-label");
        answer.managedProperty().bind(answer.textProperty().isNotEmpty());
        sum.textProperty().addListener((p, was, is) -> answer.setText(checked(is, tan * share, tan)));
        sum.setOnAction(e -> model.keepSum());
        sum.focusedProperty().addListener((p, was, is) -> {
            if (!is) {
                model.keepSum();
            }
        });
        WorkingMark before = model.workingProperty().get();
        if (before != null) {
            sum.setText(texts.number(before.given()));
        }
        List<Node> line = new ArrayList<>();
        if (support != Support.ALONE) {
            line.add(Ui.text(texts.number(tan), "sw-strong"));
            line.add(Ui.text("×", "sw-quiet"));
            line.add(Ui.text(
                    support == Support.LAST_STEP ? texts.number(100 * share) + " %" : texts.text("win.theShare"),
                    "sw-strong"));
            line.add(Ui.text("=", "sw-quiet"));
        } else {
            line.add(Ui.text(texts.text("win.toxicNow")));
        }
        line.add(sum);
        line.add(Ui.text(texts.text("unit.mgNPerL"), "sw-label", "sw-quiet"));
        getChildren().addAll(Ui.row(10, line.toArray(Node[]::new)), answer);
    }

    /** Shares around this pH, at this warmth. */
    private Region table(double ph, double temperatureC) {
        GridPane grid = new GridPane();
        grid.setHgap(18);
        grid.add(Ui.text("pH", "sw-label", "sw-quiet"), 0, 0);
        grid.add(Ui.text(texts.text("win.shareAt", texts.decimals(temperatureC, 1)), "sw-label", "sw-quiet"), 0, 1);
        for (int i = 0; i < TABLE_STEPS.length; i++) {
            double at = ph + TABLE_STEPS[i];
            double share = 100 * UnionisedAmmonia.fraction(at, temperatureC);
            grid.add(Ui.text(texts.decimals(at, 1), "sw-label", "sw-quiet"), i + 1, 0);
            grid.add(Ui.text(texts.number(share, 2) + " %", "sw-label"), i + 1, 1);
        }
        return grid;
    }

    private String checked(String typed, double exact, double tan) {
        if (typed.isBlank()) {
            model.workingProperty().set(null);
            return "";
        }
        NumberEntry entry = NumberEntry.of(typed);
        if (entry.refusal() != null) {
            return entry.refusal().say(texts);
        }
        WorkingMark mark = WorkingMark.of(entry.value(), exact);
        model.workingProperty().set(mark);
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
}
