package startwater.app.view;

import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.IntegerProperty;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import startwater.app.model.LessonModel;
import startwater.app.view.part.ScaleView;
import startwater.content.Block;
import startwater.strip.Pad;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** A strip of a lesson: each pad is matched on its scale, then all are marked at once in blocks. */
final class StripExercise extends VBox {
    private final Block.StripReading strip;
    private final LessonModel model;
    private final int place;
    private final DrillWords words;
    private final Label said = Ui.text("");

    StripExercise(Block.StripReading strip, LessonModel model, int place, DrillWords words) {
        super(10);
        this.strip = strip;
        this.model = model;
        this.place = place;
        this.words = words;
        Texts texts = words.texts();
        getChildren().add(Ui.text(strip.ask(), "sw-strong"));
        if (strip.dilution() > 1) {
            getChildren().add(Ui.text(texts.text("lesson.diluted", strip.dilution())));
        }
        strip.water().keySet().forEach(pad -> getChildren().add(pad(pad)));
        getChildren().add(Ui.button(texts.text("lesson.check"), "sw-second", () -> {
            keep();
            mark();
        }));
        getChildren().add(said);
        if (model.picked(place, "marked").get() >= 0) {
            mark();
        }
    }

    private IntegerProperty stop(Pad pad) {
        IntegerProperty stop = model.picked(place, pad.name());
        if (stop.get() < 0) {
            stop.set(0);
        }
        return stop;
    }

    private VBox pad(Pad pad) {
        ScaleView view = new ScaleView(PadLooks.scale(pad, strip.position(pad), words));
        view.setId("pad-" + pad.name());
        view.stopProperty().bindBidirectional(stop(pad));
        return new VBox(4, Ui.text(words.texts().text("lesson.match", words.padAndUnit(pad))), view);
    }

    /** One answer: the share of the pads that were read right. */
    private void keep() {
        long right = strip.water().keySet().stream()
                .filter(pad -> strip.accepts(pad, stop(pad).get()))
                .count();
        model.answer(place, 0, (double) right / strip.water().size(), 0, null);
    }

    /** What was read, what the pad shows, and what it means; one block off is human. */
    private void mark() {
        Texts texts = words.texts();
        model.picked(place, "marked").set(1);
        List<String> lines = new ArrayList<>();
        for (Pad pad : strip.water().keySet()) {
            int read = stop(pad).get();
            int shown = pad.scale().nearestStop(strip.position(pad));
            String key = !strip.accepts(pad, read)
                    ? "lesson.readOff"
                    : read == shown ? "lesson.readExactly" : "lesson.readNear";
            lines.add(texts.text(
                    key,
                    words.pad(pad),
                    words.stop(pad, read, 1),
                    words.stop(pad, shown, 1),
                    Math.abs(strip.off(pad, read))));
        }
        lines.add(strip.because());
        said.setText(String.join("\n", lines));
    }
}
