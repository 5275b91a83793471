package startwater.app.view;

import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import startwater.app.model.LessonModel;
import startwater.app.theme.Look;
import startwater.bench.Measure;
import startwater.bench.Words;
import startwater.content.Block;
import startwater.content.Inline;
import startwater.content.Lesson;
import startwater.quantity.Unbroken;
import startwater.text.AnswerCheck;
import startwater.text.DrillWords;
import startwater.text.Texts;

/** One lesson: prose as native text, with live pictures, sums and questions between. */
final class LessonView extends BorderPane {
    private static final double READING_WIDTH = 720;
    /** As much as the same slip is worth at the bench. */
    private static final double SLIPPED = 0.5;

    private final LessonModel model;
    private final DrillWords words;
    private final Texts texts;
    private final Words bench;
    private final Consumer<String> play;
    private int place;

    /**
     * The lesson from its first line.
     *
     * @param play starts the drill of an id
     * @param print puts the lesson on paper
     */
    LessonView(Lesson lesson, LessonModel model, DrillWords words, Consumer<String> play, Runnable print) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        this.bench = Words.of(texts.language().code());
        this.play = play;
        VBox page = new VBox(14, Ui.text(lesson.number() + "  " + lesson.title(), "sw-title"));
        page.setPadding(new Insets(28, 32, 40, 32));
        Parts parts = new Parts();
        for (Block block : lesson.blocks()) {
            page.getChildren().add(block.match(parts));
            place++;
        }
        page.getChildren().add(sources(lesson.sources()));
        Hyperlink paper = Ui.link(texts.text("shell.printLesson"), print);
        paper.setId("print-lesson");
        page.getChildren().add(paper);
        page.sceneProperty().addListener((p, was, is) -> page.setMaxWidth(width()));
        page.setMaxWidth(width());
        setCenter(Ui.scroll(page));
    }

    private double width() {
        return READING_WIDTH * Look.of(getScene()).scale() + 64;
    }

    private VBox sources(List<String> sources) {
        VBox box = new VBox(2, Ui.text(texts.text("lesson.sources"), "sw-label", "sw-strong"));
        sources.forEach(s -> box.getChildren().add(Ui.text(s, "sw-label", "sw-quiet")));
        return box;
    }

    private final class Parts implements Block.Cases<Node> {
        @Override
        public Node heading(Block.Heading heading) {
            TextFlow flow = flow(heading.words());
            flow.getStyleClass().addAll("sw-sentence", "sw-strong");
            flow.setPadding(new Insets(10, 0, 0, 0));
            return flow;
        }

        @Override
        public Node paragraph(Block.Paragraph paragraph) {
            return flow(paragraph.words());
        }

        @Override
        public Node items(Block.Items items) {
            VBox list = new VBox(6);
            for (int i = 0; i < items.items().size(); i++) {
                TextFlow words = flow(items.items().get(i));
                HBox.setHgrow(words, Priority.ALWAYS);
                Label mark = Ui.text(items.numbered() ? (i + 1) + "." : "–", "sw-quiet");
                mark.setMinWidth(24);
                list.getChildren().add(new HBox(4, mark, words));
            }
            return list;
        }

        @Override
        public Node figure(Block.Figure figure) {
            return new FigureView(figure, model, place, texts);
        }

        @Override
        public Node worked(Block.Worked worked) {
            VBox box = card(Ui.text(worked.ask(), "sw-strong"));
            int shown = worked.steps().size() - worked.blank();
            for (int i = 0; i < worked.steps().size(); i++) {
                Block.Step step = worked.steps().get(i);
                Measure value = worked.value(step);
                box.getChildren().add(Ui.text((i + 1) + "  " + step.say()));
                box.getChildren()
                        .add(
                                i < shown
                                        ? Ui.text("=  " + bench.amount(value), "sw-strong")
                                        : answer(
                                                i,
                                                value,
                                                given -> Math.abs(given - value.value())
                                                        <= Math.abs(value.value()) * worked.tolerancePercent() / 100,
                                                ""));
            }
            return box;
        }

        @Override
        public Node choice(Block.Choice choice) {
            VBox box = card(Ui.text(choice.ask(), "sw-strong"));
            int block = place;
            var picked = model.picked(place);
            Label reason = Ui.text("");
            Runnable tell = () -> {
                if (picked.get() >= 0) {
                    Block.Option option = choice.options().get(picked.get());
                    reason.setText(
                            texts.text(option.right() ? "lesson.right" : "lesson.notSo") + " " + option.reason());
                }
            };
            for (int i = 0; i < choice.options().size(); i++) {
                int at = i;
                var button = Ui.button(choice.options().get(i).says(), "", () -> {
                    picked.set(at);
                    boolean right = choice.options().get(at).right();
                    model.answer(block, 0, right ? 1 : 0, choice.options().size(), null);
                    tell.run();
                });
                button.setWrapText(true);
                button.setMaxWidth(Double.MAX_VALUE);
                button.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
                box.getChildren().add(button);
            }
            tell.run();
            box.getChildren().add(reason);
            return box;
        }

        @Override
        public Node number(Block.NumberQuestion question) {
            return card(
                    Ui.text(question.ask(), "sw-strong"),
                    answer(0, question.answer(), question::accepts, question.because()));
        }

        @Override
        public Node strip(Block.StripReading strip) {
            return card(new StripExercise(strip, model, place, words));
        }

        @Override
        public Node predict(Block.Predict predict) {
            return card(new PredictExercise(predict, model, place, words));
        }

        @Override
        public Node drill(Block.DrillLink link) {
            var button = Ui.button(texts.text("lesson.toDrill"), "sw-primary", () -> play.accept(link.id()));
            button.setId("drill-" + link.id());
            return card(Ui.text(link.say()), button);
        }

        @Override
        public Node caution(Block.Caution caution) {
            VBox box = new VBox(4, Ui.text(texts.text("lesson.caution"), "sw-strong"), Ui.text(caution.say()));
            box.getStyleClass().add("sw-wash");
            box.setPadding(new Insets(12, 16, 12, 16));
            return box;
        }
    }

    private static VBox card(Node... nodes) {
        VBox box = new VBox(8, nodes);
        box.getStyleClass().add("sw-card");
        box.setPadding(new Insets(14, 16, 14, 16));
        return box;
    }

    /** A field for one number; what is wrong stays, with how far off it is and then how it comes out. */
    private VBox answer(int step, Measure value, java.util.function.DoublePredicate right, String because) {
        int block = place;
        TextField field = new TextField();
        field.setPrefColumnCount(8);
        field.textProperty().bindBidirectional(model.typed(place, step));
        String unit = bench.unit(value.unit());
        field.setAccessibleText(texts.text("lesson.answer", unit));
        Label said = Ui.text("", "sw-label");
        Runnable check = () -> {
            AnswerCheck answer = AnswerCheck.of(field.getText(), value, right);
            if (answer.refusal() == null) {
                model.answer(block, step, answer.right() ? 1 : answer.slip() != null ? SLIPPED : 0, 0, null);
            }
            said.setText(judged(answer, value, because));
        };
        field.setOnAction(e -> check.run());
        return new VBox(
                4, Ui.row(8, field, Ui.text(unit, "sw-quiet"), Ui.button(texts.text("lesson.check"), "", check)), said);
    }

    private String judged(AnswerCheck answer, Measure value, String because) {
        if (answer.refusal() != null) {
            return answer.refusal().say(texts);
        }
        String exact = bench.amount(value);
        if (answer.right()) {
            return texts.text("lesson.answerRight", exact) + " " + because;
        }
        if (answer.slip() != null) {
            return words.why().slip(answer.slip(), exact) + " " + because;
        }
        double off = 100 * Math.abs(answer.value() / value.value() - 1);
        return texts.text("lesson.answerOff", texts.number(off, 2), exact) + " " + because;
    }

    private TextFlow flow(List<Inline> words) {
        TextFlow flow = new TextFlow();
        flow.setLineSpacing(3);
        for (Inline inline : words) {
            flow.getChildren().add(text(inline));
        }
        return flow;
    }

    private Text text(Inline inline) {
        return inline.match(new Inline.Cases<Text>() {
            @Override
            public Text words(Inline.Words run) {
                Text text = new Text(Unbroken.of(run.text()));
                text.setStyle("-fx-fill: -sw-ink;");
                if (run.style() != Inline.Style.PLAIN) {
                    text.getStyleClass().add("sw-strong");
                }
                return text;
            }

            @Override
            public Text computed(Inline.Computed number) {
                String unit = number.unit().isEmpty() ? "" : "\u00a0" + number.unit();
                Text text = new Text(texts.decimals(number.value(), number.decimals()) + unit);
                text.getStyleClass().add("sw-strong");
                text.setStyle("-fx-fill: -sw-ink;");
                return text;
            }
        });
    }
}
