package startwater.app.view;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import startwater.app.model.LessonModel;
import startwater.bench.Input;
import startwater.bench.Unit;
import startwater.bench.Words;
import startwater.content.Block;
import startwater.content.Plot;
import startwater.text.Texts;

/** A picture that moves with its sliders; what it shows is computed by the code of the drills. */
final class FigureView extends VBox {
    private final Block.Figure figure;
    private final LessonModel model;
    private final int place;
    private final Texts texts;
    private final Map<String, Double> now = new HashMap<>();
    private final PlotView picture;
    private final Label said = Ui.text("", "sw-sentence", "sw-strong");

    FigureView(Block.Figure figure, LessonModel model, int place, Texts texts) {
        super(10);
        this.figure = figure;
        this.model = model;
        this.place = place;
        this.texts = texts;
        now.putAll(figure.atFirst());
        figure.sliders()
                .forEach((name, range) ->
                        now.put(name, model.slider(place, name, range.at()).get()));
        picture = new PlotView(texts);
        getStyleClass().add("sw-card");
        setPadding(new Insets(14, 16, 14, 16));
        getChildren().addAll(said, new Tabled(texts, "figure-" + place, picture, this::numbers));
        for (Input input : figure.kind().sum().inputs()) {
            Block.Slider range = figure.sliders().get(input.name());
            if (range != null) {
                getChildren().add(slider(input, range));
            }
        }
        getChildren().add(Ui.text(figure.caption(), "sw-label", "sw-quiet"));
        moved();
    }

    private HBox slider(Input input, Block.Slider range) {
        String name = input.name();
        var at = model.slider(place, name, range.at());
        Slider slider = new Slider(range.low(), range.high(), at.get());
        slider.setBlockIncrement(range.step());
        slider.setId("slider-" + name);
        Label value = Ui.text("", "sw-strong");
        value.setMinWidth(110);
        Label title = Ui.text(texts.text("slider." + name));
        title.setMinWidth(170);
        Runnable show = () -> {
            value.setText(amount(input, at.get()));
            slider.setAccessibleText(title.getText() + " " + value.getText());
        };
        slider.valueProperty().addListener((p, was, is) -> {
            double stepped = range.low() + Math.rint((is.doubleValue() - range.low()) / range.step()) * range.step();
            at.set(stepped);
            now.put(name, stepped);
            show.run();
            moved();
        });
        HBox.setHgrow(slider, Priority.ALWAYS);
        show.run();
        return Ui.row(10, title, slider, value);
    }

    private String amount(Input input, double value) {
        String number = texts.number(Math.rint(value * 1000) / 1000, 4);
        Unit unit = input.unit();
        String symbol = Words.of(texts.language().code()).unit(unit);
        return symbol.isEmpty() ? number : number + " " + symbol;
    }

    /** The lines at the numbers of the axis below. */
    private Tabled.Rows numbers() {
        Plot plot = figure.plot(now);
        List<String> heads = new ArrayList<>(List.of(texts.text(plot.x().key())));
        plot.lines()
                .forEach(line ->
                        heads.add(texts.text(line.key().isEmpty() ? plot.y().key() : line.key())));
        List<List<String>> rows = new ArrayList<>();
        for (double x : plot.x().ticks()) {
            List<String> row = new ArrayList<>(List.of(texts.number(x, 3)));
            plot.lines()
                    .forEach(line -> row.add(
                            line.at(x).isPresent() ? texts.number(line.at(x).getAsDouble(), 3) : "–"));
            rows.add(row);
        }
        return new Tabled.Rows(heads, rows);
    }

    private void moved() {
        Plot plot = figure.plot(now);
        said.setText(texts.text(plot.said(), plot.numbers().toArray()));
        picture.show(Optional.of(plot), said.getText());
    }
}
