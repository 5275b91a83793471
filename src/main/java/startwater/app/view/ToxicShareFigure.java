package startwater.app.view;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;
import startwater.app.model.LessonModel;
import startwater.app.theme.Painted;
import startwater.app.theme.Pen;
import startwater.app.theme.Token;
import startwater.content.Block;
import startwater.text.Texts;
import startwater.water.UnionisedAmmonia;

/** The toxic share of ammonia over pH at one warmth, with sliders; the same equation as in the drills. */
final class ToxicShareFigure extends VBox {
    private static final double LOW_PH = 6;
    private static final double HIGH_PH = 9.5;
    private static final double HIGH_SHARE = 0.7;

    private final Texts texts;
    private final Map<String, Double> now = new HashMap<>();
    private final Curve curve = new Curve();
    private final Label said = Ui.text("", "sw-sentence", "sw-strong");

    ToxicShareFigure(Block.Figure figure, LessonModel model, int place, Texts texts) {
        super(10);
        this.texts = texts;
        now.putAll(Map.of("tan", 1.0, "ph", 8.0, "temperature", 26.0));
        now.putAll(figure.fixed());
        getStyleClass().add("sw-card");
        setPadding(new Insets(14, 16, 14, 16));
        getChildren().addAll(said, curve);
        for (String name : List.of("ph", "temperature", "tan")) {
            Block.Slider range = figure.sliders().get(name);
            if (range != null) {
                getChildren().add(slider(name, range, model, place));
            }
        }
        getChildren().add(Ui.text(figure.caption(), "sw-label", "sw-quiet"));
        moved();
    }

    private HBox slider(String name, Block.Slider range, LessonModel model, int place) {
        var at = model.slider(place, name, range.at());
        now.put(name, at.get());
        Slider slider = new Slider(range.low(), range.high(), at.get());
        slider.setBlockIncrement(range.step());
        slider.setId("slider-" + name);
        Label value = Ui.text("", "sw-strong");
        value.setMinWidth(90);
        Label title = Ui.text(texts.text("lesson.slider." + name));
        title.setMinWidth(150);
        Runnable show = () -> {
            double stepped = range.low() + Math.rint((slider.getValue() - range.low()) / range.step()) * range.step();
            at.set(stepped);
            now.put(name, stepped);
            value.setText(texts.text("lesson.value." + name, texts.number(Math.rint(stepped * 100) / 100)));
            slider.setAccessibleText(title.getText() + " " + value.getText());
            moved();
        };
        slider.valueProperty().addListener((p, was, is) -> show.run());
        HBox.setHgrow(slider, Priority.ALWAYS);
        value.setText(texts.text("lesson.value." + name, texts.number(at.get())));
        slider.setAccessibleText(title.getText() + " " + value.getText());
        return Ui.row(10, title, slider, value);
    }

    private double value(String name) {
        return now.getOrDefault(name, 0.0);
    }

    private void moved() {
        double share = UnionisedAmmonia.fraction(value("ph"), value("temperature"));
        said.setText(texts.text("lesson.share", texts.number(100 * share, 2), texts.number(value("tan") * share, 2)));
        curve.setAccessibleText(said.getText());
        curve.again();
    }

    /** The curve with the point where the sliders stand. */
    private final class Curve extends Painted {
        Curve() {
            super(AccessibleRole.IMAGE_VIEW, 640, 220);
        }

        void again() {
            repaint();
        }

        @Override
        protected void paint(Pen pen, double width, double height) {
            double left = 44;
            double right = width - 12;
            double floor = height - 26;
            double top = 12;
            for (double share = 0; share <= HIGH_SHARE + 1e-9; share += 0.1) {
                double y = floor - (floor - top) * share / HIGH_SHARE;
                pen.level(left, right, y, pen.color(Token.LINE));
                pen.text(
                        texts.number(Math.rint(share * 100)) + " %",
                        left - 6,
                        y + 4,
                        Pen.LABEL,
                        false,
                        pen.color(Token.QUIET),
                        TextAlignment.RIGHT);
            }
            for (double ph = LOW_PH; ph <= HIGH_PH; ph += 0.5) {
                String label = ph == LOW_PH ? "pH " + texts.number(ph) : texts.number(ph);
                pen.text(
                        label,
                        x(ph, left, right),
                        floor + 18,
                        Pen.LABEL,
                        false,
                        pen.color(Token.QUIET),
                        TextAlignment.CENTER);
            }
            int points = 141;
            double[] line = new double[2 * points];
            for (int i = 0; i < points; i++) {
                double ph = LOW_PH + (HIGH_PH - LOW_PH) * i / (points - 1);
                line[2 * i] = x(ph, left, right);
                line[2 * i + 1] = y(UnionisedAmmonia.fraction(ph, value("temperature")), top, floor);
            }
            pen.polyline(2.5, pen.color(Token.WATER), line);
            double share = UnionisedAmmonia.fraction(value("ph"), value("temperature"));
            double px = x(Math.max(LOW_PH, Math.min(HIGH_PH, value("ph"))), left, right);
            double py = y(share, top, floor);
            pen.dashed(px, py, px, floor, 1, pen.color(Token.EDGE), 3, 3);
            pen.dot(px, py, 5, pen.color(Token.INK));
            boolean near = px < left + 80;
            pen.text(
                    texts.number(100 * share, 2) + " %",
                    near ? px + 10 : px - 10,
                    Math.max(top + 12, py - 6),
                    Pen.TEXT,
                    true,
                    pen.color(Token.INK),
                    near ? TextAlignment.LEFT : TextAlignment.RIGHT);
        }

        private double x(double ph, double left, double right) {
            return left + (right - left) * (ph - LOW_PH) / (HIGH_PH - LOW_PH);
        }

        private double y(double share, double top, double floor) {
            return floor - (floor - top) * Math.min(1, share / HIGH_SHARE);
        }
    }
}
