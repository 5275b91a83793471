package startwater.app.view;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javafx.geometry.Insets;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import startwater.content.Block;
import startwater.content.Inline;
import startwater.content.Lesson;
import startwater.content.Library;
import startwater.text.NumberEntry;
import startwater.text.Texts;
import startwater.water.UnionisedAmmonia;

/** A lesson: prose as native text, and its blocks alive. */
final class LessonScreen extends VBox implements Block.Cases<Region> {
    private static final double LINE_WIDTH = 720;

    private final Texts texts;
    private final Navigator navigator;

    LessonScreen(Lesson lesson, Texts texts, Navigator navigator) {
        super(14);
        this.texts = texts;
        this.navigator = navigator;
        setPadding(new Insets(24, 32, 32, 32));
        getChildren()
                .addAll(
                        Ui.text(texts.text("shell.minutes", lesson.minutes()), "sw-label", "sw-quiet"),
                        Ui.text(lesson.title(), "sw-title"));
        lesson.blocks().forEach(b -> getChildren().add(b.match(this)));
        getChildren().add(Ui.text(texts.text("shell.sources"), "sw-strong"));
        lesson.sources().forEach(s -> getChildren().add(Ui.text(s, "sw-label", "sw-quiet")));
        setMaxWidth(LINE_WIDTH * 1.3);
    }

    private TextFlow flow(List<Inline> words, String styleClass) {
        TextFlow flow = new TextFlow();
        for (Inline run : words) {
            Text text = new Text(run.match(new Inline.Cases<String>() {
                @Override
                public String words(Inline.Words w) {
                    return w.text();
                }

                @Override
                public String computed(Inline.Computed c) {
                    return (texts.decimals(c.value(), c.decimals()) + " " + c.unit()).strip();
                }
            }));
            boolean emphasised = run instanceof Inline.Words w && w.style() == Inline.Style.STRONG;
            boolean strong = emphasised || run instanceof Inline.Computed;
            text.getStyleClass().addAll(styleClass, strong ? "sw-strong" : "sw-plain");
            text.setStyle("-fx-fill: -sw-ink;");
            flow.getChildren().add(text);
        }
        return flow;
    }

    @Override
    public Region heading(Block.Heading heading) {
        return flow(heading.words(), "sw-statement");
    }

    @Override
    public Region paragraph(Block.Paragraph paragraph) {
        return flow(paragraph.words(), "sw-sentence");
    }

    @Override
    public Region items(Block.Items items) {
        VBox box = new VBox(4);
        int number = 1;
        for (List<Inline> item : items.items()) {
            List<Inline> words = new ArrayList<>();
            words.add(new Inline.Words(items.numbered() ? number++ + ".  " : "–  ", Inline.Style.PLAIN));
            words.addAll(item);
            box.getChildren().add(flow(words, "sw-sentence"));
        }
        return box;
    }

    /** The live figure: sliders, and what the very functions of the drills make of them. */
    @Override
    public Region figure(Block.Figure figure) {
        VBox box = frame();
        Map<String, Double> at = new LinkedHashMap<>(figure.fixed());
        Label result = Ui.text("", "sw-statement");
        Region bar = new Region();
        bar.setMinHeight(16);
        bar.setMaxHeight(16);
        bar.setStyle("-fx-background-color: -sw-danger;");
        Runnable show = () -> {
            double share = UnionisedAmmonia.fraction(at.getOrDefault("ph", 7.0), at.getOrDefault("temperature", 25.0));
            double toxic = share * at.getOrDefault("tan", 1.0);
            result.setText(texts.text("shell.toxic", texts.number(100 * share, 2), texts.number(toxic, 2)));
            bar.setMaxWidth(Math.max(2, share * LINE_WIDTH));
            bar.setPrefWidth(Math.max(2, share * LINE_WIDTH));
        };
        new TreeMap<>(figure.sliders()).forEach((name, s) -> {
            at.put(name, s.at());
            Slider slider = new Slider(s.low(), s.high(), s.at());
            slider.setBlockIncrement(s.step());
            Label value = Ui.text("", "sw-strong");
            Runnable said = () -> value.setText(texts.text("shell.input." + name, texts.number(at.get(name))));
            slider.setAccessibleText(texts.text("shell.input." + name, ""));
            slider.valueProperty().addListener((p, was, is) -> {
                at.put(name, Math.rint(is.doubleValue() / s.step()) * s.step());
                said.run();
                show.run();
            });
            said.run();
            box.getChildren().addAll(value, slider);
        });
        show.run();
        box.getChildren().addAll(result, bar, Ui.text(figure.caption(), "sw-quiet"));
        return box;
    }

