package startwater.app.view;

import java.util.function.Consumer;
import javafx.geometry.Insets;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import startwater.app.model.HomeNext;
import startwater.app.model.ProgressModel;
import startwater.course.Past;
import startwater.course.Source;
import startwater.course.Suggestion;
import startwater.text.Texts;

/** Progress: what comes next, what the learner can do, how well they know it, how it went, and what they resolved. */
final class ProgressView extends BorderPane {
    private static final double READING_WIDTH = 860;
    private static final int SENTENCES = 6;

    private final ProgressModel model;
    private final CoachWords words;
    private final Texts texts;
    private final Consumer<String> start;
    private final Consumer<String> read;

    /**
     * The page.
     *
     * @param start starts the drill of an id
     * @param read opens the lesson of an id
     */
    ProgressView(ProgressModel model, CoachWords words, Consumer<String> start, Consumer<String> read) {
        this.model = model;
        this.words = words;
        this.texts = words.texts();
        this.start = start;
        this.read = read;
        VBox page = new VBox(24, Ui.text(texts.text("progress.title"), "sw-title"));
        page.setPadding(new Insets(28, 24, 24, 32));
        if (model.empty()) {
            page.getChildren().add(nothing());
        } else {
            model.next().ifPresent(n -> page.getChildren().add(next(n)));
            page.getChildren().addAll(new ProgressSkills(model, words), charts(), resolved());
        }
        setCenter(Ui.scroll(page));
        HBox caution = new HBox(Ui.text(texts.text("caution"), "sw-label", "sw-quiet"));
        caution.setPadding(new Insets(8, 24, 8, 32));
        caution.getStyleClass().add("sw-hairline-top");
        setBottom(caution);
    }

    private Region nothing() {
        VBox said = new VBox(8, Ui.text(texts.text("progress.emptyTitle"), "sw-sentence", "sw-strong"));
        for (String key : new String[] {"progress.emptySkills", "progress.emptyCalibration", "progress.emptyMarks"}) {
            said.getChildren().add(reading(texts.text(key)));
        }
        model.next().ifPresent(n -> {
            Button go = Ui.button(texts.text("progress.emptyStart"), "sw-primary", () -> open(n.next()));
            go.setId("progress-start");
            go.setDefaultButton(true);
            VBox.setMargin(go, new Insets(12, 0, 0, 0));
            said.getChildren().add(go);
        });
        return said;
    }

    private void open(Suggestion s) {
        Source source = s.item().source();
        (source.kind() == Source.Kind.DRILL ? start : read).accept(source.id());
    }

    private Region next(HomeNext n) {
        Button go = Ui.button(
                texts.text(n.next().item().drill() ? "progress.startDrill" : "progress.readLesson"),
                "sw-primary",
                () -> open(n.next()));
        go.setId("progress-start");
        go.setDefaultButton(true);
        VBox first = new VBox(
                8,
                Ui.text(texts.text("progress.next"), "sw-strong", "sw-quiet"),
                Ui.text(words.title(n.next().item()), "sw-sentence", "sw-strong"),
                reading(words.reason(n.next())),
                go);
        VBox others = new VBox(8, Ui.text(texts.text("progress.or"), "sw-label", "sw-quiet"));
        for (int i = 0; i < n.alternatives().size(); i++) {
            Suggestion s = n.alternatives().get(i);
            String title = words.title(s.item());
            var link = Ui.link(title, () -> open(s));
            link.setId("progress-or-" + i);
            link.setWrapText(true);
            link.setAccessibleText(texts.text("progress.alternativeSpoken", title, words.reason(s)));
            others.getChildren().add(new VBox(link, Ui.text(words.reason(s), "sw-label", "sw-quiet")));
        }
        FlowPane both = new FlowPane(40, 16, first, others);
        Sizes.share(both, 440);
        both.getStyleClass().add("sw-card");
        both.setPadding(new Insets(16, 20, 16, 20));
        return both;
    }

    private Region charts() {
        FlowPane both =
                new FlowPane(40, 24, ProgressCharts.calibration(model, words), ProgressCharts.marks(model, words));
        Sizes.share(both, 480);
        return section(both);
    }

    private Region resolved() {
        VBox all = new VBox(8, Ui.text(texts.text("progress.resolved"), "sw-sentence", "sw-strong"));
        if (model.resolved().isEmpty()) {
            all.getChildren().add(reading(texts.text("progress.resolvedNone")));
        } else {
            all.getChildren().add(Ui.text(texts.text("progress.resolvedHow"), "sw-label", "sw-quiet"));
            model.resolved().stream().limit(SENTENCES).map(Past.Resolved::text).forEach(sentence -> all.getChildren()
                    .add(reading(sentence, "sw-sentence")));
        }
        return section(all);
    }

    private static Region section(Region content) {
        content.getStyleClass().add("sw-hairline-top");
        content.setPadding(new Insets(20, 0, 0, 0));
        return content;
    }

    /** Long lines are hard to read. */
    private static Label reading(String words, String... classes) {
        Label label = Ui.text(words, classes);
        label.setMaxWidth(READING_WIDTH);
        return label;
    }
}
