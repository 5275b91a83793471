package startwater.app.view;

import java.util.List;
import java.util.stream.IntStream;
import javafx.beans.property.IntegerProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import startwater.app.model.LessonModel;
import startwater.bench.Words;
import startwater.content.Block;
import startwater.drill.Prediction.Sureness;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** The next reading to foretell: a block and how sure, both given before anything is shown; then there is no way back. */
final class PredictExercise extends VBox {
    private final Block.Predict predict;
    private final IntegerProperty block;
    private final IntegerProperty sure;
    private final IntegerProperty told;
    private final DrillWords words;
    private final Label said = Ui.text("");

    PredictExercise(Block.Predict predict, LessonModel model, int place, DrillWords words) {
        super(10);
        this.predict = predict;
        this.block = model.picked(place, "block");
        this.sure = model.picked(place, "sure");
        this.told = model.picked(place, "told");
        this.words = words;
        Texts texts = words.texts();
        Ui.Choice<Integer> blocks = new Ui.Choice<>(
                texts.text("lesson.willRead", words.pad(predict.pad())),
                IntStream.range(0, predict.pad().scale().blocks()).boxed().toList(),
                b -> words.block(predict.pad(), b),
                block::set);
        blocks.setId("predict-block");
        Ui.Choice<Sureness> sureness = new Ui.Choice<>(
                texts.text("lesson.howSure"), List.of(Sureness.values()), words::sureness, s -> sure.set(s.ordinal()));
        sureness.setId("predict-sure");
        if (block.get() >= 0) {
            blocks.select(block.get());
        }
        if (sure.get() >= 0) {
            sureness.select(Sureness.values()[sure.get()]);
        }
        Button tell = Ui.button(texts.text("lesson.commit"), "sw-second", () -> {
            told.set(1);
            model.answer(
                    place,
                    0,
                    block.get() == predict.block() ? 1 : 0,
                    predict.pad().scale().blocks(),
                    Sureness.values()[sure.get()]);
        });
        tell.setId("predict-commit");
        tell.disableProperty().bind(block.lessThan(0).or(sure.lessThan(0)).or(told.greaterThanOrEqualTo(0)));
        blocks.disableProperty().bind(told.greaterThanOrEqualTo(0));
        sureness.disableProperty().bind(told.greaterThanOrEqualTo(0));
        told.addListener((p, was, is) -> reveal());
        getChildren()
                .addAll(
                        Ui.text(predict.ask(), "sw-strong"),
                        Ui.text(texts.text("lesson.willRead", words.pad(predict.pad()))),
                        blocks,
                        Ui.text(texts.text("lesson.howSure")),
                        sureness,
                        tell,
                        said);
        reveal();
    }

    private void reveal() {
        if (told.get() < 0) {
            return;
        }
        Texts texts = words.texts();
        int off = Math.abs(block.get() - predict.block());
        String exact = Words.of(texts.language().code()).amount(predict.answer());
        String how = off == 0 ? "lesson.foretold" : off == 1 ? "lesson.foretoldNear" : "lesson.foretoldOff";
        boolean wasSure = sure.get() == Sureness.SURE.ordinal();
        String sureness = off > 1 && wasSure
                ? texts.text("lesson.sureAndOff")
                : off == 0 && sure.get() == Sureness.NOT_SURE.ordinal() ? texts.text("lesson.unsureAndRight") : "";
        said.setText(String.join(
                        " ",
                        texts.text(how, exact, words.block(predict.pad(), predict.block())),
                        sureness,
                        predict.because())
                .replaceAll(" +", " "));
    }
}