    @Override
    public Region worked(Block.Worked worked) {
        VBox box = frame();
        box.getChildren().add(Ui.text(worked.ask(), "sw-strong"));
        int given = worked.steps().size() - worked.blank();
        for (int i = 0; i < worked.steps().size(); i++) {
            Block.Step step = worked.steps().get(i);
            double right = worked.value(step).value();
            if (i < given) {
                box.getChildren()
                        .add(Ui.text(step.say() + "  " + texts.number(right) + " "
                                + worked.value(step).unit().symbol()));
            } else {
                box.getChildren()
                        .add(asked(
                                step.say(),
                                worked.value(step).unit().symbol(),
                                typed -> Math.abs(typed - right) <= Math.abs(right) * worked.tolerancePercent() / 100,
                                texts.text("shell.itIs", texts.number(right))));
            }
        }
        return box;
    }

    private Region asked(String ask, String unit, java.util.function.DoublePredicate right, String because) {
        TextField field = new TextField();
        field.setPrefColumnCount(7);
        field.setAccessibleText(ask);
        Label answer = Ui.text("", "sw-label");
        Runnable check = () -> {
            NumberEntry entry = NumberEntry.of(field.getText());
            if (entry.refusal() != null) {
                answer.setText(entry.refusal().say(texts));
            } else {
                answer.setText(texts.text(right.test(entry.value()) ? "shell.right" : "shell.notYet") + " " + because);
            }
        };
        field.setOnAction(e -> check.run());
        return new VBox(
                4,
                Ui.text(ask),
                Ui.row(8, field, Ui.text(unit, "sw-quiet"), Ui.button(texts.text("shell.check"), "", check)),
                answer);
    }

    @Override
    public Region choice(Block.Choice choice) {
        VBox box = frame();
        box.getChildren().add(Ui.text(choice.ask(), "sw-strong"));
        Label answer = Ui.text("");
        for (Block.Option option : choice.options()) {
            box.getChildren()
                    .add(Ui.button(
                            option.says(),
                            "",
                            () -> answer.setText(texts.text(option.right() ? "shell.right" : "shell.notYet") + " "
                                    + option.reason())));
        }
        box.getChildren().add(answer);
        return box;
    }

    @Override
    public Region number(Block.NumberQuestion question) {
        VBox box = frame();
        box.getChildren()
                .add(asked(
                        question.ask(),
                        question.answer().unit().symbol(),
                        question::accepts,
                        texts.text("shell.itIs", texts.number(question.answer().value())) + " " + question.because()));
        return box;
    }

    @Override
    public Region drill(Block.DrillLink link) {
        return new VBox(Ui.button(
                link.say(),
                "sw-primary",
                () -> Library.shipped().scenario(link.id()).found().ifPresent(navigator::start)));
    }

    @Override
    public Region caution(Block.Caution caution) {
        VBox box = new VBox(Ui.text(caution.say()));
        box.getStyleClass().add("sw-wash");
        box.setPadding(new Insets(10, 14, 10, 14));
        return box;
    }

    private static VBox frame() {
        VBox box = new VBox(8);
        box.getStyleClass().add("sw-card");
        box.setPadding(new Insets(14, 16, 14, 16));
        return box;
    }
}
