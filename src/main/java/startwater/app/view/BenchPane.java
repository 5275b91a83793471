package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;
import startwater.app.model.DrillModel;
import startwater.app.view.part.ScaleView;
import startwater.app.view.part.StripLook;
import startwater.app.view.part.StripView;
import startwater.drill.DippedStrip;
import startwater.drill.Written;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.ReadingEntry;
import startwater.text.Texts;

/** The bench: strips to dip, the wet one beside its scale, and paper for the sum. */
final class BenchPane extends VBox {
    private final DrillModel model;
    private final DrillWords words;
    private final Texts texts;
    private final SumPane sum;
    private @Nullable ScaleView scale;
    private @Nullable TextField typed;

    BenchPane(DrillModel model, DrillWords words) {
        super(6);
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        this.sum = new SumPane(model, words);
    }

    void refresh() {
        boolean typedHadFocus = typed != null && typed.isFocused();
        boolean benchHadFocus = Keys.within(this) != null;
        getChildren().setAll(benchHead(), dipRow());
        Pad inHand = model.inHandProperty().get();
        DippedStrip strip = inHand == null ? null : model.wet(inHand);
        if (inHand != null && strip != null) {
            getChildren().addAll(strip(inHand), match(inHand, strip));
        } else {
            getChildren().add(Ui.text(texts.text("win.dipFirst"), "sw-quiet"));
        }
        sum.refresh();
        getChildren().add(sum);
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
        chloride.setId("dip-chloride");
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
        write.setId("write");
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
}
